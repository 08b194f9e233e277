import { Option } from 'commander';

import { QUESTIONS, type Answers, type SetKey } from '../mend/index.js';
import type { Common } from './options.js';

/** Options of `new set`: one for each question, and what becomes of the answers. */
export interface SetFlags extends Common {
  readonly propertyTitle?: string;
  readonly propertyId?: string;
  readonly zone?: string;
  readonly levels?: readonly string[];
  readonly licensor?: string;
  readonly legal?: string;
  readonly editor?: string;
  readonly writer?: string;
  readonly spoiler?: string;
  readonly title?: string;
  readonly id?: string;
  readonly short?: string;
  readonly street?: readonly string[];
  readonly since?: string;
  readonly subset?: readonly string[];
  readonly stage?: string;
  readonly stubs?: boolean;
  readonly write?: boolean;
  readonly yes?: boolean;
  readonly dryRun?: boolean;
}

const VALUES: Readonly<Record<SetKey, string>> = {
  'property-title': '<title>',
  'property-id': '<id>',
  zone: '<zone>',
  levels: '<levels>',
  licensor: '<name>',
  legal: '<line>',
  editor: '<name>',
  writer: '<name>',
  spoiler: '<level>',
  title: '<title>',
  id: '<id>',
  short: '<title>',
  street: '<instant>',
  since: '<instant>',
  subset: '<subset>',
  stage: '<stage>',
  stubs: '',
};

/** What may be said several times. */
const MANY: readonly SetKey[] = ['levels', 'street', 'subset'];

/** What more there is to say of an option than its question does. */
const MORE: Readonly<Partial<Record<SetKey, string>>> = {
  levels:
    'levels of a new property: open,premiere,finale; or, again and again, "id=premiere;label=Episodes 1 to 3;lift=2027-04-16 20:00", with print, held and announce where need be',
  subset:
    'a subset, again and again: "id=crew;title=Crew;numbers=1-48;bio=35-60", with group, prefix, facts, back, order, coverage, found, spoiler, carries and statement where need be',
  writer:
    'who writes the copy: a name, or beside other sets a person of people.yaml, for the stubs',
  licensor: 'who approves for the licensor; none if nobody does, as far as the contract allows it',
  legal: 'the legal line, letter by letter as the contract gives it',
  stubs: 'make a file for each card now',
};

/** The options of `new set`. */
export function optionsOf(): readonly Option[] {
  const asked = QUESTIONS.map(({ key, ask, of }) => {
    const about = MORE[key] ?? `${ask.trim().slice(0, 1).toLowerCase()}${ask.trim().slice(1)}`;
    const where = of === 'property' && key !== 'writer' ? ' (of a new property)' : '';
    const option = new Option(`--${key} ${VALUES[key]}`.trim(), `${about}${where}`);
    return MANY.includes(key) ? option.argParser(collected) : option;
  });
  return [
    ...asked,
    new Option('--no-stubs', 'make none, and do not ask'),
    new Option('--write', 'write the files; without it they are only shown'),
    new Option('--yes', 'the same'),
    new Option('--dry-run', 'show what would be written, and write nothing'),
  ];
}

function collected(text: string, before: readonly string[] | undefined): readonly string[] {
  return [...(before ?? []), text];
}

/** What was said by options, as answers. */
export function answersFrom(flags: SetFlags): Answers {
  const { levels, street, subset, stubs } = flags;
  const said: readonly (readonly [SetKey, readonly string[] | string | undefined])[] = [
    ['property-title', flags.propertyTitle],
    ['property-id', flags.propertyId],
    ['zone', flags.zone],
    ['levels', levels],
    ['licensor', flags.licensor],
    ['legal', flags.legal],
    ['editor', flags.editor],
    ['writer', flags.writer],
    ['spoiler', flags.spoiler],
    ['title', flags.title],
    ['id', flags.id],
    ['short', flags.short],
    ['street', street],
    ['since', flags.since],
    ['subset', subset],
    ['stage', flags.stage],
    ['stubs', stubs === undefined ? undefined : stubs ? 'yes' : 'no'],
  ];
  return new Map(
    said.flatMap(([key, value]) =>
      value === undefined ? [] : [[key, typeof value === 'string' ? [value] : value] as const],
    ),
  );
}
