import { houseText, packsPicture, packsSet } from '../../pipeline/out/packs/index.js';
import { expectedPacks, packsForChances, workOut } from '../../pipeline/packs/index.js';
import { FIGURES, highWater } from '../packs/high-water.js';
import { inTurn } from './measure.js';

/** What was measured, each beside the same plain sums in the same run. */
export interface PackTimes {
  /** The expected packs for 682 cards in fives, and its points of 50, 90 and 99 %. */
  readonly completing: { readonly job: number; readonly floor: number };
  /** All that `packs` tells of a product of 20,000 cases: figures, completing, what odds tell, picture. */
  readonly report: { readonly job: number; readonly floor: number };
}

/** Odds as a plan says them, so that what they tell of the cases is worked out too. */
const SAID = [
  { product: 'hobby', kind: 'charts', packs: 400 },
  { product: 'hobby', kind: 'keel', packs: 72_000 },
  { product: 'retail', kind: 'charts', packs: 8 },
];

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
  const report = await inTurn(
    10,
    () => {
      const set = packsSet({
        id: 'high-water',
        title: 'High Water',
        plan,
        report: workOut(plan),
        said: SAID,
        findings: [],
      });
      return [houseText({ internal: 'INTERNAL', sets: [set] }), packsPicture(set, 'INTERNAL')];
    },
    plainSums,
  );
  return { completing, report };
}
