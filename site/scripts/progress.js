import { listedAs, scopesOf } from './collection.js';
import { countOf } from './ticks.js';
import { missingItems } from './write-list.js';

/** @typedef {import('./collection.js').Collection} Collection */
/** @typedef {import('./collection.js').ListCard} ListCard */
/** @typedef {import('./ticks.js').Ticks} Ticks */

/**
 * How far somebody has come with a printing, in one sentence: "You have 31 of 84 cards and 1 of 2
 * variations; missing 3, 17-22, 40; 4 doubles." Variations are counted apart, as in every count.
 *
 * @param {Collection} collection
 * @param {Ticks} ticks
 * @param {string} printing
 * @param {string} title What the printing is called; empty for the cards themselves.
 * @returns {string}
 */
export function progressOf(collection, ticks, printing, title) {
  const cards = cardsOf(collection, printing);
  const has = (/** @type {ListCard} */ { key }) => countOf(ticks, printing, key) > 0;
  const opening = title === '' ? 'You have' : `${title}: you have`;
  if (cards.length === 0) return `${opening} none: no card here can be had yet.`;
  const had = cards.filter(has).length;
  const parts = [
    `${opening} ${haveWords(cards, has)}`,
    had > 0 && had < cards.length && `missing ${missing(collection, ticks, printing)}`,
    doublesWords(cards, ticks, printing),
  ];
  return `${parts.filter((part) => part !== false && part !== '').join('; ')}.`;
}

/**
 * The cards of a printing that can be had.
 *
 * @param {Collection} collection
 * @param {string} printing
 */
export function cardsOf({ subsets }, printing) {
  return subsets
    .filter(({ of }) => printing === '' || of.has(printing))
    .flatMap(({ cards }) => cards.filter(({ can }) => can));
}

/**
 * @param {readonly ListCard[]} cards
 * @param {(card: ListCard) => boolean} has
 */
function haveWords(cards, has) {
  const parents = cards.filter(({ letter }) => letter === '');
  const variations = cards.filter(({ letter }) => letter !== '');
  const kinds = [
    parents.length > 0 && ofAll(parents.filter(has).length, parents.length, 'card'),
    variations.length > 0 && ofAll(variations.filter(has).length, variations.length, 'variation'),
  ];
  return kinds.filter((kind) => kind !== false).join(' and ');
}

/**
 * @param {number} had
 * @param {number} count
 * @param {string} noun
 */
function ofAll(had, count, noun) {
  const things = count === 1 ? noun : `${noun}s`;
  return `${had === 0 ? 'none' : String(had)} of ${String(count)} ${things}`;
}

/**
 * @param {Collection} collection
 * @param {Ticks} ticks
 * @param {string} printing
 */
function missing(collection, ticks, printing) {
  const scopes = scopesOf(collection).filter((scope) => scope.printing === printing);
  const own = scopes[0]?.label ?? '';
  const numbers = scopes.flatMap((scope) => {
    const items = missingItems(scope, ticks).flat();
    const label = scope.label === own || items.length === 0 ? '' : `${scope.label} `;
    return items.length === 0 ? [] : [`${label}${items.join(', ')}`];
  });
  const left = leftOut(collection, ticks, printing);
  const others = left > 0 ? [`${String(left)} without a number`] : [];
  return [...numbers, ...others].join(', ');
}

/**
 * How many missing cards no list can name, since they have no number of their own.
 *
 * @param {Collection} collection
 * @param {Ticks} ticks
 * @param {string} printing
 */
export function leftOut(collection, ticks, printing) {
  return cardsOf(collection, printing).filter(
    (card) => listedAs(card) === null && countOf(ticks, printing, card.key) === 0,
  ).length;
}

/**
 * @param {readonly ListCard[]} cards
 * @param {Ticks} ticks
 * @param {string} printing
 */
function doublesWords(cards, ticks, printing) {
  const spare = cards
    .map(({ key }) => Math.max(countOf(ticks, printing, key) - 1, 0))
    .reduce((sum, count) => sum + count, 0);
  if (spare === 0) return '';
  return spare === 1 ? '1 double' : `${String(spare)} doubles`;
}
