import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { SMALL_LAYOUT } from '../../pipeline/checks/fit-sample.js';
import { sampleWith, type Files } from '../../pipeline/checks/index.js';
import { spliceFinding } from './mended.js';
import { lookAt, said } from './look.js';

const RULE = ['printed-list'];
const CARD = 'one/cards/extra/b1.md';

interface Sample {
  /** Subsets of the plan besides the two of the sample, as YAML. */
  readonly subsets?: readonly string[];
  readonly base?: string;
  readonly list?: string | null;
  readonly cards?: Files;
  readonly height?: number;
}

/** The sample whose chart has a zone for the list. */
function sample({ subsets = [], base = '', list = null, cards = {}, height = 40 }: Sample): Files {
  const plan = sampleWith({}).get('one/plan.yaml') ?? '';
  const card = sampleWith({}).get(CARD) ?? '';
  const more = subsets.map((subset) => `  - { ${subset} }\n`).join('');
  return {
    'backs/small.yaml': `${SMALL_LAYOUT}  list: { x: 5, y: 20, width: 50, height: ${String(height)}, font: body, size: 6, leading: 8 }\n`,
    'one/plan.yaml': plan
      .replace('group: base,', `group: base,${base}`)
      .replace('group: inserts,', 'group: inserts, back: small,')
      .replace('totals:', () => `${more}totals:`),
    [CARD]: card.replace(
      'spoiler: open\n',
      () => `spoiler: open\n${list === null ? '' : `texts:\n  list: ${list}\n`}`,
    ),
    ...cards,
  };
}

function card(number: string, more = 'spoiler: open'): string {
  return `---\nnumber: "${number}"\nname: Card\n${more}\n---\nWater, and a bell.\n`;
}

/** The list that the rule writes, line by line. */
function written(of: Sample): readonly string[] {
  const { text, list } = spliceFinding(sample(of), RULE, CARD);
  expect(said(lookAt({ ...sample(of), [CARD]: text }, RULE).findings)).toEqual([]);
  return list;
}

describe('what the list says', () => {
  test('numbers, codes by their count, a roster by its title, what was pulled', () => {
    const subsets = [
      'id: codes, title: Signed Cards, group: autographs, numbers: { codes: [S-1, S-X] }',
      'id: drawn, title: Drawn Cards, group: sketches, numbers: none, roster: rosters/a.yaml',
      'id: wood, title: Wood, group: relics, numbers: { prefix: W-, from: 1, to: 3 }',
    ];
    const cards = {
      'one/cards/codes/s1.md': card('S-1'),
      'one/cards/codes/s2.md': card('S-X', 'spoiler: open\nembargo: [guest]'),
      'one/rosters/a.yaml': 'artists: [{ name: Tove Lindqvist, state: signed }]\n',
      'one/cards/wood/w1.md': card('W-1'),
      'one/cards/wood/w2.md': card('W-2', 'spoiler: open\nissued: "no"'),
      'one/cards/wood/w3.md': card('W-3', 'spoiler: later\nissued: "no"'),
    };
    expect(written({ subsets, cards })).toEqual([
      'Base: 1, 2',
      'Extra: X-1',
      'Signed Cards: 2 cards',
      'Drawn Cards',
      // That W-3 was pulled is held with it.
      'Wood: W-1, W-3 (W-2 not issued)',
    ]);
  });

  test('runs, where the zone does not hold each number', () => {
    const many = Array.from({ length: 40 }, (_, at) => String(at + 1));
    const subsets = [
      'id: many, title: Many, group: more, numbers: { prefix: M-, from: 1, to: 40 }',
    ];
    const cards = Object.fromEntries(
      many.map((number) => [`one/cards/many/m${number}.md`, card(`M-${number}`)]),
    );
    const each = `Many: ${many.map((number) => `M-${number}`).join(', ')}`;
    expect(written({ subsets, cards }).at(-1)).toBe(each);
    expect(written({ subsets, cards, height: 10 })).toEqual([
      'Base: 1, 2',
      'Extra: X-1',
      'Many: M-1 to M-40',
    ]);
    // Either form is right, wherever it stands.
    const runs = sample({ subsets, cards, list: '"Base: 1, 2\\nExtra: X-1\\nMany: M-1 to M-40"' });
    expect(said(lookAt(runs, RULE).findings)).toEqual([]);
  });

  test('what opens with the text, and no more', () => {
    const subsets = [
      'id: end, title: The End, group: more, spoiler: last, numbers: { codes: [E-1] }',
    ];
    const cards = { 'one/cards/end/e1.md': card('E-1', 'spoiler: last') };
    expect(written({ subsets, cards })).toEqual(['Base: 1, 2', 'Extra: X-1']);
    const held = sample({ subsets, cards });
    const later = { ...held, [CARD]: (held[CARD] ?? '').replace('spoiler: open', 'spoiler: last') };
    expect(spliceFinding(later, RULE, CARD).list.at(-1)).toBe('The End: 1 card');
  });
});

