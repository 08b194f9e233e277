import { latinOf } from './look-alikes.js';
import { charactersOf } from './references.js';

/** A word of a text as a reader takes it, whatever letters, marks and signs it is written with. */
export interface FoldedWord {
  /** In small Latin letters where they look like such. */
  readonly folded: string;
  /** As `folded`, with its capitals. */
  readonly cased: string;
  /** What else `folded` may be read as: a stroke being i or l, figures beside it being none of it. */
  readonly others: readonly string[];
  /** In small letters as it is typed, two letters that look like one being two. */
  readonly typed: string;
  /** UTF-16 units from the start of the text. */
  readonly from: number;
  readonly to: number;
  /** What parts it from the word before; empty for the first. */
  readonly gap: string;
}

const PLAIN = /^[\x20-\x7e\n]*$/;
const PLAIN_WORD = /[A-Za-z0-9|]+(?:'[A-Za-z0-9|]+)*|&/g;

/**
 * The words of a text for comparing: NFKD without marks, what does not show left out, letters that
 * look like Latin ones read as these, digits among letters read as the letters that they look like.
 */
export function foldedWords(text: string): readonly FoldedWord[] {
  return PLAIN.test(text) && !/[&<]/.test(text) ? plainWords(text) : scannedWords(text);
}

function plainWords(text: string): readonly FoldedWord[] {
  let end = 0;
  return [...text.matchAll(PLAIN_WORD)].map(({ 0: word, index }) => {
    const gap = end > 0 ? text.slice(end, index) : '';
    end = index + word.length;
    return wordOf(word, index, end, gap);
  });
}

function scannedWords(text: string): readonly FoldedWord[] {
  const words: FoldedWord[] = [];
  let word: { letters: string; from: number; to: number } | null = null;
  let between = '';
  const finish = (): void => {
    if (!word) return;
    words.push(wordOf(word.letters, word.from, word.to, words.length > 0 ? between : ''));
    word = null;
    between = '';
  };
  // Apostrophes that belong to a word if a letter follows.
  let waiting = '';
  for (const { character, from, to } of charactersOf(text)) {
    if (HIDDEN.test(character) || TAG.test(character)) continue;
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
/** What does not show, or stands beside a word and is no part of it: marks of rights and of notes. */
const HIDDEN = /^[\p{Default_Ignorable_Code_Point}™℠®©℗¹²³⁰⁴-⁹]$/u;
const TAG = /^<./;
const APOSTROPHE = /^['‘’ʼʹʻˈ‛＇`´′]$/u;

/** One character as letters without marks; empty for a mark. */
function shownAs(character: string): string {
  if (APOSTROPHE.test(character)) return "'";
  const known = latinOf(character);
  if (known !== character) return known;
  return Array.from(character.normalize('NFKD'))
    .filter((part) => !/\p{M}/u.test(part))
    .map(latinOf)
    .join('');
}

const SMALL = /^[a-z]+$/;
const PAIRS = /rn|vv/;

function wordOf(word: string, from: number, to: number, gap: string): FoldedWord {
  // Most words are such.
  if (SMALL.test(word) && !PAIRS.test(word)) {
    return { folded: word, cased: word, typed: word, others: [], from, to, gap };
  }
  const plain = /[A-Za-z]/.test(word) ? lettersFor(word) : word;
  const typed = plain.toLowerCase();
  const others = othersOf(word);
  return { folded: merged(typed), cased: merged(plain), typed, others, from, to, gap };
}

const DIGIT_LETTERS: Readonly<Record<string, string>> = {
  '0': 'o',
  '1': 'l',
  '3': 'e',
  '4': 'a',
  '5': 's',
  '7': 't',
  '8': 'b',
  '9': 'g',
  '|': 'l',
};

/** The letters that a word of one character may be in a name whose letters stand apart. */
export function lettersOfOne(character: string): readonly string[] {
  if (character === 'i' || character === '1' || character === '|') return ['i', 'l'];
  const letter = DIGIT_LETTERS[character];
  return letter === undefined ? [character] : [character, letter];
}

/** Digits and signs among letters, and a capital I after a small letter, are read as letters. */
function lettersFor(word: string): string {
  if (!/[\d|I]/.test(word)) return word;
  return word
    .replace(/[\d|]/g, (sign) => DIGIT_LETTERS[sign] ?? sign)
    .replace(/(?<=[a-z])I(?=[a-z]|$)/g, 'l');
}

function othersOf(word: string): readonly string[] {
  if (word.length < 2 || !/[\d|I]/.test(word) || !/[A-Za-z]/.test(word)) return [];
  const bare = word.replace(/^\d+|\d+$/g, '');
  return [
    ...(/[1|I]/.test(word) ? [turned(word)] : []),
    ...(bare === word ? [] : [merged(lettersFor(bare).toLowerCase())]),
  ];
}

/** Strokes that are read as i where `lettersFor` reads l, and the other way round. */
function turned(word: string): string {
  const strokes = word
    .replace(/(?<=[a-z])I(?=[a-z]|$)/g, '1')
    .replace(/I/g, 'L')
    .replace(/[1|]/g, 'i');
  return merged(lettersFor(strokes).toLowerCase());
}

/** Pairs of letters that look like one: UTS #39 has m for rn and w for vv. */
export function merged(word: string): string {
  return PAIRS.test(word) ? word.replace(/rn/g, 'm').replace(/vv/g, 'w') : word;
}
