import jsonld from 'jsonld';
import { parseFragment } from 'parse5';
import { describe, expect, test } from 'vitest';

import { jsonLdOf, jsonLdText } from '../../site/_lib/json-ld.js';
import type { PublicCard, PublicData } from '../../schema/index.js';
import { data as siteData } from '../site/fixture.js';
import { data, empty, hostile, withoutAddress } from './fixture.js';
import { schemaTerms } from './schema-terms.js';

const terms = schemaTerms();

type Described = Parameters<typeof jsonLdOf>[0];

/** Every page of a site that can be described. */
function pagesOf({ sets }: PublicData): Described[] {
  return [
    { kind: 'home' },
    ...sets.flatMap((set): Described[] => [
      { kind: 'set', set },
      ...set.subsets.flatMap((subset): Described[] => [
        { kind: 'subset', set, subset },
        ...subset.cards
          .filter(({ page }) => page !== null)
          .map((card): Described => ({ kind: 'card', set, subset, card })),
      ]),
    ]),
  ];
}

type Flat = Readonly<Record<string, unknown>>;

/** All nodes of a document, with the names of schema.org alone; nothing is fetched. */
async function nodesOf(document: object): Promise<Flat[]> {
  const flat = await jsonld.flatten(
    { ...document, '@context': { '@vocab': 'https://schema.org/' } },
    null,
    {
      base: 'https://cards.example/a/b/c/',
      documentLoader: (address) => Promise.reject(new Error(`asks for ${address}`)),
    },
  );
  return flat as Flat[];
}

const HOME = 'https://schema.org/';
const LITERALS: Readonly<Record<string, readonly string[]>> = {
  string: ['Text', 'URL'],
  number: ['Integer', 'Number'],
};

/** What of a node schema.org does not define, one line each. */
function faultsOf(node: Flat, all: ReadonlyMap<unknown, Flat>): string[] {
  const types = typesOf(node);
  if (types.length === 0) return [`no type: ${JSON.stringify(node)}`];
  const unknown = types.filter((type) => !terms.classes.has(type));
  const kinds = new Set(types.flatMap((type) => [...terms.ancestry(type)]));
  const properties = Object.entries(node).filter(([key]) => !key.startsWith('@'));
  return [
    ...unknown.map((type) => `no such type: ${type}`),
    ...properties.flatMap(([key, values]) => {
      const name = key.replace(HOME, '');
      const domain = terms.domains.get(name) ?? new Set<string>();
      const range = terms.ranges.get(name) ?? new Set<string>();
      const isOf = [...domain].some((type) => kinds.has(type));
      const odd = (values as Flat[]).filter(
        (value) => !kindsOf(value, all).some((k) => range.has(k)),
      );
      return [
        ...(isOf ? [] : [`${types.join()} has no ${name}`]),
        ...odd.map((value) => `${name} cannot be ${JSON.stringify(value)}`),
      ];
    }),
  ];
}

function typesOf(node: Flat | undefined): string[] {
  return ((node?.['@type'] ?? []) as string[]).map((type) => type.replace(HOME, ''));
}

function kindsOf(value: Flat, all: ReadonlyMap<unknown, Flat>): readonly string[] {
  if ('@value' in value) return LITERALS[typeof value['@value']] ?? [];
  return typesOf(all.get(value['@id'])).flatMap((type) => [...terms.ancestry(type)]);
}

async function allFaults(document: object): Promise<string[]> {
  const nodes = await nodesOf(document);
  const all = new Map(nodes.map((node) => [node['@id'], node]));
  return nodes.flatMap((node) => faultsOf(node, all));
}

