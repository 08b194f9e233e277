import { foldedWords } from './search-words.js';
import { runningPart } from './runs.js';
import { countOf, PLAIN } from './ticks.js';

/** @typedef {import('./ticks.js').Ticks} Ticks */

/**
 * A card as it stands in a list.
 *
 * @typedef {object} ListCard
 * @property {string} key What its ticks are kept by.
 * @property {string | null} number As printed, without its letter.
 * @property {string} letter Of a variation; else empty.
 * @property {boolean} can Whether anybody can have it: it is issued and not to be revealed.
 *
 * @typedef {object} ListSubset
 * @property {string} title
 * @property {boolean} base Whether it is of the base set.
 * @property {ReadonlySet<string>} of The parallels that it is printed in besides.
 * @property {readonly ListCard[]} cards
 *
 * @typedef {object} Printing A parallel.
 * @property {string} id
 * @property {string} title
 *
 * @typedef {object} Collection What a list can speak of.
 * @property {string} head What its lists open with.
 * @property {readonly Printing[]} parallels
 * @property {readonly ListSubset[]} subsets
 */

/**
 * A stretch of a list in which a number means one card: of one printing, and under one label.
 *
 * @typedef {object} Scope
 * @property {string} printing
 * @property {string} label Empty for the cards themselves.
 * @property {readonly (readonly ListCard[])[]} sequences Cards whose numbers may run on: those of
 *   the base set are one sequence, every other subset is one.
 * @property {ReadonlyMap<string, ListCard>} printed
 */

/** Scopes of a collection are asked for at every tick. */
/** @type {WeakMap<Collection, readonly Scope[]>} */
const known = new WeakMap();

/**
 * A label that a list may have: without the signs that part a list, and like no other.
 *
 * @param {string} title
 * @param {Set<string>} taken Grows by the label.
 */
function labelOf(title, taken) {
  const words = tidy(title.replace(/[,;:]/g, ' ')) || 'Untitled';
  let label = words;
  for (let more = 2; taken.has(label); more += 1) label = `${words} (${String(more)})`;
  taken.add(label);
  return label;
}

/** @param {string} text */
export function tidy(text) {
  return text.replace(/\s+/g, ' ').trim();
}

/** @param {ListCard} card */
export function printedOf({ number, letter }) {
  return number === null ? null : `${number}${letter}`;
}

/** What stands where no number does. */
export const NOTHING = 'nothing';

/**
 * The number under which a card stands in a list; null for a card that no list can name.
 *
 * @param {ListCard} card
 */
export function listedAs(card) {
  const printed = printedOf(card);
  const fits = printed !== null && !/[,;:]/.test(printed) && tidy(printed) === printed;
  return fits && printed.toLowerCase() !== NOTHING ? printed : null;
}

/**
 * The scopes of a collection, in the order of its lists: the cards themselves, then each parallel.
 * A subset whose numbers are taken before it stands under its own title.
 *
 * @param {Collection} collection
 * @returns {readonly Scope[]}
 */
export function scopesOf(collection) {
  const scopes = known.get(collection) ?? scopesAnew(collection);
  known.set(collection, scopes);
  return scopes;
}

/**
 * @param {Collection} collection
 * @returns {readonly Scope[]}
 */
function scopesAnew({ parallels, subsets }) {
  const { common, named } = partedByNumbers(subsets);
  /** @type {Set<string>} */
  const taken = new Set(['']);
  const plain = [
    scopeOf(PLAIN, '', common),
    ...named.map((subset) => scopeOf(PLAIN, labelOf(subset.title, taken), [subset])),
  ];
  const others = parallels.flatMap(({ id, title }) => {
    const has = (/** @type {ListSubset} */ { of }) => of.has(id);
    return [
      scopeOf(id, labelOf(title, taken), common.filter(has)),
      ...named
        .filter(has)
        .map((subset) => scopeOf(id, labelOf(`${title} / ${subset.title}`, taken), [subset])),
    ];
  });
  return [...plain, ...others];
}

/** @param {readonly ListSubset[]} subsets */
function partedByNumbers(subsets) {
  /** @type {Set<string>} */
  const taken = new Set();
  /** @type {ListSubset[]} */
  const common = [];
  /** @type {ListSubset[]} */
  const named = [];
  for (const subset of subsets) {
    const numbers = subset.cards.flatMap((card) => listedAs(card) ?? []);
    if (numbers.some((number) => taken.has(number))) {
      named.push(subset);
    } else {
      common.push(subset);
      for (const number of numbers) taken.add(number);
    }
  }
  return { common, named };
}

/**
 * @param {string} printing
 * @param {string} label
 * @param {readonly ListSubset[]} subsets
 * @returns {Scope}
 */
function scopeOf(printing, label, subsets) {
  const base = subsets.filter((subset) => subset.base).flatMap(({ cards }) => cards);
  const others = subsets.filter((subset) => !subset.base).map(({ cards }) => cards);
  const before = Math.max(
    subsets.findIndex((subset) => subset.base),
    0,
  );
  const all = [...others.slice(0, before), base, ...others.slice(before)];
  /** @type {Map<string, ListCard>} */
  const printed = new Map();
  for (const card of all.flat()) {
    const number = listedAs(card);
    if (number !== null && !printed.has(number)) printed.set(number, card);
  }
  return { printing, label, sequences: all.filter(({ length }) => length > 0), printed };
}

/**
 * The cards from one to another, both with them; null if they are no run.
 *
 * @param {Scope} scope
 * @param {ListCard} from
 * @param {ListCard} to
 * @returns {readonly ListCard[] | null}
 */
export function runOf({ sequences }, from, to) {
  const sequence = sequences.find((cards) => cards.includes(from));
  if (sequence === undefined || from.letter !== '' || to.letter !== '') return null;
  const [start, end] = [sequence.indexOf(from), sequence.indexOf(to)];
  const prefix = prefixOf(from);
  if (end <= start || prefix === null || prefixOf(to) !== prefix) return null;
  return sequence
    .slice(start, end + 1)
    .filter((card) => card.letter === '' && prefixOf(card) === prefix);
}

/** @param {ListCard} card */
function prefixOf({ number }) {
  return number === null ? null : (runningPart(number)?.prefix ?? null);
}

/**
 * Whether somebody collects a printing: the cards themselves always, a parallel from the first
 * card of it.
 *
 * @param {Collection} collection
 * @param {Ticks} ticks
 * @param {string} printing
 */
export function isCollected({ subsets }, ticks, printing) {
  if (printing === PLAIN) return true;
  return subsets.some(
    ({ of, cards }) =>
      of.has(printing) && cards.some(({ can, key }) => can && countOf(ticks, printing, key) > 0),
  );
}

/**
 * The same words whatever their capitals and signs.
 *
 * @param {string} text
 */
export function foldedTitle(text) {
  return foldedWords(text).join(' ');
}
