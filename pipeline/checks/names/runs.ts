import { isCapital, type Dictionary, type FormMatch, type NameToken } from '../../text/index.js';
import { PARTICLES, isPlainCapital, isTitleWord } from './titles.js';

/** Words with capitals that are a name which nothing explains: UTF-16 units from the text's start. */
export interface NameRun {
  readonly from: number;
  readonly to: number;
  /** The name, without a possessive ending. */
  readonly name: string;
}

type Knows = Dictionary['knows'];

/** The names in a text that no match, title, name of a person or dictionary explains. */
export function unknownRuns<T>(
  text: string,
  tokens: readonly NameToken[],
  matches: readonly FormMatch<T>[],
  explained: ReadonlySet<string>,
  knows: Knows,
): readonly NameRun[] {
  // A line of rights names who holds them, in the words of the licence.
  if (/[©®™]|\([cC]\)/u.test(text)) return [];
  const taken = new Set<number>();
  for (const { at, length } of matches) {
    for (let index = at; index < at + length; index += 1) taken.add(index);
  }
  const mayBelong = (at: number): boolean => {
    const token = tokens[at];
    return token !== undefined && !taken.has(at) && mayName(token, knows);
  };
  const runs: NameRun[] = [];
  for (let at = 0; at < tokens.length; at += 1) {
    if (!mayBelong(at)) continue;
    let end = at + 1;
    for (
      let next = nextOf(tokens, end);
      next !== null && mayBelong(next);
      next = nextOf(tokens, end)
    ) {
      end = next + 1;
    }
    const run = nameOf(text, tokens.slice(at, end), explained, knows);
    if (run && !isQuoted(text, run)) runs.push(run);
    at = end - 1;
  }
  return runs;
}

/** Whether quotation marks are just around a name: the title of something, or what somebody is called. */
function isQuoted(text: string, { from, to }: NameRun): boolean {
  return (
    /[“‘"'](?:\p{L}{1,5} ){0,2}$/u.test(text.slice(0, from)) &&
    /^[.,!?]?[”’"'](?!\p{L})/u.test(text.slice(to))
  );
}

/** A word with a capital that its place in the sentence does not ask for. */
function mayName(token: NameToken, knows: Knows): boolean {
  const { base, key } = token;
  if (key.length < 2 || !isCapital(base) || /\d/u.test(base)) return false;
  const small = base.toLowerCase();
  // All in capitals: a code, or a word that is shouted.
  if (base === base.toUpperCase() && (key.length < 5 || knows(small))) return false;
  return !isStart(token) || (!knows(small) && !isTitleWord(small));
}

/** Whether a sentence begins with a word, or may: an initial or "Dr." may end one. */
function isStart({ start, gap }: NameToken): boolean {
  return start || gap.startsWith('.');
}

/** The token that goes on with a name: the next one, or one behind a particle. */
function nextOf(tokens: readonly NameToken[], end: number): number | null {
  const before = tokens[end - 1];
  const next = tokens[end];
  if (!next || before?.ending !== '' || !isJoining(next)) return null;
  if (isCapital(next.base)) return end;
  const after = tokens[end + 1];
  return PARTICLES.has(next.base) && after && isJoining(after) && isCapital(after.base)
    ? end + 1
    : null;
}

function isJoining({ gap, start }: NameToken): boolean {
  return !start && (gap === ' ' || gap === '-');
}

function nameOf(
  text: string,
  tokens: readonly NameToken[],
  explained: ReadonlySet<string>,
  knows: Knows,
): NameRun | null {
  const skip = tokens.findIndex(({ base }) => !isTitleWord(base));
  const own = skip < 0 ? [] : tokens.slice(skip);
  const [first] = own;
  const last = own.at(-1);
  if (!first || !last) return null;
  if (own.length === 1 && isStart(first)) return null;
  if (own.every((token) => isExplained(token, explained, knows))) return null;
  const to = last.from + last.base.length;
  return { from: first.from, to, name: text.slice(first.from, to) };
}

function isExplained(
  { base, key }: NameToken,
  explained: ReadonlySet<string>,
  knows: Knows,
): boolean {
  if (!isCapital(base) || explained.has(key) || isPlainCapital(base)) return true;
  if (key.endsWith('s') && explained.has(key.slice(0, -1))) return true;
  return knows(base) && !knows(base.toLowerCase());
}
