import { gzipSync } from 'node:zlib';
import { fc, test } from '@fast-check/vitest';
import { HtmlValidate } from 'html-validate';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildSite } from '../../../pipeline/out/site/index.js';
import type { PublicCard, PublicSet } from '../../../schema/index.js';
import { rowIds } from '../../../site/_lib/rows.js';
import { listHeads } from '../../../site/_lib/tools.js';
import { bareData, data, images } from '../fixture.js';
import { hostileStrings } from '../hostile-strings.js';
import { openBrowser, textOf, type Files } from '../support.js';
import { largeData } from './large.js';
import { serve, visit } from './served.js';

const NONE: Files = new Map();
const KILOBYTE = 1024;
const PAGES = [
  '',
  'high-water/',
  'depth-charts/',
  'high-water/crew/',
  'high-water/sketches/',
  'high-water/signatures/',
];

let site: Files;

beforeAll(async () => {
  site = await buildSite(data, { images, inThisProcess: true });
});

const pageOf = (path: string, files = site) => textOf(files.get(`${path}index.html`));

const wordsOf = (html: string) =>
  html
    .replace(/<\/(td|th|dt|dd|p|li)>/g, ' ')
    .replace(/<[^>]*>/g, '')
    .replace(/&#39;/g, '’')
    .replace(/\s+/g, ' ')
    .trim();

/** What stands in the row with an id. */
function rowOf(page: string, id: string): string {
  return new RegExp(`<tr id="${id}".*?</tr>`, 's').exec(page)?.[0] ?? '';
}

async function faultsOf(page: string, presets = ['a11y', 'document', 'standard']) {
  const validator = new HtmlValidate({
    extends: presets.map((preset) => `html-validate:${preset}`),
    rules: {
      'require-sri': ['error', { target: 'crossorigin' }],
      'wcag/h32': 'off', // the choice of what is told acts at once and sends nothing
    },
  });
  const { results } = await validator.validateString(page);
  return results
    .flatMap(({ messages }) => messages)
    .map(({ ruleId, message, line }) => `${String(line)}: ${ruleId}: ${message}`);
}

describe('the pages of sets and subsets', () => {
  it('are sound HTML, whatever their words are', async () => {
    for (const path of PAGES) expect(await faultsOf(pageOf(path)), path).toEqual([]);
    const hostile = await buildSite(hostileStrings(data).data, { images, inThisProcess: true });
    for (const path of PAGES) {
      const page = pageOf(path, hostile);
      expect(await faultsOf(page, ['document', 'standard']), path).toEqual([]);
      expect(page).not.toMatch(/<script>["']/);
    }
    const broken = pageOf('high-water/')
      .replace('</tbody>', '')
      .replace('<legend>Show</legend>', '');
    expect((await faultsOf(broken)).join()).toMatch(/close-order.*|wcag\/h71/);
  });

  it('say first what a shop sells', () => {
    const words = wordsOf(pageOf('high-water/'));
    const facts =
      'In shops 16 April 2027 (UK), 17 April 2027 (AU). 39 cards listed. Hobby 6 cards a pack, 24 packs a box Retail 6 cards a pack Find';
    expect(words).toContain(facts);
    expect(words.indexOf(facts)).toBeLessThan(words.indexOf('Emeric Hask'));
  });

  it('count the artists of a roster, and never no cards', () => {
    for (const path of ['high-water/', 'high-water/sketches/']) {
      const words = wordsOf(pageOf(path));
      expect(words).toContain('3 artists');
      expect(words).toContain('Tove Lindqvist Bram Ostrey Liese Quandt');
      expect(words).not.toMatch(/\b0 cards/);
    }
    expect(pageOf('high-water/sketches/')).not.toContain('class="tools"');
  });

  it('have a row for each card with its place, its links and its box', () => {
    const page = pageOf('high-water/');
    expect(rowOf(page, 'crew--17b')).toBe(
      '<tr id="crew--17b" class="variation" data-number="17" data-letter="b"><td class="number"><a href="../high-water/crew/17b/" tabindex="-1">17<span class="letter">b</span></a></td><th scope="row"><a class="name" href="../high-water/crew/17b/">Odalys Thrane</a></th><td class="notes">variation: the lamp is lit; short print (SP); 250 copies</td><td class="tick"></td></tr>',
    );
    expect(rowOf(page, 'crew--18')).toMatch(
      /<th scope="row" class="number"><a href="[^"]*">18<.*<td class="named"><details class="told" data-level="1">.*<\/summary><a class="name"/,
    );
    expect(rowOf(page, 'crew--20')).toContain('aria-label="20, to be revealed"');
    expect(rowOf(page, 'relics--tr-4')).toMatch(/class="not-issued".*<td><\/td><\/tr>$/);
    expect(rowOf(page, 'signatures--card')).not.toContain('class="tick"');
    expect(page.match(/<td class="tick">/g)).toHaveLength(28);
  });

  it('fold signers by their own level, and say when a card was revealed after the first', async () => {
    const later = '2027-05-14T20:00:00+01:00[Europe/London]';
    const made = await buildSite(
      withCards((card) => ({
        ...card,
        ...(card.number === 'SG-1' && { signersLevel: 1 }),
        ...(card.number === '50' && { revealed: later }),
      })),
      { images, inThisProcess: true },
    );
    const page = pageOf('high-water/', made);
    expect(rowOf(page, 'signatures--sg-1')).toMatch(
      /<td class="notes"><details class="told" data-level="1">.*signed by Ines Albarran/,
    );
    expect(wordsOf(rowOf(page, 'story--50'))).toContain('revealed 14 May 2027');
    expect(page.match(/revealed <time/g)).toHaveLength(1);
  });

  it('lead to corrected cards, and to the files of the set with their terms', () => {
    const charts = pageOf('depth-charts/');
    expect(charts).toContain('<th scope="row"><a href="../depth-charts/soundings/2/">2</a></th>');
    expect(charts).toMatch(/data-level="1">.*<del>37 cards<\/del>/);
    const files =
      /<section[^>]*id="set--files".*?<\/section>/s.exec(pageOf('high-water/'))?.[0] ?? '';
    expect(files).toContain('href="../high-water/');
    expect(files).toContain('Free to use with the name of the publisher.');
  });

  it('under a licence for number and name alone are whole', async () => {
    const bare = await buildSite(bareData, { images: NONE, inThisProcess: true });
    expect(await faultsOf(pageOf('high-water/', bare))).toEqual([]);
    expect(pageOf('high-water/', bare).match(/<tr id=/g)).toHaveLength(37);
  });
});

function withCards(change: (card: PublicCard) => PublicCard): typeof data {
  return {
    ...data,
    sets: data.sets.map((set) => ({
      ...set,
      subsets: set.subsets.map((subset) => ({ ...subset, cards: subset.cards.map(change) })),
    })),
  };
}

describe('places of cards and heads of lists', () => {
  const [set] = data.sets;
  const [subset] = set?.subsets ?? [];
  const [card] = subset?.cards ?? [];
  if (!set || !subset || !card) throw new Error('the fixture has a set with cards');
  const number = fc.option(
    fc.constantFrom('1', '1-2', '1 2', 'A', 'a', 'É', 'title', 'parallels', '--', '17b'),
  );
  const cards = fc.array(
    fc
      .record({ number, letter: fc.constantFrom(null, 'b') })
      .map((its): PublicCard => ({ ...card, ...its })),
    { maxLength: 12 },
  );
  const sets = fc
    .tuple(
      cards,
      cards,
      fc.constantFrom('Crew', 'High Water'),
      fc.constantFrom('Crew', 'High Water'),
    )
    .map(([first, second, a, b]): PublicSet => {
      return {
        ...set,
        subsets: [
          { ...subset, id: 'set', title: a, cards: first },
          { ...subset, id: 'crew', title: b, cards: second },
        ],
      };
    });

  test.prop([sets])('are each like no other, and fit for an address', (some) => {
    const ids = [...rowIds(some).values()];
    const reserved = [
      'set--title',
      'crew--title',
      'set--parallels',
      'set--corrections',
      'set--files',
    ];
    expect(new Set([...ids, ...reserved]).size).toBe(ids.length + reserved.length);
    for (const id of ids) expect(id).toMatch(/^[a-z0-9]+--[a-z0-9]+(?:-[a-z0-9]+)*$/);
    expect(new Set(listHeads(some).values()).size).toBe(2);
  });

  it('are subset and number', () => {
    const ids = [...rowIds(set).values()];
    expect(ids).toEqual(
      expect.arrayContaining(['crew--17', 'crew--17b', 'charts--lc-4', 'signatures--card']),
    );
  });
});

describe('a set of a thousand cards', () => {
  let large: Files;
  let browser: Browser;

  beforeAll(async () => {
    [large, browser] = await Promise.all([
      buildSite(largeData(1000), { images: NONE, inThisProcess: true }),
      openBrowser(),
    ]);
  });

  afterAll(() => browser.close());

  it('weighs at most 100 KB with its styles and scripts, compressed', () => {
    const page = pageOf('high-water/', large);
    const asked = [...page.matchAll(/(?:href|src)="\.\.\/(assets\/[^"]*\.(?:css|js))"/g)];
    const paths = [...new Set(asked.map(([, path = '']) => path))];
    const sizes = ['high-water/index.html', ...paths].map((path) => {
      return gzipSync(large.get(path) ?? new Uint8Array()).length;
    });
    expect(paths.length).toBeGreaterThan(10);
    expect(Math.min(...sizes)).toBeGreaterThan(100);
    expect(sizes.reduce((sum, size) => sum + size, 0)).toBeLessThan(100 * KILOBYTE);
  });

  it('is searched within a frame for each letter that is typed', async () => {
    const served = await serve(large);
    try {
      const times = await visit(browser, `${served.origin}/high-water/`, { width: 360 }, (page) =>
        page.evaluate<number[]>(TYPING),
      );
      const middle = [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? Infinity;
      expect(times).toHaveLength(60);
      expect(middle).toBeLessThan(16);
    } finally {
      await served.close();
    }
  });
});

/** Milliseconds of the script for each letter typed, without what the browser then lays out. */
const TYPING = `(() => {
  const box = document.getElementById('find--box');
  const times = [];
  for (let round = 0; round < 10; round += 1) {
    for (const typed of ['t', 'th', 'thr', '1', '12', '']) {
      box.value = typed;
      const start = performance.now();
      box.dispatchEvent(new Event('input'));
      times.push(performance.now() - start);
    }
  }
  return times;
})()`;
