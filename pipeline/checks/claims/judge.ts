import { subsetOf, type CardSet, type Hold } from '../../model/index.js';
import { realCounts, type RealCount, type Standing } from './count.js';
import { isTrue } from './hedge.js';
import type { Mention } from './read.js';
import type { ClaimText, CountLink } from './texts.js';
import type { Taken } from './place.js';
import type { Subject } from '../subject.js';

/** What becomes of a claim when it is compared with what there is. */
export type Verdict =
  | 'holds'
  | 'wrong'
  /** It counts cards that leave no trace when the text is read. */
  | 'tells'
  /** What it counts is in doubt already, and another rule says so. */
  | 'doubtful'
  /** The plan says nothing that it could be compared with. */
  | 'open';

/** A claim and how it stands. */
export interface Claim {
  readonly text: ClaimText;
  readonly mention: Mention;
  readonly taken: Extract<Taken, { as: 'claim' }>;
  readonly link: CountLink | null;
  readonly verdict: Verdict;
  /** What it was compared with; of a claim that holds, what makes it true. */
  readonly real: readonly RealCount[];
  /** For one that tells: what holds a card of it. */
  readonly held: Hold | null;
}

/** Compares a claim with the real counts; of a layout of several sets, with each. */
export function judge(
  subject: Subject,
  text: ClaimText,
  mention: Mention,
  taken: Claim['taken'],
  link: CountLink | null,
): Claim {
  const hold = text.told.holdOf(mention.number.from, mention.number.to);
  const judged = text.sets.map((set) => {
    const standing = { subject, set, hold, subset: text.subset, card: text.card };
    return judgeIn(standing, text, mention, taken, link !== null);
  });
  const order: readonly Verdict[] = ['tells', 'wrong', 'doubtful', 'open', 'holds'];
  const worst = order.find((verdict) => judged.some((each) => each.verdict === verdict));
  const one = judged.find(({ verdict }) => verdict === worst);
  return { text, mention, taken, link, ...(one ?? { verdict: 'open', real: [], held: null }) };
}

type Judged = Pick<Claim, 'verdict' | 'real' | 'held'>;

function judgeIn(
  standing: Standing,
  text: ClaimText,
  mention: Mention,
  taken: Claim['taken'],
  isLinked: boolean,
): Judged {
  if (taken.relation === 'numbers') return judgeNumbers(standing, mention, taken);
  const all = taken.things.flatMap((thing) => realCounts(thing, standing));
  const right = (real: RealCount): boolean => fits(mention.number.value, taken, real.value, text);
  if (taken.relation === 'part') {
    const real = all.filter(right);
    if (real.length > 0) return { verdict: 'holds', real, held: null };
  }
  const judged = judgeAmong(all, right);
  // A link says what it counts, and that is never copies.
  if (
    isLinked ||
    judged.verdict !== 'wrong' ||
    !countsCopies(taken, mention.number.value, all, standing)
  ) {
    return judged;
  }
  return { verdict: 'open', real: [], held: null };
}

/** How many times what there is a number must be to be one of copies by itself. */
const MANY_TIMES = 10;

/** Whether so many are copies: "1,200 relics were cut", "300 sketch cards", "600 autographs". */
function countsCopies(
  { relation, things }: Claim['taken'],
  says: number,
  all: readonly RealCount[],
  { set }: Standing,
): boolean {
  const most = Math.max(...all.map(({ value }) => value));
  if (relation === 'copies') return says > most;
  const parts = things.flatMap((thing) => (thing.kind === 'part' ? [thing.id] : []));
  const own = set.plan.value.subsets.filter(
    ({ id, group }) => parts.includes(id) || parts.includes(group),
  );
  if (own.length === 0 || parts.length < things.length) return false;
  if (own.every(({ roster }) => roster !== undefined)) return says >= most * 2;
  const made = own.every(({ group, carries }) => carries !== undefined || HAND_MADE.test(group));
  return made && says >= most * MANY_TIMES;
}

