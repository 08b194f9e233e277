import type { CardSet, Hold } from '../../model/index.js';
import { knownField } from '../known-hold.js';
import { fitsOn, listCards, listedOn, speaksOf, type ListCard } from './cards.js';
import { listEntries, type ListEntry } from './entries.js';
import { listFix, listSpot } from './fix.js';
import { ofCard, type Remark } from '../rule.js';
import type { Subject, SubsetView } from '../subject.js';

/** What is wrong with the lists that the cards of a set print. */
export function wrongLists(set: CardSet, subject: Subject): Remark[] {
  const views = subject.subsets.filter((view) => view.set === set);
  const cards = listCards(views, subject);
  const owners = listedOn(views, cards);
  const entriesAt = keptEntries(views, subject);
  return cards.flatMap((each) => {
    const hold = subject.holds.get(each.card);
    const told = hold && knownField(each.card, 'texts.list', hold, subject.schedule);
    if (!told) return [];
    const own = entriesAt(told).filter(({ subset }) => owners.get(subset) === each);
    return judged(each, own, subject);
  });
}

/** Many cards of a set may print a list; what opens with them is mostly the same. */
function keptEntries(
  views: readonly SubsetView[],
  subject: Subject,
): (told: Hold) => readonly ListEntry[] {
  const known = new Map<string, readonly ListEntry[]>();
  return (told) => {
    const key = [told.level, ...told.embargoes].join(' ');
    const entries = known.get(key) ?? listEntries(views, told, subject);
    known.set(key, entries);
    return entries;
  };
}

function judged(each: ListCard, own: readonly ListEntry[], subject: Subject): Remark[] {
  const { card, lines } = each;
  const right = rightLines(each, own, subject);
  if (lines !== null && isSame(lines, right)) return [];
  const place = { ...ofCard(card), spot: listSpot(card) };
  const fix = right.length > 0 && own.every(({ sure }) => sure) ? listFix(card, right) : {};
  if (lines !== null) {
    const message = 'the printed list is not that of the plan';
    return [{ ...place, message, ...firstWrong(lines, own, right), ...fix }];
  }
  return [
    {
      ...place,
      message: 'the layout of this card has a zone for the list, and nothing stands in it',
      found: 'no `texts: { list: … }`',
      expected: 'a line for each subset, as the plan has it',
      ...fix,
    },
  ];
}

/**
 * The lines as they ought to be. A line that is right in one of the two forms stays as it is; what
 * other rules find fault with is not looked at.
 */
function rightLines(
  each: ListCard,
  own: readonly ListEntry[],
  subject: Subject,
): readonly string[] {
  const formed = (form: 'each' | 'runs'): readonly string[] =>
    own.flatMap((entry) => {
      const stated = each.lines?.find((line) => speaksOf(line, entry));
      if (!entry.sure && each.lines) return stated === undefined ? [] : [stated];
      if (stated === entry.each || stated === entry.runs) return [stated];
      return [stated?.includes(' to ') === true ? entry.runs : entry[form]];
    });
  const [whole, short] = [formed('each'), formed('runs')];
  return isSame(whole, short) || !fitsOn(each, whole, subject) ? short : whole;
}

function isSame(lines: readonly string[], right: readonly string[]): boolean {
  return lines.length === right.length && lines.every((line, at) => line === right[at]);
}

function firstWrong(
  lines: readonly string[],
  own: readonly ListEntry[],
  right: readonly string[],
): Pick<Remark, 'found' | 'expected'> {
  const wanted = right.find((line) => !lines.includes(line));
  const entry = own.find((each) => wanted !== undefined && speaksOf(wanted, each));
  if (wanted !== undefined && entry) {
    const stated = lines.find((line) => speaksOf(line, entry));
    return { found: stated ?? `no line for \`${entry.subset}\``, expected: wanted };
  }
  const extra = lines.find((line) => !right.includes(line));
  if (extra !== undefined) return { found: extra, expected: 'no such line' };
  const at = lines.findIndex((line, index) => line !== right[index]);
  return { found: lines[at] ?? '', expected: right[at] ?? 'each line once' };
}
