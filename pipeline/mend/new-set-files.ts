import { answerOf, type Answers, type Ground } from './new-set-answers.js';
import { STANDARD_BACK } from './new-set-back.js';
import { nowText, sinceOf, streetOf, zoneOf } from './new-set-dates.js';
import { idFrom } from './new-set-ids.js';
import { levelsOf, USUAL_LEVELS } from './new-set-levels.js';
import { NOBODY, peopleOf } from './new-set-people.js';
import { subsetsOf, totalsOf } from './new-set-subsets.js';
import { block, flow, lines, scalar } from './new-set-yaml.js';

/** Texts by path below the content folder. */
export type NewFiles = ReadonlyMap<string, string>;

/**
 * The files that answers come to, without stubs. What was not answered has a usual value, or one
 * that holds its place.
 */
export function filesOf(answers: Answers, ground: Ground): NewFiles {
  const plan = [`${idOf(answers)}/plan.yaml`, planText(answers, ground)] as const;
  if (ground.home !== null) return new Map([plan]);
  return new Map([
    ['property.yaml', propertyText(answers, ground)],
    ['names.yaml', NAMES],
    ['people.yaml', peopleText(answers, ground)],
    ['backs/standard.yaml', STANDARD_BACK],
    plan,
  ]);
}

/** The id of the set, which is its folder. */
export function idOf(answers: Answers): string {
  return answerOf(answers, 'id') ?? (idFrom(answerOf(answers, 'title') ?? '') || 'set-1');
}

/** Levels of the property, from least to most revealing. */
export function levelIdsOf(answers: Answers, ground: Ground): readonly string[] {
  if (ground.home !== null) return ground.home.levels;
  return levelsOf(answers, zoneOf(answers, ground)).levels.map(({ id }) => id);
}

function propertyText(answers: Answers, ground: Ground): string {
  const zone = answerOf(answers, 'zone') ?? 'UTC';
  const title = answerOf(answers, 'property-title') ?? 'Untitled';
  const since = sinceOf(answers, ground) ?? nowText(ground.now, zoneOf(answers, ground));
  const { levels } = levelsOf(answers, zone);
  const legal = answerOf(answers, 'legal');
  return lines(
    'format: 1',
    `id: ${scalar(answerOf(answers, 'property-id') ?? (idFrom(title) || 'property'))}`,
    `title: ${scalar(title)}`,
    '',
    '# Dates on the site are written in this zone.',
    `zone: ${scalar(zone)}`,
    '# From when anything of it is public. Nothing is published before.',
    `since: ${scalar(since)}`,
    '',
    '# From least to most revealing. Only the first has no lift. What is unset opens at no instant.',
    block(
      'levels',
      levels.length > 0
        ? levels.map((level) => ({ ...level }))
        : [...USUAL_LEVELS].map((level) => ({ ...level })),
    ),
    ...approvalLines(answers),
    '',
    '# Letter by letter as the contract gives it. What it must say is for the contract and counsel.',
    legal === null ? '# legal: { line: "…" }' : `legal: ${flow({ line: legal })}`,
    '',
    '# What the site may show besides numbers and names is for the licence to say.',
    'site: { shows: none }',
  ).replaceAll('\n\n\n', '\n\n');
}

function approvalLines(answers: Answers): readonly string[] {
  if (answerOf(answers, 'licensor') === NOBODY) {
    return [
      '# Nobody outside the house approves anything. If the contract says otherwise, say here who does.',
      'approvals: none',
    ];
  }
  return [
    '# Who must approve what, as the contract has it. A part has a line without `where`, so that',
    '# nothing goes unasked.',
    'approvals:',
    '  - { parts: [copy, image, layout, web, sales], roles: [licensor] }',
  ];
}

const NAMES = `format: 1

# Everyone and everything that a card may name, spelled as the licensor spells it. A name that the
# audience must not know yet has the level at which it opens, and a \`publicName\` that stands for it
# until then:
#   - { name: …, kind: character, aliases: [ … ], level: …, publicName: … }
names: []

# Facts that a combination of words tells:
#   - { id: …, level: …, says: …, allOf: [[ …, … ], [ … ]], within: sentence }
secrets: []
`;

function peopleText(answers: Answers, ground: Ground): string {
  const levels = levelIdsOf(answers, ground);
  const clearance = levels.at(-1) ?? 'open';
  return lines(
    'format: 1',
    '# Clearance is the highest level that is sent to a person. Whoever has this folder can read it all.',
    answerOf(answers, 'licensor') === null
      ? '# Whoever approves for the licensor is still missing here: until then nothing is approved.'
      : null,
  ).concat(
    block(
      'people',
      peopleOf(answers).map((person) => ({ ...person, clearance })),
    ),
  );
}

function planText(answers: Answers, ground: Ground): string {
  const title = answerOf(answers, 'title') ?? 'Untitled';
  const short = answerOf(answers, 'short');
  const street = streetOf(answers, ground);
  const { subsets } = subsetsOf(answers, ground);
  const totals = totalsOf(subsets);
  return lines(
    'format: 1',
    `id: ${scalar(idOf(answers))}`,
    `title: ${scalar(title)}`,
    short === null ? null : `short: ${scalar(short)}`,
    `spoiler: ${scalar(answerOf(answers, 'spoiler') ?? levelIdsOf(answers, ground)[0] ?? 'open')}`,
    '# planning, then writing, then locked, which asks for everything',
    `stage: ${scalar(answerOf(answers, 'stage') ?? 'planning')}`,
    street === null ? null : '# When it may be sold. The earliest counts.',
    street === null ? null : `street: ${flow(street)}`,
    '',
    '# A subset is a folder of cards. Its id stays; its title may change until press.',
  )
    .concat(
      block(
        'subsets',
        subsets.map(({ line }) => line),
      ),
    )
    .concat(
      Object.keys(totals).length === 0
        ? ''
        : lines('', '# What is announced. `check` counts the cards.', `totals: ${flow(totals)}`),
    );
}
