import { describe, expect, test } from 'vitest';

import {
  countGroup,
  countSubset,
  countableKind,
  plannedCount,
  realCount,
} from '../../pipeline/model/index.js';
import { contentWith } from '../read/support.js';

const card = (more: string) => `---\nname: Pim\nspoiler: open\n${more}\n---\nWords.\n`;

/** Base: three cards, one of them pulled, and a variation; two artists of three in a roster. */
const [SET] = contentWith({
  'quay/plan.yaml': `id: quay
title: The Quay
spoiler: open
stage: writing
subsets:
  - { id: base, title: Base, group: base, numbers: { from: 1, to: 5 } }
  - { id: charts, title: Charts, group: inserts, numbers: { codes: [LC-1, LC-2] } }
  - { id: letters, title: Letters, group: inserts, numbers: none }
  - { id: sketches, title: Sketches, group: art, numbers: none, roster: rosters/sketches.yaml }
  - { id: lost, title: Lost, group: art, numbers: none, roster: rosters/lost.yaml }
totals:
  base: 9
  loose: 4
  set: { of: [base, inserts], is: 5 }
  all: { of: [set, sketches], is: 7 }
  round: { of: [square], is: 1 }
  square: { of: [base, round], is: 1 }
  self: { of: [self, base], is: 1 }
  odd: { of: [base, nothing], is: 1 }
  none: { is: 1 }
`,
  'quay/cards/base/b001.md': card('number: "1"'),
  'quay/cards/base/b001b.md': card(
    'number: "1"\nvariation: { of: base/b001, letter: b, tell: lamp }',
  ),
  'quay/cards/base/b002.md': card('number: "2"\nissued: "no"'),
  'quay/cards/base/b003.md': card('number: "3"\nissued: "yes"'),
  'quay/cards/charts/c1.md': card('number: LC-1'),
  'quay/rosters/sketches.yaml':
    'artists: [{ name: Tove Lindqvist, state: signed }, { name: Bram Ostler, state: withdrawn }, { name: Pip Castellane, state: asked }]',
}).sets;
if (!SET) throw new Error('the set was not read');

describe('counts', () => {
  test.each([
    ['base', 2],
    ['charts', 1],
    ['letters', 0],
    ['sketches', 2],
    ['lost', 0],
    ['nothing', 0],
  ])('of the subset %s are %d', (id, count) => {
    expect(countSubset(SET, id)).toBe(count);
  });

  test.each([
    ['base', 2],
    ['inserts', 1],
    ['art', 2],
    ['nothing', 0],
  ])('of the group %s are %d', (group, count) => {
    expect(countGroup(SET, group)).toBe(count);
  });

  test.each([
    ['base', 'subset', 2],
    ['charts', 'subset', 1],
    ['inserts', 'group', 1],
    ['set', 'total', 3],
    ['all', 'total', 5],
    ['loose', 'total', null],
    ['none', 'total', null],
    ['odd', 'total', null],
    // A total that counts itself counts nothing, and ends.
    ['self', 'total', null],
    ['round', 'total', null],
    ['square', 'total', null],
    ['nothing', null, null],
    ['constructor', null, null],
    ['toString', null, null],
  ])('by the name %s: a %s of %s', (name, kind, count) => {
    expect(countableKind(SET, name)).toBe(kind);
    expect(realCount(SET, name)).toBe(count);
  });

  test.each([
    ['base', 5],
    ['charts', 2],
    ['letters', null],
    ['nothing', null],
  ])('that the plan gives numbers to in %s are %s', (id, count) => {
    expect(plannedCount(SET, id)).toBe(count);
  });
});
