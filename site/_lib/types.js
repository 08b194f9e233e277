/**
 * What templates are given.
 *
 * @typedef {import('../../schema/index.js').PublicData} PublicData
 * @typedef {import('../../schema/index.js').PublicSet} PublicSet
 * @typedef {import('../../schema/index.js').PublicSubset} PublicSubset
 * @typedef {import('../../schema/index.js').PublicCard} PublicCard
 * @typedef {import('../../schema/index.js').PublicRun} PublicRun
 *
 * @typedef {object} FontFace A font file of the site.
 * @property {string} family
 * @property {'normal' | 'italic'} style
 * @property {number} weight
 * @property {string} script
 * @property {string} range A CSS `unicode-range`.
 * @property {string} file Its address below the site.
 *
 * @typedef {object} SiteData
 * @property {PublicData} publicData
 * @property {readonly FontFace[]} fonts
 */

export {};
