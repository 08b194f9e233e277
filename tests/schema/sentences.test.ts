import { Type, type TSchema } from 'typebox';
import { describe, expect, test } from 'vitest';

import { SAID_KEYWORDS, validate } from '../../pipeline/read/index.js';
import {
  BackFile,
  CardFront,
  LedgerEntry,
  NamesFile,
  PlanFile,
  PropertyFile,
  RosterFile,
} from '../../schema/index.js';
import { FILE_SCHEMAS, failingKeywords } from './keywords.js';

function faultsOf(schema: TSchema, data: unknown) {
  const validation = validate(schema, data);
  return validation.ok
    ? []
    : validation.faults.map(({ path, ...fault }) => ({ ...fault, path: path.join('/') }));
}

const CARD = { number: '1', name: 'Pim', spoiler: 'open' };
const PROPERTY = {
  id: 'lake',
  title: 'The Lake',
  zone: 'Europe/London',
  since: '2026-09-01T09:00:00+01:00[Europe/London]',
  levels: [{ id: 'open' }],
  approvals: 'none',
};
const SUBSET = { id: 'base', title: 'Base', group: 'base', numbers: 'none' };
const PLAN = {
  id: 'quay',
  title: 'The Quay',
  spoiler: 'open',
  stage: 'writing',
  subsets: [SUBSET],
};
const name = (more: object) => ({
  names: [{ name: 'Pim', kind: 'character', level: 'open', ...more }],
});
const INSTANT =
  'an instant with offset and zone, such as "2027-04-16T09:00:00+01:00[Europe/London]"';
const ID = 'an id of small letters, digits and single hyphens, such as high-water';
const NUMBERS = '{ from, to } with a prefix or without, { codes }, or none';

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

const value = { rule: 'schema', what: 'value' };

