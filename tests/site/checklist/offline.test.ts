import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildSite } from '../../../pipeline/out/site/index.js';
import type { PublicData } from '../../../schema/index.js';
import { data, images } from '../fixture.js';
import { openBrowser, textOf, type Files } from '../support.js';
import { READY, serve, visit, type Served } from './served.js';

const CACHES = `caches.keys()`;
const PATIENCE = { timeout: 20_000 };
const IS_KEPT = (path: string) =>
  `caches.match(new URL(${JSON.stringify(path)}, location.origin)).then((kept) => kept !== undefined)`;

let browser: Browser;
let site: Files;
let later: Files;

/** The next release: a card is withdrawn, and its page is gone. */
const laterData: PublicData = {
  ...data,
  asOf: '2027-04-16T20:00:00+01:00[Europe/London]',
  sets: data.sets.map((set) => ({
    ...set,
    subsets: set.subsets.map((subset) => ({
      ...subset,
      cards: subset.cards.filter(({ number }) => number !== 'LC-4'),
    })),
  })),
};

beforeAll(async () => {
  browser = await openBrowser();
  site = await buildSite(data, { images, inThisProcess: true });
  later = await buildSite(laterData, { images, inThisProcess: true });
});

afterAll(() => browser.close());

async function withWorker(
  use: (page: Page, context: BrowserContext, served: Served) => Promise<void>,
): Promise<void> {
  const served = await serve(site);
  try {
    await visit(
      browser,
      `${served.origin}/high-water/`,
      { worker: true },
      async (page, context) => {
        await page.evaluate(READY);
        await use(page, context, served);
      },
    );
  } finally {
    await served.close();
  }
}

describe('without a line', () => {
  it('the lists are there from the first visit on, can be ticked, and say their day', () =>
    withWorker(async (page, context, served) => {
      await served.close();
      await context.setOffline(true);
      await page.reload();
      await page.locator('[id="crew--1"] .box').click();
      expect(await page.locator('[id="crew--1"] .had').count()).toBe(1);
      expect(await page.locator('.colophon').innerText()).toMatch(
        /As of 16 April 2027, 09:00[^]*You are offline/,
      );
      for (const path of ['', 'depth-charts/', 'high-water/charts/?find=lc4']) {
        await page.goto(`${served.origin}/${path}`);
        expect(await page.locator('h1').count(), path).toBe(1);
      }
      expect(await page.locator('.cards tbody tr:visible').count()).toBe(1);
      const styled = 'getComputedStyle(document.body).fontFamily + String(document.fonts.size > 0)';
      expect(await page.evaluate(styled)).toMatch(/Alegreya.*true/);
      await page.goto(`${served.origin}/high-water/`);
      expect(await page.locator('.had').count()).toBe(1);
    }));

  it('the page of a card is there once somebody has looked at it', () =>
    withWorker(async (page, context, served) => {
      await page.goto(`${served.origin}/high-water/charts/LC-4/`);
      await expect
        .poll(() => page.evaluate(IS_KEPT('/high-water/charts/LC-4/')), PATIENCE)
        .toBe(true);
      await served.close();
      await context.setOffline(true);
      await page.reload();
      expect(await page.locator('h1').innerText()).toBe('The fourth gate');
      await expect(page.goto(`${served.origin}/high-water/charts/LC-3/`)).rejects.toThrow('ERR');
    }));
});

describe('with a line', () => {
  it('a page comes from the site, and what was taken back is kept no longer', () =>
    withWorker(async (page, _, served) => {
      const card = `${served.origin}/high-water/charts/LC-4/`;
      await page.goto(card);
      await expect
        .poll(() => page.evaluate(IS_KEPT('/high-water/charts/LC-4/')), PATIENCE)
        .toBe(true);
      const before = await page.evaluate<string[]>(CACHES);
      served.publish(later);
      expect((await page.goto(card))?.status()).toBe(404);
      expect(await page.evaluate(IS_KEPT('/high-water/charts/LC-4/'))).toBe(false);
      await page.goto(`${served.origin}/high-water/`);
      expect(await page.locator('[id="charts--lc-4"]').count()).toBe(0);
      const cachesNow = () => page.evaluate<string[]>(CACHES);
      await expect.poll(cachesNow, PATIENCE).not.toContain(before[0]);
      await expect.poll(cachesNow, PATIENCE).toHaveLength(1);
      expect(before).toHaveLength(1);
    }));

  it('the caches of other sites of the same server are left alone', () =>
    withWorker(async (page, _, served) => {
      await page.evaluate('caches.open("holdback /other/ 1")');
      await page.evaluate('caches.open("holdback / 0123456789abcdef")');
      served.publish(later);
      await page.reload();
      const cachesNow = () => page.evaluate<string[]>(CACHES);
      await expect.poll(cachesNow, PATIENCE).not.toContain('holdback / 0123456789abcdef');
      await expect.poll(cachesNow, PATIENCE).toHaveLength(2);
      expect(await page.evaluate(CACHES)).toContain('holdback /other/ 1');
    }));
});

describe('the worker', () => {
  const partsOf = (files: Files) => {
    const text = textOf(files.get('sw.js'));
    const [, release = '', kept = ''] =
      /^const RELEASE = '([0-9a-f]{16})';\nconst KEPT = (\[.*\]);\n/.exec(text) ?? [];
    return { release, kept: JSON.parse(kept) as string[] };
  };

  it('keeps the lists, styles, scripts and Latin fonts, all of which are there', () => {
    const { kept } = partsOf(site);
    const files = kept.map((path) => path.replace(/^\.\//, '').replace(/(^|\/)$/, '$1index.html'));
    expect(files.filter((path) => !site.has(path))).toEqual([]);
    expect(kept.filter((path) => path.endsWith('/'))).toEqual([
      './',
      'high-water/',
      ...['crew', 'story', 'charts', 'signatures', 'relics', 'sketches'].map(
        (id) => `high-water/${id}/`,
      ),
      'depth-charts/',
      'depth-charts/soundings/',
    ]);
    const assets = [...site.keys()].filter(
      (path) => path.startsWith('assets/') && !path.includes('latin-ext'),
    );
    expect(kept.filter((path) => path.startsWith('assets/')).sort()).toEqual(assets.sort());
  });

  it('has another name for what it keeps with each release, and the same for the same', async () => {
    const again = await buildSite(structuredClone(data), { images, inThisProcess: true });
    expect(partsOf(again)).toEqual(partsOf(site));
    expect(partsOf(later).release).not.toBe(partsOf(site).release);
  });
});
