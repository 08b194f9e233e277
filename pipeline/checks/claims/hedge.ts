import type { FoundNumber, NumberToken } from '../../text/index.js';

/** How exactly a number is meant. */
export type Hedge = 'more' | 'least' | 'fewer' | 'most' | 'nearly' | 'about' | 'average';

const BEFORE: readonly (readonly [words: string, hedge: Hedge])[] = [
  ['no fewer than', 'least'],
  ['no less than', 'least'],
  ['not fewer than', 'least'],
  ['not less than', 'least'],
  ['no more than', 'most'],
  ['not more than', 'most'],
  ['more than', 'more'],
  ['greater than', 'more'],
  ['upwards of', 'least'],
  ['at least', 'least'],
  ['a minimum of', 'least'],
  ['fewer than', 'fewer'],
  ['less than', 'fewer'],
  ['up to', 'most'],
  ['at most', 'most'],
  ['a maximum of', 'most'],
  ['close to', 'nearly'],
  ['just under', 'nearly'],
  ['not quite', 'nearly'],
  ['nearly', 'nearly'],
  ['almost', 'nearly'],
  ['over', 'more'],
  ['above', 'more'],
  ['beyond', 'more'],
  ['under', 'fewer'],
  ['below', 'fewer'],
  ['an average of', 'average'],
  ['on average', 'average'],
  ['averages', 'average'],
  ['averaging', 'average'],
  ['about', 'about'],
  ['around', 'about'],
  ['roughly', 'about'],
  ['approximately', 'about'],
  ['approx', 'about'],
  ['approx .', 'about'],
  ['circa', 'about'],
  ['c .', 'about'],
  ['some', 'about'],
  ['~', 'about'],
  ['≈', 'about'],
];
const AFTER: readonly (readonly [words: string, hedge: Hedge])[] = [
  ['or more', 'least'],
  ['and more', 'least'],
  ['plus', 'least'],
  ['- plus', 'least'],
  ['+', 'least'],
  ['or so', 'about'],
  ['- odd', 'about'],
  ['odd', 'about'],
  ['or fewer', 'most'],
  ['or less', 'most'],
  ['at most', 'most'],
  ['at least', 'least'],
  ['on average', 'average'],
];
const FILLING: ReadonlySet<string> = new Set(['a', 'an', 'the', 'total', 'of', 'well', 'just']);

/** The words around a number by which it is not meant exactly; null where it is. */
export function hedgeOf(
  tokens: readonly NumberToken[],
  { at, next }: Pick<FoundNumber, 'at' | 'next'>,
  end: number,
): Hedge | null {
  for (let place = at; place > at - 4 && place > 0; place--) {
    const before = BEFORE.find(([words]) => endsWith(tokens, place, words.split(' ')));
    if (before) return before[1];
    if (!FILLING.has(tokens[place - 1]?.word ?? '')) break;
  }
  const after = AFTER.find(([words]) => startsWith(tokens, next, words.split(' ')));
  if (after) return after[1];
  return saysAverage(tokens, at, end) ? 'average' : null;
}

/** "On average" anywhere in the clause says it of all its numbers. */
function saysAverage(tokens: readonly NumberToken[], at: number, end: number): boolean {
  const from = Math.max(0, at - 12);
  return tokens
    .slice(from, Math.min(end, at + 16))
    .some(({ word }, place, all) => word === 'average' && all[place - 1]?.word === 'on');
}

function endsWith(tokens: readonly NumberToken[], end: number, words: readonly string[]): boolean {
  return startsWith(tokens, end - words.length, words);
}

function startsWith(tokens: readonly NumberToken[], at: number, words: readonly string[]): boolean {
  return at >= 0 && words.every((word, place) => tokens[at + place]?.word === word);
}

/** How far about is from right: a tenth of the real count. */
const ABOUT = 10;

/** Whether a number, meant so, is true of a real count. */
export function isTrue(says: number, hedge: Hedge | null, real: number): boolean {
  switch (hedge) {
    case null:
      return says === real;
    case 'more':
      return real > says;
    case 'least':
      return real >= says;
    case 'fewer':
      return real < says;
    case 'most':
      return real <= says;
    case 'nearly':
      return real < says && (says - real) * ABOUT <= says;
    case 'about':
      return Math.abs(says - real) * ABOUT <= real;
    case 'average':
      return true;
  }
}
