import type { Document, Element } from '@xmldom/xmldom';

const ATOM = 'http://www.w3.org/2005/Atom';
const XHTML = 'http://www.w3.org/1999/xhtml';

/** RFC 3339, 5.6, as RFC 4287, 3.3 asks for it: capital T and Z. */
const DATE = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d+)?(Z|[+-]\d\d:\d\d)$/;

/** RFC 3986, 3: a scheme, and the characters that a URI may have. */
const URI = /^[a-z][a-z0-9+.-]*:([A-Za-z0-9._~:/?#[\]@!$&'()*+,;=-]|%[0-9A-Fa-f]{2})+$/;

/** RFC 4151, 2.1. */
export const TAG =
  /^tag:[a-z0-9-]+(\.[a-z0-9-]+)*,\d{4}(-\d\d(-\d\d)?)?:[A-Za-z0-9._~!$&'()*+,;=:@/?-]*$/;

/** RFC 9562, 4: the version is 5, the variant 10. */
export const UUID =
  /^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-5[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;

export function children(parent: Element, name?: string): Element[] {
  return [...parent.childNodes].filter(
    (node): node is Element =>
      node.nodeType === 1 && (name === undefined || node.nodeName === name),
  );
}

export function textOf(parent: Element, name: string): string {
  return children(parent, name)[0]?.textContent ?? '';
}

/** What a feed lacks of the rules of RFC 4287 that apply to ours, one line each. */
export function atomFaults(document: Document): string[] {
  const feed = document.documentElement;
  if (feed?.namespaceURI !== ATOM || feed.localName !== 'feed') return ['4.1.1: no atom:feed'];
  const entries = children(feed, 'entry');
  const ids = entries.map((entry) => textOf(entry, 'id'));
  return [
    ...metadataFaults(feed),
    ...(children(feed, 'author').length === 0 ? ['4.1.1: a feed has an author'] : []),
    ...children(feed, 'author').flatMap(personFaults),
    ...(feedLink(feed, 'self') ? [] : ['4.1.1: a feed should say where it stands']),
    ...(new Set(ids).size === ids.length ? [] : ['4.2.6: two entries with one id']),
    ...entries.flatMap(entryFaults),
  ];
}

function feedLink(feed: Element, relation: string): boolean {
  return children(feed, 'link').some((link) => link.getAttribute('rel') === relation);
}

/** 4.1.1 and 4.1.2: what a feed and an entry have alike. */
function metadataFaults(parent: Element): string[] {
  const where = parent.nodeName;
  const count = (name: string) => children(parent, name).length;
  return [
    ...['id', 'title', 'updated'].flatMap((name) =>
      count(name) === 1 ? [] : [`4.1: ${where} has exactly one ${name}`],
    ),
    ...['rights', 'subtitle', 'summary', 'content', 'published'].flatMap((name) =>
      count(name) > 1 ? [`4.1: ${where} has at most one ${name}`] : [],
    ),
    ...(URI.test(textOf(parent, 'id')) ? [] : [`4.2.6: ${where} has no URI for its id`]),
    ...(DATE.test(textOf(parent, 'updated')) ? [] : [`3.3: ${where} has no date for updated`]),
    ...linkFaults(parent),
  ];
}

/** 4.2.7, and of alternates at most one for each type and language. */
function linkFaults(parent: Element): string[] {
  const links = children(parent, 'link');
  const alternates = links
    .filter((link) => (link.getAttribute('rel') ?? 'alternate') === 'alternate')
    .map((link) => `${link.getAttribute('type') ?? ''} ${link.getAttribute('hreflang') ?? ''}`);
  return [
    ...(links.every((link) => link.getAttribute('href')) ? [] : ['4.2.7.1: a link without href']),
    ...(new Set(alternates).size === alternates.length ? [] : ['4.1: two alternates of one type']),
  ];
}

/** 3.2.1: exactly one name. */
function personFaults(person: Element): string[] {
  return children(person, 'name').length === 1 ? [] : ['3.2.1: a person has one name'];
}

/** 4.1.2 and 4.1.3. */
function entryFaults(entry: Element): string[] {
  const [content] = children(entry, 'content');
  if (!content) return [...metadataFaults(entry), '4.1.2: an entry has content'];
  const [div, ...more] = children(content);
  const isXhtml = div?.localName === 'div' && div.namespaceURI === XHTML && more.length === 0;
  const isRight = content.getAttribute('type') === 'xhtml' && isXhtml;
  return [...metadataFaults(entry), ...(isRight ? [] : ['4.1.3.3: content is one div of XHTML'])];
}
