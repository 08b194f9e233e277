import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import { buildSite } from '../../pipeline/out/site/index.js';
import { barPicture, decadesOf } from '../../site/_lib/bars.js';
import { curvePicture, spanOf } from '../../site/_lib/curves.js';
import type { PublicData, PublicSet } from '../../schema/index.js';
import { data, images } from './fixture.js';
import { openBrowser, openPage, pagesOf, type Files } from './support.js';

const LONG = 'The very long title of a subset that nobody can print <b>& that no page can hold</b>';

type Completion = NonNullable<PublicSet['products'][number]['complete']>[number];

const charts: Completion = {
  subset: 'charts',
  title: 'Lake Charts',
  cards: 4,
  expected: 34,
  half: 30,
  ninety: 57,
  ninetyNine: 1059,
  curve: [12, 14, 17, 18, 20, 22, 24, 26, 28, 30, 32, 34, 36, 39, 42, 46, 51, 57, 68, 1059],
};
const story: Completion = {
  ...charts,
  subset: 'story',
  title: LONG,
  cards: 1200,
  expected: 19_999,
  curve: charts.curve.map((packs) => packs * 20),
};

function without<T extends object, K extends keyof T>(whole: T, key: K): Omit<T, K> {
  const rest = { ...whole };
  Reflect.deleteProperty(rest, key);
  return rest;
}

type Changed = (set: PublicSet) => PublicSet;

/** The site with its first set changed. */
function siteWith(change: Changed): Promise<Files> {
  const sets = data.sets.map((set) => (set.id === 'high-water' ? change(set) : set));
  const told: PublicData = { ...data, sets };
  return buildSite(told, { images, printed: false, inThisProcess: true });
}

async function pageWith(change: Changed): Promise<string> {
  const page = pagesOf(await siteWith(change)).get('high-water/index.html');
  if (page === undefined) throw new Error('there is no page of the set');
  return page;
}

/** More of everything than the fixture has. */
const full: Changed = (set) => rareTo(12_686)(set);

const rareTo =
  (packs: number): Changed =>
  (set) => ({
    ...set,
    products: set.products.map((product) => ({
      ...product,
      odds: [
        { subset: 'story', parallel: null, title: LONG, packs },
        { subset: 'charts', parallel: null, title: 'Lake Charts', packs: 4 },
        { subset: null, parallel: 'keel', title: 'Keel', packs: 1 },
      ],
      complete: [charts, story],
    })),
  });

const bare: Changed = (set) => ({
  ...without(set, 'made'),
  products: set.products.map(({ id, title, pack, box }) => ({ id, title, pack, box, odds: [] })),
});

/** The part of a page from a mark on to the end of its section. */
function sectionOf(page: string, from: string): string {
  const [, rest] = page.split(from);
  if (rest === undefined) throw new Error(`no ${from}`);
  return rest.split('</section>')[0] ?? '';
}

function rowsOf(part: string): readonly (readonly string[])[] {
  return part
    .split('<tr>')
    .slice(1)
    .map((row) =>
      [...row.matchAll(/<t[hd][^>]*>(.*?)<\/t[hd]>/g)].map(([, cell = '']) =>
        cell.replace(/<[^>]*>/g, ''),
      ),
    );
}

describe('a picture of bars', () => {
  it('is on a scale where each line is ten times the one before', () => {
    const picture = barPicture({
      id: 'a',
      title: 'Found <i>',
      about: 'Bars.',
      bars: [
        { title: 'Tarred', amount: 1, says: '1:1' },
        { title: LONG, amount: 10, says: '1:10' },
        { title: 'Keel', amount: 100, says: '1:100' },
      ],
      decades: 2,
    });
    expect(picture.text).toBe(`<figure class="drawn"><figcaption>Found &lt;i&gt;</figcaption>
<svg role="img" aria-labelledby="a--title a--about" width="100%" height="8.5em">
<title id="a--title">Found &lt;i&gt;</title><desc id="a--about">Bars.</desc>
<line class="grid" x1="12%" x2="12%" y1="1.3em" y2="8.5em"/><text class="scale middle" x="12%" y="1em">1</text>
<line class="grid" x1="53%" x2="53%" y1="1.3em" y2="8.5em"/><text class="scale middle" x="53%" y="1em">10</text>
<line class="grid" x1="94%" x2="94%" y1="1.3em" y2="8.5em"/><text class="scale middle" x="94%" y="1em">100</text>

<text x="0" y="2.7em">Tarred <tspan class="scale">1:1</tspan></text><rect class="bar" y="3.05em" width="12%" height="0.5em"/>
<text x="0" y="5em">The very long title of a subset tha… <tspan class="scale">1:10</tspan></text><rect class="bar" y="5.35em" width="53%" height="0.5em"/>
<text x="0" y="7.3em">Keel <tspan class="scale">1:100</tspan></text><rect class="bar" y="7.65em" width="94%" height="0.5em"/>
</svg></figure>
`);
  });

  it.each([
    [[1], 1],
    [[10, 2], 1],
    [[11], 2],
    [[3, 1000], 3],
    [[12_686], 5],
  ])('of %j goes to ten to the power of %i', (amounts, decades) => {
    expect(decadesOf(amounts)).toBe(decades);
  });
});