const HAND_MADE = /^(?:autograph|relic|sketch|signature)/;

/** Right if any reading is true; wrong if none is and none is in doubt. */
function judgeAmong(all: readonly RealCount[], right: (real: RealCount) => boolean): Judged {
  const shown = all.filter(({ absent }) => absent === null);
  const hidden = all.filter(({ absent }) => absent !== null);
  const true_ = shown.filter(right);
  if (true_.length > 0) return { verdict: 'holds', real: true_, held: null };
  const told = hidden.find(right) ?? (shown.length === 0 ? hidden[0] : undefined);
  if (told) return { verdict: 'tells', real: [told], held: told.absent };
  if (shown.length === 0) return { verdict: 'open', real: [], held: null };
  const verdict = shown.every(({ sure }) => sure) ? 'wrong' : 'doubtful';
  return { verdict, real: distinct(shown), held: null };
}

function distinct(all: readonly RealCount[]): readonly RealCount[] {
  return all.filter(
    ({ value, of }, at) =>
      all.findIndex((other) => other.value === value && other.of === of) === at,
  );
}

/** Whether a number says what there is, in the way in which it is said. */
function fits(says: number, taken: Claim['taken'], real: number, text: ClaimText): boolean {
  if (taken.high) return says <= real && real <= taken.high.value;
  switch (taken.relation) {
    case 'part':
      return says <= real;
    case 'some':
      return isTrue(says, taken.hedge, real) || says * 2 < real;
    case 'others':
      return says === real - 1 || (text.sells && says < real);
    default:
      return isTrue(says, taken.hedge, real);
  }
}

interface Range {
  readonly subset: string;
  readonly from: number;
  readonly to: number;
}

/** A range of printed numbers: there must be such numbers, all of them if it says so. */
function judgeNumbers(standing: Standing, mention: Mention, taken: Claim['taken']): Judged {
  const { set } = standing;
  const ranges = taken.things.flatMap((thing) => rangesOf(thing, set));
  const low = mention.number.value;
  const high = taken.high?.value ?? low;
  const ends = taken.whole === true;
  const first = ranges.some(({ from, to }) => (ends ? from === low : from <= low && low <= to));
  const last = ranges.some(({ from, to }) => (ends ? to === high : from <= high && high <= to));
  if (ranges.length === 0) return { verdict: 'open', real: [], held: null };
  const all = ranges.flatMap(({ subset }) => realCounts({ kind: 'part', id: subset }, standing));
  const ending = ranges.filter(({ to }) => to === high).map(({ subset }) => subset);
  const told = all.find(({ absent, id }) => absent !== null && id !== null && ending.includes(id));
  if (told) return { verdict: 'tells', real: [told], held: told.absent };
  if (first && last) return { verdict: 'holds', real: [], held: null };
  const real = ranges.map(({ subset, from, to }) => ({
    value: to,
    of: `the numbers ${String(from)} to ${String(to)} of \`${subset}\``,
    sure: true,
    absent: null,
    id: null,
  }));
  return { verdict: all.every(({ sure }) => sure) ? 'wrong' : 'doubtful', real, held: null };
}

function rangesOf(thing: Claim['taken']['things'][number], set: CardSet): readonly Range[] {
  const { subsets } = set.plan.value;
  const of = (ids: readonly string[]): readonly Range[] =>
    ids.flatMap((id) => {
      const numbers = subsetOf(set.plan.value, id)?.numbers;
      if (!numbers || numbers === 'none' || 'codes' in numbers) return [];
      return [{ subset: id, from: numbers.from, to: numbers.to }];
    });
  const plain = subsets.filter(
    ({ numbers }) => numbers !== 'none' && !('codes' in numbers) && numbers.prefix === undefined,
  );
  if (thing.kind !== 'part') return of(plain.map(({ id }) => id));
  const own = subsets.filter(({ id, group }) => id === thing.id || group === thing.id);
  return of(own.map(({ id }) => id));
}
