import { Type, type TSchema } from 'typebox';
import { describe, expect, test } from 'vitest';

import { SAID_KEYWORDS } from '../../pipeline/read/index.js';
import {
  BackFile,
  CardFront,
  NamesFile,
  PlanFile,
  PropertyFile,
  RosterFile,
} from '../../schema/index.js';
import { FILE_SCHEMAS, failingKeywords } from './keywords.js';
import { CARD, ID, INSTANT, NUMBERS, PLAN, PROPERTY, SUBSET, faultsOf, name } from './values.js';

describe('the sentences', () => {
  const used = Object.values(FILE_SCHEMAS).flatMap(failingKeywords);

  test('are there for every keyword of a file schema', () => {
    expect([...new Set(used)].filter((keyword) => !SAID_KEYWORDS.includes(keyword))).toEqual([]);
  });

  test('are there for no keyword that is not used', () => {
    expect(SAID_KEYWORDS.filter((keyword) => !used.includes(keyword))).toEqual([]);
  });

  test('are looked for in unions, lists and records too', () => {
    const deep = Type.Array(
      Type.Union([Type.Record(Type.String(), Type.String({ maxLength: 3 })), Type.Null()]),
    );
    expect(failingKeywords(deep)).toEqual(expect.arrayContaining(['anyOf', 'maxLength', 'type']));
  });
});

interface Example {
  readonly keyword: string;
  readonly schema: TSchema;
  readonly data: unknown;
  readonly says: object;
}

/** A value that is not allowed, of which no more is said than that. */
function refused(path: string, found: string, expected: string): object {
  const message = `\`${path.replaceAll('/', '.')}\` has a value that is not allowed`;
  return { rule: 'schema', what: 'value', path, message, found, expected };
}

const value = { rule: 'schema', what: 'value' };

