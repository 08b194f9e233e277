import type { PropertyFile } from '../../schema/index.js';
import { spotOf, type SourceFile, type YamlPath } from '../model/index.js';
import { disorders } from './level-disorder.js';
import type { Remark, Rule } from './rule.js';
import { edited } from './sample.js';

/** Levels that open in another order than they stand in, and ids that stand twice. */
export const levelOrder: Rule = {
  id: 'level-order',
  about: 'levels',
  severity: 'error',
  why: 'Levels go from least to most revealing: what stands lower must not open first.',
  acceptable: false,
  look: ({ content }) => {
    if (!content.property) return [];
    const { source, value } = content.property;
    return [...disorderOf(value, source), ...repeatedIds(value, source)];
  },
  examples: {
    passes: [
      { says: 'lifts that do not fall', files: {} },
      {
        says: 'a level that shops may tell before it lifts',
        files: edited('property.yaml', [
          'label: Episode 1,',
          'label: Episode 1, print: "2027-04-16T09:00:00+01:00[Europe/London]",',
        ]),
      },
    ],
    fails: [
      {
        says: 'a lift that falls',
        files: edited('property.yaml', ['2027-06-04', '2027-04-04']),
        gives: {
          at: 'property.yaml:8:41',
          covers: '"2027-04-04T20:00:00+01:00[Europe/London]"',
          message: '`last` lifts before `later`, which stands above it',
          found: '2027-04-04T20:00:00+01:00[Europe/London]',
          expected: '2027-04-16T20:00:00+01:00[Europe/London] or later',
        },
      },
      {
        says: 'printed later than told',
        files: edited('property.yaml', [
          'label: Episode 1,',
          'label: Episode 1, print: "2027-04-16T21:00:00+01:00[Europe/London]",',
        ]),
        gives: {
          at: 'property.yaml:7:43',
          covers: '"2027-04-16T21:00:00+01:00[Europe/London]"',
          message: '`later` may be in shops only after it has lifted',
          found: '2027-04-16T21:00:00+01:00[Europe/London]',
          expected: '2027-04-16T20:00:00+01:00[Europe/London] or earlier',
        },
      },
      {
        says: 'an embargo under the id of a level',
        files: edited('property.yaml', ['id: guest', 'id: later']),
        gives: {
          at: 'property.yaml:10:11',
          covers: 'later',
          message: 'another level or embargo has the id `later` too',
          found: 'later',
          expected: 'an id of its own: levels and embargoes share one list of ids',
          related: ['property.yaml:7:11 the first of that id'],
        },
      },
    ],
  },
};

function disorderOf(property: PropertyFile, source: SourceFile): Remark[] {
  return disorders(property).map(({ key, opening, above }) => {
    const { id, path, lift, print } = opening;
    const spot = spotOf(source, [...path, key]);
    if (!above) {
      return {
        spot,
        message: `\`${id}\` may be in shops only after it has lifted`,
        found: print,
        expected: `${lift} or earlier`,
      };
    }
    const verb = key === 'lift' ? 'lifts' : 'may be in shops';
    return {
      spot,
      message: `\`${id}\` ${verb} before \`${above.id}\`, which stands above it`,
      found: opening[key],
      expected: above[key] === 'unset' ? 'unset' : `${above[key]} or later`,
    };
  });
}

function repeatedIds({ levels, embargoes }: PropertyFile, source: SourceFile): Remark[] {
  const first = new Map<string, YamlPath>();
  return [
    ...levels.map(({ id }, index) => ({ id, path: ['levels', index, 'id'] })),
    ...(embargoes ?? []).map(({ id }, index) => ({ id, path: ['embargoes', index, 'id'] })),
  ].flatMap(({ id, path }) => {
    const earlier = first.get(id);
    if (!earlier) {
      first.set(id, path);
      return [];
    }
    return [
      {
        spot: spotOf(source, path),
        message: `another level or embargo has the id \`${id}\` too`,
        found: id,
        expected: 'an id of its own: levels and embargoes share one list of ids',
        related: [{ message: 'the first of that id', spot: spotOf(source, earlier) }],
      },
    ];
  });
}
