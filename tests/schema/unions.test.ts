import { Type } from 'typebox';
import { describe, expect, test } from 'vitest';

import { CardFront, LedgerEntry, NamesFile, PlanFile, PropertyFile } from '../../schema/index.js';
import { NUMBERS, PLAN, PROPERTY, SUBSET, faultsOf, name } from './values.js';

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