describe('a picture of curves', () => {
  it.each([
    [[charts], { from: 10, to: 2000 }],
    [[charts, story], { from: 10, to: 2000 }],
    [[{ ...charts, curve: [1], ninetyNine: 2 }], { from: 1, to: 2 }],
    [[{ ...charts, curve: [20], ninetyNine: 500 }], { from: 20, to: 500 }],
  ])('spans all of them from one round number to another', (all, span) => {
    expect(spanOf(all)).toEqual(span);
  });

  const picture = curvePicture({
    id: 'a',
    title: 'Hobby',
    about: 'Curves.',
    complete: [charts, { ...charts, curve: charts.curve.map((packs) => packs + 40) }],
    span: { from: 10, to: 1000 },
  }).text;

  it('has a line for each, told apart without colour, and its number on it', () => {
    const lines = [...picture.matchAll(/<path class="curve" d="([^"]*)"([^>]*)\/>/g)];
    expect(lines.map(([, , dash]) => dash)).toEqual(['', ' stroke-dasharray="7 4"']);
    const [first = ''] = lines.map(([, path]) => path);
    const points = first.slice(1).split('L');
    expect(points.length).toBe(20);
    // Half of all have it after 30 packs, at log10(30/10) of two decades; five of a hundred after 12,
    // and 75 of a hundred after 42, or 82 by the second.
    expect([points[0], points[9]]).toEqual(['40 950', '239 500']);
    expect(picture.match(/<circle class="knot"[^>]*>/g)).toEqual([
      '<circle class="knot" cx="31.3%" cy="6.8em" r="0.7em"/>',
      '<circle class="knot" cx="49.8%" cy="3.8em" r="0.7em"/>',
    ]);
  });

  it('has as many lines of packs as there are round numbers, and numbers where there is room', () => {
    const told = [...picture.matchAll(/<text class="scale middle"[^>]*>([^<]*)</g)];
    expect(told.map(([, words]) => words)).toEqual(['10', '50', '100', '500', '1,000']);
    expect(picture.match(/<line class="grid"/g)?.length).toBe(5 + 7);
  });
});