describe('what a page is about', () => {
  test.each([
    ['each kind of card', data],
    ['two sets', siteData],
    ['no address', withoutAddress],
    ['nothing listed', empty],
    ['hostile texts', hostile(data)],
  ])('is said in terms that schema.org defines: %s', async (_, some) => {
    for (const page of pagesOf(some)) {
      expect(await allFaults(jsonLdOf(page, { publicData: some })), page.kind).toEqual([]);
    }
  });

  test('would be found out in terms that it does not define', async () => {
    const wrong = {
      '@type': 'VisualArtwork',
      cardNumber: '17',
      price: '3',
      artEdition: 2,
      image: { '@type': 'Persona' },
    };
    expect(await allFaults(wrong)).toEqual([
      'VisualArtwork has no cardNumber',
      'cardNumber cannot be {"@value":"17"}',
      expect.stringContaining('image cannot be'),
      'VisualArtwork has no price',
      'no such type: Persona',
    ]);
  });

  test('a card is a printed work of its set, with its number, run and picture', () => {
    const [set] = data.sets;
    const [subset] = set?.subsets ?? [];
    const [card] = subset?.cards ?? [];
    if (!set || !subset || !card) throw new Error('the fixture has a card');
    const site = 'https://cards.example/ferrywrights/';
    expect(jsonLdOf({ kind: 'card', set, subset, card }, { publicData: data })).toEqual({
      '@context': 'https://schema.org',
      '@type': 'ItemPage',
      '@id': `${site}high-water/crew/17/`,
      url: `${site}high-water/crew/17/`,
      name: 'Odalys Thrane',
      isPartOf: { '@type': 'WebSite', '@id': site, url: site, name: 'The Ferrywrights: the cards' },
      breadcrumb: {
        '@type': 'BreadcrumbList',
        numberOfItems: 3,
        itemListElement: [
          ['The Ferrywrights: High Water', `${site}high-water/`],
          ['Crew and Craft', `${site}high-water/crew/`],
          ['Odalys Thrane', `${site}high-water/crew/17/`],
        ].map(([name, url], at) => ({ '@type': 'ListItem', position: at + 1, name, url })),
      },
      mainEntity: {
        '@type': 'VisualArtwork',
        name: 'Odalys Thrane',
        artform: 'Trading card',
        identifier: '17',
        image: {
          '@type': 'ImageObject',
          contentUrl: `${site}art/8c01d7e9a2b34f66.png`,
          caption: 'A pilot at a wheel',
        },
        isPartOf: {
          '@type': 'Collection',
          '@id': `${site}high-water/#collection`,
          name: 'The Ferrywrights: High Water',
          url: `${site}high-water/`,
        },
        isBasedOn: { '@type': 'CreativeWork', name: 'The Ferrywrights' },
        copyrightNotice: '© 2027 Lantern & Oar',
        license: { '@type': 'CreativeWork', text: 'Free to use with the name of the publisher.' },
      },
    });
    const run = { ...card, run: 250 };
    expect(jsonLdOf({ kind: 'card', set, subset, card: run }, { publicData: data })).toMatchObject({
      mainEntity: { artEdition: 250 },
    });
  });

  test('leads to what is there from a page of a site without an address', async () => {
    const ids = await Promise.all(
      pagesOf(withoutAddress).map(async (page) => {
        const { '@id': id } = jsonLdOf(page, { publicData: withoutAddress });
        const path = page.kind === 'card' ? (page.card.page ?? '') : pathOf(page);
        return [new URL(String(id), `https://a.example/top/${path}`).href, path];
      }),
    );
    expect(ids.map(([href]) => href)).toEqual(
      ids.map(([, path = '']) => `https://a.example/top/${path}`),
    );
  });

  function pathOf(page: Described): string {
    if (page.kind === 'home') return '';
    return page.kind === 'set'
      ? `${page.set.id}/`
      : 'subset' in page
        ? `${page.set.id}/${page.subset.id}/`
        : '';
  }

  test.each([
    ['level', { level: 1 }],
    ['nameLevel', { nameLevel: 1 }],
  ])('has no name that tells anything, by its %s', (_, told: Partial<PublicCard>) => {
    const some = structuredClone(data);
    const cards = some.sets.flatMap(({ subsets }) => subsets.flatMap((subset) => subset.cards));
    for (const [at, card] of cards.entries())
      Object.assign(card, told, { name: `Told${String(at)}` });
    const all = pagesOf(some).map((page) => jsonLdText(jsonLdOf(page, { publicData: some })));
    expect(all.filter((text) => text.includes('Told'))).toEqual([]);
    expect(all.filter((text) => text.includes('"Crew and Craft 17b"'))).toHaveLength(2);
    expect(all.filter((text) => text.includes('"A card of Signatures"'))).toHaveLength(1);
  });

  test('has no picture that tells anything', () => {
    const some = structuredClone(data);
    const image = some.sets[0]?.subsets[0]?.cards[0]?.image;
    if (!image) throw new Error('the fixture has a picture');
    image.level = 1;
    const all = pagesOf(some).map((page) => jsonLdText(jsonLdOf(page, { publicData: some })));
    expect(all.filter((text) => /ImageObject|wheel/.test(text))).toEqual([]);
  });
});

describe('in a script element', () => {
  test('nothing ends the element or begins another, and it reads as it was', () => {
    for (const page of pagesOf(hostile(data))) {
      const object = jsonLdOf(page, { publicData: hostile(data) });
      const text = jsonLdText({ ...object, more: '</script><!--<script>\u2028\u2029&' });
      expect(text).not.toMatch(/[<>&\u2028\u2029]/);
      const [script, ...rest] = parseFragment(
        `<script type="application/ld+json">${text}</script>`,
      ).childNodes;
      expect(rest).toEqual([]);
      const inner = script && 'childNodes' in script ? script.childNodes[0] : undefined;
      expect(JSON.parse(inner && 'value' in inner ? inner.value : '')).toEqual({
        ...(JSON.parse(JSON.stringify(object)) as object),
        more: '</script><!--<script>\u2028\u2029&',
      });
    }
  });
});
