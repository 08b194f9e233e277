import type { Subset } from '../../schema/index.js';
import { isIssued, isVariation, type CardSet } from './content.js';
import { join, opensLater, statedHold, traceHold, type Hold, type Schedule } from './hold.js';
import { compareNumbers } from './number.js';
import { cardHold, cardsOf, subsetHold } from './when.js';

/** A line of a printed checklist: `figures` are numbers of cards, or copies of each. */
export interface ListLine {
  readonly figures: string | null;
  readonly title: string;
}

/**
 * What a printed checklist says of its set: each subset with its first and last number, then the
 * parallels with their run. Of what opens later than the checklist itself it has no trace, so that
 * it is the same for everybody who may see it.
 * @param hold what holds the card that prints it.
 */
export function printedList(schedule: Schedule, set: CardSet, hold: Hold): readonly ListLine[] {
  const plan = set.plan.value;
  const isTold = (own: Hold): boolean => !opensLater(own, hold);
  const subsets = plan.subsets.flatMap((subset): ListLine[] => {
    const own = traceHold(schedule, subsetHold(schedule, plan, subset.id));
    const line = isTold(own) ? subsetLine(schedule, set, subset, isTold) : null;
    return line ? [line] : [];
  });
  const parallels = (plan.parallels ?? [])
    .filter((each) => isTold(join(statedHold(schedule, plan), statedHold(schedule, each))))
    .map(({ title, run }) => ({ figures: run === undefined ? null : `${run} of each`, title }));
  return [...subsets, ...parallels];
}

/** Codes open with their cards, so a subset that has them is named alone; null without any card. */
function subsetLine(
  schedule: Schedule,
  set: CardSet,
  { id, title, numbers, roster }: Subset,
  isTold: (hold: Hold) => boolean,
): ListLine | null {
  const listed = cardsOf(set, id)
    .filter((card) => isIssued(card) && !isVariation(card))
    .filter((card) => isTold(traceHold(schedule, cardHold(schedule, set.plan.value, card))));
  if (listed.length === 0 && roster === undefined) return null;
  if (numbers === 'none' || 'codes' in numbers) return { figures: null, title };
  const given = listed.map(({ front }) => front.number).sort(compareNumbers);
  const [first, last] = [given[0], given.at(-1)];
  if (first === undefined || last === undefined) return { figures: null, title };
  return { figures: first === last ? first : `${first} – ${last}`, title };
}
