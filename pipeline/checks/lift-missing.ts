import { spotOf } from '../model/index.js';
import type { Rule } from './rule.js';
import { edited } from './sample.js';

/** A level that says nothing of when it opens; only the first is open from the start. */
export const liftMissing: Rule = {
  id: 'lift-missing',
  about: 'levels',
  severity: 'error',
  why: 'A level without a lift never opens; a first level with one leaves nothing open at all.',
  acceptable: false,
  look: ({ content }) => {
    if (!content.property) return [];
    const { source, value } = content.property;
    return value.levels.flatMap((level, at) => {
      if ((at === 0) === (level.lift === undefined)) return [];
      if (at === 0) {
        return [
          {
            spot: spotOf(source, ['levels', 0, 'lift'], 'key'),
            message: `the first level, \`${level.id}\`, has a lift`,
            expected: 'no `lift`: the first level is open from the start',
          },
        ];
      }
      return [
        {
          spot: spotOf(source, ['levels', at, 'id']),
          message: `the level \`${level.id}\` has no lift`,
          expected: 'a `lift`: an instant, or unset while no date is known',
        },
      ];
    });
  },
  examples: {
    passes: [
      { says: 'a lift for every level but the first', files: {} },
      {
        says: 'a level whose date is not known yet',
        files: edited('property.yaml', ['"2027-06-04T20:00:00+01:00[Europe/London]"', 'unset']),
      },
    ],
    fails: [
      {
        says: 'a second level without a lift',
        files: edited('property.yaml', [', lift: "2027-04-16T20:00:00+01:00[Europe/London]"', '']),
        gives: {
          at: 'property.yaml:7:11',
          covers: 'later',
          message: 'the level `later` has no lift',
          expected: 'a `lift`: an instant, or unset while no date is known',
        },
      },
      {
        says: 'a first level with one',
        files: edited('property.yaml', [
          'label: Known',
          'label: Known, lift: "2026-09-01T09:00:00+01:00[Europe/London]"',
        ]),
        gives: {
          at: 'property.yaml:6:31',
          covers: 'lift',
          message: 'the first level, `open`, has a lift',
          expected: 'no `lift`: the first level is open from the start',
        },
      },
    ],
  },
};
