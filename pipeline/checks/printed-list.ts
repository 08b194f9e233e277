import { SMALL_LAYOUT, WITH_LAYOUT } from './fit-sample.js';
import { wrongLists } from './printed-list/judge.js';
import type { Files, Rule } from './rule.js';
import { edited } from './sample.js';

const LISTED: Files = {
  ...WITH_LAYOUT,
  'backs/small.yaml': `${SMALL_LAYOUT}  list: { x: 5, y: 20, width: 50, height: 20, font: body, size: 6, leading: 8 }\n`,
};

/** The sample with a list on the card of its inserts, and other words in its plan. */
function list(lines: string, ...plan: Parameters<typeof edited>[1][]): Files {
  return {
    ...LISTED,
    ...edited('one/plan.yaml', ['group: inserts,', 'group: inserts, back: small,'], ...plan),
    ...edited('one/cards/extra/b1.md', [
      'spoiler: open',
      lines === '' ? 'spoiler: open' : `spoiler: open\ntexts:\n  list: "${lines}"`,
    ]),
  };
}

/**
 * A printed checklist that does not say what the plan has: the text `list` of a card whose layout has
 * a zone `list`, a line for each subset.
 */
export const printedList: Rule = {
  id: 'printed-list',
  about: 'counts',
  severity: 'error',
  why: 'A checklist on a card (`texts: { list: … }` in a zone `list`) is ticked off for years: it must be that of the plan, and say nothing that leaves no trace yet.',
  look: (subject) => subject.sets.flatMap((set) => wrongLists(set, subject)),
  examples: {
    passes: [
      { says: 'each number', files: list('Base: 1, 2\\nExtra: X-1') },
      {
        says: 'a run of numbers',
        files: {
          ...list(
            'Base: 1 to 3\\nExtra: X-1',
            ['to: 2', 'to: 3'],
            ['base: 2', 'base: 3'],
            ['is: 3', 'is: 4'],
          ),
          'one/cards/base/a3.md':
            '---\nnumber: "3"\nname: The Bell\nspoiler: open\nstory: 1/6\n---\nA bell is heard.\n',
        },
      },
      {
        says: 'codes by their count, since a code is held with its card',
        files: list('Base: 1, 2\\nExtra: 1 card', [
          '{ prefix: X-, from: 1, to: 1 }',
          '{ codes: [X-1] }',
        ]),
      },
      {
        says: 'no word of what leaves no trace',
        files: {
          ...list('Base: 1\\nExtra: X-1'),
          ...edited('one/cards/base/a2.md', ['spoiler: open', 'spoiler: last']),
        },
      },
    ],
    fails: [
      {
        says: 'a number too many',
        files: list('Base: 1, 2, 3\\nExtra: X-1'),
        gives: {
          at: 'one/cards/extra/b1.md:6:9',
          covers: '"Base: 1, 2, 3\\nExtra: X-1"',
          message: 'the printed list is not that of the plan',
          found: 'Base: 1, 2, 3',
          expected: 'Base: 1, 2',
          fix: 'Base: 1, 2\nExtra: X-1',
          certain: true,
        },
      },
      {
        says: 'a subset that the plan has and the list has not',
        files: list('Base: 1, 2'),
        gives: {
          at: 'one/cards/extra/b1.md:6:9',
          covers: '"Base: 1, 2"',
          message: 'the printed list is not that of the plan',
          found: 'no line for `extra`',
          expected: 'Extra: X-1',
          fix: 'Base: 1, 2\nExtra: X-1',
          certain: true,
        },
      },
      {
        says: 'a card that leaves no trace when the list is read',
        files: {
          ...list('Base: 1, 2\\nExtra: X-1'),
          ...edited('one/cards/base/a2.md', ['spoiler: open', 'spoiler: last']),
        },
        gives: {
          at: 'one/cards/extra/b1.md:6:9',
          covers: '"Base: 1, 2\\nExtra: X-1"',
          message: 'the printed list is not that of the plan',
          found: 'Base: 1, 2',
          expected: 'Base: 1',
          fix: 'Base: 1\nExtra: X-1',
          certain: true,
        },
      },
      {
        says: 'a zone for the list, and no list: it can be written from the plan',
        files: list(''),
        gives: {
          at: 'one/cards/extra/b1.md:5:1',
          covers: '',
          message: 'the layout of this card has a zone for the list, and nothing stands in it',
          found: 'no `texts: { list: … }`',
          expected: 'a line for each subset, as the plan has it',
          fix: 'texts:\n  list: |-\n    Base: 1, 2\n    Extra: X-1\n',
          certain: true,
        },
      },
    ],
  },
};
