import { useState } from 'preact/hooks';
import type { Conflict as ConflictAnswer, Edit, TypedCard } from '../../protocol.js';
import { WordsThatCame } from '../parts/words-changed.js';
import { Dialog } from '../shell/dialog.js';
import { isSame } from './field-changes.js';

/** Both texts of a card that two people changed, side by side, and the ways out: nothing is lost. */
export function Conflict(props: {
  readonly conflict: ConflictAnswer;
  readonly isBusy: boolean;
  readonly settle: (words: Edit) => void;
  readonly takeOther: () => void;
  readonly close: () => void;
}) {
  const { conflict, isBusy, settle, takeOther, close } = props;
  const { yours, disk, merged, base, message } = conflict;
  const isCopyAlone = areFieldsSame(yours, disk);
  const wordsOf = (card: TypedCard): string => (isCopyAlone ? card.copy : card.text);
  const [merge, setMerge] = useState(wordsOf(merged ?? yours));
  const editOf = (words: string): Edit => (isCopyAlone ? { copy: words } : { text: words });
  return (
    <Dialog title="Somebody else changed this card" close={close} wide>
      <p>{message.charAt(0).toUpperCase() + message.slice(1)}.</p>
      {base && <p class="small quiet">Words that neither began with are marked.</p>}
      <div class="two">
        <Text title="Yours" before={base && wordsOf(base)} words={wordsOf(yours)} />
        <Text title="In the file" before={base && wordsOf(base)} words={wordsOf(disk)} />
      </div>
      <div class="acts">
        <button type="button" disabled={isBusy} onClick={() => settle(editOf(wordsOf(yours)))}>
          Keep mine
        </button>
        <button type="button" disabled={isBusy} onClick={takeOther}>
          Take the other
        </button>
      </div>
      <div class="field">
        <label for="merge">
          {merged
            ? 'Both together: read it, change it as you like'
            : 'Both changed the same words: write here what shall stand'}
        </label>
        <textarea
          id="merge"
          class="merge"
          rows={8}
          spellcheck={false}
          value={merge}
          onInput={({ currentTarget }) => setMerge(currentTarget.value)}
        />
      </div>
      <div class="acts">
        <button type="button" class="main" disabled={isBusy} onClick={() => settle(editOf(merge))}>
          Save what stands here
        </button>
        <button type="button" onClick={close}>
          Go on writing, save nothing
        </button>
      </div>
    </Dialog>
  );
}

function Text(props: {
  readonly title: string;
  readonly before: string | null;
  readonly words: string;
}) {
  const { title, before, words } = props;
  return (
    <section class="stack">
      <h3>{title}</h3>
      <WordsThatCame before={before ?? words} now={words} />
    </section>
  );
}

function areFieldsSame(one: TypedCard, other: TypedCard): boolean {
  return one.fields !== null && other.fields !== null && isSame(one.fields, other.fields);
}
