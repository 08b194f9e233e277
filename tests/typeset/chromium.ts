import { chromium, type Browser } from 'playwright-core';
import { hyphenate } from '../../pipeline/typeset/index.js';
import { IN_BROWSER } from './in-browser.js';
import { COMPARED, fontBytes, paragraphs, withPlaces, type Family } from './support.js';

/** A paragraph to be broken by the browser: px of CSS. */
export interface Asked {
  readonly text: string;
  readonly family: Family;
  readonly size: number;
  readonly width: number;
}

const PX_SIZES = [8, 9.3333, 10, 10.6667, 12];

/** Paragraphs, each in four fonts, at widths of 120 to 260 px and in five sizes. */
export function ask(texts: readonly string[]): readonly Asked[] {
  return COMPARED.flatMap((family, font) =>
    texts.map((text, index) => ({
      text,
      family,
      size: PX_SIZES[(index + font) % PX_SIZES.length] ?? 10,
      width: 120 + ((index * 37 + font * 11) % 141),
    })),
  );
}

/** The paragraphs that are compared: 853 of 200 to 600 characters. */
export const TEXTS = paragraphs(200, 600);

/** The same with soft hyphens in words of small letters. */
export const HYPHENATED_TEXTS = TEXTS.map((text) =>
  text.replace(/(?<![-\w])[a-z]{5,}(?![-\w])/gu, (word) =>
    withPlaces(word, hyphenate(word), '\u00ad'),
  ),
);

/** The browser of the tests' machine, off the network. */
export async function openBrowser(): Promise<Browser> {
  return chromium.launch({
    executablePath: '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'],
  });
}

/** A page in which the compared fonts are loaded under the names of their families. */
export async function openPage(browser: Browser) {
  const page = await browser.newPage();
  await page.addScriptTag({ content: IN_BROWSER });
  for (const family of COMPARED) {
    const data = Buffer.from(fontBytes(family, '400-normal', 'woff2')).toString('base64');
    await page.addStyleTag({
      content: `@font-face { font-family: '${family}'; src: url(data:font/woff2;base64,${data}); }`,
    });
    await page.evaluate(`document.fonts.load("16px '${family}'")`);
  }
  return page;
}

type Page = Awaited<ReturnType<typeof openPage>>;

/** Lengths of the lines of each paragraph, spaces and soft hyphens included. */
export async function browserLines(
  page: Page,
  asked: readonly Asked[],
): Promise<readonly (readonly number[])[]> {
  return page.evaluate<number[][]>(`breakParagraphs(${JSON.stringify(asked)})`);
}

/** Widths in px of strings at 100 px, by `measureText`. */
export async function browserWidths(
  page: Page,
  family: Family,
  strings: readonly string[],
): Promise<readonly number[]> {
  return page.evaluate<number[]>(`measureStrings('${family}', ${JSON.stringify(strings)})`);
}
