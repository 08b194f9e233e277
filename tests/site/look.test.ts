import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Browser } from 'playwright-core';

import { buildSite } from '../../pipeline/out/site/index.js';
import { contrast, rgbOf } from '../../site/_lib/colour.js';
import { data, images } from './fixture.js';
import { openBrowser, openPage, textOf, type Files } from './support.js';

/** What a publisher says of the look in `property.yaml`, and nothing else. */
const LOOK = { accent: '#a03050', paper: '#fff4e0', ink: '#c8b8a0', type: 'source' };

let browser: Browser;
let site: Files;

beforeAll(async () => {
  const property = { ...data.property, siteTitle: 'The lake in cards', look: LOOK };
  [browser, site] = await Promise.all([
    openBrowser(),
    buildSite({ ...data, property }, { images, printed: false, inThisProcess: true }),
  ]);
});

afterAll(() => browser.close());

async function styleOf(
  path: string,
  scheme: 'light' | 'dark',
  what: string,
): Promise<Record<string, string>> {
  const page = await openPage(browser, site, path, { width: 1440 });
  await page.emulateMedia({ colorScheme: scheme });
  const style: Record<string, string> = await page.evaluate(`(() => {
    const { color, backgroundColor, fontFamily } = getComputedStyle(document.querySelector('${what}'));
    return { color, backgroundColor, fontFamily };
  })()`);
  await page.close();
  return style;
}

function rgb(css: string): [number, number, number] {
  const [red = NaN, green = NaN, blue = NaN] = (css.match(/\d+/g) ?? []).map(Number);
  return [red, green, blue];
}

describe('the look that a publisher gives', () => {
  it('is on the page: title, paper and type', async () => {
    expect(textOf(site.get('index.html'))).toContain('<title>The lake in cards</title>');
    const { backgroundColor = '', fontFamily } = await styleOf('', 'light', 'body');
    expect(rgb(backgroundColor)).toEqual([...rgbOf(LOOK.paper)]);
    expect(fontFamily).toMatch(/^"Source Serif 4"/);
    expect([...site.keys()].filter((path) => path.includes('alegreya'))).toEqual([]);
    expect([...site.keys()].some((path) => path.includes('source-sans-3'))).toBe(true);
  });

  it('is made readable where it is not (WCAG 2.2, 1.4.3)', async () => {
    expect(contrast(rgbOf(LOOK.ink), rgbOf(LOOK.paper))).toBeLessThan(4.5);
    for (const what of ['body', '.lede', 'main a']) {
      const { color = '' } = await styleOf('', 'light', what);
      expect(contrast(rgb(color), rgbOf(LOOK.paper)), what).toBeGreaterThanOrEqual(4.5);
    }
  });

  it('leaves the dark ground alone, and its accent can be read there', async () => {
    const { backgroundColor = '' } = await styleOf('', 'dark', 'body');
    expect(rgb(backgroundColor)).toEqual([15, 27, 33]);
    const { color = '' } = await styleOf('about/', 'dark', 'main a');
    expect(contrast(rgb(color), rgb(backgroundColor))).toBeGreaterThanOrEqual(4.5);
  });
});

describe('an announced lift', () => {
  /** Where somebody reads, and what their own clock shows when more is revealed. */
  const clocks = [
    ['America/New_York', 'Friday 16 April at 15:00 where you are'],
    ['Australia/Sydney', 'Saturday 17 April at 05:00 where you are'],
    ['Europe/London', ''],
    ['Africa/Lagos', ''],
  ] as const;

  it.each(clocks)('is told in the reader’s own time: %s', async (timezoneId, words) => {
    const context = await browser.newContext({ timezoneId });
    const page = await openPage(context, site, '', { width: 360 });
    expect(await page.locator('.openings li').first().innerText()).toContain(
      'On 16 April 2027 at 20:00 (London time)',
    );
    expect(await page.locator('.own-time').first().textContent()).toBe(words);
    await context.close();
  });
});
