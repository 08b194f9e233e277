import { latinOf } from './look-alikes.js';

/** A word of a text as a reader takes it, whatever letters, marks and signs it is written with. */
export interface FoldedWord {
  /** In small Latin letters where they look like such. */
  readonly folded: string;
  /** As `folded`, with its capitals. */
  readonly cased: string;
  /** UTF-16 units from the start of the text. */
  readonly from: number;
  readonly to: number;
  /** Something else than spaces, hyphens and marks of emphasis parts it from the word before. */
  readonly apart: boolean;
}

/** A character of the text, after character references are read. */
interface Read {
  readonly character: string;
  readonly from: number;
  readonly to: number;
}

const PLAIN = /^[\x20-\x7e\n]*$/;
const PLAIN_WORD = /[A-Za-z0-9|]+(?:'[A-Za-z0-9|]+)*|&/g;

/**
 * The words of a text for comparing: NFKD without marks, what does not show left out, letters that
 * look like Latin ones read as these, digits among letters read as the letters that they look like.
 */
export function foldedWords(text: string): readonly FoldedWord[] {
  return PLAIN.test(text) && !text.includes('&') ? plainWords(text) : scannedWords(text);
}

function plainWords(text: string): readonly FoldedWord[] {
  let end = 0;
  return [...text.matchAll(PLAIN_WORD)].map(({ 0: word, index }) => {
    const apart = end > 0 && isApart(text.slice(end, index));
    end = index + word.length;
    return wordOf(word, index, end, apart);
  });
}

function scannedWords(text: string): readonly FoldedWord[] {
  const words: FoldedWord[] = [];
  let word: { letters: string; from: number; to: number } | null = null;
  let between = '';
  const finish = (): void => {
    if (!word) return;
    const apart = words.length > 0 && isApart(between);
    words.push(wordOf(word.letters, word.from, word.to, apart));
    word = null;
    between = '';
  };
  // Apostrophes that belong to a word if a letter follows.
  let waiting = '';
  for (const { character, from, to } of charactersOf(text)) {
    if (HIDDEN.test(character)) continue;
    const shown = shownAs(character);
    if (shown === '') {
      if (word && waiting === '') word.to = to;
    } else if (shown === "'") {
      waiting += shown;
    } else if (LETTERS.test(shown)) {
      if (!word || waiting.length > 1) finish();
      between += word ? '' : waiting;
      if (word) word = { letters: word.letters + waiting + shown, from: word.from, to };
      else word = { letters: shown, from, to };
      waiting = '';
    } else {
      finish();
      between += waiting + shown;
      waiting = '';
      if (shown !== '&') continue;
      between = between.slice(0, -1);
      word = { letters: shown, from, to };
      finish();
    }
  }
  finish();
  return words;
}

const LETTERS = /^[\p{L}\p{N}|]+$/u;
const HIDDEN = /^\p{Default_Ignorable_Code_Point}$/u;
const APOSTROPHE = /^['‘’ʼ‛＇`´]$/u;

/** One character as letters without marks; empty for a mark. */
function shownAs(character: string): string {
  if (APOSTROPHE.test(character)) return "'";
  return Array.from(character.normalize('NFKD'))
    .filter((part) => !/\p{M}/u.test(part))
    .map(latinOf)
    .join('');
}

const REFERENCE =
  /&#x([0-9a-f]{1,6});|&#(\d{1,7});|&(shy|nbsp|zwj|zwnj|ensp|emsp|thinsp);|[\s\S]/giu;
const NAMED: Readonly<Record<string, string>> = {
  shy: '\u00ad',
  nbsp: '\u00a0',
  zwj: '\u200d',
  zwnj: '\u200c',
  ensp: '\u2002',
  emsp: '\u2003',
  thinsp: '\u2009',
};

function* charactersOf(text: string): Generator<Read> {
  for (const { 0: written, 1: hex, 2: decimal, 3: named, index } of text.matchAll(REFERENCE)) {
    const code = hex === undefined ? Number(decimal ?? NaN) : parseInt(hex, 16);
    const known = named === undefined ? undefined : NAMED[named.toLowerCase()];
    const read = code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : (known ?? written);
    yield { character: read, from: index, to: index + written.length };
  }
}

/** A gap of spaces, hyphens, dashes and marks of emphasis joins; anything else parts. */
function isApart(gap: string): boolean {
  return /[^\s\p{Pd}*_]/u.test(gap);
}

function wordOf(word: string, from: number, to: number, apart: boolean): FoldedWord {
  const cased = /[A-Za-z]/.test(word) ? lettersFor(word) : word;
  return { folded: merged(cased.toLowerCase()), cased: merged(cased), from, to, apart };
}

/** Digits and signs among letters, and a capital I after a small letter, are read as letters. */
function lettersFor(word: string): string {
  if (!/[01|I]/.test(word)) return word;
  return word
    .replace(/0/g, 'o')
    .replace(/[1|]/g, 'l')
    .replace(/(?<=[a-z])I(?=[a-z]|$)/g, 'l');
}

/** Pairs of letters that look like one: UTS #39 has m for rn and w for vv. */
function merged(word: string): string {
  return word.replace(/rn/g, 'm').replace(/vv/g, 'w');
}