describe('what is packed, on the page of a set', () => {
  it('is told in tables beside the pictures', async () => {
    const page = await pageWith(full);
    const complete = sectionOf(page, '<h3>Every card of a subset</h3>');
    const shown = LONG.replace('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
    const product = [
      ['Subset', 'Average', '50 %', '90 %', '99 %'],
      ['1 Lake Charts 4 cards', '34', '30', '57', '1,059'],
      [`2 ${shown} 1,200 cards`, '19,999', '30', '57', '1,059'],
    ];
    expect(rowsOf(complete)).toEqual([...product, ...product]);
    expect(rowsOf(sectionOf(page, 'id="set--runs"'))).toEqual([
      ['Name', 'Cards', 'Copies'],
      ['Crew and Craft, 17b', '1', '250'],
      ['Varnished', '20', '84'],
      ['Signatures, SG-9', '1', '1'],
      ['Keel', '31', '1'],
    ]);
  });

  it('is drawn once for each product, from often to rare, and once for the runs', async () => {
    const page = await pageWith(full);
    const names = [...page.matchAll(/<svg role="img" aria-labelledby="([^"]*)"/g)];
    expect(names.map(([, ids]) => ids)).toEqual(
      ['found--hobby', 'found--retail', 'complete--hobby', 'complete--retail', 'made'].map(
        (id) => `set--${id}--title set--${id}--about`,
      ),
    );
    const hobby = page.split('id="set--found--hobby--title"')[1]?.split('</svg>')[0] ?? '';
    expect([...hobby.matchAll(/<tspan[^>]*>([^<]*)</g)].map(([, says]) => says)).toEqual([
      '1:1',
      '1:4',
      '1:12,686',
    ]);
  });

  it('is not spoken of where nothing is public', async () => {
    const page = await pageWith(bare);
    expect(page).not.toMatch(/set--(?:odds|runs|found|complete|made)|<figure|class="pictures"/);
  });

  it('tells runs without odds, and odds of which nothing can be worked out', async () => {
    const runs = await pageWith((set) => ({ ...bare(set), made: set.made ?? [] }));
    expect(runs).toContain('href="#set--runs"');
    expect(runs).not.toContain('set--odds');
    const odds = await pageWith((set) => {
      const { products } = full(set);
      return { ...bare(set), products: products.map((own) => without(own, 'complete')) };
    });
    expect(odds).toContain('id="set--found--hobby--title"');
    expect(odds).not.toMatch(/Every card of a subset|set--runs/);
  });
});

/** Words of pictures that are too small, stand outside their picture, or over each other on a scale. */
const UNREADABLE = `(() => {
  const faults = [];
  for (const svg of document.querySelectorAll('.drawn > svg')) {
    const frame = svg.getBoundingClientRect();
    const boxes = [];
    for (const text of svg.querySelectorAll('text')) {
      const box = text.getBoundingClientRect();
      const size = Number.parseFloat(getComputedStyle(text).fontSize);
      if (size < 11) faults.push('small: ' + text.textContent);
      if (box.left < frame.left - 1 || box.right > frame.right + 1) faults.push('outside: ' + text.textContent);
      for (const [words, other] of text.matches('.scale') ? boxes : []) {
        const apart = box.left >= other.right || box.right <= other.left || box.top >= other.bottom || box.bottom <= other.top;
        if (!apart) faults.push('over each other: ' + words + ', ' + text.textContent);
      }
      if (text.matches('.scale')) boxes.push([text.textContent, box]);
    }
    if (svg.querySelectorAll('text').length === 0) faults.push('no words');
  }
  return faults;
})()`;

describe('the pictures in a browser', () => {
  let browser: Browser;
  let site: Files;

  beforeAll(async () => {
    [browser, site] = await Promise.all([openBrowser(), siteWith(full)]);
  });
  afterAll(() => browser.close());

  async function onPage<T>(
    width: number,
    ask: (page: Page) => Promise<T>,
    files = site,
  ): Promise<T> {
    const page = await openPage(browser, files, 'high-water/', { width });
    try {
      return await ask(page);
    } finally {
      await page.close();
    }
  }

  it.each([320, 360, 768, 1280])('can be read at %i px', async (width) => {
    await onPage(width, async (page) => {
      expect(await page.locator('.drawn > svg').count()).toBe(5);
      expect(await page.evaluate(UNREADABLE)).toEqual([]);
      const wide = 'document.documentElement.scrollWidth - document.documentElement.clientWidth';
      expect(await page.evaluate(wide)).toBe(0);
    });
  });

  it.each([9, 90, 9_000, 900_000])('can be read on a scale up to %i', async (packs) => {
    const files = await siteWith(rareTo(packs));
    expect(await onPage(320, (page) => page.evaluate(UNREADABLE), files)).toEqual([]);
  });

  it('take their colours from the page, in light and in dark', async () => {
    await onPage(360, async (page) => {
      const colours = () =>
        page.evaluate<string[]>(`['.bar', '.curve', '.drawn text'].flatMap((what) => {
          const { fill, stroke } = getComputedStyle(document.querySelector(what));
          return [fill, stroke];
        })`);
      const light = await colours();
      await page.emulateMedia({ colorScheme: 'dark' });
      const dark = await colours();
      expect(light.map((colour, at) => colour === dark[at])).toEqual([
        ...[false, true],
        ...[true, false],
        ...[false, false],
      ]);
    });
  });
});
