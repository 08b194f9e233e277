import { describe, expect, test } from 'vitest';

import { sitemaps } from '../../pipeline/out/lists/sitemap.js';
import type { PublicData } from '../../schema/index.js';
import { data as siteData } from '../site/fixture.js';
import { data, empty, hostile, PLAIN_CARD, preview, withoutAddress } from './fixture.js';
import { children } from './atom-rules.js';
import { textAt, xmlOf } from './support.js';

const SITE = 'https://cards.example/ferrywrights/';

/** Addresses with their days. */
function rowsOf(text: string, entry = 'url'): [string, string | null][] {
  const root = xmlOf(text).documentElement;
  if (!root) throw new Error('no document');
  return children(root, entry).map((each) => [
    children(each, 'loc')[0]?.textContent ?? '',
    children(each, 'lastmod')[0]?.textContent ?? null,
  ]);
}

/** What a map breaks of sitemaps.org, protocol 0.9 (the rules from memory). */
function faultsOf(text: string, site: string): string[] {
  const root = xmlOf(text).documentElement;
  const kinds: Record<string, string> = { urlset: 'url', sitemapindex: 'sitemap' };
  const entry = kinds[root?.nodeName ?? ''];
  if (!root || entry === undefined) return ['no urlset and no sitemapindex'];
  const rows = rowsOf(text, entry);
  const addresses = rows.map(([address]) => address);
  return [
    ...(root.namespaceURI === 'http://www.sitemaps.org/schemas/sitemap/0.9' ? [] : ['name space']),
    ...(children(root).every(({ nodeName }) => nodeName === entry) ? [] : ['an odd element']),
    ...(rows.length <= 50_000 ? [] : ['more than 50,000 addresses']),
    ...(Buffer.byteLength(text) <= 52_428_800 ? [] : ['more than 50 MB']),
    ...addresses.filter((address) => !address.startsWith(site)).map((each) => `outside: ${each}`),
    ...addresses.filter((address) => address.length >= 2048).map((each) => `too long: ${each}`),
    ...(new Set(addresses).size === addresses.length ? [] : ['an address twice']),
    ...rows.flatMap(([, day]) => (day === null || /^\d{4}-\d\d-\d\d$/.test(day) ? [] : [day])),
  ];
}

describe('the map of the site', () => {
  test('has every page, and the day of the newest news for those that it changed', () => {
    const day = '2027-04-16';
    expect(rowsOf(textAt(data, 'sitemap.xml'))).toEqual([
      [SITE, day],
      [`${SITE}new/`, day],
      [`${SITE}signers/`, day],
      [`${SITE}corrections/`, null],
      [`${SITE}about/`, null],
      [`${SITE}high-water/`, day],
      [`${SITE}high-water/crew/`, day],
      [`${SITE}high-water/crew/17/`, day],
      [`${SITE}high-water/crew/17b/`, null],
      [`${SITE}high-water/crew/18/`, day],
      [`${SITE}high-water/crew/19/`, null],
      [`${SITE}high-water/crew/20/`, null],
      [`${SITE}high-water/crew/21/`, null],
      [`${SITE}high-water/signatures/`, day],
      [`${SITE}high-water/signatures/SG-9/`, day],
      [`${SITE}high-water/sketches/`, null],
    ]);
  });

  test('has the pages beside the sets that are not empty', () => {
    expect(rowsOf(textAt(empty, 'sitemap.xml'))).toEqual([
      [SITE, null],
      [`${SITE}about/`, null],
    ]);
  });

  test('is none of a preview, and none where the site has no address', () => {
    expect(sitemaps(preview)).toEqual([]);
    expect(sitemaps(withoutAddress)).toEqual([]);
  });

  test.each([
    ['two sets', siteData],
    ['no sets', empty],
    ['hostile texts', hostile(siteData)],
  ])('keeps the rules with %s', (_, some) => {
    expect(faultsOf(textAt(some, 'sitemap.xml'), SITE)).toEqual([]);
  });

  test('is an index of maps above 50,000 pages', () => {
    const many = withPages(50_000 - 16);
    expect(sitemaps(many).map(({ path }) => path)).toEqual(['sitemap.xml']);
    const more = sitemaps(withPages(100_001 - 16));
    expect(more.map(({ path }) => path)).toEqual([
      'sitemap.xml',
      'sitemap-1.xml',
      'sitemap-2.xml',
      'sitemap-3.xml',
    ]);
    const [index, ...parts] = more.map(({ text }) => text);
    expect(rowsOf(index ?? '', 'sitemap')).toEqual(
      more.slice(1).map(({ path }) => [`${SITE}${path}`, null]),
    );
    expect(faultsOf(index ?? '', SITE)).toEqual([]);
    const entries = parts.map((part) => part.match(/<loc>[^<]*<\/loc>/g) ?? []);
    expect(entries.map(({ length }) => length)).toEqual([50_000, 50_000, 1]);
    expect(new Set(entries.flat()).size).toBe(100_001);
  });
});

/** The fixture with so many pages of cards more. */
function withPages(count: number): PublicData {
  const [set] = data.sets;
  const sketches = set?.subsets[2];
  if (!set || !sketches) throw new Error('the fixture has a set of three subsets');
  const cards = Array.from({ length: count }, (_, at) => ({
    ...PLAIN_CARD,
    page: `high-water/sketches/${String(at)}/`,
  }));
  const subsets = [...set.subsets.slice(0, 2), { ...sketches, cards }];
  return { ...data, sets: [{ ...set, subsets }] };
}
