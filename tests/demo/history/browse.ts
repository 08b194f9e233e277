import { pathToFileURL } from 'node:url';

import type { Browser, Page } from 'playwright-core';

import { instantOf } from '../../../pipeline/model/index.js';
import type { Answer, Sent } from './rounds.js';

/** The key of each decision on a packet's page. */
const KEYS = {
  'approved with changes': 'c',
  'approved as noted': 'n',
  'revise and resubmit': 'r',
  rejected: 'x',
  'on hold': 'h',
} as const satisfies Record<Answer['verdict'], string>;

/**
 * Opens a packet from the disk as its reviewer does, reads every text, decides by typing, and saves
 * the decision file to a path.
 */
export async function answerPacket(
  browser: Browser,
  { answers, back }: Sent,
  packet: { readonly file: string; readonly passphrase: string; readonly saveTo: string },
): Promise<void> {
  const context = await browser.newContext();
  const page = await context.newPage();
  await page.clock.setFixedTime(instantOf(back));
  await page.goto(pathToFileURL(packet.file).href);
  await page.fill('#passphrase', packet.passphrase);
  await page.keyboard.press('Enter');
  await page.locator('#card h2').waitFor();
  await readAll(page, answers);
  await page.keyboard.press('f');
  await page.getByRole('button', { name: /^Approve the rest that I have opened/ }).click();
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save decision file' }).click();
  await (await coming).saveAs(packet.saveTo);
  await context.close();
}

async function readAll(page: Page, answers: readonly Answer[]): Promise<void> {
  const left = new Set(answers);
  for (;;) {
    const heading = (await page.locator('#card').getAttribute('aria-label')) ?? '';
    const answer = [...left].find(({ card }) => heading.endsWith(card));
    if (answer) {
      left.delete(answer);
      await decide(page, answer);
      const after = await page.locator('#card').getAttribute('aria-label');
      if (after !== heading) continue;
    }
    if (await page.locator('#next').isDisabled()) break;
    await page.keyboard.press('j');
  }
  if (left.size > 0)
    throw new Error(`not in the packet: ${[...left].map(({ card }) => card).join()}`);
}

async function decide(page: Page, answer: Answer): Promise<void> {
  await page.keyboard.press(KEYS[answer.verdict]);
  if (answer.verdict === 'approved with changes') return rewrite(page, answer);
  if (answer.with !== undefined) await page.getByLabel('With whom it lies').fill(answer.with);
  if (answer.remark !== undefined)
    await page.locator('dialog textarea').first().fill(answer.remark);
  await page.getByRole('button', { name: 'Accept' }).click();
}

/** Puts other words in the place of a stretch of the bio: `from → to`. */
async function rewrite(page: Page, { bio = '' }: Answer): Promise<void> {
  const [from = '', to = ''] = bio.split(' → ');
  const field = page.locator('dialog textarea.text');
  await field.fill((await field.inputValue()).replace(from, to));
  await page.getByText('It fits.').waitFor();
  await page.getByRole('button', { name: 'Accept the changes' }).click();
  await page.locator('dialog').waitFor({ state: 'hidden' });
}
