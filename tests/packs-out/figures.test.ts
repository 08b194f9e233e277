import { describe, expect, it } from 'vitest';

import { packsPicture, packsSet } from '../../pipeline/out/packs/index.js';
import { decimal, hundredth, mixed, tenth } from '../../pipeline/out/packs/say.js';
import { workOut, type ReleasePlan } from '../../pipeline/packs/index.js';
import { highWater } from '../packs/high-water.js';
import { smallPlan } from '../packs/small.js';

function figuresOf(plan: ReleasePlan) {
  return packsSet({
    id: 'set',
    title: 'A set',
    plan,
    report: workOut(plan),
    said: [],
    findings: [],
  });
}

describe('figures as they are read', () => {
  it.each([
    ['4000', '4,000', '4000'],
    ['4/5', '4/5', '0.8'],
    ['-3/2', '-1 1/2', '-1.5'],
    ['4/3', '1 1/3', '1.3333'],
  ])('%s', (exact, said, cell) => {
    expect([mixed(exact), decimal(exact)]).toEqual([said, cell]);
  });

  it('are rounded where they are averages', () => {
    expect([tenth(8.16), tenth(24), hundredth(8.163), hundredth(1234.5), tenth(0.04)]).toEqual([
      '8.2',
      '24',
      '8.16',
      '1,234.5',
      '0',
    ]);
  });
});

describe('how sets are completed', () => {
  const figures = figuresOf(highWater());

  it('is a curve through the points that are told', () => {
    const curves = figures.products.flatMap(({ completion }) =>
      completion.filter(({ curve }) => curve.length > 0),
    );
    expect(curves.length).toBe(16);
    for (const { curve, half, ninety, ninetyNine } of curves) {
      expect([curve[9], curve[17], curve[19]]).toEqual([half, ninety, ninetyNine]);
      expect(curve).toEqual(curve.toSorted((a, b) => a - b));
    }
  });

  it('is told by packs, and by chance alone where some are rarer', () => {
    const [hobby] = figures.products;
    expect(hobby?.completion.map(({ model }) => model)).toEqual(
      hobby?.completion.map(() => 'packs'),
    );
    const plan = smallPlan();
    const rare = {
      ...plan,
      kinds: plan.kinds.map((kind) =>
        kind.id === 'base'
          ? {
              ...kind,
              cards: kind.cards.map((card, at) => (at === 0 ? { ...card, copies: 5 } : card)),
            }
          : kind,
      ),
    };
    const models = figuresOf(rare).products[0]?.completion.map(({ title, model }) => [
      title,
      model,
    ]);
    expect(models).toContainEqual(['Base cards', 'draws']);
  });

  it('promises a box where cards run in their order', () => {
    const plan = smallPlan();
    const ordered = figuresOf({
      ...plan,
      products: plan.products.map((product) => ({ ...product, collation: 'sequenced' })),
    });
    const base = ordered.products[0]?.completion.at(-1);
    expect(base).toMatchObject({ title: 'Base cards', model: 'sequenced', curve: [] });
    expect(base?.box?.different).toBe(10);
  });

  it('has no figure where more packs are expected than are made', () => {
    const keel = figures.products[0]?.completion.find(({ of }) => of === 'keel');
    expect(keel).toMatchObject({ half: null, traded: null, curve: [] });
  });
});

describe('the picture', () => {
  const picture = packsPicture(figuresOf(highWater()), 'INTERNAL');

  it('has a bar for each kind of copies, from most to fewest', () => {
    const bars = [...picture.matchAll(/<rect x="300" y="([\d.]+)" width="([\d.]+)" height="14"/g)];
    const made = bars.slice(0, 18).map(([, , wide]) => Number(wide));
    expect(made.length).toBe(18);
    expect(made).toEqual(made.toSorted((a, b) => b - a));
    expect(made.at(-1)).toBeGreaterThan(0);
  });

  it('stays inside its edges', () => {
    const [, high = 0] = /viewBox="0 0 960 ([\d.]+)"/.exec(picture)?.map(Number) ?? [];
    const tops = [...picture.matchAll(/translate\(0 ([\d.]+)\)/g)].map(([, top]) => Number(top));
    expect(tops.length).toBe(5);
    expect(Math.max(...tops)).toBeLessThan(high);
    expect(picture).not.toMatch(/NaN|Infinity/);
  });

  it('is the same for the same figures', () => {
    expect(packsPicture(figuresOf(highWater()), 'INTERNAL')).toBe(picture);
  });
});
