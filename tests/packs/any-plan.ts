import type { Entry, Kind, ReleasePlan } from '../../pipeline/packs/index.js';
import { cardsOf, KINDS, HOBBY } from './small.js';

/**
 * A product with ten lines whose figures come by chance, which fits: a few thick cards, some lines for
 * each box or case, and the rest by odds or in copies; none so many that a pack must hold two alike.
 */
export function anyPlan(random: () => number): ReleasePlan {
  const between = (from: number, to: number): number =>
    from + Math.floor(random() * (to - from + 1));
  const packsABox = between(4, 12);
  const cardsAPack = between(5, 9);
  const packs = packsABox * 2 * 4;
  const share = (of: number): number => Math.max(1, Math.floor((packs * random()) / of));
  const kind = (id: string, more: Partial<Kind> = {}): Kind => ({
    id,
    title: id,
    what: 'subset',
    cards: cardsOf(`${id}-`, between(1, 12)),
    ...more,
  });
  const entry = (id: string, amount: Entry['amount'], even?: 'box'): Entry => ({
    product: 'hobby',
    kind: id,
    amount,
    ...(even === undefined ? {} : { even }),
  });
  const copies = (id: string, of: number): Entry => entry(id, { by: 'copies', copies: share(of) });
  return {
    products: [{ ...HOBBY, cardsAPack, packsABox, boxesACase: 2, cases: 4 }],
    kinds: [
      { ...KINDS.base, cards: cardsOf('', between(12, 60)) },
      kind('thick', { places: between(2, 4) }),
      kind('box'),
      kind('case'),
      ...['a', 'b', 'c', 'd', 'e'].map((id) => kind(id)),
      kind('blank', { what: 'decoy', cards: [], places: 2 }),
    ],
    entries: [
      entry('box', { by: 'box', copies: 1 }),
      copies('thick', 6),
      entry('case', { by: 'case', copies: between(1, 3) }),
      entry('a', { by: 'odds', packs: [2, 4, 8][between(0, 2)] ?? 8 }),
      copies('b', 1.3),
      copies('c', 2),
      copies('d', 3),
      copies('e', 8),
      copies('blank', 12),
    ],
  };
}
