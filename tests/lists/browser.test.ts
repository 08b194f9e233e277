import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

import { hostile } from './fixture.js';
import { data as siteData } from '../site/fixture.js';
import { openBrowser } from '../site/support.js';
import { data } from './fixture.js';
import { textAt } from './support.js';

let browser: Browser;

beforeAll(async () => {
  browser = await openBrowser();
});

afterAll(() => browser.close());

describe('in a browser', () => {
  test.each(['feed.atom', 'sitemap.xml'])('%s is XML whatever the texts are', async (path) => {
    const page = await browser.newPage();
    const texts = [textAt(data, path), textAt(hostile(siteData), path), '<feed>&nbsp;</feed>'];
    const faults = await page.evaluate(
      `(${JSON.stringify(texts)}).map((text) => new DOMParser().parseFromString(text, 'text/xml').querySelectorAll('parsererror').length)`,
    );
    expect(faults).toEqual([0, 0, 1]);
    await page.close();
  });

  test.each([
    ['light', '#ffffff', '#20262a', 360],
    ['dark', '#101820', '#e6eaec', 360],
    ['light', '#ffffff', '#20262a', 1024],
    ['dark', '#101820', '#e6eaec', 1024],
  ])(
    'a fragment takes the colours of a %s page (%s, %s) and fits %i px',
    async (_, ground, ink, width) => {
      const page = await browser.newPage({ viewport: { width, height: 800 } });
      const asked: string[] = [];
      page.on('request', (request) => asked.push(request.url()));
      await page.setContent(
        `<!doctype html><html lang="en"><title>A shop</title><style>body { background: ${ground}; color: ${ink}; }</style><p id="before">Before</p>${textAt(data, 'high-water/fragment.html')}<table id="after"><tr><td>After</td></tr></table></html>`,
      );
      const seen = await page.evaluate(`(() => {
      const colours = new Set([...document.querySelectorAll('section *')].map((each) => getComputedStyle(each).color));
      const grounds = new Set([...document.querySelectorAll('section, section *')].map((each) => getComputedStyle(each).backgroundColor));
      const after = getComputedStyle(document.querySelector('#after td'));
      return { colours: [...colours], grounds: [...grounds], padding: after.paddingLeft, border: after.borderBottomWidth, over: document.documentElement.scrollWidth - innerWidth,
        hidden: [...document.querySelectorAll('details')].every((each) => !each.open) };
    })()`);
      const [red, green, blue] = [1, 3, 5].map((at) => parseInt(ink.slice(at, at + 2), 16));
      expect(seen).toEqual({
        colours: [`rgb(${String(red)}, ${String(green)}, ${String(blue)})`],
        grounds: ['rgba(0, 0, 0, 0)'],
        padding: '1px',
        border: '0px',
        over: 0,
        hidden: true,
      });
      expect(asked).toEqual([]);
      await page.close();
    },
  );
});
