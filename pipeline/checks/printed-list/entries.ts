import {
  isCoded,
  isIssued,
  isVariation,
  opensLater,
  plannedNumbers,
  type Card,
  type Hold,
} from '../../model/index.js';
import { amount } from '../amount.js';
import { knownHold, traceHold } from '../known-hold.js';
import type { Subject, SubsetView } from '../subject.js';

/** What a printed list says of one subset, in its two forms. */
export interface ListEntry {
  /** The id of the subset. */
  readonly subset: string;
  readonly title: string;
  /** With every number: "Lake Charts: LC-1, LC-2, LC-3". */
  readonly each: string;
  /** With runs of numbers: "Lake Charts: LC-1 to LC-3". */
  readonly runs: string;
  /** Whether nothing else is wrong that would make this entry wrong. */
  readonly sure: boolean;
}

/** What may be told of one number of a plan. */
interface Listed {
  readonly number: string;
  readonly issued: boolean;
}

/**
 * The entries of a list that opens with `told`, in the order of the plan. What leaves no trace then is
 * not among them. A placeholder counts as issued: that it is not is held with it. Codes are held with
 * their cards, so that such a subset is told by its count alone, and a roster by its title.
 */
export function listEntries(
  views: readonly SubsetView[],
  told: Hold,
  subject: Subject,
): readonly ListEntry[] {
  return views.flatMap((view) => entryOf(view, told, subject) ?? []);
}

function entryOf(view: SubsetView, told: Hold, subject: Subject): ListEntry | null {
  const { set, plan } = view;
  const hold = knownHold(subject.schedule, set.plan.value, plan);
  const title = folded(plan.title);
  const alone = { subset: plan.id, title, each: title, runs: title };
  if (!hold) return { ...alone, sure: false };
  if (opensLater(traceHold(subject.schedule, hold), told)) return null;
  if (plan.roster !== undefined) return { ...alone, sure: true };
  const all = toldNumbers(view, told, subject);
  const listed = all.flatMap((each) => each ?? []);
  if (listed.length === 0) return view.numbering.clean ? null : { ...alone, sure: false };
  const known = view.cards.every((card) => subject.holds.has(card));
  const sure = view.numbering.clean && known && !hasGap(all);
  const said = (words: string): string => `${title}: ${[words, ...pulledOf(listed)].join(' ')}`;
  if (plan.numbers === 'none' || 'codes' in plan.numbers) {
    const line = said(amount(listed.filter(({ issued }) => issued).length, 'card'));
    return { ...alone, each: line, runs: line, sure };
  }
  return { ...alone, each: said(eachOf(listed)), runs: said(runsOf(listed)), sure };
}

/** Words with one space between them. */
export function folded(words: string): string {
  return words.trim().replace(/\s+/gu, ' ');
}

/**
 * What may be told of each number, null for what leaves no trace. By the plan, so that a card that is
 * missing is spoken of once, by the rules about numbers.
 */
function toldNumbers(
  { plan, cards }: SubsetView,
  told: Hold,
  { schedule, holds }: Subject,
): readonly (Listed | null)[] {
  const own = cards.filter((card) => !isVariation(card));
  const byNumber = new Map(own.map((card) => [card.front.number, card]));
  const listed = (number: string, card: Card | undefined): Listed | null => {
    const hold = card && holds.get(card);
    if (!card || !hold) return { number, issued: true };
    if (opensLater(traceHold(schedule, hold), told)) return null;
    return { number, issued: isIssued(card) || opensLater(hold, told) };
  };
  const numbers = plannedNumbers(plan.numbers);
  const all = numbers
    ? numbers.map((number) => listed(number, byNumber.get(number)))
    : own.map((card) => listed('none', card));
  // Only in a run of numbers can one be missed.
  return numbers && !isCoded(plan.numbers) ? all : all.filter((each) => each !== null);
}

/** Whether a number is missed before one that shows, of which `absent-gap` speaks. */
function hasGap(all: readonly (Listed | null)[]): boolean {
  const end = all.findLastIndex((each) => each !== null);
  return all.slice(0, end).includes(null);
}

function eachOf(listed: readonly Listed[]): string {
  const issued = listed.filter((each) => each.issued);
  return issued.length === 0 ? 'none' : issued.map(({ number }) => number).join(', ');
}

/** From the first to the last; what is missing in between is said behind it. */
function runsOf(listed: readonly Listed[]): string {
  const [first, ...others] = listed;
  const last = others.at(-1);
  return first && last && others.length > 1 ? `${first.number} to ${last.number}` : eachOf(listed);
}

/** Codes are told where their card is, and cards without number have nothing to be told by. */
function pulledOf(listed: readonly Listed[]): readonly string[] {
  const pulled = listed.filter(({ issued, number }) => !issued && number !== 'none');
  if (pulled.length === 0) return [];
  return [`(${pulled.map(({ number }) => number).join(', ')} not issued)`];
}
