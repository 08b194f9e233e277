import type { StatusAnswer, StatusRow } from '../../protocol.js';

/** What of the status sheet is asked for; an empty word asks for nothing. */
export interface Filters {
  /** Who looks: their cards are theirs. */
  readonly me: string;
  readonly text: string;
  readonly subset: string;
  readonly state: string;
  readonly level: string;
  /** The id of a writer, `me`, or `none` for cards that nobody writes. */
  readonly writer: string;
  readonly findings: '' | 'any' | 'errors' | 'none';
}

export const NO_FILTERS: Filters = {
  me: '',
  text: '',
  subset: '',
  state: '',
  level: '',
  writer: '',
  findings: '',
};

const KEPT_AS = 'desk-filters';

/** What this tab asked for before, by person: it goes with the tab. */
export function keptFilters(): Filters {
  const me = sessionStorage.getItem(KEPT_AS) ?? '';
  return filtersOf(me);
}

export function filtersOf(me: string): Filters {
  const text = sessionStorage.getItem(`${KEPT_AS}-${me}`);
  const kept: unknown = text === null ? {} : JSON.parse(text);
  return { ...NO_FILTERS, ...(typeof kept === 'object' ? kept : {}), me };
}

export function keepFilters(filters: Filters): void {
  sessionStorage.setItem(KEPT_AS, filters.me);
  sessionStorage.setItem(`${KEPT_AS}-${filters.me}`, JSON.stringify(filters));
}

/** The subset of a row: subsets of two sets may have one id. */
export function subsetOf({ set, subset }: StatusRow): string {
  return `${set}/${subset}`;
}

/** The cards that are asked for, in the order of the sheet. */
export function filtered(cards: StatusAnswer['cards'], filters: Filters): readonly StatusRow[] {
  const words = filters.text.trim().toLowerCase().split(/\s+/).filter(Boolean);
  return cards.filter((row) => isAsked(row, filters) && hasWords(row, words));
}

function isAsked(row: StatusRow, { me, subset, state, level, writer, findings }: Filters): boolean {
  const asked = writer === 'me' ? me : writer;
  return (
    (subset === '' || subsetOf(row) === subset) &&
    (state === '' || (row.state ?? 'unreadable') === state) &&
    (level === '' || row.level === level) &&
    (writer === '' || (row.writer ?? 'none') === asked) &&
    hasFindings(row, findings)
  );
}

function hasFindings({ errors, warnings }: StatusRow, asked: Filters['findings']): boolean {
  if (asked === 'any') return errors + warnings > 0;
  if (asked === 'errors') return errors > 0;
  return asked === '' || errors + warnings === 0;
}

function hasWords(row: StatusRow, words: readonly string[]): boolean {
  if (words.length === 0) return true;
  const all = [row.number, row.name, row.card, row.subsetTitle, row.writerName, ...row.blocks]
    .join(' ')
    .toLowerCase();
  return words.every((word) => all.includes(word));
}
