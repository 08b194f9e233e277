import { day } from './dates.js';
import { markup } from './markup.js';

/** @typedef {import('./markup.js').Markup} Markup */
/** @typedef {import('./types.js').PublicCard} PublicCard */
/** @typedef {PublicCard['signers'][number]} Signer */

/** What stands as the name of a placeholder that has none of its own. */
const NAMELESS = 'To be revealed';

const FOUND = new Map([
  ['pack', 'found in packs'],
  ['box', 'found in boxes'],
  ['redemption', 'found as a redemption card'],
  ['event', 'handed out at an event'],
]);

/** @type {Readonly<Record<string, string>>} */
const SHORT_PRINTS = { SP: 'short print (SP)', SSP: 'super short print (SSP)' };

/**
 * "38 cards listed".
 *
 * @param {number} count
 */
export function listed(count) {
  return count === 1 ? '1 card listed' : `${count.toLocaleString('en-GB')} cards listed`;
}

/**
 * How a collector comes by the cards of a subset.
 *
 * @param {string} way
 */
export function foundWords(way) {
  return FOUND.get(way) ?? `found: ${way}`;
}

/**
 * "Base set" for base, "Box toppers" for box-toppers.
 *
 * @param {string} group
 */
export function groupName(group) {
  return group === 'base' ? 'Base set' : capital(group.replaceAll('-', ' '));
}

/**
 * "UK" for uk, "Benelux" for benelux.
 *
 * @param {string} region
 */
export function regionName(region) {
  return region.length <= 3 ? region.toUpperCase() : capital(region);
}

/** @param {string} text */
export function capital(text) {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** @param {PublicCard} card */
export function isNameless(card) {
  return card.state === 'placeholder' && card.name === NAMELESS;
}

/**
 * "17b", or nothing for a card without a number.
 *
 * @param {PublicCard} card
 */
export function printed(card) {
  return card.number === null ? '' : `${card.number}${card.letter ?? ''}`;
}

/**
 * "to be revealed on 14 May 2027"; without the words that the name has said already.
 *
 * @param {PublicCard} card
 * @param {string} zone
 * @returns {Markup | null}
 */
export function opening(card, zone) {
  if (card.state !== 'placeholder') return null;
  if (card.opens === null) return isNameless(card) ? null : markup`to be revealed`;
  const on = markup`on ${day(card.opens, zone)}`;
  return isNameless(card) ? on : markup`to be revealed ${on}`;
}

/**
 * What is said beside a name in a list, each as a short phrase.
 *
 * @param {PublicCard} card
 * @param {string} zone
 * @returns {readonly Markup[]}
 */
export function notes(card, zone) {
  const phrases = [
    card.state === 'not issued' && markup`not issued`,
    opening(card, zone),
    card.letter !== null && markup`variation${card.tell === null ? '' : `: ${card.tell}`}`,
    card.letter === null && card.tell !== null && markup`${card.tell}`,
    card.shortPrint !== null && markup`${SHORT_PRINTS[card.shortPrint]}`,
    card.run !== null && markup`${runWords(card.run)}`,
    card.signers.length > 0 && markup`signed by ${series(card.signers.map(signer))}`,
  ];
  return phrases.filter((phrase) => phrase !== false && phrase !== null);
}

/** @param {'SP' | 'SSP'} kind */
export function shortPrintWords(kind) {
  return SHORT_PRINTS[kind];
}

/** @param {number} run */
export function runWords(run) {
  return run === 1 ? 'one of one' : `${run.toLocaleString('en-GB')} copies`;
}

/** @param {Signer} signing */
export function signer({ name, as, redemption }) {
  return `${name}${as === null ? '' : ` as ${as}`}${redemption ? ' (redemption)' : ''}`;
}

/**
 * "a, b and c".
 *
 * @param {readonly string[]} items
 */
export function series(items) {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} and ${items.at(-1) ?? ''}`;
}
