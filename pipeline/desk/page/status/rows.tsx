import { useState } from 'preact/hooks';
import type { StatusRow } from '../../protocol.js';
import { counted } from '../parts/counted.js';
import { addressOf } from '../shell/route.js';

/** So many cards are drawn at first, and as many more with each press. */
const AT_ONCE = 300;

/** The table of cards. The arrow keys go from name to name, Enter opens a card. */
export function Rows(props: {
  readonly rows: readonly StatusRow[];
  /** False: how it fits, what is found and what blocks is not known yet. */
  readonly looked: boolean;
}) {
  const { rows, looked } = props;
  const [drawn, setDrawn] = useState(AT_ONCE);
  const more = Math.min(AT_ONCE, rows.length - drawn);
  return (
    <>
      <div class="scroll" role="region" aria-label="Cards" tabIndex={0}>
        <table class="cards" onKeyDown={step}>
          <thead>
            <tr>
              <th scope="col">Number</th>
              <th scope="col">Name</th>
              <th scope="col">Subset</th>
              <th scope="col">State</th>
              <th scope="col">Who has it</th>
              <th scope="col">Level</th>
              <th scope="col">How full</th>
              <th scope="col">Findings</th>
              <th scope="col">What blocks its release</th>
            </tr>
          </thead>
          <tbody>
            {rows.slice(0, drawn).map((row) => (
              <Row key={row.card} row={row} looked={looked} />
            ))}
          </tbody>
        </table>
      </div>
      {more > 0 && (
        <button type="button" onClick={() => setDrawn(drawn + AT_ONCE)}>
          Show {more} more
        </button>
      )}
    </>
  );
}

function Row({ row, looked }: { readonly row: StatusRow; readonly looked: boolean }) {
  const nothing = looked ? '–' : '…';
  const { card, number, name, subsetTitle, state, unsaved, fit, errors, warnings, blocks } = row;
  const has = [row.writerName ?? row.writer, ...row.waitsFor.map((person) => `with ${person}`)];
  return (
    <tr>
      <td class="whole">{number ?? '–'}</td>
      <th scope="row" class="name">
        <a href={addressOf({ screen: 'card', card })}>{name === '' ? card : name}</a>
        {unsaved && <span class="small warn"> not saved</span>}
      </th>
      <td>{subsetTitle}</td>
      <td>
        <span class={`state ${toneOf(row)}`}>{state ?? 'unreadable'}</span>
      </td>
      <td>{has.filter(Boolean).join(', ') || 'Nobody'}</td>
      <td>
        {row.levelLabel}
        {row.opens !== 'open' && <span class="small quiet block">{row.opens}</span>}
      </td>
      <td class={classes('whole', fit?.fits === false && 'bad', !fit && 'empty')}>
        {fit?.says ?? nothing}
      </td>
      <td class={classes(errors > 0 && 'bad', errors + warnings === 0 && 'empty')}>
        {errors + warnings === 0 ? nothing : findingsIn(errors, warnings)}
      </td>
      <td class={classes('long', blocks.length === 0 && 'empty')}>
        {blocks.length === 0 ? nothing : blocks.join('; ')}
        {row.remarks.map((remark) => (
          <span class="block quiet" key={remark}>
            “{remark}”
          </span>
        ))}
      </td>
    </tr>
  );
}

function classes(...names: readonly (string | false)[]): string {
  return names.filter((name) => name !== false).join(' ');
}

function findingsIn(errors: number, warnings: number): string {
  const parts = [errors > 0 ? counted(errors, 'error') : '', counted(warnings, 'warning')];
  return parts.filter((part) => part !== '' && !part.startsWith('0 ')).join(', ');
}

function toneOf({ state }: StatusRow): string {
  if (state === 'approved') return 'good';
  if (state === 'not issued' || state === 'no copy') return 'quiet';
  const isBad = ['overset', 'revise and resubmit', 'rejected', 'unreadable', null].includes(state);
  return isBad ? 'bad' : '';
}

function step(event: KeyboardEvent): void {
  const way = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0;
  if (way === 0 || !(event.target instanceof HTMLAnchorElement)) return;
  const links = [...document.querySelectorAll<HTMLAnchorElement>('.cards tbody th a')];
  const next = links[links.indexOf(event.target) + way];
  if (!next) return;
  event.preventDefault();
  next.focus();
}
