import { describe, expect, test } from 'vitest';

import type { Files } from '../../pipeline/checks/index.js';
import { cardText, changed } from './change.js';
import { lookAt, said } from './look.js';

const FRONT = 'number: X-1\nname: The Chart\nspoiler: open';
const bio = (text: string): Files => ({ 'one/cards/extra/b1.md': cardText(FRONT, text) });

describe('control-character', () => {
  test.each<readonly [string, Files]>([
    ['a bio', bio('Ink and a thumb\u202eprint.')],
    ['a bio, as an entity', bio('Ink and a thumb&#x202e;print.')],
    [
      'a name, as an escape',
      changed('one/cards/extra/b1.md', [['The Chart', '"The \\u202eChart"']]),
    ],
    ['a comment', changed('one/plan.yaml', [['title: One', 'title: One # \u202e']])],
    ['a plan', changed('one/plan.yaml', [['title: One', 'title: O\u202ene']])],
    ['the property', changed('property.yaml', [['The Lake', 'The \u202eLake']])],
    ['a person', changed('people.yaml', [['Prewett', 'Pre\u202ewett']])],
    [
      'a name',
      { 'names.yaml': 'names: [{ name: "Od\\u202ealys", kind: character, level: open }]\n' },
    ],
    [
      'a sales text',
      {
        'one/sales/a.md': cardText(
          'kind: web\ngoes: unset\nspoiler: open',
          'W\u202eater.\n\n© 2027 Lantern & Oar',
        ),
      },
    ],
  ])('looks at %s', (_, files) => {
    expect(lookAt(files, ['control-character']).findings).toMatchObject([
      { rule: 'control-character', found: 'U+202E, right-to-left override' },
    ]);
  });

  test('neighbours are one finding, and its fix takes them out', () => {
    expect(lookAt(bio('Ink and\u200b\u2060 a thumbprint.')).findings).toMatchObject([
      { found: 'U+200B, zero width space; U+2060, word joiner', fix: '', endColumn: 10 },
    ]);
  });

  test('a soft hyphen stands in a bio alone', () => {
    expect(lookAt(bio('Ink and a thumb\u00adprint, a thumb&shy;print.')).findings).toStrictEqual(
      [],
    );
    const name = changed('one/cards/extra/b1.md', [['The Chart', 'The Ch\u00adart']]);
    expect(lookAt(name).findings).toMatchObject([
      { rule: 'control-character', found: 'U+00AD, soft hyphen' },
    ]);
    const sales = {
      'one/sales/a.md': cardText(
        'kind: web\ngoes: unset\nspoiler: open',
        'Wa\u00adter.\n\n© 2027 Lantern & Oar',
      ),
    };
    expect(lookAt(sales, ['control-character']).findings).toMatchObject([
      { rule: 'control-character' },
    ]);
  });
});

describe('mixed-script', () => {
  test.each<readonly [string, Files]>([
    ['a bio', bio('Ink and a thumbpr\u0456nt.')],
    ['a bio, as an entity', bio('Ink and a thumbpr&#x456;nt.')],
    ['a bio, half of it emphasis', bio('Ink and a thumb*pr\u0456nt*.')],
    [
      'a name, as an escape',
      changed('one/cards/extra/b1.md', [['The Chart', '"The thumbpr\\u0456nt"']]),
    ],
    [
      'an alias',
      {
        'names.yaml':
          'names: [{ name: Odalys, kind: character, level: open, aliases: [thumbpr\u0456nt] }]\n',
      },
    ],
  ])('looks at %s', (_, files) => {
    const { findings } = lookAt(files);
    expect(findings[0]).toMatchObject({
      rule: 'mixed-script',
      message: expect.stringContaining(
        'mixes Latin and Cyrillic letters: \u0456 is U+0456',
      ) as unknown,
    });
  });
});

describe('the length of a bio', () => {
  const bounds = (text: string): Files =>
    changed('one/plan.yaml', [
      ['bio: { words: { min: 3, max: 20 }, characters: { max: 90 } }', `bio: ${text}`],
    ]);

  test.each([
    ['{ words: { min: 3 } }', 'A, b.', ['the bio is too short by 1 word']],
    ['{ words: { max: 3 } }', 'A b c d e.', ['the bio is too long by 2 words']],
    ['{ words: { min: 3, max: 3 } }', 'A – b c.', []],
    ['{ characters: { max: 5 } }', 'Água.', []],
    ['{ characters: { max: 5 } }', 'A\u0301guas.', ['the bio is too long by 1 character']],
    ['{ characters: { max: 3 } }', '👩‍🚒 a', []],
    ['{ characters: { max: 4 } }', 'ab\n\ncd', []],
    ['{ characters: { max: 4 } }', 'ab\\\ncd', ['the bio is too long by 1 character']],
    ['none', 'Ink.', ['there are words here, and the card is to have no bio']],
  ])('%s: %j', (stated, text, messages) => {
    const { findings } = lookAt({ ...bounds(stated), ...bio(text) }, [
      'copy-words',
      'copy-characters',
    ]);
    expect(findings.map(({ message }) => message)).toStrictEqual(messages);
  });

  test('held words count: they print', () => {
    const files = { ...bounds('{ words: { max: 3 } }'), ...bio('A [b c](held:later) d.') };
    expect(lookAt(files).findings).toMatchObject([{ rule: 'copy-words', found: '4 words' }]);
  });

  test('a card that is not issued needs none, nor one on a blank back', () => {
    const empty = `---\n${FRONT}\nissued: "no"\n---\n`;
    const fewer = changed('one/plan.yaml', [
      ['inserts: 1', 'inserts: 0'],
      ['is: 3', 'is: 2'],
    ]);
    expect(said(lookAt({ ...fewer, 'one/cards/extra/b1.md': empty }).findings)).toStrictEqual([]);
    const blank = {
      ...changed('one/plan.yaml', [['group: inserts', 'group: inserts, back: none']]),
      'one/cards/extra/b1.md': `---\n${FRONT}\n---\n`,
      'backs/none.yaml':
        'id: none\ntrim: { width: 63.5, height: 88.9 }\nbleed: 3\nsafe: 3\nfonts: { body: { package: "@fontsource/alegreya-sans", regular: files/alegreya-sans-latin-400-normal.woff } }\nzones: {}\nblank: true\n',
    };
    expect(said(lookAt(blank).findings)).toStrictEqual([]);
  });
});
