import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';

import { auditSite } from '../../pipeline/audit/index.js';
import { openBrowser } from '../site/support.js';
import { SMALL, SMALL_DAY } from './small-property.js';

const NAME = 'the name Ysolde Marrack';
const BIO = 'bio of first/wide/w001';
/** The first paragraph of the bio of `w001`: 65 letters. */
const COPY = 'The magistrate seals every lock of the town in a single night, and keeps the keys.';
const SAID = `<p>We saw Ysolde Marrack here.</p><p>${COPY}</p>`;

let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await openBrowser();
  page = await browser.newPage();
});
afterAll(() => browser.close());

async function found(body: string): Promise<readonly string[]> {
  await page.setContent(`<!doctype html><html lang="en"><title>Lake</title>${body}</html>`);
  const pdf = await page.pdf({ tagged: true });
  return auditSite(new Map([['a.pdf', pdf]]), SMALL, SMALL_DAY)
    .map(({ from }) => from)
    .sort();
}

it.each([
  ['as it is', SAID],
  ['see-through, and so in a drawing of its own', `<div style="opacity: 0.5">${SAID}</div>`],
  ['in a narrow column', `<div style="width: 30px; overflow-wrap: anywhere">${SAID}</div>`],
  [
    'with hyphens at line ends',
    `<div style="width: 50px">${SAID.replace('Marrack', 'Mar&shy;rack')}</div>`,
  ],
])('what a browser prints tells a name and a bio: %s', async (_way, body) => {
  expect(await found(body)).toEqual([BIO, NAME]);
});

it('and is quiet about what is open', async () => {
  const calm = 'An open boat, “fine” caf\u00e9 &amp; Odalys Thrane, and nobody asks.';
  expect(await found(`<h1>First Water</h1><p>${calm}</p>`)).toEqual([]);
});
