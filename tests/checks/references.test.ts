import { describe, expect, test } from 'vitest';

import { check, type Files } from '../../pipeline/checks/index.js';
import { cardText, changed } from './change.js';
import { contentWith, lookAt, said } from './look.js';
import { keptDictionaries } from '../../pipeline/read/index.js';

const LAYOUT = `id: small
trim: { width: 63.5, height: 88.9 }
bleed: 3
safe: 3
fonts: { body: { package: "@fontsource/alegreya-sans", regular: files/alegreya-sans-latin-400-normal.woff } }
zones: { bio: { x: 5, y: 5, width: 50, height: 50, font: body, size: 7, leading: 9 }, legal: { x: 5, y: 80, width: 50, height: 4, font: body, size: 5, leading: 6 } }
front: { name: { x: 5, y: 5, width: 50, height: 50, font: body, size: 7, leading: 9 } }
shared: { bio: Water. }
`;
const plan = (...changes: readonly (readonly [string, string])[]): Files =>
  changed('one/plan.yaml', changes);
const card = (front: string): Files => ({
  'one/cards/base/a2.md': cardText(
    `number: "2"\nname: The Lamp\nstory: 1/4\nspoiler: open\n${front}`,
  ),
});
const back = { ...plan(['group: base', 'group: base, back: small']), 'backs/small.yaml': LAYOUT };

describe('id-unknown', () => {
  test.each<readonly [string, Files, string, string]>([
    ['the writer of a card', card('writer: jonas'), 'person', 'jonas'],
    [
      'the writer of a sales text',
      { 'one/sales/a.md': cardText('kind: web\ngoes: unset\nspoiler: open\nwriter: jonas') },
      'person',
      'jonas',
    ],
    ['a document', card('sources: [{ doc: script-4 }]'), 'document', 'script-4'],
    ['a cut', card('checkedAgainst: cut-6'), 'cut', 'cut-6'],
    [
      'the layout of a subset',
      { ...back, ...plan(['group: base', 'group: base, back: smal']) },
      'layout',
      'smal',
    ],
    ['the layout of a card', { ...back, ...card('back: smal') }, 'layout', 'smal'],
    [
      'a roster',
      plan([
        'numbers: { prefix: X-, from: 1, to: 1 }',
        'numbers: { prefix: X-, from: 1, to: 1 }, roster: rosters/a.yaml, carries: sketch, statement: Drawn by hand.',
      ]),
      'file',
      'rosters/a.yaml',
    ],
    [
      'the subsets of a parallel',
      plan(['totals', 'parallels: [{ id: a, title: A, of: [base, inserts, bass] }]\ntotals']),
      'subset',
      'bass',
    ],
    ['a zone for a text', { ...back, ...card('texts: { boi: Water }') }, 'zone', 'boi'],
    [
      'a zone for what a layout shares',
      { ...back, 'backs/small.yaml': LAYOUT.replace('shared: { bio', 'shared: { boi') },
      'zone',
      'boi',
    ],
    [
      'the font of a zone',
      { ...back, 'backs/small.yaml': LAYOUT.replace('font: body', 'font: bodi') },
      'font',
      'bodi',
    ],
    [
      'the subset of an approval',
      changed('property.yaml', [
        [
          'approvals: none',
          'approvals: [{ parts: [copy], roles: [licensor], where: { subset: [base, bass] } }]',
        ],
      ]),
      'subset',
      'bass',
    ],
    [
      'the group that a person sees',
      changed('people.yaml', [
        ['clearance: last', 'clearance: last, sees: { group: [inserts, insets] }'],
      ]),
      'group',
      'insets',
    ],
  ])('looks at %s', (_, files, what, id) => {
    const { findings } = lookAt(files, ['id-unknown']);
    expect(findings).toMatchObject([
      { rule: 'id-unknown', message: `there is no ${what} \`${id}\``, found: id },
    ]);
  });

  test('a card of a corrections file must be there', () => {
    const files = {
      'one/corrections.yaml':
        'corrections: [{ card: base/a9, at: "2027-07-01", was: a, now: b }]\n',
    };
    expect(lookAt(files).findings).toMatchObject([{ rule: 'id-unknown', found: 'base/a9' }]);
  });

  test('a variation is no parent', () => {
    const variation = (of: string, letter: string): string =>
      cardText(
        `number: "1"\nname: V\nspoiler: open\nvariation: { of: ${of}, letter: ${letter}, tell: lit }`,
      );
    const files = {
      'one/cards/base/v1.md': variation('base/a1', 'b'),
      'one/cards/base/v2.md': variation('base/v1', 'c'),
    };
    expect(lookAt(files).findings).toMatchObject([{ rule: 'id-unknown', found: 'base/v1' }]);
  });

  test('everything that is there passes', () => {
    const files: Files = {
      ...back,
      ...changed('property.yaml', [
        [
          'beats:',
          'cuts: [{ id: cut-6, received: "2026-07-20" }]\ndocuments: [{ id: script-4, title: S }]\nbeats:',
        ],
      ]),
      ...card(
        'writer: jonah\nback: small\ncheckedAgainst: cut-6\nsources: [{ doc: script-4 }]\ntexts: { name: Water }',
      ),
    };
    expect(said(lookAt(files).findings)).toStrictEqual([]);
  });

  test.each<readonly [string, Files, string]>([
    ['people', { 'people.yaml': 'people: x' }, 'schema people.yaml'],
    ['a layout', { ...back, 'backs/small.yaml': 'id: small' }, 'schema backs/small.yaml'],
    [
      'a roster',
      {
        ...plan([
          'numbers: { prefix: X-, from: 1, to: 1 }',
          'numbers: none, roster: rosters/a.yaml, carries: sketch, statement: Drawn by hand.',
        ]),
        'one/cards/extra/b1.md': null,
        'one/rosters/a.yaml': 'artists: x',
      },
      'schema one/rosters/a.yaml',
    ],
  ])('says nothing of ids that a broken file lists: %s', (_, files, expected) => {
    const all = { ...card('writer: jonas'), ...files };
    const rest = lookAt(files['people.yaml'] === undefined ? files : all).findings;
    expect(new Set(rest.map(({ rule, file }) => `${rule} ${file}`))).toStrictEqual(
      new Set([expected]),
    );
  });

  test('a parent that cannot be read is not missing', () => {
    const files = {
      'one/cards/base/a1.md': 'x',
      'one/cards/base/v1.md': cardText(
        'number: "1"\nname: V\nspoiler: open\nvariation: { of: base/a1, letter: b, tell: lit }',
      ),
    };
    expect(lookAt(files).findings.map(({ rule }) => rule)).toStrictEqual(['front-matter']);
  });
});

