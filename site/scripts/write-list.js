import { isCollected, listedAs, NOTHING, scopesOf, tidy } from './collection.js';
import { readItem } from './read-item.js';
import { follows } from './runs.js';
import { countOf, PLAIN } from './ticks.js';

/** @typedef {import('./collection.js').Collection} Collection */
/** @typedef {import('./collection.js').ListCard} ListCard */
/** @typedef {import('./collection.js').Scope} Scope */
/** @typedef {import('./ticks.js').Ticks} Ticks */

/** Fewer neighbours than this are written one by one. */
const SHORTEST_RUN = 3;

/**
 * What somebody wants, on one line: "Some Set, want: 3, 17-22, 40; LC-2; Varnished: 9".
 *
 * @param {Collection} collection
 * @param {Ticks} ticks
 * @returns {string}
 */
export function writeWant(collection, ticks) {
  const scopes = scopesOf(collection).filter(({ printing }) =>
    isCollected(collection, ticks, printing),
  );
  const parts = scopes.map((scope) => {
    return { scope, items: missingItems(scope, ticks) };
  });
  const named = parts.flatMap((part) => chunksOf(part, parts));
  return `${tidy(collection.head)}, want: ${named.join('; ') || NOTHING}`;
}

/**
 * The numbers of a scope that are missing, a list for each of its sequences.
 *
 * @param {Scope} scope
 * @param {Ticks} ticks
 */
export function missingItems(scope, ticks) {
  const { printing } = scope;
  return scope.sequences
    .map((cards) => itemsOf(scope, cards, ({ key }) => countOf(ticks, printing, key) === 0))
    .filter(({ length }) => length > 0);
}

/** @typedef {{ readonly scope: Scope, readonly items: readonly (readonly string[])[] }} Part */

/**
 * A printing of which nothing is missing is named all the same: a list that is read ticks what it
 * names and does not want.
 *
 * @param {Part} part
 * @param {readonly Part[]} all
 * @returns {readonly string[]}
 */
function chunksOf({ scope, items }, all) {
  const { label, printing } = scope;
  if (label === '') return items.map((each) => each.join(', '));
  if (items.length > 0) return [`${label}: ${items.flat().join(', ')}`];
  const ofPrinting = all.filter((each) => each.scope.printing === printing);
  const isFirst = ofPrinting[0]?.scope === scope;
  const complete = ofPrinting.every((each) => each.items.length === 0);
  return printing !== PLAIN && isFirst && complete ? [`${label}: ${NOTHING}`] : [];
}

/**
 * What somebody has to give away, on one line: "Some Set, doubles: 3 x2; Varnished: 9 x1".
 *
 * @param {Collection} collection
 * @param {Ticks} ticks
 * @returns {string}
 */
export function writeDoubles(collection, ticks) {
  const chunks = scopesOf(collection).flatMap((scope) => {
    const items = scope.sequences
      .map((cards) => cards.flatMap((card) => doubleOf(scope, card, ticks)))
      .filter(({ length }) => length > 0);
    if (scope.label === '') return items.map((each) => each.join(', '));
    return items.length === 0 ? [] : [`${scope.label}: ${items.flat().join(', ')}`];
  });
  return `${tidy(collection.head)}, doubles: ${chunks.join('; ') || NOTHING}`;
}

/**
 * @param {Scope} scope
 * @param {ListCard} card
 * @param {Ticks} ticks
 * @returns {readonly string[]}
 */
function doubleOf(scope, card, ticks) {
  const spare = countOf(ticks, scope.printing, card.key) - 1;
  const number = nameIn(scope, card);
  return card.can && spare > 0 && number !== null ? [`${number} x${String(spare)}`] : [];
}

/**
 * @param {Scope} scope
 * @param {ListCard} card
 */
function nameIn(scope, card) {
  const number = listedAs(card);
  return number !== null && scope.printed.get(number) === card ? number : null;
}

/**
 * Numbers and runs of numbers; a variation comes after the run that it stands in.
 *
 * @param {Scope} scope
 * @param {readonly ListCard[]} sequence
 * @param {(card: ListCard) => boolean} isMeant
 * @returns {readonly string[]}
 */
export function itemsOf(scope, sequence, isMeant) {
  /** @type {string[]} */
  const items = [];
  /** @type {ListCard[]} */
  let run = [];
  /** @type {ListCard[]} */
  let variations = [];
  const close = () => {
    items.push(...writeRun(scope, run), ...variations.flatMap((card) => nameIn(scope, card) ?? []));
    run = [];
    variations = [];
  };
  for (const card of sequence) {
    const meant = card.can && nameIn(scope, card) !== null && isMeant(card);
    if (card.letter !== '') {
      if (meant) variations.push(card);
      continue;
    }
    const last = run.at(-1);
    if (!meant || last === undefined || !isNext(last, card)) close();
    if (meant) run.push(card);
  }
  close();
  return items;
}

/**
 * @param {ListCard} before
 * @param {ListCard} after
 */
function isNext(before, after) {
  return before.number !== null && after.number !== null && follows(before.number, after.number);
}

/**
 * A run is written as one only if it reads as just these cards: 1-3 may be a number of its own.
 *
 * @param {Scope} scope
 * @param {readonly ListCard[]} cards
 * @returns {readonly string[]}
 */
function writeRun(scope, cards) {
  const numbers = cards.flatMap((card) => nameIn(scope, card) ?? []);
  if (numbers.length < SHORTEST_RUN) return numbers;
  const text = `${numbers[0] ?? ''}-${numbers.at(-1) ?? ''}`;
  const read = readItem(scope, text);
  return read !== null && isSame(read, cards) ? [text] : numbers;
}

/**
 * @param {readonly ListCard[]} some
 * @param {readonly ListCard[]} others
 */
function isSame(some, others) {
  return some.length === others.length && some.every((card, at) => card === others[at]);
}
