import { expectedPacks, packsForChances, workOut } from '../../pipeline/packs/index.js';
import { FIGURES, highWater } from '../packs/high-water.js';
import { inTurn } from './measure.js';

/** What was measured, each beside the same plain sums in the same run. */
export interface PackTimes {
  /** The expected packs for 682 cards in fives, and its points of 50, 90 and 99 %. */
  readonly completing: { readonly job: number; readonly floor: number };
  /** The whole report of a product of 20,000 cases. */
  readonly report: { readonly job: number; readonly floor: number };
}

/** Ten million sums of fractions: what any machine can be measured by. */
function plainSums(): number {
  let sum = 0;
  for (let at = 1; at <= 10_000_000; at += 1) sum += 1 / at;
  return sum;
}

export async function benchPacks(): Promise<PackTimes> {
  const fives = { cards: 682, inPack: 5 };
  const completing = await inTurn(
    10,
    () => [expectedPacks(fives), packsForChances(fives, [0.5, 0.9, 0.99])],
    plainSums,
  );
  const plan = highWater({ ...FIGURES, hobbyCases: 20_000 });
  const report = await inTurn(10, () => workOut(plan), plainSums);
  return { completing, report };
}
