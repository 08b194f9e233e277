import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildSite } from '../../../pipeline/out/site/index.js';
import { data, images } from '../fixture.js';
import { openBrowser, type Files } from '../support.js';
import { KEPT, SET } from './pages.js';
import { READY, serve, visit, type Served } from './served.js';

const WIDTHS = [360, 768, 1440];
/** More stops than the page has before its lists. */
const STOPS = 60;

let browser: Browser;
let site: Files;

beforeAll(async () => {
  browser = await openBrowser();
  site = await buildSite(data, { images, inThisProcess: true });
});

afterAll(() => browser.close());

/** Goes on with the tab key until something has the focus. */
async function reach(page: Page, selector: string): Promise<void> {
  for (let stop = 0; stop < STOPS; stop++) {
    const there = `document.activeElement.matches(${JSON.stringify(selector)})`;
    if (await page.evaluate<boolean>(there)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`the tab key does not come to ${selector}`);
}

/** From the line on which a card is looked for, which `/` goes to, emptied. */
async function reachFromTop(page: Page, selector: string): Promise<void> {
  await page.keyboard.press('/');
  await page.keyboard.press('Escape');
  await reach(page, selector);
}

async function tickLc4(page: Page): Promise<void> {
  await page.keyboard.press('/');
  await page.keyboard.type('lc4');
  expect(await page.locator('.cards tbody tr:visible .number').allTextContents()).toEqual(['LC-4']);
  await page.keyboard.press('Enter');
  await page.keyboard.press('Space');
}

const cards = (page: Page): Promise<unknown> => page.evaluate(`${KEPT}.cards`);

describe.each(WIDTHS)('by the keyboard alone, at %d px', (width) => {
  /** A page at this width whose printing is only noted. */
  const opened = async (
    use: (page: Page, context: BrowserContext, served: Served) => Promise<void>,
  ): Promise<void> => {
    const served = await serve(site);
    const look = {
      width,
      worker: true,
      before: 'window.print = () => { window.printed = true; };',
    };
    try {
      await visit(browser, `${served.origin}/${SET}`, look, async (page, context) => {
        await page.evaluate(READY);
        await use(page, context, served);
      });
    } finally {
      await served.close();
    }
  };

  it('a card is found, ticked, taken back; lists are copied, saved, loaded and printed', () =>
    opened(async (page) => {
      const choosing = page.waitForEvent('filechooser');
      await tickLc4(page);
      expect(await cards(page)).toEqual({ 'charts/LC-4': 1 });
      await page.keyboard.press('Control+z');
      expect(await cards(page)).toEqual({});
      await page.keyboard.press('Space');
      await reachFromTop(page, '.copy-want');
      await page.keyboard.press('Enter');
      await page.locator('.said:text("Copied")').waitFor();
      expect(await page.evaluate('navigator.clipboard.readText()')).toBe(
        'High Water, want: 1-18, 17b, 49, 50; LC-1-LC-3; SG-1, SG-9; TR-3',
      );
      await reachFromTop(page, '.more > summary');
      await page.keyboard.press('Enter');
      await reach(page, '.save-ticks');
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.keyboard.press('Enter'),
      ]);
      const saved = await download.path();
      await tickLc4(page);
      expect(await cards(page)).toEqual({});
      await reachFromTop(page, '#tools--file');
      await page.keyboard.press('Enter');
      await (await choosing).setFiles(saved);
      await page.locator('#tools--sure').waitFor();
      await reach(page, '#tools--sure .agree');
      await page.keyboard.press('Enter');
      await page.locator('#tools--sure').waitFor({ state: 'hidden' });
      expect(await cards(page)).toEqual({ 'charts/LC-4': 1 });
      await page.keyboard.press('p');
      expect(await page.evaluate('window.printed')).toBe(true);
    }));

  it('it is sorted, unfolded, and there without a line', () =>
    opened(async (page, context, served) => {
      const told = '#crew--18 details.told';
      expect(await page.evaluate(`document.querySelector('${told}').open`)).toBe(false);
      await reachFromTop(page, '.more > summary');
      await page.keyboard.press('Enter');
      await reach(page, 'input[name="telling"]');
      await page.keyboard.press('ArrowDown');
      expect(await page.evaluate(`document.querySelector('${told}').open`)).toBe(true);
      await tickLc4(page);
      await reachFromTop(page, '.cards thead button:not([aria-sort] *)');
      await page.keyboard.press('Enter');
      const sorted = page.locator('.cards thead [aria-sort="ascending"]').first();
      expect(await sorted.innerText()).toContain('Name');
      await served.close();
      await context.setOffline(true);
      await page.reload();
      await page.locator('#charts--lc-4 .box').waitFor({ state: 'attached' });
      expect(await cards(page)).toEqual({ 'charts/LC-4': 1 });
      expect(await page.evaluate(`document.querySelector('${told}').open`)).toBe(true);
      expect(await page.locator('.colophon').innerText()).toContain('As of 16 April 2027');
      expect(await page.locator('.offline').isVisible()).toBe(true);
    }));
});