describe('where it stands in the file', () => {
  const right = ['Base: 1, 2', 'Extra: X-1'];
  test.each([
    ['double quotes', '"Base: 1"'],
    ['single quotes', "'Base: 1'"],
    ['no quotes', 'Base'],
    ['a block', '|-\n    Base: 1'],
    ['a block with its last line end', '|\n      Base: 1\n      Other: 2'],
    ['a folded block', '>\n    Base: 1'],
  ])('%s', (_, list) => {
    expect(written({ list })).toEqual(right);
  });

  test('a card with other texts and no list is told without a fix', () => {
    const bare = sample({});
    const files = {
      ...bare,
      [CARD]: (bare[CARD] ?? '').replace('spoiler: open', 'spoiler: open\ntexts: { bio: Ink }'),
    };
    const { findings } = lookAt(files, RULE);
    expect(findings.map(({ fix, found }) => [fix, found])).toEqual([
      [undefined, 'no `texts: { list: … }`'],
    ]);
  });

  test('a list may go on over several cards', () => {
    const second = [
      'id: more, title: More, group: more, back: small, numbers: { prefix: Y-, from: 1, to: 1 }',
    ];
    const over = (first: string, then: string): Files =>
      sample({
        subsets: second,
        list: JSON.stringify(first),
        cards: {
          'one/cards/more/y1.md': card(
            'Y-1',
            `spoiler: open\ntexts: { list: ${JSON.stringify(then)} }`,
          ),
        },
      });
    const found = (first: string, then: string): unknown[] =>
      lookAt(over(first, then), RULE).findings.map((each) => [
        each.card,
        each.found,
        each.expected,
      ]);
    expect(found('Base: 1, 2\nExtra: X-1', 'More: Y-1')).toEqual([]);
    expect(found('Base: 1, 2', 'Extra: X-1\nMore: Y-1')).toEqual([]);
    expect(found('Base: 1, 2\nExtra: X-1', 'More: Y-1, Y-2')).toEqual([
      ['more/y1', 'More: Y-1, Y-2', 'More: Y-1'],
    ]);
  });
});

describe('what is wrong', () => {
  test.each([
    ['a line too many', 'Base: 1, 2\\nExtra: X-1\\nThe End: E-1', 'The End: E-1', 'no such line'],
    ['another order', 'Extra: X-1\\nBase: 1, 2', 'Extra: X-1', 'Base: 1, 2'],
    ['a line twice', 'Base: 1, 2\\nBase: 1, 2\\nExtra: X-1', 'Base: 1, 2', 'Extra: X-1'],
    ['a title of another case', 'base: 1, 2\\nExtra: X-1', 'no line for `base`', 'Base: 1, 2'],
  ])('%s', (_, list, found, expected) => {
    const { findings } = lookAt(sample({ list: `"${list}"` }), RULE);
    expect(findings.map((each) => [each.found, each.expected])).toEqual([[found, expected]]);
    expect(written({ list: `"${list}"` })).toEqual(['Base: 1, 2', 'Extra: X-1']);
  });

  test('nothing, where spaces and empty lines differ', () => {
    expect(lookAt(sample({ list: '"Base:  1, 2\\n\\n Extra: X-1 "' }), RULE).findings).toEqual([]);
  });
});

describe('properties', () => {
  const count = fc.integer({ min: 1, max: 6 });

  test('a card more in the plan changes the list by its number', () => {
    fc.assert(
      fc.property(count, (to) => {
        const of = (last: number): Sample => ({
          subsets: [
            `id: more, title: More, group: more, numbers: { prefix: Y-, from: 1, to: ${String(last)} }`,
          ],
          cards: Object.fromEntries(
            Array.from({ length: last }, (_, at) => [
              `one/cards/more/y${String(at + 1)}.md`,
              card(`Y-${String(at + 1)}`),
            ]),
          ),
        });
        const [before, after] = [written(of(to)), written(of(to + 1))];
        expect(after).toEqual([
          ...before.slice(0, -1),
          `${before.at(-1) ?? ''}, Y-${String(to + 1)}`,
        ]);
      }),
      { numRuns: 6, seed: 84 },
    );
  });

  test('what leaves no trace changes nothing, whatever it is', () => {
    const plain = written({});
    fc.assert(
      fc.property(
        count,
        fc.constantFrom('spoiler: last', 'spoiler: last\nissued: "no"', 'spoiler: last\nrun: 5'),
        fc.constantFrom('', ' spoiler: last,'),
        fc.boolean(),
        (last, front, hold, coded) => {
          const numbers = Array.from({ length: last }, (_, at) => `Z-${String(at + 1)}`);
          const stated = coded
            ? `{ codes: [${numbers.join(', ')}] }`
            : `{ prefix: Z-, from: 1, to: ${String(last)} }`;
          const hidden = written({
            subsets: [`id: end, title: The End, group: more,${hold} numbers: ${stated}`],
            cards: Object.fromEntries(
              numbers.map((number, at) => [`one/cards/end/e${String(at)}.md`, card(number, front)]),
            ),
          });
          expect(hidden).toEqual(plain);
        },
      ),
      { numRuns: 20, seed: 84 },
    );
  });

  test('the last numbers of a range that leave no trace are not in it', () => {
    const cards = { 'one/cards/base/a2.md': card('2', 'spoiler: last\nstory: 1/4') };
    expect(written({ cards })).toEqual(['Base: 1', 'Extra: X-1']);
  });
});
