import { describe, expect, test } from 'vitest';

import { spotOf } from '../../pipeline/model/index.js';
import { CARD, contentWith, rangeText, told } from '../read/support.js';

const PLAN = `format: 1
id: quay
title: The Quay
spoilr: open
stage: wrting
street: { uk: "2027-04-16T09:00:00+02:00[Europe/London]" }
subsets:
  - { id: base, title: Base, group: base, numbers: { from: 1, to: 3 } }
  - id: Extra
    title: ""
    numbers: { from: one, to: 3 }
    bio:
      words: { mni: 3 }
  - { id: codes, title: Codes, group: g, numbers: some }
totals:
  base: 3
  Inserts: 4
  all: { of: [], is: 3, "a/b~c": 1, "~1": 2 }
`;

const NAMES = `names:
- name: Patient Heron 🚢
  kind: boat
  aliases: [Heron, { form: 🚢🚢, levle: open }, []]
  levels: open
`;

const CARD_TEXT = `---
number: "1"
nmae: Pim
spoiler: open
signers: [{ name: Ines Albarran, state: sigend }]
# 🚢 a comment
image: { file: art/b001.svg, depicts: [Pim, ""] }
facts: { "~1": "", "a/b": "", "~0/": "" }
---
Words.
`;

/** Findings of the three files, the same for every way of ending lines and with a mark before. */
const EXPECTED = [
  ['names.yaml', '2:3-7', 'schema', 'the key `level` is missing in `names.0`', 'name'],
  ['names.yaml', '3:9-13', 'schema', '`names.0.kind` has a value that is not allowed', 'boat'],
  [
    'names.yaml',
    '4:34-39',
    'unknown-key',
    'there is no key `levle` in `names.0.aliases.1`',
    'levle',
  ],
  ['names.yaml', '4:49-51', 'schema', '`names.0.aliases.2` has a value that is not allowed', '[]'],
  ['names.yaml', '5:3-9', 'unknown-key', 'there is no key `levels` in `names.0`', 'levels'],
  [CARD, '2:1-7', 'schema', 'the key `name` is missing', 'number'],
  [CARD, '3:1-5', 'unknown-key', 'there is no key `nmae`', 'nmae'],
  [CARD, '5:41-47', 'schema', '`signers.0.state` has a value that is not allowed', 'sigend'],
  [CARD, '7:45-47', 'schema', '`image.depicts.1` is empty', '""'],
  [CARD, '8:16-18', 'schema', '`facts.~1` is empty', '""'],
  [CARD, '8:27-29', 'schema', '`facts.a/b` is empty', '""'],
  [CARD, '8:38-40', 'schema', '`facts.~0/` is empty', '""'],
  ['quay/plan.yaml', '1:1-7', 'schema', 'the key `spoiler` is missing', 'format'],
  ['quay/plan.yaml', '4:1-7', 'unknown-key', 'there is no key `spoilr`', 'spoilr'],
  ['quay/plan.yaml', '5:8-14', 'schema', '`stage` has a value that is not allowed', 'wrting'],
  [
    'quay/plan.yaml',
    '6:15-57',
    'schema',
    '`street.uk` is no instant: its offset is +02:00, but Europe/London is at +01:00 then',
    '"2027-04-16T09:00:00+02:00[Europe/London]"',
  ],
  ['quay/plan.yaml', '9:5-7', 'schema', 'the key `group` is missing in `subsets.1`', 'id'],
  ['quay/plan.yaml', '9:9-14', 'schema', '`subsets.1.id` has a value that is not allowed', 'Extra'],
  ['quay/plan.yaml', '10:12-14', 'schema', '`subsets.1.title` is empty', '""'],
  [
    'quay/plan.yaml',
    '11:22-25',
    'schema',
    '`subsets.1.numbers.from` has a value that is not allowed',
    'one',
  ],
  [
    'quay/plan.yaml',
    '13:16-19',
    'unknown-key',
    'there is no key `mni` in `subsets.1.bio.words`',
    'mni',
  ],
  [
    'quay/plan.yaml',
    '14:51-55',
    'schema',
    '`subsets.2.numbers` has a value that is not allowed',
    'some',
  ],
  ['quay/plan.yaml', '17:3-10', 'unknown-key', 'there is no key `Inserts` in `totals`', 'Inserts'],
  ['quay/plan.yaml', '18:14-16', 'schema', '`totals.all.of` is an empty list', '[]'],
  [
    'quay/plan.yaml',
    '18:25-32',
    'unknown-key',
    'there is no key `a/b~c` in `totals.all`',
    '"a/b~c"',
  ],
  ['quay/plan.yaml', '18:37-41', 'unknown-key', 'there is no key `~1` in `totals.all`', '"~1"'],
].map((row) => row.join(' | '));

