import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import {
  countGraphemes,
  editDistance,
  endsSentence,
  hiddenCharacters,
  mixedWords,
  nearest,
  sayCharacter,
} from '../../pipeline/text/index.js';

describe('editDistance', () => {
  // kitten/sitting and saturday/sunday: the textbook values of Levenshtein distance (Wagner and
  // Fischer 1974). CA/ABC: 2 in the unrestricted form of Lowrance and Wagner (1975), 3 in the other.
  test.each([
    ['kitten', 'sitting', 3],
    ['saturday', 'sunday', 3],
    ['CA', 'ABC', 2],
    ['laetr', 'later', 1],
    ['', 'abc', 3],
    ['abc', 'abc', 0],
  ])('%s and %s: %i', (a, b, distance) => {
    expect(editDistance(a, b)).toBe(distance);
  });

  const words = fc.string({ maxLength: 7, unit: fc.constantFrom('a', 'b', 'c') });
  test('is a metric', () => {
    fc.assert(
      fc.property(words, words, words, (a, b, c) => {
        expect(editDistance(a, b)).toBe(editDistance(b, a));
        expect(editDistance(a, b) === 0).toBe(a === b);
        expect(editDistance(a, c)).toBeLessThanOrEqual(editDistance(a, b) + editDistance(b, c));
      }),
    );
  });

  test('one edit away is at most 1', () => {
    fc.assert(
      fc.property(words, fc.nat(), fc.constantFrom('a', 'b', 'c'), (word, place, letter) => {
        const at = word.length === 0 ? 0 : place % word.length;
        expect(editDistance(word, word.slice(0, at) + letter + word.slice(at))).toBe(1);
        expect(editDistance(word, word.slice(0, at) + word.slice(at + 1))).toBeLessThanOrEqual(1);
        const swapped =
          word.slice(0, at) +
          word
            .slice(at, at + 2)
            .split('')
            .reverse()
            .join('') +
          word.slice(at + 2);
        expect(editDistance(word, swapped)).toBeLessThanOrEqual(1);
      }),
    );
  });
});

describe('nearest', () => {
  test.each([
    ['laetr', ['open', 'later', 'last'], 'later'],
    ['Jonah', ['jonah'], 'jonah'],
    ['xyz', ['open', 'later'], null],
    ['ab', ['cd'], null],
    ['a', [], null],
  ])('%s among %j: %s', (typed, among, found) => {
    expect(nearest(typed, among)).toBe(found);
  });
});

describe('countGraphemes', () => {
  // Clusters of UAX 29: a base with its marks, a Hangul syllable, joined emoji, a flag, CR LF.
  test.each([
    ['', 0],
    ['lake', 4],
    ['e\u0301\u0323', 1],
    ['\u1112\u1161\u11ab', 1],
    ['👩\u200d🚒', 1],
    ['🇬🇧🇦🇺', 2],
    ['\r\n', 1],
  ])('%j: %i', (text, count) => {
    expect(countGraphemes(text)).toBe(count);
  });
});

describe('hiddenCharacters', () => {
  test.each([
    '\u0000',
    '\u0007',
    '\u001b',
    '\u007f',
    '\u0085',
    '\u00ad',
    '\u034f',
    '\u061c',
    '\u115f',
    '\u180e',
    '\u200b',
    '\u200c',
    '\u200d',
    '\u200e',
    '\u200f',
    '\u2028',
    '\u2029',
    '\u202a',
    '\u202e',
    '\u2060',
    '\u2066',
    '\u2069',
    '\u3164',
    '\ufe0f',
    '\ufeff',
    '\uffa0',
    '\u{e0041}',
    '\u{e0100}',
    '\ud800',
  ])('%j does not show', (character) => {
    expect(hiddenCharacters(`ab${character}c`)).toStrictEqual([{ at: 2, character }]);
  });

  test.each([
    'Plain text, “quoted” – and more… £5 №3',
    'Tab\tand line\r\nends\n',
    'A no-break\u00a0space and a thin\u2009one',
    'e\u0301 and ё and 東京',
    '👩\u200d🚒 ❤\ufe0f 1\ufe0f\u20e3',
    'می\u200cخواهم क\u094d\u200dष',
  ])('%j shows whole', (text) => {
    expect(hiddenCharacters(text)).toStrictEqual([]);
  });

  test('are found wherever they stand', () => {
    const noise = fc.array(
      fc.record({
        text: fc.string({ unit: 'grapheme-ascii', maxLength: 6 }),
        hidden: fc.constantFrom('\u200b', '\u202e', '\u2060', '\u{e0041}'),
      }),
    );
    fc.assert(
      fc.property(noise, (parts) => {
        const text = parts.map((part) => part.text + part.hidden).join('');
        expect(hiddenCharacters(text).map(({ character }) => character)).toStrictEqual(
          parts.map(({ hidden }) => hidden),
        );
        for (const { at, character } of hiddenCharacters(text)) {
          expect(text.slice(at, at + character.length)).toBe(character);
        }
      }),
    );
  });

  test.each([
    ['\u202e', 'U+202E, right-to-left override'],
    ['\u0007', 'U+0007, control character'],
    ['\u{e0041}', 'U+E0041'],
  ])('%j is called %s', (character, name) => {
    expect(sayCharacter(character)).toBe(name);
  });
});

describe('mixedWords', () => {
  test.each([
    ['Od\u0430lys', ['Latin', 'Cyrillic'], '\u0430'],
    ['H\u0435r\u043en', ['Latin', 'Cyrillic'], '\u0435\u043e'],
    ['\u041e\u0434\u0430lys'.slice(0, 4), ['Cyrillic', 'Latin'], 'l'],
    ['\u039fdalys', ['Latin', 'Greek'], '\u039f'],
    ['Pell’\u0455', ['Latin', 'Cyrillic'], '\u0455'],
  ])('%s mixes %j', (word, scripts, odd) => {
    expect(mixedWords(`The ${word} burns.`)).toStrictEqual([{ at: 4, word, scripts, odd }]);
  });

  test.each([
    'Odalys Thrane',
    'Одалис и Odalys',
    'φως – light',
    'naïve Ærø Łódź',
    '東京 Tokyo',
    'ФИО-1 X-1',
  ])('%s is no mixture', (text) => {
    expect(mixedWords(text)).toStrictEqual([]);
  });
});

describe('endsSentence', () => {
  test.each([
    '',
    '  ',
    'It hums.',
    'It hums!',
    'Does it?',
    'It hums… ',
    'She said “Go.”',
    'It hums.)',
    'So it was I.',
  ])('%j ends one', (text) => {
    expect(endsSentence(text)).toBe(true);
  });
  test.each([
    'It hums',
    'It hums,',
    'Mr.',
    'They sent for Dr. ',
    'Thrane, O.',
    'It hums;',
    'a “lamp”',
    'It hums:',
  ])('%j does not', (text) => {
    expect(endsSentence(text)).toBe(false);
  });
});
