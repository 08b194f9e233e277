import { runningWords, type RunningWord } from '../../text/index.js';
import { isJoinedEnding } from './derived.js';
import type { Manner } from '../style/texts.js';

/** A word that nothing explains, in UTF-16 units from the start of its text. */
export interface WrongWord {
  readonly word: string;
  readonly from: number;
  readonly to: number;
  /** What is right, where a rule and not a list of words says it: "21st". */
  readonly right?: string;
}

interface Ask {
  readonly knows: (word: string) => boolean;
  /** Whether a word, seen with the one after it, is a slip of a name: other rules speak of these. */
  readonly isNearName: (word: string, next: string) => boolean;
}

/** What is joined to a word by a hyphen and is none by itself. */
const PREFIXES = new Set(
  'a co de e em ex extra hyper in infra inter macro mega mid mini multi neo non off pan para post pre pro pseudo re self semi sub super thro tri ultra un uni vice'.split(
    ' ',
  ),
);

/** Said with their beginning left out: "’tis", "’em". */
const HEADLESS = new Set(
  'tis twas twill twere twould twixt em til cause round bout neath gainst ere un uns n nuff scuse cept fraid spect tween mongst gan cos cuz'.split(
    ' ',
  ),
);
/** Said with their end left out: "o’", "an’". */
const ENDLESS = new Set('o an th ol wi lil mo po fo'.split(' '));

const ORDINAL = /^(\d+)(st|nd|rd|th)$/i;

/** The words of a text that nothing explains. Addresses, numbers and codes are no words. */
export function wrongWords(text: string, manner: Manner, ask: Ask): readonly WrongWord[] {
  const words = runningWords(text);
  let skips: readonly Stretch[] | null = null;
  return words.flatMap((word, at): WrongWord[] => {
    if (word.text.length < 2 || ask.knows(word.text)) return [];
    const ordinal = ORDINAL.exec(word.text);
    if (ordinal) return wrongOrdinal(word, ordinal);
    if (/\p{N}/u.test(word.text) || !isLatin(word.text)) return [];
    if (isExplained(text, words, at, ask.knows)) return [];
    if (isForNames(text, words, at, manner, ask)) return [];
    skips ??= addresses(text);
    if (skips.some(({ from, to }) => from <= word.from && word.to <= to)) return [];
    return [{ word: word.text, from: word.from, to: word.to }];
  });
}

function wrongOrdinal(word: RunningWord, [, digits = '', end = '']: RegExpExecArray): WrongWord[] {
  const tens = digits.slice(-2);
  const last = ['11', '12', '13'].includes(tens) ? '' : digits.slice(-1);
  const right = { '1': 'st', '2': 'nd', '3': 'rd' }[last] ?? 'th';
  if (end.toLowerCase() === right) return [];
  return [{ word: word.text, from: word.from, to: word.to, right: digits + right }];
}

/** Letters of other scripts are no words of this language. */
function isLatin(word: string): boolean {
  return /^[\p{Script=Latin}\p{M}\u00ad'’ʼ＇]+$/u.test(word);
}

/** Words that are right in their surroundings. */
function isExplained(
  text: string,
  words: readonly RunningWord[],
  at: number,
  knows: (word: string) => boolean,
): boolean {
  const word = words[at];
  if (!word) return true;
  const small = word.text.toLowerCase();
  const before = text.charAt(word.from - 1);
  const after = text.charAt(word.to);
  if (isApostrophe(before) && HEADLESS.has(small.replace(/['’].*$/, ''))) return true;
  if (isApostrophe(after)) {
    if (ENDLESS.has(small)) return true;
    if (small.endsWith('in') && knows(`${word.text}g`)) return true;
  }
  if (after === '-' && PREFIXES.has(small)) return true;
  if (before === '-' && isJoinedEnding(small, knows)) return true;
  if (joined(words, text, at).some((whole) => knows(whole))) return true;
  if (/^[IVXLCDM]+$/.test(word.text)) return true;
  return isCode(text, words, at);
}

/** A hyphened word as it stands in a list as one: "willy-nilly". */
function joined(words: readonly RunningWord[], text: string, at: number): string[] {
  let first = at;
  let last = at;
  while (words[first]?.gap === '-' && first > 0) first -= 1;
  while (words[last + 1]?.gap === '-') last += 1;
  if (first === last) return [];
  return [text.slice(words[first]?.from ?? 0, words[last]?.to ?? 0)];
}

/** Capitals beside figures ("SG-12"), and a few capitals among words that are not in capitals. */
function isCode(text: string, words: readonly RunningWord[], at: number): boolean {
  const word = words[at];
  if (!word || !/^\p{Lu}+s?$/u.test(word.text)) return false;
  const figures =
    /^[-/–]?\d/.test(text.slice(word.to)) || /\d[-/–]?$/.test(text.slice(0, word.from));
  if (figures) return true;
  const others = [words[at - 1], words[at + 1]].filter((other) => other !== undefined);
  return (
    word.text.length <= 5 &&
    others.length > 0 &&
    others.every(({ text: o }) => !/^\p{Lu}{2}/u.test(o))
  );
}

/**
 * A capital where no sentence begins, and what is nearly a name, are for the rules about names: one
 * mistake is told once.
 */
function isForNames(
  text: string,
  words: readonly RunningWord[],
  at: number,
  manner: Manner,
  { knows, isNearName }: Ask,
): boolean {
  const word = words[at];
  if (!word || !/^\p{Lu}/u.test(word.text)) return false;
  const next = words[at + 1];
  const nextText = next?.gap === ' ' ? next.text : '';
  if (isNearName(word.text, nextText)) return true;
  if (manner === 'title' || manner === 'heading' || /^\p{Lu}{2,}$/u.test(word.text)) return false;
  if (!beginsSentence(text, word.from)) return true;
  return /^\p{Lu}/u.test(nextText) && !knows(nextText);
}

/** Whether what stands before a place ends a sentence or opens one: a stop, a colon, a quote. */
function beginsSentence(text: string, from: number): boolean {
  const before = text.slice(0, from).trimEnd();
  if (before === '') return true;
  return /[.!?:…—–"“”‘([]['"’”)\]]*$/u.test(before) || /[“‘"'(]$/u.test(text.slice(0, from));
}

function isApostrophe(sign: string): boolean {
  return sign === "'" || sign === '’' || sign === 'ʼ' || sign === '‘';
}

interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** Web and mail addresses, handles and names of files. */
function addresses(text: string): readonly Stretch[] {
  return Array.from(text.matchAll(/\S+/gu), ({ 0: chunk, index }) => {
    return { from: index, to: index + chunk.length, chunk };
  }).filter(({ chunk }) => isAddress(chunk));
}

/** Whether what stands between two spaces is an address and no words. */
export function isAddress(chunk: string): boolean {
  if (/:\/\/|^\W?www\.|[@#_\\]/.test(chunk)) return true;
  const bare = chunk.replace(/^[^\p{L}\p{N}/]+|[^\p{L}\p{N}/]+$/gu, '');
  const host = /^[^/]*/.exec(bare)?.[0] ?? '';
  const labels = host.split('.');
  if (labels.length === 1) return /^\//.test(bare);
  return (
    labels.every((label) => /^[\p{L}\p{N}-]+$/u.test(label)) &&
    /^[\p{Ll}\d]+$/u.test(labels.at(-1) ?? '')
  );
}
