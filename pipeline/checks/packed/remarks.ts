import type { Problem, ProblemKind } from '../../packs/index.js';
import type { CardSet } from '../../model/index.js';
import { packedExpectation } from './expected.js';
import { causesOf } from './causes.js';
import { packedOf, type Packed } from './plan.js';
import { packedSpot } from './spots.js';
import type { Remark } from '../rule.js';
import type { Subject } from '../subject.js';

/** What the rules about packs share out among themselves. */
export type PackRule =
  'pack-places' | 'pack-divides' | 'pack-guarantee' | 'odds-stated' | 'redemption-terms';

const RULES: Readonly<Record<Problem['concerns'], PackRule>> = {
  figures: 'pack-places',
  places: 'pack-places',
  divides: 'pack-divides',
  guarantee: 'pack-guarantee',
  odds: 'odds-stated',
  redemption: 'redemption-terms',
};

/** A figure that is not stated is no figure that is wrong: this one is a matter of copies. */
const OF_COPIES: ReadonlySet<ProblemKind> = new Set(['run-missing', 'run-by-weight']);

/** Problems that other rules tell of the ids themselves, or that no file can have. */
const TOLD_ELSEWHERE: ReadonlySet<ProblemKind> = new Set([
  'parent-unknown',
  'doubled-unknown',
  'kind-unknown',
  'product-unknown',
]);

/** What one rule has to say of the packs of every set. */
export function packedRemarks({ sets }: Subject, rule: PackRule): readonly Remark[] {
  return sets.flatMap((set) => {
    const packed = packedOf(set);
    if (packed === null) return [];
    return causesOf(packed)
      .filter((problem) => ruleOf(problem) === rule && isTold(problem, set))
      .map((problem) => remarkOf(problem, set, packed));
  });
}

function ruleOf({ kind, concerns }: Problem): PackRule | null {
  if (TOLD_ELSEWHERE.has(kind)) return null;
  return OF_COPIES.has(kind) ? 'pack-divides' : RULES[concerns];
}

/** While a set is planned nobody need know how many cases are made. */
function isTold({ kind }: Problem, { plan }: CardSet): boolean {
  return kind !== 'cases-unset' || plan.value.stage === 'locked';
}

function remarkOf(problem: Problem, set: CardSet, packed: Packed): Remark {
  const spot = packedSpot(set, packed, problem);
  const found = spot.source.text.slice(spot.from, spot.to);
  const { message, expected, fix } = packedExpectation(problem, packed);
  return {
    spot,
    message,
    found,
    ...(expected === null ? {} : { expected }),
    ...(fix === null ? {} : { fix }),
    ...(problem.severity === 'warning' ? { severity: 'warning' } : {}),
    set: set.id,
  };
}
