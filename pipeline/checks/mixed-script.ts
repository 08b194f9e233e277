import { mixedWords, type MixedWord } from '../text/index.js';
import type { Remark, Rule } from './rule.js';
import { edited } from './sample.js';
import { scan, type Hit } from './scan.js';

/** A word that mixes letters of scripts which look alike. */
export const mixedScript: Rule = {
  id: 'mixed-script',
  about: 'copy',
  severity: 'error',
  why: 'A letter of another script is set in another font, and no search finds the word.',
  offends: (text) => mixedWords(text).length > 0,
  look: (subject) =>
    [...scan(subject, hits)].map(({ spot, words }) => remarkOn(spot, mixedWords(words)[0])),
  examples: {
    passes: [
      {
        says: 'a word all in Greek',
        files: edited('one/cards/base/a2.md', ['burning', 'burning: φως']),
      },
      { says: 'accents', files: edited('one/cards/base/a2.md', ['burning', 'naïve']) },
    ],
    fails: [
      {
        says: 'a Cyrillic letter in a Latin name',
        files: edited('one/cards/base/a2.md', ['The Lamp', 'The L\u0430mp']),
        gives: {
          at: 'one/cards/base/a2.md:3:11',
          covers: 'L\u0430mp',
          message: '`L\u0430mp` mixes Latin and Cyrillic letters: \u0430 is U+0430',
          found: 'L\u0430mp',
          expected: 'letters of one script',
        },
      },
    ],
  },
};

function hits(text: string): Hit[] {
  return mixedWords(text).map(({ at, word }) => ({ at, words: word }));
}

function remarkOn(spot: Remark['spot'], mixed: MixedWord | undefined): Remark {
  const { word = '', scripts = [], odd = '' } = mixed ?? {};
  const letters = Array.from(odd, (letter) => `${letter} is ${codeOf(letter)}`).join(', ');
  return {
    spot,
    message: `\`${word}\` mixes ${scripts.join(' and ')} letters: ${letters}`,
    found: word,
    expected: 'letters of one script',
  };
}

function codeOf(letter: string): string {
  return `U+${(letter.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
}
