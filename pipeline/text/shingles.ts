import { runningWords } from './running-words.js';
import { sentences } from './sentences.js';

/** What a text is compared with others by. Numbers are hashes, each once, in their order. */
export interface TextPrint {
  readonly words: number;
  /** The first three words, and the last sentence if it has as many. */
  readonly opening: string;
  readonly ending: string;
  /** Runs of four words. */
  readonly runs: readonly number[];
  /** Runs of the small words and stops, whatever stands between them: how its sentences are built. */
  readonly shape: readonly number[];
}

const OPENING_WORDS = 3;
const RUN_WORDS = 4;
const SHAPE_SIGNS = 8;
/** A run of the shape with fewer small words would fit too much. */
const SHAPE_SMALL = 3;

/** Words that build sentences; every other is one that could be changed for another. */
const SMALL = new Set(
  'a an the this that these those each every some any no not never ever always all both half one two three other another such same own i you he she it we they me him her us them my your his its our their who whom whose which what when where why how if then than as so because though although while until till since unless and or but nor yet in on at by to of for from with without into onto over under above below up down out off through across along around about after before behind between beside near is are was were be been being am has have had do does did will would can could shall should may might must there here now once only just still too also even more most less least very again'.split(
    ' ',
  ),
);

/** The print of a text of several paragraphs. */
export function printOf(paragraphs: readonly string[]): TextPrint {
  const text = paragraphs.join('\n\n');
  const words = runningWords(text).map(({ text: word }) => folded(word));
  const last = lastSentence(paragraphs.at(-1) ?? '');
  return {
    words: words.length,
    opening: words.slice(0, OPENING_WORDS).join(' '),
    ending: last.length >= OPENING_WORDS ? last.join(' ') : '',
    runs: hashes(words, RUN_WORDS, () => true),
    shape: hashes(signsOf(text), SHAPE_SIGNS, hasSmallWords),
  };
}

function folded(word: string): string {
  const small = word.toLowerCase();
  return /[’ʼ]/.test(small) ? small.replace(/[’ʼ]/g, "'") : small;
}

function lastSentence(paragraph: string): string[] {
  const last = sentences(paragraph).findLast(({ from, to }) =>
    /\p{L}/u.test(paragraph.slice(from, to)),
  );
  if (!last) return [];
  return runningWords(paragraph.slice(last.from, last.to)).map(({ text }) => folded(text));
}

const STOPS = new Set('.,:;!?…–—');

/** Small words and stops; whatever stands between two of them is one sign. */
function signsOf(text: string): string[] {
  const signs: string[] = [];
  for (const { 0: token } of text.matchAll(/[\p{L}\p{M}\p{N}'’-]+|[.,:;!?…–—]/gu)) {
    const word = folded(token);
    const sign = STOPS.has(token) || SMALL.has(word) ? word : '*';
    if (sign !== '*' || signs.at(-1) !== '*') signs.push(sign);
  }
  return signs;
}

/** Whether a run from a sign on has enough different small words. */
function hasSmallWords(signs: readonly string[], from: number): boolean {
  const seen: string[] = [];
  for (let at = from; at < from + SHAPE_SIGNS && seen.length < SHAPE_SMALL; at++) {
    const sign = signs[at] ?? '';
    if (SMALL.has(sign) && !seen.includes(sign)) seen.push(sign);
  }
  return seen.length >= SHAPE_SMALL;
}

/** The hash of each run of so many tokens that counts, made of the hashes of its tokens. */
function hashes(
  tokens: readonly string[],
  length: number,
  counts: (tokens: readonly string[], from: number) => boolean,
): number[] {
  const codes = tokens.map(hashOf);
  const found = new Set<number>();
  for (let at = 0; at + length <= tokens.length; at++) {
    if (!counts(tokens, at)) continue;
    let hash = OFFSET;
    for (let next = at; next < at + length; next++) {
      hash = Math.imul(hash ^ (codes[next] ?? 0), PRIME);
    }
    found.add(hash >>> 0);
  }
  return [...found].sort((a, b) => a - b);
}

const OFFSET = 0x811c9dc5;
const PRIME = 0x01000193;

/** FNV-1a of 32 bits over UTF-16 units (Fowler, Noll and Vo). Two of them that meet by chance add one run. */
function hashOf(text: string): number {
  let hash = OFFSET;
  for (let at = 0; at < text.length; at++) {
    hash = Math.imul(hash ^ text.charCodeAt(at), PRIME);
  }
  return hash >>> 0;
}
