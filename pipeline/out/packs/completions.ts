import type { PacksProduct } from '../../../schema/index.js';
import { curveOf } from './curves.js';
import { completing, type Completion, type ProductReport } from '../../packs/index.js';

/** Collectors who trade with each other. */
export const TRADERS = 4;

/** How each set of a product is completed: alone, and by a few who trade. */
export function completions(product: ProductReport): PacksProduct['completion'] {
  const traded = product.collation === 'random' ? completing(product, TRADERS) : [];
  return completing(product).map((alone, at) => ({
    ...completionOf(alone, traded[at], product.packs),
    curve: [...curveOf(product, alone)],
  }));
}

function completionOf(
  alone: Completion,
  traded: Completion | undefined,
  packs: number,
): Omit<PacksProduct['completion'][number], 'curve'> {
  const about = { of: alone.kind, title: alone.title, cards: alone.cards };
  const none = { expected: null, half: null, ninety: null, ninetyNine: null, traded: null };
  switch (alone.model) {
    case 'sequenced': {
      const { different, doubles, sets, boxesForSet } = alone.box;
      const box = { different, doubles, sets, boxesForSet };
      return { ...about, ...none, model: 'sequenced', box };
    }
    case 'packs':
    case 'draws':
    case 'trading':
      return {
        ...about,
        model: alone.model === 'packs' ? 'packs' : 'draws',
        expected: tenths(alone.expected),
        half: alone.points?.half ?? null,
        ninety: alone.points?.ninety ?? null,
        ninetyNine: alone.points?.ninetyNine ?? null,
        traded:
          traded?.model === 'trading' && traded.expected * TRADERS <= packs
            ? tenths(traded.expected)
            : null,
        box: null,
      };
  }
}

/** What is worked out by sums of many small numbers, to a tenth of a pack. */
function tenths(packs: number): number {
  return Math.round(packs * 10) / 10;
}