describe('each keyword says what was found and what is allowed', () => {
  const examples: readonly Example[] = [
    {
      keyword: 'type',
      schema: CardFront,
      data: { ...CARD, run: 'many' },
      says: refused('run', 'many', 'a whole number from 1'),
    },
    {
      keyword: 'type, of a whole file',
      schema: CardFront,
      data: '',
      says: {
        ...value,
        path: '',
        message: '`this file` has a value that is not allowed',
        found: 'nothing',
        expected: 'keys with values',
      },
    },
    {
      keyword: 'const',
      schema: CardFront,
      data: { ...CARD, bio: 'nothing' },
      says: refused('bio', 'nothing', 'none'),
    },
    {
      keyword: 'const, of an unknown format',
      schema: CardFront,
      data: { ...CARD, format: 2 },
      says: refused('format', '2', '1, the only format this version knows'),
    },
    {
      keyword: 'const, of another type',
      schema: CardFront,
      data: { ...CARD, format: 'one' },
      says: refused('format', 'one', '1, the only format this version knows'),
    },
    {
      keyword: 'enum',
      schema: CardFront,
      data: { ...CARD, state: 'raedy' },
      says: {
        ...value,
        path: 'state',
        message: '`state` has a value that is not allowed',
        found: 'raedy',
        expected: '`draft` or `ready`',
        fix: 'ready',
      },
    },
    {
      keyword: 'enum, of another type',
      schema: CardFront,
      data: { ...CARD, shortPrint: ['SP'] },
      says: refused('shortPrint', '["SP"]', '`SP` or `SSP`'),
    },
    {
      keyword: 'pattern',
      schema: CardFront,
      data: { ...CARD, spoiler: 'Open' },
      says: refused('spoiler', 'Open', ID),
    },
    {
      keyword: 'pattern, of a scene',
      schema: CardFront,
      data: { ...CARD, story: '2.14' },
      says: refused('story', '2.14', 'an episode and a scene, such as 2/14'),
    },
    {
      keyword: 'format, of an instant',
      schema: PropertyFile,
      data: { ...PROPERTY, since: '2026-09-01T09:00:00+02:00[Europe/London]' },
      says: {
        ...value,
        path: 'since',
        message: '`since` is no instant: its offset is +02:00, but Europe/London is at +01:00 then',
        found: '2026-09-01T09:00:00+02:00[Europe/London]',
        expected: INSTANT,
      },
    },
    {
      keyword: 'format, of a zone',
      schema: PropertyFile,
      data: { ...PROPERTY, zone: 'Europe/Overmere' },
      says: refused(
        'zone',
        'Europe/Overmere',
        'a time zone of the IANA list, such as Europe/London',
      ),
    },
    {
      keyword: 'format, of a date',
      schema: PlanFile,
      data: { ...PLAN, dates: { ships: '2026-02-30' } },
      says: refused('dates/ships', '2026-02-30', 'a date such as "2027-01-15"'),
    },
    {
      keyword: 'minimum',
      schema: PlanFile,
      data: { ...PLAN, subsets: [{ ...SUBSET, bio: { words: { min: -1 } } }] },
      says: refused('subsets/0/bio/words/min', '-1', 'a whole number'),
    },
    {
      keyword: 'maximum',
      schema: CardFront,
      data: { ...CARD, run: 1_000_000_001 },
      says: refused('run', '1000000001', 'a whole number from 1'),
    },
    {
      keyword: 'exclusiveMinimum',
      schema: BackFile,
      data: {
        id: 'b',
        trim: { width: 0, height: 9 },
        bleed: 3,
        safe: 3,
        fonts: { a: { regular: 'x' } },
        zones: {},
      },
      says: refused('trim/width', '0', 'a number above 0'),
    },
    {
      keyword: 'minLength',
      schema: CardFront,
      data: { ...CARD, name: '' },
      says: { ...value, path: 'name', message: '`name` is empty', expected: 'some text' },
    },
    {
      keyword: 'maxLength',
      schema: CardFront,
      data: { ...CARD, number: '1'.repeat(25) },
      says: {
        ...value,
        path: 'number',
        message: '`number` is too long',
        expected: 'at most 24 characters',
      },
    },
    {
      keyword: 'minItems',
      schema: RosterFile,
      data: { artists: [] },
      says: {
        ...value,
        path: 'artists',
        message: '`artists` is an empty list',
        expected: 'at least one entry, or no such key',
      },
    },
    {
      keyword: 'minProperties',
      schema: PlanFile,
      data: { ...PLAN, street: {} },
      says: {
        ...value,
        path: 'street',
        message: '`street` is empty',
        expected: 'at least one key in it',
      },
    },
    {
      keyword: 'uniqueItems',
      schema: PlanFile,
      data: { ...PLAN, subsets: [{ ...SUBSET, numbers: { codes: ['SG-1', 'SG-1'] } }] },
      says: {
        ...value,
        path: 'subsets/0/numbers/codes',
        message: '`subsets.0.numbers.codes` names the same thing twice',
        expected: 'each thing once',
      },
    },
    {
      keyword: 'required',
      schema: NamesFile,
      data: name({ avoid: [{ form: 'Miss Pim' }] }),
      says: {
        ...value,
        path: 'names/0/avoid/0',
        message: 'the key `use` is missing in `names.0.avoid.0`',
        expected: 'some text',
      },
    },
    {
      keyword: 'required, one of a few words',
      schema: PlanFile,
      data: { ...PLAN, stage: undefined },
      says: {
        ...value,
        path: '',
        message: 'the key `stage` is missing',
        expected: '`planning`, `writing` or `locked`',
      },
    },
    {
      keyword: 'additionalProperties',
      schema: CardFront,
      data: { ...CARD, spolier: 'open' },
      says: {
        rule: 'unknown-key',
        what: 'key',
        path: 'spolier',
        message: 'there is no key `spolier`',
        found: 'spolier',
        expected: '`spoiler`',
        fix: 'spoiler',
      },
    },
    {
      keyword: 'additionalProperties, near to nothing',
      schema: NamesFile,
      data: name({ avoid: [{ form: 'a', use: 'b', because: 'c' }] }),
      says: {
        rule: 'unknown-key',
        what: 'key',
        path: 'names/0/avoid/0/because',
        message: 'there is no key `because` in `names.0.avoid.0`',
        found: 'because',
        expected: '`form`, `use` or `why`',
      },
    },
    {
      keyword: 'additionalProperties, where keys are ids',
      schema: PlanFile,
      data: { ...PLAN, totals: { Base: 5 } },
      says: {
        rule: 'unknown-key',
        what: 'key',
        path: 'totals/Base',
        message: 'there is no key `Base` in `totals`',
        found: 'Base',
        expected: 'a key of small letters, digits and hyphens',
      },
    },
    {
      keyword: 'anyOf',
      schema: PlanFile,
      data: { ...PLAN, subsets: [{ ...SUBSET, numbers: { form: 1, till: 3 } }] },
      says: refused('subsets/0/numbers', '{"form":1,"till":3}', NUMBERS),
    },
  ];

  test.each(examples)('$keyword', ({ schema, data, says }) => {
    expect(faultsOf(schema, data)).toStrictEqual([says]);
  });

  test('what was found is cut to a length that a line can show', () => {
    const [fault] = faultsOf(CardFront, { ...CARD, state: 'x'.repeat(1000) });
    expect(fault?.found).toBe(`${'x'.repeat(57)}…`);
  });
});
