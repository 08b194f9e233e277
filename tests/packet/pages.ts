import axe, { type AxeResults } from 'axe-core';
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';

import {
  answerRefusals,
  answerText,
  appended,
  EMPTY_LEDGER,
  packetDigest,
} from '../../pipeline/review/index.js';
import { instantOf } from '../../pipeline/model/index.js';
import type { Submission } from '../../pipeline/out/packet/index.js';
import { recordOf } from './fixture.js';
import { AnswerFile } from '../../schema/index.js';
import { validate } from '../../pipeline/read/index.js';

/** Presses keys one after another; the browser closes a dialog a moment after Escape. */
export async function press(page: Page, ...keys: readonly string[]): Promise<void> {
  for (const key of keys) {
    await page.keyboard.press(key);
    if (key !== 'Escape') continue;
    await page.locator('dialog').waitFor({ state: 'hidden' });
    // What a dialog does when it is closed, it does a moment later.
    await page.evaluate('new Promise((ok) => setTimeout(ok, 0))');
  }
}

/** What a person reads of the state of the text that is shown. */
export function standing(page: Page): Promise<string> {
  return page.locator('#standing').innerText();
}

export function heading(page: Page): Promise<string> {
  return page.locator('#card h2').innerText();
}

/** Saves the decision file and reads it as the house does. */
export async function saved(page: Page, submission: Submission): Promise<AnswerFile> {
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save decision file' }).click();
  const download = await coming;
  if (download.suggestedFilename() !== `decisions-${submission.id}.json`) {
    throw new Error(`saved as ${download.suggestedFilename()}`);
  }
  const text = readFileSync(await download.path(), 'utf8');
  const read = validate(AnswerFile, JSON.parse(text));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  const answer = read.value;
  if (answerText(answer) !== text) throw new Error('the text is not the one that it may have');
  const refusals = refusalsOf(answer, submission);
  if (refusals.length > 0) throw new Error(JSON.stringify(refusals));
  return answer;
}

function refusalsOf(answer: AnswerFile, submission: Submission) {
  const record = recordOf(submission);
  const at = '2026-12-01T10:00:00+00:00[Europe/London]';
  const submitted = {
    kind: 'submitted' as const,
    packet: record.id,
    person: record.person,
    record: packetDigest(record),
    at,
  };
  const ledger = appended(EMPTY_LEDGER, [submitted]);
  return answerRefusals(answer, {
    property: submission.property,
    record,
    ledger,
    now: instantOf('2026-12-02T10:00:00+00:00[Europe/London]'),
  });
}

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** What axe finds on the page as it is, by rule and place. */
export async function barriers(page: Page): Promise<readonly string[]> {
  const run = `${axe.source}; axe.run({ runOnly: ${JSON.stringify(TAGS)} })`;
  const found: AxeResults = await page.evaluate(run);
  return found.violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target }) => `${id}: ${target.join(' ')}`),
  );
}
