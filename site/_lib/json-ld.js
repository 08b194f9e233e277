import { isNameless, printed } from './words.js';

/** @typedef {import('./types.js').PublicData} PublicData */
/** @typedef {import('./types.js').PublicSet} PublicSet */
/** @typedef {import('./types.js').PublicSubset} PublicSubset */
/** @typedef {import('./types.js').PublicCard} PublicCard */
/** @typedef {{ readonly [key: string]: unknown }} Thing */
/** @typedef {(path: string) => string} AddressOf */

/**
 * A page that is described for programs.
 *
 * @typedef {{ readonly kind: 'home' }
 *   | { readonly kind: 'set', readonly set: PublicSet }
 *   | { readonly kind: 'subset', readonly set: PublicSet, readonly subset: PublicSubset }
 *   | { readonly kind: 'card', readonly set: PublicSet, readonly subset: PublicSubset, readonly card: PublicCard }} Described
 */

const CONTEXT = 'https://schema.org';

/** The way from a page of each kind up to the top of the site. */
const ROOTS = { home: './', set: '../', subset: '../../', card: '../../../' };

/**
 * What a page is about, in the terms of schema.org. Search engines show names to people who did
 * not ask, so a name that tells anything of the story is left out: such a card goes by its number.
 *
 * @param {Described} page
 * @param {{ readonly publicData: PublicData }} site
 * @returns {Thing}
 */
export function jsonLdOf(page, { publicData }) {
  const top = publicData.property.address ?? ROOTS[page.kind];
  /** @type {AddressOf} */
  const addressOf = (path) => `${top}${path}`;
  return { '@context': CONTEXT, ...thingOf(page, publicData, addressOf) };
}

/**
 * JSON that can stand in a script element: no sign of it can end the element or begin another.
 *
 * @param {Thing} object
 * @returns {string}
 */
