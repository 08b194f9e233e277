import type { Subset } from '../../schema/index.js';
import { isIssued, type CardSet } from './content.js';
import { OPEN, join, opensLater, statedHold, traceHold, type Hold, type Schedule } from './hold.js';
import { compareNumbers } from './number.js';
import { cardHold, cardsOf, fieldHold, subsetHold } from './when.js';

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
  const told = plan.subsets.filter(({ id }) =>
    isTold(traceHold(schedule, subsetHold(schedule, plan, id))),
  );
  const subsets = told.flatMap((subset) => subsetLine(schedule, set, subset, isTold) ?? []);
  const parallels = (plan.parallels ?? [])
    .filter((each) => isTold(join(statedHold(schedule, plan), statedHold(schedule, each))))
    .filter((each) => told.some(({ id }) => each.of.includes(id)))
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
  const listed = cardsOf(set, id).filter((card) => {
    const hold = cardHold(schedule, set.plan.value, card);
    const isPulled = !isIssued(card) && isTold(fieldHold(schedule, hold, card, 'issued'));
    return !isPulled && isTold(traceHold(schedule, hold));
  });
  if (listed.length === 0 && roster === undefined) return null;
  if (numbers === 'none' || 'codes' in numbers) return { figures: null, title };
  const given = listed
    .filter((card) => isTold(fieldHold(schedule, OPEN, card, 'number')))
    .map(({ front }) => front.number)
    .sort(compareNumbers);
  const [first, last] = [given[0], given.at(-1)];
  if (first === undefined || last === undefined) return { figures: null, title };
  return { figures: first === last ? first : `${first} – ${last}`, title };
}
