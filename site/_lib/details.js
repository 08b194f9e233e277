import { day, moment } from './dates.js';
import { markup } from './markup.js';
import { streetDays } from './titles.js';
import { folded } from './told.js';
import { capital, runWords, shortPrintWords, signer } from './words.js';

/** @typedef {import('./markup.js').Markup} Markup */
/** @typedef {import('./markup.js').Part} Part */
/** @typedef {import('./types.js').PublicCard} PublicCard */
/** @typedef {import('./types.js').PublicSet} PublicSet */
/** @typedef {import('./types.js').PublicData} PublicData */
/** @typedef {{ readonly term: string, readonly said: readonly (Part | readonly Part[])[] }} Detail */

/**
 * Everything else that is known of a card, as terms and what is said of them.
 *
 * @param {PublicCard} card
 * @param {PublicSet} set
 * @param {PublicData} data
 * @returns {Markup | null}
 */
export function detailsOf(card, set, data) {
  const details = [...ofTheBack(card, data), ...ofTheCard(card, data), ...ofTime(card, set, data)];
  if (details.length === 0) return null;
  return markup`<dl class="details">
${details.map(detailLine)}</dl>`;
}

/** @param {Detail} detail */
function detailLine({ term, said }) {
  return markup`<div><dt>${term}</dt>${said.map((words) => markup`<dd>${words}</dd>`)}</div>\n`;
}

/**
 * @param {PublicCard} card
 * @param {PublicData} data
 * @returns {readonly Detail[]}
 */
function ofTheBack(card, data) {
  return [
    ...card.facts.map(({ name, value, level }) => {
      return { term: name, said: [folded(value, level, data)] };
    }),
    ...card.texts.map(({ zone, value, level }) => {
      return { term: capital(zone), said: [folded(value, level, data)] };
    }),
  ];
}

/**
 * @param {PublicCard} card
 * @param {PublicData} data
 * @returns {readonly Detail[]}
 */
function ofTheCard(card, data) {
  const { signers, letter, tell, shortPrint, run, credits } = card;
  const signed = signers.map((each) => folded(signer(each), card.signersLevel, data));
  return [
    ...(signed.length > 0 ? [{ term: 'Signed by', said: signed }] : []),
    ...(tell === null
      ? []
      : [{ term: letter === null ? 'How to tell' : 'Variation', said: [tell] }]),
    ...(shortPrint === null ? [] : [{ term: 'Printing', said: [shortPrintWords(shortPrint)] }]),
    ...(run === null ? [] : [{ term: 'Run', said: [runWords(run)] }]),
    ...credits.map(({ role, name }) => {
      return { term: role, said: [folded(name, card.creditsLevel, data)] };
    }),
  ];
}

/**
 * @param {PublicCard} card
 * @param {PublicSet} set
 * @param {PublicData} data
 * @returns {readonly Detail[]}
 */
function ofTime({ state, opens, revealed }, set, data) {
  const { zone } = data.property;
  return [
    ...(set.street.length > 0 ? [{ term: 'In shops', said: [streetDays(set, data)] }] : []),
    ...(revealed === null ? [] : [{ term: 'Revealed', said: [day(revealed, zone)] }]),
    ...(state === 'placeholder' && opens !== null
      ? [{ term: 'To be revealed', said: [moment(opens, zone)] }]
      : []),
  ];
}
