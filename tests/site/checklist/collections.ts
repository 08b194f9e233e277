import { fc } from '@fast-check/vitest';
import type { Collection, ListCard, ListSubset } from '../../../site/scripts/collection.js';
import { type Ticks, withChanges, NO_TICKS } from '../../../site/scripts/ticks.js';

/** Sets as they come and as they should not: codes, hyphens, the same numbers in two subsets. */

const word = fc.constantFrom(
  'High Water',
  'Tarred',
  'Lake Charts',
  'Charts: the first, the last',
  'A; B',
  'want: 3',
  'nothing',
  '1-3',
  '3',
  'High Water, want',
  '  wide   words ',
  ';:,',
);

const prefix = fc.constantFrom('', '', 'LC-', 'SG-', 'NS-1-', 'A', '1-', 'x', '0');
const code = fc.constantFrom(
  '1',
  '17b',
  'A',
  'A-1',
  '1-2',
  '1-3',
  '2',
  '3 x2',
  'nothing',
  'O',
  '0',
);

const numbers = fc.oneof(
  fc
    .tuple(prefix, fc.integer({ min: 0, max: 12 }), fc.integer({ min: 0, max: 9 }))
    .map(([start, from, more]) =>
      Array.from({ length: more }, (_, at) => `${start}${String(from + at)}`),
    ),
  fc.array(fc.oneof(code, fc.string({ minLength: 1, maxLength: 5 })), { maxLength: 6 }),
);

const cardsOf = (id: number) => (all: readonly string[]) =>
  fc
    .array(fc.tuple(fc.integer({ min: 0, max: 9 }), fc.constantFrom('', 'b', 'c')), {
      minLength: all.length,
      maxLength: all.length,
    })
    .map((kinds) => {
      const cards = new Map<string, ListCard>();
      for (const [at, number] of all.entries()) {
        const [kind, letter] = kinds[at] ?? [0, ''];
        const can = kind > 0;
        for (const each of kind > 7 ? ['', letter] : ['']) {
          const key = `${String(id)}/${number}${each}`;
          if (!cards.has(key)) cards.set(key, { key, number, letter: each, can });
        }
        if (kind === 9) {
          const key = `${String(id)}/:${String(at)}`;
          cards.set(key, { key, number: null, letter: '', can: true });
        }
      }
      return [...cards.values()];
    });

const subset = (id: number): fc.Arbitrary<ListSubset> =>
  fc.record({
    title: word,
    base: fc.boolean(),
    of: fc.subarray(['p0', 'p1', 'p2']).map((ids) => new Set(ids)),
    cards: numbers.chain(cardsOf(id)),
  });

export const collection: fc.Arbitrary<Collection> = fc.record({
  head: fc.oneof(word, fc.string({ minLength: 1 })),
  parallels: fc
    .array(word, { maxLength: 3 })
    .map((titles) => titles.map((title, at) => ({ id: `p${String(at)}`, title }))),
  subsets: fc.tuple(subset(0), subset(1), subset(2), subset(3)).map((all) => [...all]),
});

/** Every printing of every card that somebody can have. */
export function printingsOf({
  parallels,
  subsets,
}: Collection): [printing: string, card: ListCard][] {
  return subsets.flatMap(({ of, cards }) =>
    cards
      .filter(({ can }) => can)
      .flatMap((card) =>
        ['', ...parallels.map(({ id }) => id).filter((id) => of.has(id))].map(
          (printing): [string, ListCard] => [printing, card],
        ),
      ),
  );
}

/** A collection, and what somebody has of it. */
export const collectionWithTicks: fc.Arbitrary<{ set: Collection; ticks: Ticks }> =
  collection.chain((set) => {
    const all = printingsOf(set);
    const counts = fc.array(fc.constantFrom(0, 0, 1, 1, 1, 2, 3, 12), {
      minLength: all.length,
      maxLength: all.length,
    });
    return counts.map((had) => ({
      set,
      ticks: withChanges(
        NO_TICKS,
        all.map(([printing, { key }], at) => ({ printing, key, from: 0, to: had[at] ?? 0 })),
      ),
    }));
  });
