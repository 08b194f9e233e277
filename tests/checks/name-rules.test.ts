import { describe, expect, test } from 'vitest';

import type { Files } from '../../pipeline/checks/index.js';
import { changed } from './change.js';
import { lookAt } from './look.js';

const NAMES = `performers: [signers, credits]
words: [ferrywright]
names:
  - { name: Ysolde Marrack, kind: character, aliases: [Ysolde], level: later, avoid: [{ form: Miss Marrack, use: Ysolde }] }
  - { name: Emeric Hask, kind: character, aliases: [Emeric], level: open }
  - { name: Patient Heron, kind: craft, aliases: [Heron], style: italic, level: open }
  - { name: Ines Albarran, kind: performer, billing: full, level: open }
  - { name: Rhosyn Pike, kind: maker, billing: full, aliases: [Rhosyn], level: open }
`;

const RULES = [
  'leak',
  'name-avoided',
  'name-near',
  'name-style',
  'name-unknown',
  'name-varies',
  'signer-withdrawn',
];

/** What is found in a bio: rule, words, and what to put there. */
function found(bio: string, over: Files = {}): readonly string[] {
  const files = {
    'names.yaml': NAMES,
    ...changed('one/cards/base/a2.md', [['A lamp that nobody lit is burning.', bio]]),
    ...over,
  };
  const { findings } = lookAt(files, RULES);
  return findings.map(({ rule, found: words, fix }) =>
    [rule, (words ?? '').split(':')[0], ...(fix === undefined ? [] : [`→ ${fix}`])].join(' '),
  );
}

describe('one place, one finding', () => {
  test.each([
    ['A lamp that Isolde lit is burning.', ['leak Isolde']],
    ['A lamp that Ysolde lit is burning.', ['leak Ysolde']],
    ['A lamp that Miss Marrack lit is burning.', ['leak Miss Marrack']],
    ['A lamp that Emerik Hask lit.', ['name-near Emerik Hask → Emeric Hask']],
  ])('%s', (bio, all) => {
    expect(found(bio)).toEqual(all);
  });
});

describe('names that nothing explains', () => {
  test.each([
    ['A lamp that Corvin Dray lit.', ['name-unknown Corvin Dray']],
    ['A lamp that Captain Corvin lit.', ['name-unknown Corvin']],
    ['A lamp that Corvin van Dray lit.', ['name-unknown Corvin van Dray']],
    ['A lamp of Corvin’s. Then Corvin’s lamp.', ['name-unknown Corvin']],
    ['A lamp on Amber Hook is lit.', ['name-unknown Amber Hook']],
    ['A lamp in London, on Friday, of the French in April.', []],
    ['A lamp for the Captain, for God and for New York.', []],
    ['A lamp that a ferrywright lit in The Quay.', []],
    ['“Come here,” it says. LOOK AT THAT. It is on TV.', []],
    ['A lamp that Jonah Prewett lit for Emeric.', []],
  ])('%s', (bio, all) => {
    expect(found(bio)).toEqual(all);
  });
});

describe('how names are set', () => {
  const BOAT = 'name-style Patient Heron';
  test.each([
    ['The *Patient Heron*’s lamp and the *Heron*.', []],
    ['The Patient Heron’s lamp.', ['name-style Patient Heron’s → *Patient Heron*']],
    ['The *Patient* Heron has a lamp.', [`${BOAT} → *Patient Heron*`]],
    ['The *Patient Heron has* a lamp.', [`${BOAT} → *Patient Heron* has`]],
    ['*A lamp that the Patient Heron has is lit.*', [BOAT]],
    ['*A lamp that the* Patient Heron *has is lit.*', []],
    ['A lamp that *Emeric* lit.', ['name-style Emeric → Emeric']],
    ['A lamp *that Emeric lit once.*', []],
    ['A lamp that Pike lit.', ['name-style Pike → Rhosyn Pike']],
    ['Pike in the lake.', []],
    ['A lamp that Rhosyn lit.', ['name-style Rhosyn → Rhosyn Pike']],
    ['A lamp that R. Pike’s hand lit.', ['name-style R. Pike’s → Rhosyn Pike’s']],
    ['A lamp that Ines Albarran lit.', ['name-style Ines Albarran']],
  ])('%s', (bio, all) => {
    expect(found(bio)).toEqual(all);
  });
});

describe('where a fix is given', () => {
  test('in a quoted value, for just what is typed', () => {
    const over = changed('one/cards/extra/b1.md', [
      ['spoiler: open', 'spoiler: open\nfacts: { Keeper: "of emeric Hask" }'],
    ]);
    expect(found('A lamp.', over)).toEqual(['name-near emeric Hask → Emeric Hask']);
  });

  test('not in a value that is escaped', () => {
    const over = changed('one/cards/extra/b1.md', [
      ['spoiler: open', 'spoiler: open\nfacts: { Keeper: "of emeric\\x20Hask" }'],
    ]);
    expect(found('A lamp.', over)).toEqual(['name-near emeric Hask']);
  });
});

describe('spellings', () => {
  const credit = (file: string, name: string): Files =>
    changed(file, [['spoiler: open', `spoiler: open\ncredits: [{ role: Ink, name: ${name} }]`]]);

  test('of a credit are compared with running copy', () => {
    const over = credit('one/cards/base/a1.md', 'Anselm Birk');
    expect(found('A lamp that Anselm Byrk lit.', over)).toEqual([
      'name-varies Anselm Byrk → Anselm Birk',
    ]);
  });

  test('of a listed name are no business of it', () => {
    const over = credit('one/cards/base/a1.md', 'Rhosin Pike');
    expect(found('A lamp.', over)).toEqual(['name-near Rhosin Pike → Rhosyn Pike']);
  });

  test('of two whose words are right are two', () => {
    const over = credit('one/cards/base/a1.md', 'Tim Brook');
    expect(found('A lamp.', { ...over, ...credit('one/cards/extra/b1.md', 'Tom Brook') })).toEqual(
      [],
    );
  });
});

describe('who withdrew', () => {
  const roster: Files = {
    'one/rosters/ink.yaml':
      'artists:\n  - { name: Hamish Tarrow, state: withdrawn }\n  - { name: Lioba Stam, state: signed }\n',
    ...changed('one/plan.yaml', [['group: inserts,', 'group: inserts, roster: rosters/ink.yaml,']]),
  };
  test.each([
    ['A lamp that Hamish Tarrow drew.', ['signer-withdrawn Hamish Tarrow']],
    ['A lamp that Lioba Stam drew.', []],
  ])('%s', (bio, all) => {
    expect(found(bio, roster)).toEqual(all);
  });
});
