import type { Page } from 'playwright-core';
import { buildSite } from '../../../pipeline/out/site/index.js';
import { data, images } from '../fixture.js';
import { openBrowser } from '../support.js';
import { serve, visit, type Look } from './served.js';

/** The lists of the fixture, in a browser. */

export const SET = 'high-water/';
export const SUBSET = 'high-water/charts/';

/** Under what the ticks of the set are kept, and what is kept, as scripts in the page. */
export const KEY = '"holdback:/high-water/"';
export const KEPT = `JSON.parse(localStorage.getItem(${KEY}))`;

/** A browser, and the site on a server. */
export interface Pages {
  readonly origin: string;
  readonly at: <T>(path: string, look: Look, use: Parameters<typeof visit<T>>[3]) => Promise<T>;
  readonly close: () => Promise<void>;
}

export async function openPages(): Promise<Pages> {
  const browser = await openBrowser();
  const served = await serve(await buildSite(data, { images, inThisProcess: true }));
  return {
    origin: served.origin,
    at: (path, look, use) => visit(browser, `${served.origin}/${path}`, look, use),
    close: async () => {
      await browser.close();
      await served.close();
    },
  };
}

/** The numbers of the rows in sight, in their order. */
export async function rows(page: Page): Promise<readonly string[]> {
  const numbers = page.locator('.cards tbody tr:visible .number');
  return (await numbers.allTextContents()).map((number) => number.trim());
}

export const box = (page: Page, id: string) => page.locator(`[id="${id}"] .box`);
export const plus = (page: Page, id: string) => page.locator(`[id="${id}"] .plus`);
export const words = (page: Page, selector: string) => page.locator(selector).innerText();
export const focused = (page: Page) =>
  page.evaluate<string>('document.activeElement.closest("tr")?.id ?? document.activeElement.id');
