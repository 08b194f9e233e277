import { describe, expect, test } from 'vitest';

import {
  whatPublicTells,
  workOut,
  type Entry,
  type PublishedOdds,
  type ReleasePlan,
} from '../../pipeline/packs/index.js';
import { highWater } from './high-water.js';
import { cardsOf, HOBBY, KINDS, RETAIL } from './small.js';

const RANGE = { from: 1, to: 100_000 };

/** What is told of each product, at each step: from, to, and how many. */
function told(plan: ReleasePlan, said: readonly PublishedOdds[] = []) {
  const tells = whatPublicTells(plan, workOut(plan), said, RANGE);
  return Object.fromEntries(
    [...tells].map(([product, steps]) => [
      product,
      steps.map(({ step, possible: { from, to, count } }) => [step, from, to, count]),
    ]),
  );
}

describe('what the public can tell of High Water', () => {
  const plan = highWater();

  test('the coarser the odds of its numbered cards, the more is possible', () => {
    const { hobby, retail } = told(plan);
    expect(hobby).toEqual([
      // Nothing is stated here.
      ['stated', 1, 100_000, 100_000],
      // 84 Keel at 1:686 are at most 57,624 packs, and above 57,540; a case has 288.
      ['whole', 200, 200, 1],
      ['fine', 197, 210, 14],
      ['round', 197, 210, 14],
      // Brass-Nailed at 1:100 are above 50,400 packs, plates at 1:200 at most 67,200.
      ['coarse', 176, 233, 58],
    ]);
    expect(retail).toEqual(
      ['stated', 'whole', 'fine', 'round', 'coarse'].map((step) => [step, 1, 100_000, 100_000]),
    );
  });

  test('the odds of each kind whose run is public are named', () => {
    const [stated, whole] = whatPublicTells(plan, workOut(plan), [], RANGE).get('hobby') ?? [];
    expect(stated?.published).toEqual([]);
    expect(whole?.published).toEqual([
      { kind: 'varnished', oneIn: 9 },
      { kind: 'brass-nailed', oneIn: 58 },
      { kind: 'keel', oneIn: 686 },
      { kind: 'plates', oneIn: 172 },
    ]);
  });

  test('as the plan states them: each N is of the coarsest step that has it', () => {
    const stated = (kind: string, packs: number) =>
      told(plan, [{ product: 'hobby', kind, packs }]).hobby?.[0];
    // On no list but that of whole numbers: above 685.
    expect(stated('keel', 686)).toEqual(['stated', 200, 200, 1]);
    // On that of the finest: above 640, 84 copies, 288 packs a case.
    expect(stated('keel', 720)).toEqual(['stated', 187, 210, 24]);
    // On the coarsest: above 500.
    expect(stated('keel', 1000)).toEqual(['stated', 146, 291, 146]);
    expect(stated('charts', 4)).toEqual(['stated', 1, 100_000, 100_000]);
  });

  test('a run that is not what is packed is taken for unknown', () => {
    const packed: Readonly<Record<string, number>> = { varnished: 7056, keel: 84 };
    const entries = plan.entries.flatMap((entry): readonly Entry[] => {
      const copies = packed[entry.kind];
      return copies === undefined ? [] : [{ ...entry, amount: { by: 'copies', copies } }];
    });
    const withRun = (run: number, reserve = 0) => ({
      ...plan,
      entries,
      kinds: plan.kinds.map((kind) => (kind.id === 'keel' ? { ...kind, run, reserve } : kind)),
    });
    expect(told(withRun(1)).hobby?.[1]).toEqual(['whole', 200, 200, 1]);
    expect(told(withRun(2, 1)).hobby?.[1]).toEqual(['whole', 200, 200, 1]);
    // Varnished alone leave 196 to 220; Keel of any number are in 1:686 of 200, 205 and 219 of these.
    expect(told(withRun(2)).hobby?.[1]).toEqual(['whole', 200, 219, 3]);
  });
});

describe('runs that are split between two products', () => {
  const split = splitPlan();
  const only = (kind: string): ReleasePlan => ({
    ...split,
    entries: split.entries.filter((entry) => entry.kind === kind),
  });

  test('one kind tells a little of both, and two tell much', () => {
    expect(workOut(split).problems.filter(({ kind }) => kind.startsWith('run'))).toEqual([]);
    // 180 copies of 1:20 at most are 3,600 packs, one of them less for retail: 89 cases of 40.
    expect(told(only('varnished')).hobby?.[1]).toEqual(['whole', 1, 89, 89]);
    expect(told(split)).toEqual({
      hobby: [
        ['stated', 1, 100_000, 100_000],
        ['whole', 57, 63, 5],
        ['fine', 34, 67, 34],
        ['round', 34, 73, 40],
        ['coarse', 12, 88, 77],
      ],
      retail: [
        ['stated', 1, 100_000, 100_000],
        ['whole', 24, 33, 4],
        ['fine', 15, 56, 42],
        ['round', 3, 56, 53],
        ['coarse', 2, 97, 96],
      ],
    });
  });

  test('less where the odds of one product are not stated', () => {
    const odds = (product: string, kind: string, packs: number) => ({ product, kind, packs });
    const hobby = [odds('hobby', 'varnished', 20), odds('hobby', 'gold', 30)];
    const both = [...hobby, odds('retail', 'varnished', 40), odds('retail', 'gold', 120)];
    expect(told(split, both).hobby?.[0]).toEqual(['stated', 34, 73, 40]);
    expect(told(split, hobby).hobby?.[0]).toEqual(['stated', 2, 75, 74]);
    expect(told(split, hobby).retail?.[0]).toEqual(['stated', 1, 100_000, 100_000]);
  });

  test('and where the cases of one are unset', () => {
    const [hobby = HOBBY, retail = RETAIL] = split.products;
    const unset: ReleasePlan = { ...split, products: [hobby, { ...retail, cases: 'unset' }] };
    expect(told(unset)).toEqual({
      hobby: [
        ['stated', 1, 100_000, 100_000],
        // At most 100 copies at 1:30, and at least one.
        ['whole', 3, 75, 68],
        ['fine', 2, 75, 74],
        ['round', 2, 75, 74],
        ['coarse', 1, 90, 90],
      ],
    });
  });
});

/** 60 cases of 40 packs and 30 of 80, with 120 and 60 copies of one run in them, 80 and 20 of another. */
function splitPlan(): ReleasePlan {
  const numbered = (id: string, run: number) => ({
    ...KINDS.varnished,
    id,
    title: id,
    run,
    cards: cardsOf(`${id} `, 20),
  });
  const enter = (product: string, kind: string, copies: number): Entry => ({
    product,
    kind,
    amount: { by: 'copies', copies },
  });
  return {
    products: [
      { ...HOBBY, cases: 60 },
      { ...RETAIL, packsABox: 20, cases: 30 },
    ],
    kinds: [KINDS.base, numbered('varnished', 9), numbered('gold', 5)],
    entries: [
      enter('hobby', 'varnished', 120),
      enter('retail', 'varnished', 60),
      enter('hobby', 'gold', 80),
      enter('retail', 'gold', 20),
    ],
  };
}
