import type { TSchema } from 'typebox';
import { describe, expect, test } from 'vitest';

import { readYaml } from '../../pipeline/read/yaml.js';
import * as schemas from '../../schema/index.js';
import { CARD, contentWith, rangeText, readCard, told } from './support.js';

/** Values that one YAML version or another turns into numbers, booleans, dates or nothing. */
const ODD = [
  '010',
  '007',
  '0x10',
  '0o10',
  '0b11',
  '1e3',
  '1E3',
  '1_000',
  '1,000',
  '+1',
  '-0',
  '1.0',
  '.5',
  '5.',
  '.inf',
  '-.INF',
  '.nan',
  'yes',
  'no',
  'on',
  'off',
  'y',
  'True',
  'true',
  'false',
  'null',
  'Null',
  '~',
  '12:30',
  '12:30:45',
  '190:20:30',
  '2027-04-16',
  '2026-02-30',
  '2027-04-16T09:00:00Z',
  '<<',
  '=',
  '-1',
  'LC-1',
  'Foo#1',
  '17b',
];

function cardWith(key: string, value: string): ReturnType<typeof readCard> {
  const others = ['number: "1"', 'name: Dace Sill', 'spoiler: open'];
  const lines = [`${key}: ${value}`, ...others.filter((line) => !line.startsWith(`${key}:`))];
  return readCard(`---\n${lines.join('\n')}\n---\nWords.\n`);
}

describe.each(['number', 'name', 'remark'])('as text, in `%s`', (key) => {
  test.each(ODD)('%s comes out as typed', (value) => {
    const { card, faults } = cardWith(key, value);
    expect(faults).toStrictEqual([]);
    expect(card?.front).toMatchObject({ [key]: value });
  });

  test.each([
    ['Foo #1', '2:{0}-{+6}', 'Foo #1', '"Foo #1", or a space after # if it is a comment'],
    ['"Foo" #1', '2:{0}-{+8}', '"Foo" #1', `'"Foo" #1', or a space after # if it is a comment`],
    [`O'Dell #1`, '2:{0}-{+9}', `O'Dell #1`, `"O'Dell #1", or a space after # if it is a comment`],
    [
      `O'Dell "Foo" #1`,
      '2:{0}-{+15}',
      `O'Dell "Foo" #1`,
      `'O''Dell "Foo" #1', or a space after # if it is a comment`,
    ],
    [
      'Foo  #1 # one',
      '2:{0}-{+13}',
      'Foo #1 # one',
      '"Foo #1 # one", or a space after # if it is a comment',
    ],
  ])('%s is a finding that says how to write it', (value, at, found, expected) => {
    const start = key.length + 3;
    const place = at
      .replace('{0}', String(start))
      .replace(/\{\+(\d+)\}/, (_, length: string) => String(start + Number(length)));
    expect(cardWith(key, value).faults).toStrictEqual([
      {
        rule: 'front-matter',
        at: `${CARD}:${place}`,
        message: 'what follows # would be lost as a comment',
        found,
        expected,
      },
    ]);
  });

  test.each([
    ['- x', 'unexpected block-seq-ind on same line with key'],
    ['a: b', 'nested mappings are not allowed in compact mappings'],
    ['@Heron', 'plain value cannot start with reserved character @'],
    ['`Heron`', 'plain value cannot start with reserved character `'],
    ['%Heron', 'plain value cannot start with directive indicator character %'],
  ])('%s is a finding that shows the line', (value, why) => {
    const [first] = cardWith(key, value).faults;
    expect(first).toMatchObject({
      rule: 'front-matter',
      message: `this is not YAML: ${why}`,
      found: `${key}: ${value}`,
      expected: 'quotes around text with such signs',
    });
    expect(first?.at).toMatch(new RegExp(`^${CARD}:2:${String(key.length + 3)}-`));
  });

  test.each(['', '#1', '# a comment'])('nothing (%j) is a finding, not a blank', (value) => {
    const { faults } = cardWith(key, value);
    expect(faults).toMatchObject([{ rule: 'schema', message: `\`${key}\` is empty` }]);
  });
});

describe('as a number', () => {
  const numbers: Readonly<Record<string, number>> = { '1.0': 1, '-0': 0, '-1': -1, '5': 5 };

  test.each([...ODD, '5', '0'].filter((value) => !['1.0', '5'].includes(value)))(
    '`run: %s` is refused and shown',
    (value) => {
      const { card, faults } = cardWith('run', value);
      expect(card).toBeUndefined();
      const { rule, found, expected } = faults[0] ?? {};
      expect([faults.length, rule, found, expected]).toStrictEqual([
        1,
        'schema',
        String(numbers[value] ?? value),
        'a whole number from 1',
      ]);
    },
  );

  test.each([
    ['5', 5],
    ['1.0', 1],
    ['1000000000', 1_000_000_000],
  ])('`run: %s` is %d', (value, expected) => {
    expect(cardWith('run', value).card?.front.run).toBe(expected);
  });

  test.each(['"5"', "'5'", '|\n  5'])('`run: %s` is text, and refused', (value) => {
    expect(cardWith('run', value).faults).toMatchObject([
      { rule: 'schema', found: value.replace(/[^5]/g, '') + (value.startsWith('|') ? '\n' : '') },
    ]);
  });

  const planWith = (numbersText: string): ReturnType<typeof contentWith> =>
    contentWith({
      'quay/plan.yaml': `id: quay\ntitle: The Quay\nspoiler: open\nstage: writing\nsubsets:\n  - id: base\n    title: Base\n    group: base\n    numbers: ${numbersText}\n`,
    });

  test.each(ODD.filter((value) => !['-0', '1.0', '1,000'].includes(value)))(
    '`numbers: { from: %s }` is refused and shown',
    (value) => {
      const { sets, faults } = planWith(`{ from: ${value}, to: 9 }`);
      expect(sets).toStrictEqual([]);
      expect(faults.map(told)).toStrictEqual([
        {
          rule: 'schema',
          at: `quay/plan.yaml:9:22-${String(22 + value.length)}`,
          message: '`subsets.0.numbers.from` has a value that is not allowed',
          found: String(numbers[value] ?? value),
          expected: 'a whole number',
        },
      ]);
    },
  );

  test('`numbers: { from: 7 }` is a number', () => {
    const { sets, faults } = planWith('{ from: 7, to: 9, prefix: 007 }');
    expect(faults).toStrictEqual([]);
    expect(sets[0]?.plan.value.subsets[0]?.numbers).toStrictEqual({
      from: 7,
      to: 9,
      prefix: '007',
    });
  });
});

