import type { Page } from 'playwright-core';

import { buildSite } from '../../pipeline/out/site/index.js';
import { largeData } from '../site/checklist/large.js';
import { openBrowser, openPage } from '../site/support.js';
import { median, type Result } from './measure.js';

/** What somebody types, from nothing to one card and back to all. */
const TYPED = ['1', '12', '123', '12', '1', '', 'h', 'ha', 'has', 'hask', '', 'lock 7', ''];
const ROUNDS = 9;

/** Milliseconds of script of each keystroke in the find box of the page. */
const KEYSTROKES = `(typed) => {
  const box = document.getElementById('find--box');
  return typed.map((text) => {
    box.value = text;
    const start = performance.now();
    box.dispatchEvent(new InputEvent('input', { bubbles: true }));
    return performance.now() - start;
  });
}`;

/** The least that a filter does: it looks at the words of every row, and sets whether it is hidden. */
const LEAST = `(typed) => {
  const rows = [...document.querySelectorAll('.cards tbody tr')];
  const words = rows.map((row) => row.textContent.toLowerCase());
  return typed.map((text) => {
    const start = performance.now();
    rows.forEach((row, at) => { row.hidden = !words[at].includes(text); });
    return performance.now() - start;
  });
}`;

/** A keystroke in a checklist of 1,000 cards, beside the least that a filter does. */
export async function benchFilter(): Promise<{ milliseconds: number; beside: Result }> {
  const site = await buildSite(largeData(1000), {
    images: new Map(),
    printed: false,
    inThisProcess: true,
  });
  const browser = await openBrowser();
  try {
    const page = await openPage(browser, site, 'high-water/', { width: 1440 });
    const strokes: number[] = [];
    const least: number[] = [];
    for (let round = 0; round < ROUNDS; round++) {
      least.push(...(await timesOf(page, LEAST)));
      strokes.push(...(await timesOf(page, KEYSTROKES)));
    }
    const milliseconds = median(strokes);
    return {
      milliseconds,
      beside: {
        name: 'a keystroke in the find box, 1,000 cards',
        milliseconds,
        floor: 'hiding rows by their words',
        floorMilliseconds: median(least),
        goal: 16,
      },
    };
  } finally {
    await browser.close();
  }
}

async function timesOf(page: Page, script: string): Promise<number[]> {
  const times: unknown = await page.evaluate(`(${script})(${JSON.stringify(TYPED)})`);
  if (Array.isArray(times)) return times.map(Number);
  throw new Error('the page has told no times');
}