export function jsonLdText(object) {
  return JSON.stringify(object).replace(
    /[<>&\u2028\u2029]/g,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}

/**
 * @param {Described} page
 * @param {PublicData} data
 * @param {AddressOf} addressOf
 * @returns {Thing}
 */
function thingOf(page, data, addressOf) {
  if (page.kind === 'home') return homeOf(data, addressOf);
  if (page.kind === 'set') return setPage(page.set, data, addressOf);
  if (page.kind === 'subset') return subsetPage(page, data, addressOf);
  return cardPage(page, data, addressOf);
}

/**
 * @param {PublicData} data
 * @param {AddressOf} addressOf
 */
function homeOf(data, addressOf) {
  const pages = data.sets.map(({ id, title }) => {
    return { '@type': 'CollectionPage', ...at(addressOf(`${id}/`)), name: title };
  });
  return {
    ...siteOf(data, addressOf),
    inLanguage: 'en',
    about: propertyOf(data),
    ...rightsOf(data),
    ...(pages.length > 0 && { hasPart: pages }),
  };
}

/**
 * @param {PublicSet} set
 * @param {PublicData} data
 * @param {AddressOf} addressOf
 */
function setPage(set, data, addressOf) {
  const here = addressOf(`${set.id}/`);
  const subsets = set.subsets.map(({ id, title }) => ({
    name: title,
    url: addressOf(`${set.id}/${id}/`),
  }));
  return {
    '@type': 'CollectionPage',
    ...at(here),
    name: set.title,
    isPartOf: siteOf(data, addressOf),
    ...rightsOf(data),
    about: {
      ...collectionOf(set, addressOf),
      collectionSize: set.listed,
      isBasedOn: propertyOf(data),
    },
    mainEntity: listOf('ItemList', subsets),
  };
}

/**
 * @param {{ readonly set: PublicSet, readonly subset: PublicSubset }} page
 * @param {PublicData} data
 * @param {AddressOf} addressOf
 */
function subsetPage({ set, subset }, data, addressOf) {
  const cards = subset.cards.map((card) => ({
    name: nameOf(card, subset),
    url: card.page === null ? null : addressOf(card.page),
  }));
  return {
    '@type': 'CollectionPage',
    ...at(addressOf(`${set.id}/${subset.id}/`)),
    name: subset.title,
    isPartOf: siteOf(data, addressOf),
    ...rightsOf(data),
    about: collectionOf(set, addressOf),
    mainEntity: listOf('ItemList', cards),
  };
}

/**
 * @param {{ readonly set: PublicSet, readonly subset: PublicSubset, readonly card: PublicCard }} page
 * @param {PublicData} data
 * @param {AddressOf} addressOf
 */
function cardPage({ set, subset, card }, data, addressOf) {
  const name = nameOf(card, subset);
  const here = at(addressOf(card.page ?? `${set.id}/${subset.id}/`));
  const way = [
    { name: set.title, url: addressOf(`${set.id}/`) },
    { name: subset.title, url: addressOf(`${set.id}/${subset.id}/`) },
    { name, url: here.url },
  ];
  return {
    '@type': 'ItemPage',
    ...here,
    name,
    isPartOf: siteOf(data, addressOf),
    breadcrumb: listOf('BreadcrumbList', way),
    mainEntity: cardOf(card, name, set, data, addressOf),
  };
}

/**
 * @param {PublicCard} card
 * @param {string} name
 * @param {PublicSet} set
 * @param {PublicData} data
 * @param {AddressOf} addressOf
 */
function cardOf(card, name, set, data, addressOf) {
  const number = printed(card);
  const picture = pictureOf(card, addressOf);
  return {
    '@type': 'VisualArtwork',
    name,
    artform: 'Trading card',
    ...(number !== '' && { identifier: number }),
    ...(card.run !== null && { artEdition: card.run }),
    ...(picture !== null && { image: picture }),
    isPartOf: collectionOf(set, addressOf),
    isBasedOn: propertyOf(data),
    ...rightsOf(data),
  };
}

/**
 * @param {PublicCard} card
 * @param {AddressOf} addressOf
 */
function pictureOf({ image, level }, addressOf) {
  if (image === null || image.level > 0 || level > 0) return null;
  const [largest] = [...image.files].sort((a, b) => b.width - a.width);
  if (largest === undefined) return null;
  const caption = image.alt !== '' && { caption: image.alt };
  return { '@type': 'ImageObject', contentUrl: addressOf(largest.file), ...caption };
}

/**
 * The name of a card if it tells nothing, else its subset and number.
 *
 * @param {PublicCard} card
 * @param {PublicSubset} subset
 */
function nameOf(card, subset) {
  if (card.level === 0 && card.nameLevel === 0 && !isNameless(card)) return card.name;
  const number = printed(card);
  return number === '' ? `A card of ${subset.title}` : `${subset.title} ${number}`;
}

/**
 * @param {PublicData} data
 * @param {AddressOf} addressOf
 */
function siteOf({ property }, addressOf) {
  return { '@type': 'WebSite', ...at(addressOf('')), name: property.siteTitle };
}

/** @param {PublicData} data */
function propertyOf({ property }) {
  return { '@type': 'CreativeWork', name: property.title };
}

/**
 * @param {PublicSet} set
 * @param {AddressOf} addressOf
 */
function collectionOf({ id, title }, addressOf) {
  const url = addressOf(`${id}/`);
  return { '@type': 'Collection', '@id': `${url}#collection`, name: title, url };
}

/**
 * The legal line, and the terms on which the data may be used.
 *
 * @param {PublicData} data
 */
function rightsOf({ property: { legal, dataTerms } }) {
  const terms = { '@type': 'CreativeWork', text: dataTerms };
  return {
    ...(legal !== null && { copyrightNotice: legal }),
    ...(dataTerms !== null && { license: terms }),
  };
}

/** @param {string} address */
function at(address) {
  return { '@id': address, url: address };
}

/**
 * @param {'ItemList' | 'BreadcrumbList'} type
 * @param {readonly { readonly name: string, readonly url: string | null }[]} items
 */
function listOf(type, items) {
  return {
    '@type': type,
    numberOfItems: items.length,
    itemListElement: items.map(({ name, url }, index) => ({
      '@type': 'ListItem',
      position: index + 1,
      name,
      ...(url !== null && { url }),
    })),
  };
}
