import { runOf } from './collection.js';
import { runningPart } from './runs.js';
import { foldedNumber } from './search-words.js';

/** @typedef {import('./collection.js').ListCard} ListCard */
/** @typedef {import('./collection.js').Scope} Scope */

const DASH = /[-‐‑‒–—−]/g;

/**
 * The cards that an item of a list means: a number, or a run with a number at both ends. As it is
 * printed goes before as it may be typed, and the longest number before a shorter.
 *
 * @param {Scope} scope
 * @param {string} text
 * @returns {readonly ListCard[] | null} null if it means none, or could mean several
 */
export function readItem(scope, text) {
  const card = scope.printed.get(text);
  if (card !== undefined) return [card];
  const exact = (/** @type {string} */ number) => scope.printed.get(number) ?? null;
  const loose = (/** @type {string} */ number) =>
    onlyOne(foldedIn(scope).get(foldedNumber(number)));
  const run = readRun(scope, text, exact);
  if (run !== null) return run;
  const near = loose(text);
  return near === null ? readRun(scope, text, loose) : [near];
}

/**
 * The cards of a scope by their folded numbers.
 *
 * @param {Scope} scope
 * @returns {ReadonlyMap<string, readonly ListCard[]>}
 */
function foldedIn(scope) {
  /** @type {Map<string, ListCard[]>} */
  const made = known.get(scope) ?? new Map();
  if (known.has(scope)) return made;
  for (const [number, card] of scope.printed) {
    const form = foldedNumber(number);
    made.set(form, [...(made.get(form) ?? []), card]);
  }
  known.set(scope, made);
  return made;
}

/** @type {WeakMap<Scope, Map<string, ListCard[]>>} */
const known = new WeakMap();

/**
 * @template T
 * @param {readonly T[] | undefined} all
 * @returns {T | null}
 */
function onlyOne(all) {
  return all?.length === 1 ? (all[0] ?? null) : null;
}

/**
 * @param {Scope} scope
 * @param {string} text
 * @param {(number: string) => ListCard | null} find
 */
function readRun(scope, text, find) {
  const dashes = [...text.matchAll(DASH)].reverse();
  for (const { index } of dashes) {
    const from = find(text.slice(0, index).trim());
    if (from === null) continue;
    const end = text.slice(index + 1).trim();
    const short = `${runningPart(from.number ?? '')?.prefix ?? ''}${end}`;
    for (const to of [find(end), find(short)]) {
      const run = to && runOf(scope, from, to);
      if (run) return run;
    }
  }
  return null;
}
