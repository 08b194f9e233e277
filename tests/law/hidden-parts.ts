import type { Parallel, Product } from '../../schema/index.js';
import { hidden, one, type HiddenEdit } from './edit.js';
import { standing, type Eye } from './held.js';
import { closedIds } from './hidden-cards.js';
import { listed } from './hidden-sets.js';
import type { Plain, PlainSet } from './plain.js';

interface FoundParallel {
  readonly set: PlainSet;
  readonly parallel: Parallel;
  readonly open: boolean;
}

function parallels(draft: Plain, eye: Eye): FoundParallel[] {
  return draft.sets.flatMap((set) =>
    (set.plan.parallels ?? []).map((parallel) => ({
      set,
      parallel,
      open: standing(draft, eye, set.plan, parallel) === 'open',
    })),
  );
}

interface FoundProduct {
  readonly set: PlainSet;
  readonly product: Product;
}

function heldProducts(draft: Plain, eye: Eye): FoundProduct[] {
  return draft.sets.flatMap((set) =>
    (set.plan.products ?? [])
      .filter((product) => standing(draft, eye, set.plan, product) !== 'open')
      .map((product) => ({ set, product })),
  );
}

/** What one more states to be held by a level or an embargo. */
function heldBy(id: string): { spoiler: string } | { embargo: string[] } {
  return ['shops', 'spring', 'finale'].includes(id) ? { spoiler: id } : { embargo: [id] };
}

const PARALLELS: readonly HiddenEdit[] = [
  hidden('a held parallel, edited', (draft, eye, dice) => {
    const held = parallels(draft, eye).filter(({ open }) => !open);
    return one(dice, held, ({ parallel }) => {
      Object.assign(parallel, { id: `p-${dice.below(999)}`, title: dice.words() });
      Object.assign(parallel, { run: 1 + dice.below(99), tell: dice.words(), of: ['crew'] });
      return true;
    });
  }),
  hidden('a held parallel less', (draft, eye, dice) => {
    const held = parallels(draft, eye).filter(({ open }) => !open);
    return one(dice, held, ({ set, parallel }) => {
      set.plan.parallels = (set.plan.parallels ?? []).filter((other) => other !== parallel);
      return true;
    });
  }),
  hidden('a held parallel more', (draft, eye, dice) => {
    const closed = dice.pick(closedIds(draft, eye));
    if (closed === undefined) return false;
    return one(dice, listed(draft, eye), (set) => {
      const more = {
        id: `p-${dice.below(999)}`,
        title: dice.words(),
        of: ['crew'],
        ...heldBy(closed),
      };
      const all = [...(set.plan.parallels ?? [])];
      all.splice(dice.below(all.length + 1), 0, more);
      set.plan.parallels = all;
      return true;
    });
  }),
  hidden('plan keys of a parallel', (draft, eye, dice) =>
    one(dice, parallels(draft, eye), ({ parallel }) => {
      if (dice.chance()) parallel.copies = 1 + dice.below(9999);
      else parallel.found = dice.pick(['retail', 'hobby', 'pack'] as const) ?? 'pack';
      return true;
    }),
  ),
];

const PRODUCTS: readonly HiddenEdit[] = [
  hidden('a held product, edited', (draft, eye, dice) =>
    one(dice, heldProducts(draft, eye), ({ product }) => {
      Object.assign(product, { id: `q-${dice.below(999)}`, title: dice.words() });
      if (dice.chance())
        Object.assign(product, { pack: 1 + dice.below(9), box: 1 + dice.below(9) });
      else Object.assign(product, { pack: undefined, box: undefined });
      return true;
    }),
  ),
  hidden('a held product less', (draft, eye, dice) =>
    one(dice, heldProducts(draft, eye), ({ set, product }) => {
      set.plan.products = (set.plan.products ?? []).filter((other) => other !== product);
      return true;
    }),
  ),
  hidden('a held product more', (draft, eye, dice) => {
    const closed = dice.pick(closedIds(draft, eye));
    if (closed === undefined) return false;
    return one(dice, listed(draft, eye), (set) => {
      const more = {
        id: `q-${dice.below(999)}`,
        title: dice.words(),
        pack: 1 + dice.below(9),
        ...heldBy(closed),
      };
      const all = [...(set.plan.products ?? [])];
      all.splice(dice.below(all.length + 1), 0, more);
      set.plan.products = all;
      return true;
    });
  }),
];

/** Of the parallels and the products of a plan. */
export const PART_EDITS: readonly HiddenEdit[] = [...PARALLELS, ...PRODUCTS];
