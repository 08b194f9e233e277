import { spotOf, type CardSet } from '../model/index.js';
import { isSoundRange } from './numbering.js';
import type { Remark, Rule } from './rule.js';
import { edited } from './sample.js';

/** Ranges under one prefix that do not follow one another as the plan lists their subsets. */
export const numberOrder: Rule = {
  id: 'number-order',
  about: 'numbers',
  severity: 'error',
  why: 'The checklist goes by subset: numbers that jump back cannot be read in one run.',
  look: ({ sets }) => sets.flatMap(jumpsBack),
  examples: {
    passes: [
      { says: 'ranges of two prefixes', files: {} },
      {
        says: 'a range that goes on where the last one ended',
        files: {
          ...edited('one/plan.yaml', ['prefix: X-, from: 1, to: 1', 'from: 3, to: 3']),
          ...edited('one/cards/extra/b1.md', ['X-1', '"3"']),
        },
      },
    ],
    fails: [
      {
        says: 'a second subset with the lower numbers',
        files: {
          ...edited(
            'one/plan.yaml',
            ['from: 1, to: 2', 'from: 2, to: 3'],
            ['prefix: X-, from: 1, to: 1', 'from: 1, to: 1'],
          ),
          ...edited('one/cards/base/a1.md', ['"1"', '"2"']),
          ...edited('one/cards/base/a2.md', ['"2"', '"3"']),
          ...edited('one/cards/extra/b1.md', ['X-1', '"1"']),
        },
        gives: {
          at: 'one/plan.yaml:8:65',
          covers: '1',
          message: '`extra` begins at 1, but `base`, which stands above it, begins at 2',
          found: '1',
          expected: 'a subset above that of the higher numbers, or numbers above 3',
        },
      },
    ],
  },
};

function jumpsBack(set: CardSet): Remark[] {
  const above = new Map<string, { id: string; from: number; to: number }>();
  return set.plan.value.subsets.flatMap(({ id, numbers }, at) => {
    if (numbers === 'none' || 'codes' in numbers || !isSoundRange(numbers)) return [];
    const { prefix = '', from, to } = numbers;
    const last = above.get(prefix);
    above.set(prefix, { id, from, to });
    if (!last || to >= last.from) return [];
    return [
      {
        spot: spotOf(set.plan.source, ['subsets', at, 'numbers', 'from']),
        message: `\`${id}\` begins at ${prefix}${from}, but \`${last.id}\`, which stands above it, begins at ${prefix}${last.from}`,
        found: `${prefix}${from}`,
        expected: `a subset above that of the higher numbers, or numbers above ${prefix}${last.to}`,
      },
    ];
  });
}
