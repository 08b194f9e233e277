/** @typedef {import('./types.js').PublicData} PublicData */
/** @typedef {import('./types.js').PublicSet} PublicSet */
/** @typedef {import('./types.js').PublicSubset} PublicSubset */
/** @typedef {import('./types.js').PublicCard} PublicCard */

/**
 * A card that somebody signs, with whoever signs it besides.
 *
 * @typedef {object} Signing
 * @property {PublicSet} set
 * @property {PublicSubset} subset
 * @property {PublicCard} card
 * @property {string | null} as
 * @property {boolean} redemption
 * @property {readonly string[]} others
 */

/**
 * @typedef {object} Signer
 * @property {string} name
 * @property {number} level The least that a card of theirs tells.
 * @property {readonly Signing[]} signings
 */

/**
 * Everybody who signs, by name, with their cards in the order of the sets.
 *
 * @param {PublicData} data
 * @returns {readonly Signer[]}
 */
export function signersOf({ sets }) {
  /** @type {Map<string, Signing[]>} */
  const all = new Map();
  for (const set of sets) {
    for (const subset of set.subsets) {
      for (const card of subset.cards) addSigners(all, set, subset, card);
    }
  }
  return [...all]
    .map(([name, signings]) => {
      return { name, level: Math.min(...signings.map(({ card }) => card.signersLevel)), signings };
    })
    .sort((a, b) => (sortKey(a.name) < sortKey(b.name) ? -1 : 1));
}

/**
 * @param {Map<string, Signing[]>} all
 * @param {PublicSet} set
 * @param {PublicSubset} subset
 * @param {PublicCard} card
 */
function addSigners(all, set, subset, card) {
  for (const { name, as, redemption } of card.signers) {
    const others = card.signers.map((other) => other.name).filter((other) => other !== name);
    const signings = all.get(name) ?? [];
    signings.push({ set, subset, card, as, redemption, others });
    all.set(name, signings);
  }
}

/** @param {string} name */
function sortKey(name) {
  return `${name.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase()} ${name}`;
}