/** Every place of a schema where any text may stand, as keys, `[]` and `*` for any key. */
function textPlaces(schema: unknown, path: readonly string[] = []): string[][] {
  if (typeof schema !== 'object' || schema === null) return [];
  const part = (name: string): unknown => Reflect.get(schema, name);
  const anyOf = part('anyOf');
  if (Array.isArray(anyOf)) return anyOf.flatMap((option) => textPlaces(option, path));
  if (part('type') === 'array') return textPlaces(part('items'), [...path, '[]']);
  if (part('type') === 'string') {
    const bound = ['pattern', 'format', 'enum', 'const'].some((key) => part(key) !== undefined);
    return bound ? [] : [[...path]];
  }
  const below = (keys: unknown, name: (key: string) => string): string[][] =>
    Object.entries(keys ?? {}).flatMap(([key, value]) => textPlaces(value, [...path, name(key)]));
  return [
    ...below(part('properties'), (key) => key),
    ...below(part('patternProperties'), () => 'any'),
  ];
}

/** The smallest YAML that has a value at a place. */
function yamlAt(path: readonly string[], value: string): string {
  const [step, ...rest] = path;
  if (step === undefined) return ` ${value}`;
  const inner = yamlAt(rest, value).replaceAll('\n', '\n  ');
  return `\n${step === '[]' ? '-' : `${step}:`}${inner}`;
}

const FILES: Readonly<Record<string, TSchema>> = {
  CardFront: schemas.CardFront,
  SalesFront: schemas.SalesFront,
  PropertyFile: schemas.PropertyFile,
  PlanFile: schemas.PlanFile,
  NamesFile: schemas.NamesFile,
  PeopleFile: schemas.PeopleFile,
  BackFile: schemas.BackFile,
  RosterFile: schemas.RosterFile,
  CorrectionsFile: schemas.CorrectionsFile,
};
const PLACES = Object.entries(FILES).flatMap(([file, schema]) =>
  textPlaces(schema).map((path) => ({ file, schema, path, place: `${file} ${path.join('.')}` })),
);

describe('text and a comment', () => {
  test('there are many places for text', () => {
    expect(PLACES.length).toBeGreaterThanOrEqual(70);
    const places = PLACES.map(({ place }) => place);
    for (const place of [
      'CardFront name',
      'CardFront facts.any',
      'NamesFile secrets.[].allOf.[].[]',
    ])
      expect(places).toContain(place);
  });

  test.each(PLACES)('are told apart at every one: $place', ({ schema, path }) => {
    const reading = (value: string) => {
      const yaml = yamlAt(path, value).trimStart();
      const { troubles } = readYaml({ file: 'some.yaml', text: yaml }, yaml, 0, schema);
      return troubles.map(({ spot, message }) => [
        yaml.slice(spot.from, spot.to),
        message,
        rangeText(spot).split(':')[0],
      ]);
    };
    const depth = String(path.length - (path.length > 0 ? 0 : 1));
    expect(reading('Foo #1')).toStrictEqual([
      ['Foo #1', 'what follows # would be lost as a comment', depth],
    ]);
    expect(reading('Foo # one')).toStrictEqual([]);
    expect(reading('Foo#1')).toStrictEqual([]);
    expect(reading('"Foo #1"')).toStrictEqual([]);
  });

  test('a comment is kept out and its file is read', () => {
    const { card, faults } = readCard(`# first
---
`);
    expect([card, faults[0]?.rule]).toStrictEqual([undefined, 'front-matter']);
    const read = readCard(`---
# A comment of its own line.
number: "17" # as printed
name: Odalys Thrane\t# retitled
spoiler: open #
image: { file: art/b001.svg, alt: A pilot } # #1 of three
  # indented, and with a #tag
facts: # none yet
  Berth: Lock nine   # since the spring
credits: [{ role: Illustration, name: Tove Lindqvist }]
---
Words.
`);
    expect(read.faults).toStrictEqual([]);
    expect(read.card?.front).toStrictEqual({
      number: '17',
      name: 'Odalys Thrane',
      spoiler: 'open',
      image: { file: 'art/b001.svg', alt: 'A pilot' },
      facts: { Berth: 'Lock nine' },
      credits: [{ role: 'Illustration', name: 'Tove Lindqvist' }],
    });
  });
});
