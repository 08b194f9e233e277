import fc from 'fast-check';
import { expect, test } from 'vitest';

import { sampleWith } from '../../pipeline/checks/index.js';
import { renumber, type Wish } from '../../pipeline/mend/index.js';
import { memoryFolder, readContent } from '../../pipeline/read/index.js';

type Files = ReadonlyMap<string, string>;

const CARDS = 7;
const WAYS: readonly ((number: string) => string)[] = [
  (number) => number,
  (number) => `"${number}"`,
  (number) => `'${number}'`,
];

/** A set of seven cards, numbered in some order, some pulled, one with a variation. */
const sets = fc
  .record({
    order: fc.shuffledSubarray([1, 2, 3, 4, 5, 6, 7], { minLength: CARDS }),
    ways: fc.array(fc.constantFrom(...WAYS), { minLength: CARDS, maxLength: CARDS }),
    pulled: fc.array(fc.boolean(), { minLength: CARDS, maxLength: CARDS }),
    coded: fc.boolean(),
    end: fc.constantFrom('\n', '\r\n'),
  })
  .map(({ order, ways, pulled, coded, end }): Files => {
    const prefix = coded ? 'QZ-' : 'X-';
    const card = (at: number, more: string): string => {
      const number = ways[at]?.(`${prefix}${String(order[at])}`) ?? '';
      const lines = `---\nname: Card ${String(at)}\nnumber: ${number} # ${prefix}1\nspoiler: open\n${more}---\nInk.\n`;
      return lines.replaceAll('\n', end);
    };
    const numbers = coded
      ? `{ codes: [${[1, 2, 3, 4, 5, 6, 7].map((number) => `QZ-${String(number)}`).join(', ')}] }`
      : '{ prefix: X-, from: 1, to: 7 }';
    return sampleWith({
      'one/plan.yaml': `id: one\ntitle: One\nspoiler: open\nstage: locked\nsubsets:\n  - { id: extra, title: Extra, group: inserts, numbers: ${numbers} }\n`,
      'one/cards/base/a1.md': null,
      'one/cards/base/a2.md': null,
      'one/cards/extra/b1.md': null,
      ...Object.fromEntries(
        order.map((_, at) => [
          `one/cards/extra/c${String(at)}.md`,
          card(at, pulled[at] === true ? 'issued: "no"\n' : ''),
        ]),
      ),
      'one/cards/extra/c0b.md': card(0, 'variation: { of: extra/c0, letter: b, tell: Wet }\n'),
    });
  });

const id = fc.nat(CARDS - 1).map((at) => `c${String(at)}`);
const wishes: fc.Arbitrary<Wish> = fc.oneof(
  fc.record({
    kind: fc.constant('move' as const),
    card: id,
    to: fc.nat(CARDS - 1).map((at) => `X-${String(at + 1)}`),
  }),
  fc
    .tuple(id, id)
    .filter(([a, b]) => a !== b)
    .map((cards) => ({ kind: 'swap' as const, cards })),
  fc.constantFrom<Wish>({ kind: 'by', key: 'name' }, { kind: 'by', key: 'current' }),
  fc
    .shuffledSubarray([0, 1, 2, 3, 4, 5, 6], { minLength: CARDS })
    .map((all) => ({ kind: 'order' as const, lines: all.map((at) => `c${String(at)}`) })),
);

function ask(files: Files, wish: Wish) {
  const folder = memoryFolder(files);
  const order = { set: 'one', subset: 'extra', now: 0, closeGaps: false, mayWrite: () => true };
  return renumber({ ...order, folder, wish });
}

function laid(files: Files, changes: ReadonlyMap<string, { readonly after: Uint8Array }>): Files {
  const after = [...changes].map(
    ([path, { after: bytes }]) => [path, new TextDecoder().decode(bytes)] as const,
  );
  return new Map([...files, ...after]);
}

/** Numbers of the cards of a content, by identity. */
function numbersOf(files: Files): ReadonlyMap<string, string> {
  const [set] = readContent(memoryFolder(files)).sets;
  return new Map((set?.cards ?? []).map(({ id: card, front }) => [card, front.number]));
}

test('numbers are moved: the same ones, each once; no other byte changes; and back again', () => {
  let moved = 0;
  fc.assert(
    fc.property(sets, wishes, (files, wish) => {
      const there = ask(files, wish);
      if (!there.ok) {
        // A range number of a coded set, or the place of a pulled card.
        expect(there.why.length).toBeGreaterThan(0);
        return;
      }
      const after = laid(files, there.files);
      const [was, now] = [numbersOf(files), numbersOf(after)];
      expect([...now.keys()]).toEqual([...was.keys()]);
      const borne = (all: ReadonlyMap<string, string>): readonly string[] =>
        [...all].flatMap(([card, number]) => (card === 'c0b' ? [] : [number])).sort();
      expect(borne(now)).toEqual(borne(was));
      expect(now.get('c0b')).toBe(now.get('c0'));
      const bare = (all: Files): readonly (readonly [string, string])[] =>
        [...all].map(([path, text]) => [path, text.replace(/^number: ["']?[A-Z]+-\d["']?/m, '')]);
      expect(bare(after)).toEqual(bare(files));
      moved += there.moved.length;
      const old = [...was]
        .filter(([card]) => card !== 'c0b')
        .sort(([, a], [, b]) => (a < b ? -1 : 1));
      const back = ask(after, { kind: 'order', lines: old.map(([card]) => card) });
      if (!back.ok) throw new Error(back.why.join('; '));
      expect(laid(after, back.files)).toEqual(files);
    }),
    { numRuns: 60 },
  );
  expect(moved).toBeGreaterThan(60);
});