describe('each keyword says what was found and what is allowed', () => {
  const examples: readonly Example[] = [
    {
      keyword: 'type',
      schema: CardFront,
      data: { ...CARD, run: 'many' },
      says: {
        ...value,
        path: 'run',
        message: '`run` has a value that is not allowed',
        found: 'many',
        expected: 'a whole number from 1',
      },
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
      says: {
        ...value,
        path: 'bio',
        message: '`bio` has a value that is not allowed',
        found: 'nothing',
        expected: 'none',
      },
    },
    {
      keyword: 'const, of an unknown format',
      schema: CardFront,
      data: { ...CARD, format: 2 },
      says: {
        ...value,
        path: 'format',
        message: '`format` has a value that is not allowed',
        found: '2',
        expected: '1, the only format this version knows',
      },
    },
    {
      keyword: 'const, of another type',
      schema: CardFront,
      data: { ...CARD, format: 'one' },
      says: {
        ...value,
        path: 'format',
        message: '`format` has a value that is not allowed',
        found: 'one',
        expected: '1, the only format this version knows',
      },
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
      says: {
        ...value,
        path: 'shortPrint',
        message: '`shortPrint` has a value that is not allowed',
        found: '["SP"]',
        expected: '`SP` or `SSP`',
      },
    },
    {
      keyword: 'pattern',
      schema: CardFront,
      data: { ...CARD, spoiler: 'Open' },
      says: {
        ...value,
        path: 'spoiler',
        message: '`spoiler` has a value that is not allowed',
        found: 'Open',
        expected: ID,
      },
    },
    {
      keyword: 'pattern, of a scene',
      schema: CardFront,
      data: { ...CARD, story: '2.14' },
      says: {
        ...value,
        path: 'story',
        message: '`story` has a value that is not allowed',
        found: '2.14',
        expected: 'an episode and a scene, such as 2/14',
      },
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
      says: {
        ...value,
        path: 'zone',
        message: '`zone` has a value that is not allowed',
        found: 'Europe/Overmere',
        expected: 'a time zone of the IANA list, such as Europe/London',
      },
    },
    {
      keyword: 'format, of a date',
      schema: PlanFile,
      data: { ...PLAN, dates: { ships: '2026-02-30' } },
      says: {
        ...value,
        path: 'dates/ships',
        message: '`dates.ships` has a value that is not allowed',
        found: '2026-02-30',
        expected: 'a date such as "2027-01-15"',
      },
    },
    {
      keyword: 'minimum',
      schema: PlanFile,
      data: { ...PLAN, subsets: [{ ...SUBSET, bio: { words: { min: -1 } } }] },
      says: {
        ...value,
        path: 'subsets/0/bio/words/min',
        message: '`subsets.0.bio.words.min` has a value that is not allowed',
        found: '-1',
        expected: 'a whole number',
      },
    },
    {
      keyword: 'maximum',
      schema: CardFront,
      data: { ...CARD, run: 1_000_000_001 },
      says: {
        ...value,
        path: 'run',
        message: '`run` has a value that is not allowed',
        found: '1000000001',
        expected: 'a whole number from 1',
      },
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
      says: {
        ...value,
        path: 'trim/width',
        message: '`trim.width` has a value that is not allowed',
        found: '0',
        expected: 'a number above 0',
      },
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
      says: {
        ...value,
        path: 'subsets/0/numbers',
        message: '`subsets.0.numbers` has a value that is not allowed',
        found: '{"form":1,"till":3}',
        expected: NUMBERS,
      },
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

describe('all that is wrong is said, each thing once', () => {
  test('three faults in, three findings out', () => {
    const faults = faultsOf(CardFront, {
      number: 7,
      spoiler: 'open',
      image: { fiel: 'x', file: 'y' },
    });
    expect(faults.map(({ rule, path }) => [rule, path]).sort()).toStrictEqual([
      ['schema', ''],
      ['schema', 'number'],
      ['unknown-key', 'image/fiel'],
    ]);
  });

  test('a union whose value has the form of one branch says what is wrong in it', () => {
    const faults = faultsOf(NamesFile, name({ aliases: ['Pimmy', { form: 'P', levle: 'open' }] }));
    expect(faults).toMatchObject([
      { rule: 'unknown-key', path: 'names/0/aliases/1/levle', fix: 'level' },
    ]);
  });

  test.each([
    ['text of no branch', 'nothing', 1],
    ['keys of two branches', { from: 1, to: 2, codes: ['SG-1'] }, 1],
    ['a list', [1, 2], 1],
  ])('a union says one sentence for %s', (_, numbers, count) => {
    const faults = faultsOf(PlanFile, { ...PLAN, subsets: [{ ...SUBSET, numbers }] });
    expect(faults).toHaveLength(count);
    expect(faults[0]).toMatchObject({ path: 'subsets/0/numbers', expected: NUMBERS });
  });

  test.each<[string, unknown, string, string]>([
    ['a range', { from: '007', to: 3 }, 'subsets/0/numbers/from', 'a whole number'],
    ['half a range', { from: 1 }, 'subsets/0/numbers', 'a whole number'],
    ['codes', { codes: ['SG-1', 'SG-1'] }, 'subsets/0/numbers/codes', 'each thing once'],
  ])(
    'a union of two forms with keys looks into the one meant: %s',
    (_, numbers, path, expected) => {
      const faults = faultsOf(PlanFile, { ...PLAN, subsets: [{ ...SUBSET, numbers }] });
      expect(faults).toMatchObject([{ path, expected }]);
      expect(faults).toHaveLength(1);
    },
  );

  test('what one entry of a list has wrong does not silence another', () => {
    const aliases: unknown[] = Array.from({ length: 12 }, () => 'Pimmy');
    aliases[1] = [];
    aliases[10] = { form: 'P', levle: 'open' };
    aliases[11] = { level: 'open' };
    expect(faultsOf(NamesFile, name({ aliases })).map(({ path }) => path)).toStrictEqual([
      'names/0/aliases/1',
      'names/0/aliases/10/levle',
      'names/0/aliases/11',
    ]);
  });

  test('unions in unions: the outer one is entered, the inner one speaks', () => {
    const approvals = [
      { parts: ['copy'], roles: 'nobody' },
      { parts: [], roles: ['licenser'] },
    ];
    expect(
      faultsOf(PropertyFile, { ...PROPERTY, approvals }).map(({ path, expected, fix }) => [
        path,
        expected,
        fix,
      ]),
    ).toStrictEqual([
      ['approvals/0/roles', 'a list of roles, or none', undefined],
      ['approvals/1/parts', 'at least one entry, or no such key', undefined],
      [
        'approvals/1/roles/0',
        '`writer`, `editor`, `publisher`, `licensor`, `likeness` or `host`',
        'licensor',
      ],
    ]);
  });

  test('an entry of the ledger of no known kind is one sentence', () => {
    expect(faultsOf(LedgerEntry, { kind: 'dreamt' })).toHaveLength(1);
  });
});

describe('words that every object has are no keys', () => {
  const odd = Type.Object({ constructor: Type.String() }, { additionalProperties: false });

  test('a required one is missed', () => {
    expect(faultsOf(odd, {})).toMatchObject([{ message: 'the key `constructor` is missing' }]);
    expect(faultsOf(odd, { constructor: 'x' })).toStrictEqual([]);
  });

  test('an unknown one is found', () => {
    const data: unknown = JSON.parse(
      '{"number":"1","name":"a","spoiler":"open","__proto__":{},"toString":1}',
    );
    expect(faultsOf(CardFront, data).map(({ path }) => path)).toStrictEqual([
      '__proto__',
      'toString',
    ]);
  });
});

describe('formats', () => {
  const zone = (text: string) => faultsOf(PropertyFile, { ...PROPERTY, zone: text }).length === 0;
  const date = (text: string) =>
    faultsOf(PlanFile, { ...PLAN, dates: { ships: text } }).length === 0;
  const instant = (text: string) =>
    faultsOf(PropertyFile, { ...PROPERTY, since: text }).length === 0;

  test.each(['Europe/London', 'America/New_York', 'UTC', 'Etc/GMT+1', 'Asia/Kathmandu'])(
    '%s is a time zone',
    (text) => expect(zone(text)).toBe(true),
  );
  test.each(['Europe/Overmere', '+01:00', '', 'Europe', '../UTC', 'Europe/London ', 'BST!'])(
    '%j is none',
    (text) => expect(zone(text)).toBe(false),
  );
  test.each(['2027-01-15', '2028-02-29', '2000-02-29'])('%s is a date', (text) =>
    expect(date(text)).toBe(true),
  );
  test.each([
    '2027-02-29',
    '1900-02-29',
    '2026-02-30',
    '2027-13-01',
    '2027-1-5',
    '2027-01-15T00:00',
    '',
  ])('%j is none', (text) => expect(date(text)).toBe(false));
  test('an instant needs offset and zone', () => {
    expect(instant('2027-04-16T09:00:00+01:00[Europe/London]')).toBe(true);
    expect(instant('2027-04-16T09:00:00+01:00')).toBe(false);
    expect(instant('unset')).toBe(false);
  });
});