describe('every fault of every file is said at the key or value itself', () => {
  const bytes = (text: string, end: string, mark: string) =>
    new TextEncoder().encode(mark + text.replaceAll('\n', end));

  test.each([
    ['LF', '\n', ''],
    ['CRLF', '\r\n', ''],
    ['LF after a byte order mark', '\n', '\ufeff'],
    ['CRLF after a byte order mark', '\r\n', '\ufeff'],
  ])('with %s', (_, end, mark) => {
    const { faults } = contentWith({
      'names.yaml': bytes(NAMES, end, mark),
      'quay/plan.yaml': bytes(PLAN, end, mark),
      [CARD]: bytes(CARD_TEXT, end, mark),
    });
    const rows = faults.map(({ spot, ...fault }) => {
      const { rule, at, message } = told({ spot, ...fault });
      const [file = '', ...place] = at.split(/:(?=\d)/);
      const covered = spot.source.text.slice(spot.from, spot.to);
      return [file, place.join(':'), rule, message, covered].join(' | ');
    });
    expect(rows.toSorted(byPlace)).toStrictEqual(EXPECTED.toSorted(byPlace));
  });
});

function byPlace(a: string, b: string): number {
  return a.localeCompare(b, 'en', { numeric: true });
}

describe('the place of a path', () => {
  const file = { file: 'some.yaml', text: 'a: { b: [x, { c: y }] }\nd:\ne: z\n' };
  const at = (path: (string | number)[], what?: 'key' | 'value') => {
    const spot = spotOf(file, path, what);
    return `${rangeText(spot)} ${file.text.slice(spot.from, spot.to)}`;
  };

  test.each<[(string | number)[], 'key' | 'value', string]>([
    [['a', 'b', 0], 'value', '1:10-11 x'],
    [['a', 'b', 1, 'c'], 'value', '1:18-19 y'],
    [['a', 'b', 1, 'c'], 'key', '1:15-16 c'],
    [['a', 'b', '1', 'c'], 'value', '1:18-19 y'],
    [['a', 'b'], 'key', '1:6-7 b'],
    // Keys are too many words to point at: the first stands for them.
    [['a'], 'value', '1:6-7 b'],
    [[], 'value', '1:1-2 a'],
    [['d'], 'value', '2:3-3 '],
    // What is not there is looked for above.
    [['e', 'f', 'g'], 'value', '3:4-5 z'],
    [['nothing'], 'value', '1:1-2 a'],
    [['a', 'b', 7], 'value', '1:9-22 [x, { c: y }]'],
  ])('%j, %s', (path, what, expected) => {
    expect(at(path, what)).toBe(expected);
  });

  test('lies below the first fence of a card', () => {
    const card = { file: 'a.md', text: '---\r\nname: Pim\r\n---\r\nname: Words\r\n' };
    expect(rangeText(spotOf(card, ['name']))).toBe('2:7-10');
  });

  test('is found whichever way a letter is written', () => {
    const odd = { file: 'some.yaml', text: '"e\u0301": x' };
    expect(spotOf(odd, ['\u00e9'])).toMatchObject({ from: 6, to: 7 });
  });

  test('of nothing is the start', () => {
    expect(spotOf({ file: 'some.yaml', text: '' }, ['a'])).toMatchObject({ from: 0, to: 0 });
  });
});
