import { useRef } from 'preact/hooks';
import type { CardKey, DeskFinding, StatusAnswer } from '../../protocol.js';
import { CopyEditor, type CopyHandle } from '../copy/copy-editor.js';
import { Form } from '../form/form.js';
import { elementOfPath } from '../form/names.js';
import type { Desk } from '../line/desk.js';
import type { Live } from '../line/live.js';
import { useKeys } from '../shell/keys.js';
import { go } from '../shell/route.js';
import { Title } from '../shell/title.js';
import { Bar } from './bar.js';
import { Conflict } from './conflict.js';
import { Findings } from './findings.js';
import { Change, History, Names } from './notes.js';
import { Notices } from './notices.js';
import { Preview } from './preview.js';
import { useWork, type OpenWork } from './use-work.js';

/** A card: its copy and fields, how it prints, and what is said of it. */
export function CardScreen(props: {
  readonly desk: Desk;
  readonly live: Live;
  readonly card: CardKey;
  readonly status: StatusAnswer | null;
}) {
  const open = useWork(props.desk, props.live, props.card);
  if (open === null) return <Title words="Card" more="Fetching it…" />;
  if (typeof open === 'string') return <Title words="Card" more={open} />;
  return <Work {...props} open={open} />;
}

function Work(props: {
  readonly desk: Desk;
  readonly card: CardKey;
  readonly status: StatusAnswer | null;
  readonly open: OpenWork;
}) {
  const { desk, card, status, open } = props;
  const { work, state } = open;
  const { answer, typed, look } = state;
  const editor = useRef<CopyHandle>(null);
  const labelOf = (id: string): string =>
    status?.levels.find((each) => each.id === id)?.label ?? id;
  const fix = (finding: DeskFinding): void => void work.fix(finding);
  useKeys('This card', [
    { chord: 'mod+s', does: 'Save', press: () => void work.save() },
    { chord: 'alt+z', does: 'Undo the last save', press: () => void work.undo() },
    { chord: 'alt+shift+z', does: 'Redo the save', press: () => void work.redo() },
    { chord: 'mod+Enter', does: 'Hand in', press: () => void work.handIn() },
    { chord: 'alt+PageDown', does: 'Next card', press: () => turn(answer.next) },
    { chord: 'alt+PageUp', does: 'Card before', press: () => turn(answer.previous) },
    { chord: 'alt+c', does: 'To the copy', press: () => editor.current?.focus() },
    { chord: 'alt+m', does: 'Mend the first finding', press: () => mendFirst(look.findings, fix) },
  ]);
  return (
    <>
      <Title words={titleOf(answer.row, card)} more={moreOf(answer.row)} />
      <Bar work={work} state={state} />
      <Notices work={work} state={state} />
      <div class="work">
        <div>
          <section class="panel" aria-labelledby="copy-title">
            {typed.fields === null ? (
              <CopyEditor
                title="The whole file (its front matter cannot be read)"
                text={typed.text}
                put={state.put}
                findings={[]}
                labelOf={labelOf}
                changed={(text) => work.type({ text })}
                fix={fix}
                handle={editor}
              />
            ) : (
              <CopyEditor
                title="Copy"
                text={typed.copy}
                put={state.put}
                findings={look.findings}
                labelOf={labelOf}
                changed={(copy) => work.type({ copy })}
                fix={fix}
                handle={editor}
              />
            )}
            <p class="small quiet" id="copy-fit">
              {look.sides?.fits.find(({ zone }) => zone === 'bio')?.says ?? 'Not set'}
            </p>
          </section>
          <Findings
            findings={look.findings}
            settled={look.settled}
            isBusy={state.isBusy}
            fix={fix}
            show={(finding) => show(finding, editor.current)}
          />
        </div>
        <div class="beside" role="region" aria-label="As it prints, and its names" tabIndex={0}>
          <Preview desk={desk} card={card} sides={look.sides} />
          <Names names={look.names} />
        </div>
        <div class="rest">
          {typed.fields !== null && (
            <section class="panel" aria-labelledby="fields-title">
              <h2 id="fields-title">Fields</h2>
              <Form
                models={answer.form}
                fields={typed.fields}
                change={(fields) => work.type({ fields })}
              />
            </section>
          )}
          <Change change={state.change} />
          <History history={answer.history} />
        </div>
      </div>
      {state.conflict && (
        <Conflict
          conflict={state.conflict}
          isBusy={state.isBusy}
          settle={(words) => void work.settle(words)}
          takeOther={() => void work.takeOther()}
          close={() => work.closeConflict()}
        />
      )}
    </>
  );
}

function titleOf(row: OpenWork['state']['answer']['row'], card: CardKey): string {
  return row ? [row.number, row.name].filter((words) => words !== null).join(' · ') : card;
}

function moreOf(row: OpenWork['state']['answer']['row']): string {
  if (!row) return '';
  return [row.subsetTitle, row.levelLabel, row.opens, row.writerName ?? 'nobody writes it'].join(
    ' · ',
  );
}

/** Goes to another card, if there is one. */
function turn(card: CardKey | null): void {
  if (card !== null) go({ screen: 'card', card });
}

function mendFirst(findings: readonly DeskFinding[], fix: (finding: DeskFinding) => void): void {
  const first = findings.find(({ fixable, finding }) => fixable && finding.fix !== undefined);
  if (first) fix(first);
}

function show({ place }: DeskFinding, editor: CopyHandle | null): void {
  if (place.in === 'copy') editor?.select(place.from, place.to);
  if (place.in !== 'field') return;
  const field = elementOfPath(place.path);
  field?.scrollIntoView({ block: 'center' });
  field?.focus();
}
