import { compareNumbers, spotOf, type Card, type CardSet } from '../model/index.js';
import { nearest } from '../text/index.js';
import { foldNumbers } from './fold-numbers.js';
import { MOST_NUMBERS, isSoundRange } from './numbering.js';
import { ofCard, type Remark, type Rule } from './rule.js';
import { edited } from './sample.js';
import type { SubsetView } from './subject.js';
import { numbersKey, sayPlanned } from './planned.js';

/** A number that the plan does not give to the card's subset, and plans that cannot be kept. */
export const numberRange: Rule = {
  id: 'number-range',
  about: 'numbers',
  severity: 'error',
  why: 'A number outside the plan is missing from every list that the plan makes.',
  look: ({ sets, subsets }) => [
    ...subsets.flatMap(unsoundRange),
    ...sets.flatMap((set) => overlaps(set, subsets)),
    ...subsets.flatMap(numbersOutside),
  ],
  examples: {
    passes: [{ says: 'numbers that the plan gives out', files: {} }],
    fails: [
      {
        says: 'a number above the range',
        files: edited('one/cards/base/a2.md', ['"2"', '"22"']),
        gives: {
          at: 'one/cards/base/a2.md:2:9',
          covers: '"22"',
          message: 'the plan gives no number 22 to `base`',
          found: '22',
          expected: '1 to 2; no card has 2 yet',
          fix: '2',
        },
      },
      {
        says: 'a range that ends too early: told once',
        files: {
          ...edited(
            'one/plan.yaml',
            ['to: 2', 'to: 1'],
            ['base: 2', 'base: 3'],
            ['is: 3', 'is: 4'],
          ),
          'one/cards/base/a3.md':
            '---\nnumber: "3"\nname: The Sill\nspoiler: open\nstory: 1/5\n---\nA sill.\n',
        },
        gives: {
          at: 'one/plan.yaml:7:54',
          covers: 'from',
          message: 'the plan gives no numbers 2 and 3 to `base`',
          expected: '1',
          related: ['one/cards/base/a2.md:2:9 card 2', 'one/cards/base/a3.md:2:9 card 3'],
        },
      },
      {
        says: 'two subsets that share numbers',
        files: {
          ...edited('one/plan.yaml', ['prefix: X-, from: 1, to: 1', 'from: 2, to: 3']),
          ...edited('one/cards/extra/b1.md', ['X-1', '"3"']),
        },
        gives: {
          at: 'one/plan.yaml:8:59',
          covers: 'from',
          message: '`extra` is given the number 2, which `base` has',
          expected: 'each number in one subset',
        },
      },
      {
        says: 'a range that runs backwards',
        files: edited('one/plan.yaml', ['from: 1, to: 2', 'from: 2, to: 1']),
        gives: {
          at: 'one/plan.yaml:7:67',
          covers: '1',
          message: 'the range of `base` ends before it begins',
          found: '2 to 1',
          expected: 'the lower number first',
        },
      },
    ],
  },
};

function unsoundRange({ set, plan, at }: SubsetView): Remark[] {
  const { numbers } = plan;
  if (numbers === 'none' || 'codes' in numbers || isSoundRange(numbers)) return [];
  const backwards = numbers.to < numbers.from;
  return [
    {
      spot: spotOf(set.plan.source, ['subsets', at, 'numbers', 'to']),
      message: `the range of \`${plan.id}\` ${backwards ? 'ends before it begins' : 'is too long'}`,
      found: `${numbers.from} to ${numbers.to}`,
      expected: backwards ? 'the lower number first' : `at most ${MOST_NUMBERS} numbers`,
    },
  ];
}

/** Numbers that the plan gives to two subsets of one set. */
function overlaps(set: CardSet, subsets: readonly SubsetView[]): Remark[] {
  const owners = new Map<string, string>();
  return subsets.flatMap((view) => {
    if (view.set !== set) return [];
    const { plan, at, numbering } = view;
    const planned = numbering.planned ?? [];
    const shared = planned.filter((number) => owners.has(number));
    const owner = owners.get(shared[0] ?? '');
    for (const number of planned) if (!owners.has(number)) owners.set(number, plan.id);
    if (owner === undefined) return [];
    const words = shared.length > 1 ? 'numbers' : 'number';
    return [
      {
        spot: spotOf(set.plan.source, ['subsets', at, 'numbers', numbersKey(plan)], 'key'),
        message: `\`${plan.id}\` is given the ${words} ${foldNumbers(shared, planned)}, which \`${owner}\` has`,
        expected: 'each number in one subset',
      },
    ];
  });
}

/** One card is told where it stands; several are told once, in the plan, which may be what is wrong. */
function numbersOutside(view: SubsetView): Remark[] {
  const { set, plan, at, numbering } = view;
  const [card, second] = numbering.outside;
  if (!card) return [];
  if (!second) return [outsideOf(card, view)];
  const numbers = numbering.outside.map(({ front }) => front.number).sort(compareNumbers);
  return [
    {
      spot: spotOf(set.plan.source, ['subsets', at, 'numbers', numbersKey(plan)], 'key'),
      message: `the plan gives no numbers ${foldNumbers(numbers, numbers)} to \`${plan.id}\``,
      expected: sayPlanned(plan.numbers),
      related: numbering.outside.map(({ source, front }) => ({
        message: `card ${front.number}`,
        spot: spotOf(source, ['number']),
      })),
    },
  ];
}

function outsideOf(card: Card, { plan, numbering }: SubsetView): Remark {
  const { missing, planned } = numbering;
  const near = nearest(card.front.number, missing);
  const free = missing.length > 0 ? `; no card has ${foldNumbers(missing, planned ?? [])} yet` : '';
  return {
    ...ofCard(card),
    spot: spotOf(card.source, ['number']),
    message: `the plan gives no number ${card.front.number} to \`${plan.id}\``,
    found: card.front.number,
    expected: `${sayPlanned(plan.numbers)}${free}`,
    ...(near === null ? {} : { fix: near }),
  };
}
