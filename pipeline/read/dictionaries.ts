import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

import nspell from 'nspell';

import type { Dictionaries, Dictionary, English } from '../text/index.js';

const PACKAGES: Readonly<Record<English, string>> = {
  american: 'dictionary-en',
  british: 'dictionary-en-gb',
};

/** Most words of which it is kept what may be meant: to find that out takes up to half a second. */
const MOST_KEPT = 2000;

const opened = new Map<English, Dictionary>();

/** The dictionaries that come with the program, each opened once. */
export const keptDictionaries: Dictionaries = (english) => {
  const before = opened.get(english);
  if (before) return before;
  const dictionary = openDictionary(PACKAGES[english]);
  opened.set(english, dictionary);
  return dictionary;
};

function openDictionary(name: string): Dictionary {
  const folder = dirname(createRequire(import.meta.url).resolve(name));
  const bytes = (kind: string): Buffer => readFileSync(join(folder, `index.${kind}`));
  const speller = nspell(bytes('aff'), bytes('dic'));
  const known = new Map<string, boolean>();
  const meant = new Map<string, readonly string[]>();
  return {
    knows: (word) => {
      const before = known.get(word);
      if (before !== undefined) return before;
      const right = speller.correct(word);
      known.set(word, right);
      return right;
    },
    near: (word) => {
      const before = meant.get(word);
      if (before) return before;
      if (meant.size >= MOST_KEPT) meant.clear();
      const near = speller.suggest(word);
      meant.set(word, near);
      return near;
    },
  };
}
