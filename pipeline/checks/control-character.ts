import { fenceOf } from '../model/index.js';
import { hiddenCharacters, sayCharacter } from '../text/index.js';
import type { Remark, Rule } from './rule.js';
import { edited } from './sample.js';
import { scan, type Hit, type PlacedHit } from './scan.js';

/** Characters that do not show, or turn the text around them. A soft hyphen may stand in a bio. */
export const controlCharacter: Rule = {
  id: 'control-character',
  about: 'copy',
  severity: 'error',
  why: 'A character that nobody sees prints something else than what was approved.',
  offends: (text) => hiddenCharacters(text.replaceAll('\u00ad', '')).length > 0,
  look: (subject) => [...scan(subject, hiddenRuns)].filter(isUnwanted).map(remarkOn),
  examples: {
    passes: [
      {
        says: 'a soft hyphen in a bio',
        files: edited('one/cards/base/a2.md', ['burning', 'burn\u00ading']),
      },
      {
        says: 'a picture made of joined pictures',
        files: edited('one/cards/base/a2.md', ['burning', '👩\u200d🚒']),
      },
    ],
    fails: [
      {
        says: 'a space of no width in a name',
        files: edited('one/cards/base/a2.md', ['The Lamp', 'The\u200b Lamp']),
        gives: {
          at: 'one/cards/base/a2.md:3:10',
          covers: '\u200b',
          message: 'a character that does not show stands here: U+200B, zero width space',
          found: 'U+200B, zero width space',
          expected: 'only characters that show',
          fix: '',
          certain: true,
        },
      },
      {
        says: 'text turned around by an escape',
        files: edited('one/cards/base/a2.md', ['The Lamp', '"The \\u202erats"']),
        gives: {
          at: 'one/cards/base/a2.md:3:7',
          covers: '"The \\u202erats"',
          message: 'a character that does not show stands here: U+202E, right-to-left override',
          found: 'U+202E, right-to-left override',
          expected: 'only characters that show',
        },
      },
    ],
  },
};

/** Hidden characters, neighbours as one. */
function hiddenRuns(text: string): Hit[] {
  return hiddenCharacters(text).reduce<{ at: number; words: string }[]>(
    (runs, { at, character }) => {
      const last = runs.at(-1);
      if (last && last.at + last.words.length === at) last.words += character;
      else runs.push({ at, words: character });
      return runs;
    },
    [],
  );
}

function isUnwanted({ spot, words }: PlacedHit): boolean {
  if (!/^\u00ad+$/.test(words)) return true;
  const { file, text } = spot.source;
  const body = /^[^/]+\/cards\//.test(file) ? fenceOf(text)?.bodyFrom : undefined;
  return body === undefined || spot.from < body;
}

/** What takes no room and changes nothing: zero widths and marks that editors leave behind. */
const STRAY = /^[\u00ad\u200b\u200e\u200f\u2060\ufeff]+$/;

function remarkOn({ spot, words, written }: PlacedHit): Remark {
  const characters = Array.from(words, sayCharacter).join('; ');
  return {
    spot,
    message: `a character that does not show stands here: ${characters}`,
    found: characters,
    expected: 'only characters that show',
    ...(written ? { fix: '' } : {}),
    ...(written && STRAY.test(words) ? { certain: true } : {}),
  };
}
