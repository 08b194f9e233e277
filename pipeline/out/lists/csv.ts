import type { PublicCard, PublicData, PublicSet, PublicSubset } from '../../../schema/index.js';
import { groupName, isoDay, printed, signerWords } from '../wording/index.js';
import { addressOf } from './addresses.js';

const HEADINGS = [
  'Set',
  'Subset',
  'Group',
  'Number',
  'Name',
  'Printing',
  'Run',
  'State',
  'Signers',
  'To be revealed',
  'Revealed',
  'Page',
] as const;

const STATES = {
  shown: 'shown',
  placeholder: 'to be revealed',
  'not issued': 'not issued',
} as const;

/** Cells that a spreadsheet program would run as a formula (OWASP, CSV Injection). */
const FORMULA = /^[=+\-@\t\r\n]/;

/**
 * A set as CSV (RFC 4180): a row for each card, then one for each of its parallels. Days are dates
 * of ISO 8601 in the property's zone. A cell that would be a formula gets an apostrophe before it.
 */
export function checklistCsv(data: PublicData, set: PublicSet): string {
  const rows = set.subsets.flatMap((subset) => {
    const parallels = set.parallels
      .filter(({ of }) => of.includes(subset.id))
      .map(({ title, run, revealed }) => ({ title, run, day: dayOf(data, revealed) }));
    return subset.cards.flatMap((card) => rowsOf(data, { set, subset, parallels, card }));
  });
  return [HEADINGS, ...rows].map((row) => `${row.map(cell).join(',')}\r\n`).join('');
}

/** A finish in which a card is printed besides. */
interface Printing {
  readonly title: string;
  readonly run: number | null;
  readonly day: string;
}

interface Place {
  readonly set: PublicSet;
  readonly subset: PublicSubset;
  readonly parallels: readonly Printing[];
  readonly card: PublicCard;
}

function rowsOf(data: PublicData, { set, subset, parallels, card }: Place): string[][] {
  const before = [set.title, subset.title, groupName(subset.group), printed(card), card.name];
  const between = [
    STATES[card.state],
    card.signers.map(signerWords).join('; '),
    card.state === 'placeholder' ? dayOf(data, card.opens) : '',
  ];
  const page = card.page === null ? '' : addressOf(data, card.page);
  const cardDay = dayOf(data, card.revealed);
  const row = (printing: string, run: number | null, revealed: string): string[] => [
    ...before,
    printing,
    run === null ? '' : String(run),
    ...between,
    revealed,
    page,
  ];
  const others = card.state === 'not issued' ? [] : parallels;
  return [
    row('Card', card.run, cardDay),
    ...others.map(({ title, run, day }) => {
      return row(title, run, card.state === 'shown' ? later(cardDay, day) : cardDay);
    }),
  ];
}

/** The day of an instant as a date of ISO 8601; nothing for none. */
function dayOf({ property }: PublicData, instant: string | null): string {
  return instant === null ? '' : isoDay(instant, property.zone);
}

/** A card is revealed in another finish once both are; what was never held has no day. */
function later(card: string, parallel: string): string {
  return parallel > card ? parallel : card;
}

function cell(text: string): string {
  const neutral = FORMULA.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(neutral) ? `"${neutral.replaceAll('"', '""')}"` : neutral;
}
