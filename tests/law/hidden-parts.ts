import type { Content, Parallel, Product } from '../../schema/index.js';
import { hidden, one, type HiddenEdit } from './edit.js';
import { oddsStanding, standing, type Eye } from './held.js';
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

interface FoundContent {
  readonly product: Product;
  readonly content: Content;
}

/** What is packed in what is sold. */
function packed(draft: Plain, eye: Eye, isTold: boolean): FoundContent[] {
  return draft.sets.flatMap((set) =>
    (set.plan.products ?? []).flatMap((product) => {
      const isSold = standing(draft, eye, set.plan, product) === 'open';
      return (product.contents ?? [])
        .filter(({ of }) => (isSold && oddsStanding(draft, eye, set, of) === 'open') === isTold)
        .map((content) => ({ product, content }));
    }),
  );
}

/** Lines of which nothing is told: their odds are wanted by whoever guesses at what is held. */
const PACKED: readonly HiddenEdit[] = [
  hidden('the odds of what is not told', (draft, eye, dice) =>
    one(dice, packed(draft, eye, false), ({ content }) => {
      content.odds = 1 + dice.below(999);
      return true;
    }),
  ),
  hidden('a line of what is packed and not told, less', (draft, eye, dice) =>
    one(dice, packed(draft, eye, false), ({ product, content }) => {
      product.contents = (product.contents ?? []).filter((other) => other !== content);
      return true;
    }),
  ),
  hidden('a line of what is packed and not told, more', (draft, eye, dice) =>
    one(dice, packed(draft, eye, false), ({ product, content }) => {
      const more = { of: content.of, odds: 1 + dice.below(99) };
      const all = [...(product.contents ?? [])];
      all.splice(dice.below(all.length + 1), 0, more);
      product.contents = all;
      return true;
    }),
  ),
  hidden('how much is packed of what is told', (draft, eye, dice) =>
    one(dice, packed(draft, eye, true), ({ product, content }) => {
      const amount = 1 + dice.below(999);
      const { of, odds } = content;
      const ways: readonly Content[] = [
        { of, copies: amount },
        { of, each: amount, even: 'box' },
        { of, perBox: amount },
        { of, perCase: amount },
        { of, all: 'run', even: 'case' },
        { of },
      ];
      const other = { ...dice.pick(ways), of, ...(odds === undefined ? {} : { odds }) };
      product.contents = (product.contents ?? []).map((line) => (line === content ? other : line));
      return true;
    }),
  ),
  hidden('how many are made', (draft, _eye, dice) =>
    one(dice, draft.sets, ({ plan }) => {
      const amount = 1 + dice.below(99);
      const sold = dice.pick(plan.products ?? []);
      const of = dice.pick(plan.subsets);
      const parallel = dice.pick(plan.parallels ?? []);
      dice.pick([
        () => sold && (sold.case = amount),
        () => sold && (sold.cases = dice.chance() ? 'unset' : amount),
        () => sold && (sold.collation = dice.pick(['random', 'sequenced'] as const) ?? 'random'),
        () => sold && (sold.guarantees = [{ of: ['crew'], atLeast: amount, per: 'box' }]),
        () => sold && (sold.decoys = { perBox: amount, places: 2 }),
        () => of && Object.assign(of, { copies: amount, places: 2, reserve: amount }),
        () => of && (of.sheet = { columns: 10, rows: amount }),
        () => parallel && Object.assign(parallel, { places: 2, reserve: amount }),
        () =>
          (plan.redemptions = [
            { found: 'crew', sends: ['charts/c0'], ships: 'unset', redeemBy: 'never' },
          ]),
      ])?.();
      return true;
    }),
  ),
];

/** Of the parallels and the products of a plan. */
export const PART_EDITS: readonly HiddenEdit[] = [...PARALLELS, ...PRODUCTS, ...PACKED];
