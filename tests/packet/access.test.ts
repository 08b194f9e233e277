import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import { openBrowser } from '../site/support.js';
import { programPath } from '../setup/programs.mjs';
import { VIEW, openPacket, sealedPacket, submissionOf, submitted, type Packet } from './fixture.js';
import { barriers, press, saved } from './pages.js';

const KEYS = VIEW.sets.flatMap((set) =>
  set.subsets.flatMap(({ cards }) => cards.map(({ identity }) => `${set.id}/${identity ?? ''}`)),
);
const [ONE = ''] = KEYS.filter((key) => key.startsWith('high-water/crew/'));
const SOME = submissionOf(
  KEYS.slice(0, 12).map((key, at) => {
    const text = submitted(key);
    if (at > 0) return text;
    const last = { verdict: 'revise and resubmit' as const, isCurrent: false };
    return {
      ...text,
      parts: text.parts.map((part) => ({ ...part, last })),
      was: [{ field: 'name', text: 'Another name' }],
      findings: ['house-style: a comma is missing.'],
      earlier: [{ at: '3 November 2026', who: 'Amara Linde', what: 'rejected', more: ['So.'] }],
    };
  }),
);

let browser: Browser;
let some: Packet;
beforeAll(async () => {
  browser = await openBrowser();
  some = await sealedPacket(SOME);
});
afterAll(() => browser.close());

/** What is done to the page before it is looked at, one state after another. */
const STATES: readonly (readonly [string, (page: Page) => Promise<void>])[] = [
  ['as it opens', async () => {}],
  ['decided', (page) => press(page, 'a', 'k')],
  ['part by part', (page) => page.getByText('Decide part by part').click()],
  ['sent back', (page) => press(page, 'r')],
  ['sent back without a word', (page) => page.getByRole('button', { name: 'Accept' }).click()],
  ['on hold', (page) => press(page, 'Escape', 'h')],
  ['with changes', (page) => press(page, 'Escape', 'c')],
  ['set anew', (page) => page.getByText('It fits.').waitFor()],
  ['overset', (page) => page.getByLabel('Bio').fill('Water and more of it. '.repeat(90))],
  ['a remark', (page) => press(page, 'Escape', 'm')],
  ['keys', (page) => press(page, 'Escape', '?')],
  ['the summary', (page) => press(page, 'Escape', 'f')],
  [
    'saved',
    async (page) => {
      await saved(page, SOME);
    },
  ],
];

describe.each([
  ['light', 360],
  ['dark', 1440],
] as const)('in %s at %i px', (colorScheme, width) => {
  it('has no barrier in any of its states, and never scrolls sideways', async () => {
    const context = await browser.newContext({ colorScheme, reducedMotion: 'reduce' });
    const page = await openPacket(some, context, { width, height: 800 });
    for (const [state, reach] of STATES) {
      await reach(page);
      await page.waitForTimeout(200);
      expect([state, await barriers(page)]).toEqual([state, []]);
      const wide = await page.evaluate('document.scrollingElement.scrollWidth');
      expect([state, wide]).toEqual([state, width]);
    }
  }, 120_000);
});

it('of one card is answered at 360 px in at most six taps', async () => {
  const submission = submissionOf([submitted(ONE)]);
  const context = await browser.newContext({ hasTouch: true, isMobile: true });
  const size = { width: 360, height: 740 };
  const page = await openPacket(await sealedPacket(submission), context, size);
  await page.getByRole('button', { name: 'Approved', exact: true }).tap();
  await page.getByRole('button', { name: 'Finish' }).tap();
  const answer = await saved(page, submission);
  expect(answer.decisions.map(({ decision }) => decision)).toEqual(
    Array.from({ length: 4 }, () => 'approved'),
  );
  expect(await page.evaluate('document.scrollingElement.scrollWidth')).toBe(360);
});

it('has targets of at least 24 px, those for verdicts of 44', async () => {
  const page = await openPacket(some, await browser.newContext(), { width: 360, height: 740 });
  const sizes = await page.evaluate<[string, number, boolean][]>(`
    [...document.querySelectorAll('button, summary, input')]
      .filter((each) => each.checkVisibility())
      .map((each) => [each.textContent, each.getBoundingClientRect().height, each.closest('#verdicts') !== null])
  `);
  expect(sizes.length).toBeGreaterThan(8);
  expect(sizes.filter(([, height, isVerdict]) => height < (isVerdict ? 44 : 24))).toEqual([]);
});

it('prints all its texts one after another, with boxes to tick', async () => {
  const page = await openPacket(some, await browser.newContext());
  await press(page, 'a');
  const pdf = await page.pdf({ format: 'A4' });
  const folder = mkdtempSync(join(tmpdir(), 'holdback-print-'));
  const text = execFileSync(programPath('pdftotext'), ['-layout', '-', '-'], {
    input: pdf,
    encoding: 'utf8',
  });
  rmSync(folder, { recursive: true });
  const names = VIEW.sets
    .flatMap(({ subsets }) => subsets.flatMap(({ cards }) => cards.map(({ name }) => name)))
    .slice(0, 12);
  expect(names.filter((name) => !text.includes(name))).toEqual([]);
  expect(text.match(/For Amara Linde · submission 2/g)?.length).toBe(12);
  expect(text.match(/Revise and resubmit/g)?.length).toBe(12);
  expect(text).toContain('Decided in this file: words: approved');
  expect(text).not.toContain('Only what changed');
});