describe('path-outside', () => {
  const image = (path: string): Files => card(`image: { file: '${path}' }`);

  test.each([
    '../a.svg',
    'art/../../a.svg',
    '/etc/a.svg',
    'art\\a.svg',
    'C:/a.svg',
    'art//a.svg',
    './a.svg',
    'art/.',
  ])('refuses %s', (path) => {
    expect(lookAt(image(path)).findings).toMatchObject([{ rule: 'path-outside', found: path }]);
  });

  test.each(['art/a.svg', 'art/a..b.svg', 'art/.../a.svg', 'art/deep/er/a b.svg'])(
    'allows %s',
    (path) => {
      expect(lookAt({ ...image(path), [`one/${path}`]: '<svg/>' }).findings).toStrictEqual([]);
    },
  );

  test('looks at fonts and rosters', () => {
    const font = LAYOUT.replace('files/alegreya', '../files/alegreya');
    expect(
      said(
        lookAt({
          ...plan([
            'group: inserts',
            'group: inserts, roster: ../a.yaml, carries: sketch, statement: Drawn by hand.',
          ]),
        }).findings,
      ),
    ).toStrictEqual([
      'path-outside one/plan.yaml:8:56 this path leads out of its folder, or would on another machine',
    ]);
    const content = contentWith({ 'backs/small.yaml': font });
    expect(
      said(check(content, { fonts: new Map(), dictionaries: keptDictionaries }).findings),
    ).toStrictEqual([
      'path-outside backs/small.yaml:5:65 this path leads out of its folder, or would on another machine',
    ]);
  });
});
