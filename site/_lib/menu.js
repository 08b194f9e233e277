/** @typedef {import('./types.js').PublicData} PublicData */
/** @typedef {'home' | 'signers' | 'new' | 'corrections' | 'about'} Place */
/** @typedef {{ readonly place: Place, readonly words: string, readonly address: string }} Entry */

/** Every page has the menu, and it takes a look at every card. @type {WeakMap<PublicData, readonly Entry[]>} */
const known = new WeakMap();

/**
 * The pages that stand beside the sets. One that would be empty is left out.
 *
 * @param {PublicData} data
 * @returns {readonly Entry[]}
 */
export function menuOf(data) {
  const entries = known.get(data) ?? entriesOf(data);
  known.set(data, entries);
  return entries;
}

/**
 * @param {PublicData} data
 * @returns {readonly Entry[]}
 */
function entriesOf({ sets, news }) {
  const cards = sets.flatMap(({ subsets }) => subsets.flatMap((subset) => subset.cards));
  const hasSigners = cards.some(({ signers }) => signers.length > 0);
  const hasCorrections = sets.some(({ corrections }) => corrections.length > 0);
  /** @type {readonly (Entry & { readonly shown: boolean })[]} */
  const all = [
    { place: 'home', words: 'Checklists', address: '', shown: true },
    { place: 'new', words: 'New', address: 'new/', shown: news.length > 0 },
    { place: 'signers', words: 'Signers', address: 'signers/', shown: hasSigners },
    { place: 'corrections', words: 'Corrections', address: 'corrections/', shown: hasCorrections },
    { place: 'about', words: 'About and data', address: 'about/', shown: true },
  ];
  return all.filter(({ shown }) => shown);
}

/**
 * Whether the site has a page of its own for this.
 *
 * @param {PublicData} data
 * @param {Place} wanted
 */
export function has(data, wanted) {
  return menuOf(data).some(({ place }) => place === wanted);
}
