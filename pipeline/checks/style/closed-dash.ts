import { slipsOf, type Slip } from './slip.js';

/** An en dash with a word on both sides, and a space on one of them or none. */
const CLOSED = /(?<=[\p{L}\p{N}.,!?”’)])(?:–| –(?=\S)|– )(?=[\p{L}“‘(])/gu;

/** Words that begin or end a part of a sentence and are no half of a pair. */
const LONE = new Set(
  `a an the and but or nor so yet not then than that this these those he she it they we you i his her its their
our my your who which what where when while if as at by for from in of on to with without all almost always
never only even just very too quite rather perhaps maybe still again once twice now there here nobody somebody
everybody nothing something everything is are was were be been had has have did does do will would can could
may might must no yes or because until since though although`.split(/\s+/u),
);
/** Words that are pairs with one another: the north–south ferry. */
const PAIRED = new Set(
  `north south east west up down left right in out on off day night push pull stop start rise fall port starboard
monday tuesday wednesday thursday friday saturday sunday`.split(/\s+/u),
);

/**
 * En dashes without a space on either side that part a sentence. Between two words alone the dash may
 * join a pair, so one is told only by its neighbours: a second such dash in the sentence, a word that
 * begins a part of a sentence, or an end behind it.
 */
export function closedEnDashes(text: string, right: string, expected: string): Slip[] {
  if (!text.includes('–')) return [];
  const all = Array.from(text.matchAll(CLOSED), ({ index }) => index);
  return slipsOf(text, CLOSED, ({ 0: dash, index }) => {
    const end = index + dash.length;
    const lopsided = dash.length > 1;
    if (!lopsided && (dash === right || !isParting(text, index, all))) return null;
    if (/\d/.test(text.charAt(index - 1)) && /\d/.test(text.charAt(end))) return null;
    return {
      from: index,
      to: end,
      message: `an en dash ${lopsided ? 'with one space' : 'without spaces'} stands between parts of a sentence`,
      expected,
      fix: right,
      certain: lopsided,
    };
  });
}

function isParting(text: string, at: number, all: readonly number[]): boolean {
  const before = /[\p{L}\p{N}’'-]+$/u.exec(text.slice(Math.max(0, at - 40), at))?.[0] ?? '';
  const after = /^[\p{L}\p{N}’'-]+/u.exec(text.slice(at + 1, at + 40))?.[0] ?? '';
  if (before === '' || after === '') return true;
  if (/^\p{Lu}$/u.test(before) || /^\p{Lu}$/u.test(after)) return false;
  const words = [before.toLowerCase(), after.toLowerCase()];
  if (words.every((word) => PAIRED.has(word))) return false;
  if (words.some((word) => LONE.has(word))) return true;
  if (/^\p{Lu}/u.test(before) && /^\p{Lu}/u.test(after)) return false;
  const isEnd = /^[.,;:!?…]/u.test(text.slice(at + 1 + after.length));
  return isEnd || all.some((other) => other !== at && isSameSentence(text, at, other));
}

function isSameSentence(text: string, a: number, b: number): boolean {
  const between = text.slice(Math.min(a, b), Math.max(a, b));
  return (between.includes(' ') || /^–\p{Ll}/u.test(between)) && !/[.!?]\s/u.test(between);
}
