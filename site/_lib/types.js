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
 * @property {'words' | 'labels'} role
 * @property {'normal' | 'italic'} style
 * @property {number} weight
 * @property {string} script
 * @property {string} range A CSS `unicode-range`.
 * @property {string} file Its address below the site.
 *
 * @typedef {object} Download A file that stands beside the pages.
 * @property {string} path Its address below the site.
 * @property {string | null} set The id of the set that it is of, if it is of one.
 * @property {string} kind
 * @property {string} title
 * @property {string} type Its media type.
 *
 * @typedef {object} SiteData
 * @property {PublicData} publicData
 * @property {readonly FontFace[]} fonts
 * @property {readonly Download[]} downloads
 */

export {};
