import { spotOf, type Content, type Sourced, type YamlPath } from '../model/index.js';
import { faultsOf } from './faults.js';
import { edited } from './sample.js';
import type { Remark, Rule } from './rule.js';

/** A file that is missing, is no YAML or says what its schema does not allow. */
export const schema: Rule = {
  id: 'schema',
  about: 'files',
  severity: 'error',
  why: 'What a file says in a form that nobody knows is not done.',
  acceptable: false,
  lookRaw: (content) => [...unexplained(content), ...repeatedIds(content)],
  examples: {
    passes: [{ says: 'files as they should be', files: {} }],
    fails: [
      {
        says: 'a stage that there is none of',
        files: edited('one/plan.yaml', ['stage: locked', 'stage: loked']),
        gives: {
          at: 'one/plan.yaml:4:8',
          covers: 'loked',
          message: '`stage` has a value that is not allowed',
          found: 'loked',
          expected: '`planning`, `writing` or `locked`',
          fix: 'locked',
        },
      },
      {
        says: 'a stage with a capital',
        files: edited('one/plan.yaml', ['stage: locked', 'stage: Locked']),
        gives: {
          at: 'one/plan.yaml:4:8',
          covers: 'Locked',
          message: '`stage` has a value that is not allowed',
          found: 'Locked',
          expected: '`planning`, `writing` or `locked`',
          fix: 'locked',
          certain: true,
        },
      },
      {
        says: 'two people with one id',
        files: edited('people.yaml', [
          'people:\n',
          'people:\n  - { id: jonah, name: Amara Linde, role: licensor, clearance: last }\n',
        ]),
        gives: {
          at: 'people.yaml:3:11',
          covers: 'jonah',
          message: 'another one has the id `jonah` too',
          found: 'jonah',
          expected: 'an id of its own',
          related: ['people.yaml:2:11 the first of that id'],
        },
      },
    ],
  },
};

/** Faults but for keys that are missing because they are misspelt: `unknown-key` speaks of those. */
function unexplained(content: Content): Remark[] {
  const misspelt = new Set(
    faultsOf(content, 'unknown-key').map(({ spot, fix }) => `${spot.source.file} ${fix ?? ''}`),
  );
  return faultsOf(content, 'schema').filter(({ spot, message }) => {
    const key = /^the key `([^`]+)` is missing/.exec(message)?.[1];
    return key === undefined || !misspelt.has(`${spot.source.file} ${key}`);
  });
}

/** Ids that two entries of one list share. Those of levels and embargoes are for `level-order`. */
function repeatedIds(content: Content): Remark[] {
  const { property, people, names, sets } = content;
  return [
    ...(property
      ? [
          ...repeatsIn(property, ['cuts'], property.value.cuts),
          ...repeatsIn(property, ['documents'], property.value.documents),
        ]
      : []),
    ...(people ? repeatsIn(people, ['people'], people.value.people) : []),
    ...(names ? repeatsIn(names, ['secrets'], names.value.secrets) : []),
    ...sets.flatMap(({ plan }) => [
      ...repeatsIn(plan, ['subsets'], plan.value.subsets),
      ...repeatsIn(plan, ['parallels'], plan.value.parallels),
      ...repeatsIn(plan, ['products'], plan.value.products),
    ]),
  ];
}

function repeatsIn(
  { source }: Sourced<unknown>,
  path: YamlPath,
  entries: readonly { readonly id: string }[] = [],
): Remark[] {
  const first = new Map<string, number>();
  return entries.flatMap(({ id }, at) => {
    const earlier = first.get(id);
    if (earlier === undefined) {
      first.set(id, at);
      return [];
    }
    return [
      {
        spot: spotOf(source, [...path, at, 'id']),
        message: `another one has the id \`${id}\` too`,
        found: id,
        expected: 'an id of its own',
        related: [
          { message: 'the first of that id', spot: spotOf(source, [...path, earlier, 'id']) },
        ],
      },
    ];
  });
}
