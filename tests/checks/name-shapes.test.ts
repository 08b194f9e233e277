import { describe, expect, test } from 'vitest';

import type { Finding } from '../../schema/index.js';
import { changed } from './change.js';
import { lookAt } from './look.js';

/** Names of shapes that slip in ways of their own. */
const NAMES = `names:
  - { name: Thimble Quay, kind: place, level: open }
  - { name: Depth Charts, kind: title, match: exact, level: open }
  - { name: Candles, kind: place, match: exact, level: open }
  - { name: Wulin van der Tynfael, kind: character, level: open }
  - { name: Veresín de la Mirodan, kind: character, level: open }
  - { name: Queen of the Underpier, kind: character, level: open }
  - { name: Guy d’Arnaud, kind: character, level: open }
  - { name: Nuala O’Shaughran, kind: character, level: open }
  - { name: Dr. Wen Asbury, kind: character, level: open }
  - { name: St. Orrin’s Steps, kind: place, level: open }
  - { name: Isle of Lesser Bells, kind: place, level: open }
  - { name: Quick Silver, kind: craft, level: open }
  - { name: Nell, kind: character, level: open }
  - { name: Skoll, kind: character, level: open }
  - { name: Miss Hettle, kind: character, avoid: [{ form: Aunt Hettle, use: Miss Hettle }], level: open }
`;

const RULES = ['name-near', 'name-avoided', 'name-unknown'];

/** The bio with every fix in its place, and what was found in it. */
function looked(bio: string): { readonly found: readonly Finding[]; readonly mended: string } {
  const files = changed('one/cards/base/a2.md', [['A lamp that nobody lit is burning.', bio]]);
  const { findings } = lookAt({ ...files, 'names.yaml': NAMES }, RULES);
  const lines = (files['one/cards/base/a2.md'] ?? '').split('\n');
  const at = (line: number, column: number): number =>
    lines.slice(0, line - 1).reduce((sum, each) => sum + each.length + 1, 0) + column - 1;
  const whole = findings.toReversed().reduce((text, each) => {
    const [from, to] = [at(each.line, each.column), at(each.endLine, each.endColumn)];
    return text.slice(0, from) + (each.fix ?? '[?]') + text.slice(to);
  }, lines.join('\n'));
  return { found: findings, mended: whole.split('---\n').slice(2).join('---\n').trimEnd() };
}

describe('a slip of a name is mended', () => {
  test.each([
    ['split by a space', 'All boats lie at Thim ble Quay today.', 'Thimble Quay'],
    ['split and possessive', 'The lamps of Guy d’Arn aud’s shed.', 'Guy d’Arnaud’s'],
    ['split at its apostrophe', 'They sent Nuala O ’Shaughran home.', 'Nuala O’Shaughran'],
    ['one word in capitals, exact', 'They read DEPTH Charts at night.', 'Depth Charts'],
    ['capitals within, exact', 'All went to CandLes at night.', 'Candles'],
    ['a wrong small word', 'They met Wulin van den Tynfael there.', 'Wulin van der Tynfael'],
    [
      'a wrong small word, plural',
      'The Queen off the Underpier’s hat.',
      'Queen of the Underpier’s',
    ],
    ['an article in its place', 'They met Veresín de le Mirodan there.', 'Veresín de la Mirodan'],
    ['a small first letter before a particle', 'They met guy d’Arnaud there.', 'Guy d’Arnaud'],
    ['parts swapped about a particle', 'They met d’Arnaud Guy there.', 'Guy d’Arnaud'],
    ['a title without its stop', 'They met Dr Wen Asbury there.', 'Dr. Wen Asbury'],
    ['a slip behind a stop', 'They sat on St. Orin’s Steps there.', 'St. Orrin’s Steps'],
    ['no plural of what is right', 'They saw Isl of Lesser Bells there.', 'Isle of Lesser Bells'],
    ['joined, with its capital', 'They saw QuickSilver there.', 'Quick Silver'],
    ['capitals that a dictionary knows', 'They met NELL there.', 'Nell'],
    ['a plural that is none', 'All went to Candless at night.', 'Candles'],
    ['over a line end', 'They met Wulin van der\nTynfale there.', 'Wulin van der\nTynfael'],
    ['over a hard line end', 'They met Wulin van der\\\nTynfale there.', 'van der\\\nTynfael'],
    ['over markup', 'They met Guy *d’Arnuad* there.', 'Guy *d’Arnaud*'],
    ['avoided, over a line end', 'They met Aunt\nHettle’s cat.', 'Miss\nHettle’s'],
    ['exact, first in its sentence', 'It is late. Candels is asleep.', 'Candles'],
  ])('%s: %s', (_, bio, right) => {
    const { found, mended } = looked(bio);
    expect(found).toHaveLength(1);
    expect(mended).toContain(right);
  });
});

describe('what is right stays', () => {
  test.each([
    'NELL!\\\nIt is late.',
    '‘SKOLL!’ they call. ‘Come home!’',
    'They met Nell–Skoll quarrels there.',
    'It is late. Depth charts of the lake hang here.',
    'Some candles are lit, and depth charts dry.',
    'They met Dr. Wen Asbury’s cat on St. Orrin’s Steps.',
    'A quick silver fish, and a thimble quay.',
    'They met Nell. Skoll was away.',
    'Thimble\nQuay and the *Quick Silver*.',
  ])('%s', (bio) => {
    expect(looked(bio).found).toEqual([]);
  });
});
