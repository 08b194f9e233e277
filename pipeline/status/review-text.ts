import {
  CARD_STATES,
  type CardStatus,
  type DateStatus,
  type StatusSheet,
  type WaitingStatus,
  type WriterStatus,
} from '../../schema/index.js';
import { sayDay } from '../model/index.js';

type Warn = (text: string) => string;

const DATE_NAMES = {
  solicit: 'solicit',
  copyLock: 'copy lock',
  toPrinter: 'to the printer',
  ships: 'ships',
} as const;

/** The dates of a plan, and how long it is until then. */
export function datesText(dates: readonly DateStatus[], warn: Warn): readonly string[] {
  if (dates.length === 0) return [];
  const rows = dates.map(({ date, on, workingDays }) => [
    DATE_NAMES[date],
    sayPlain(on),
    left(workingDays),
  ]);
  const widths = [0, 1].map((column) => Math.max(...rows.map((row) => row[column]?.length ?? 0)));
  const lines = dates.flatMap(({ submit }, at) => [
    (rows[at] ?? []).map((cell, column) => cell.padEnd(widths[column] ?? 0)).join('  '),
    ...(submit ? [sayLimit(submit, warn)] : []),
  ]);
  return ['', 'Dates', ...lines.map((line) => `  ${line}`.trimEnd())];
}

function sayLimit({ by, workingDays }: NonNullable<DateStatus['submit']>, warn: Warn): string {
  const line = `to be decided on before the printer's date, copy is submitted by ${sayPlain(by)}`;
  return `  ${workingDays < 0 ? warn(`${line}: ${left(workingDays)}`) : line}`;
}

function left(days: number): string {
  if (days === 0) return 'today, or before the next working day';
  const count = sayDays(Math.abs(days));
  return days > 0 ? `${count} left` : `${count} ago`;
}

function sayDays(count: number): string {
  return `${String(count)} working ${count === 1 ? 'day' : 'days'}`;
}

/** What lies with each reviewer; a block, or none. */
export function waitingText(waiting: readonly WaitingStatus[], warn: Warn): readonly string[] {
  if (waiting.length === 0) return [];
  const people = [...new Set(waiting.map(({ person }) => person))];
  const blocks = people.flatMap((person) => {
    const own = waiting.filter((one) => one.person === person);
    const [first] = own;
    return [
      `  ${first?.name ?? person} (${first?.role ?? ''})`,
      ...own.map((one) => sayWaiting(one, warn)),
    ];
  });
  return [['Submitted, and not decided:', ...blocks].join('\n')];
}

function sayWaiting(
  { packet, round, since, due, overdue, cards, parts }: WaitingStatus,
  warn: Warn,
): string {
  const what = `${count(parts, 'part')} of ${count(cards, 'card')} since ${sayPlain(since)}`;
  const when = `due ${sayPlain(due)}`;
  const late = overdue > 0 ? `, ${warn(`overdue by ${sayDays(overdue)}`)}` : '';
  return `    ${packet}, round ${String(round)}: ${what}, ${when}${late}`;
}

/** How the cards of each writer stand; a block, or none. */
export function writersText(writers: readonly WriterStatus[]): readonly string[] {
  if (writers.length === 0) return [];
  const lines = writers.map(({ name, states }) => {
    const told = CARD_STATES.filter((state) => states[state] > 0);
    return `  ${name}: ${told.map((state) => `${String(states[state])} ${state}`).join(', ')}`;
  });
  return [['Writers:', ...lines].join('\n')];
}

/** Cards that were asked for, one by one. */
export function askedText({ cut, writer, cards }: NonNullable<StatusSheet['asked']>): string {
  const whose = writer === null ? 'Cards' : `Cards of ${writer}`;
  const title = cut === null ? whose : `${whose} that were not read against ${cut}`;
  if (cards.length === 0) return `${title}: none`;
  return [`${title}:`, ...cards.flatMap((card) => sayCard(card, cut !== null))].join('\n');
}

function sayCard(card: CardStatus, tellsCut: boolean): readonly string[] {
  const { number, name, state, checkedAgainst, waitsFor, remarks } = card;
  const heading = [card.card, number, name].filter((part) => part !== null).join('  ');
  const holders = waitsFor.length > 0 ? `, with ${waitsFor.join(' and ')}` : '';
  const cut = tellsCut ? `, read against ${checkedAgainst ?? 'none'}` : '';
  return [`  ${heading}: ${state}${holders}${cut}`, ...remarks.map((remark) => `    ${remark}`)];
}

function count(number: number, what: string): string {
  return `${String(number)} ${what}${number === 1 ? '' : 's'}`;
}

/** "15 January 2027" of `2027-01-15`. */
function sayPlain(day: string): string {
  return sayDay(Date.parse(`${day}T12:00:00Z`), 'UTC');
}
