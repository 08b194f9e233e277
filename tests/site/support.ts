import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { chromium, type Browser, type BrowserContext, type Page } from 'playwright-core';

export type Files = ReadonlyMap<string, Uint8Array>;

const ORIGIN = 'http://site.test';

const TYPES: Readonly<Record<string, string>> = {
  css: 'text/css',
  html: 'text/html; charset=utf-8',
  js: 'text/javascript',
  json: 'application/json',
  png: 'image/png',
  svg: 'image/svg+xml',
  woff2: 'font/woff2',
};

/** The pages of a site as text, by path. */
export function pagesOf(files: Files): ReadonlyMap<string, string> {
  const pages = [...files].filter(([path]) => /(?:index|404)\.html$/.test(path));
  return new Map(pages.map(([path, bytes]) => [path, textOf(bytes)]));
}

export function textOf(bytes: Uint8Array | undefined): string {
  return new TextDecoder().decode(bytes);
}

export function openBrowser(): Promise<Browser> {
  const args = [
    '--no-sandbox',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
    '--no-first-run',
  ];
  return chromium.launch({ executablePath: '/usr/bin/chromium', args });
}

/** Opens a page of a site that is served from memory; whatever else it asks for is refused. */
export async function openPage(
  browser: Browser | BrowserContext,
  files: Files,
  path: string,
  look: { readonly width: number },
): Promise<Page> {
  const page = await browser.newPage();
  await page.setViewportSize({ width: look.width, height: 800 });
  await page.emulateMedia({ colorScheme: 'light' });
  await page.route('**/*', async (route) => {
    const url = new URL(route.request().url());
    const asked = url.pathname.slice(1).replace(/(^|\/)$/, '$1index.html');
    const body = url.origin === ORIGIN ? files.get(asked) : undefined;
    if (body === undefined) return route.fulfill({ status: 404, body: 'nothing here' });
    const contentType = TYPES[asked.split('.').at(-1) ?? ''] ?? 'application/octet-stream';
    return route.fulfill({ contentType, body: Buffer.from(body) });
  });
  await page.goto(`${ORIGIN}/${path}`);
  await page.evaluate('document.fonts.ready.then(() => true)');
  return page;
}

/** Makes a folder of the given files, uses it, and takes it away. */
export async function withFolder<T>(
  files: Readonly<Record<string, string>>,
  use: (folder: string) => Promise<T>,
): Promise<T> {
  const folder = await mkdtemp(join(tmpdir(), 'site-test-'));
  try {
    for (const [path, text] of Object.entries(files)) {
      await mkdir(dirname(join(folder, path)), { recursive: true });
      await writeFile(join(folder, path), text);
    }
    return await use(folder);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
