import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import type { Files } from '../support.js';

const TYPES: Readonly<Record<string, string>> = {
  css: 'text/css',
  html: 'text/html; charset=utf-8',
  js: 'text/javascript',
  json: 'application/json',
  png: 'image/png',
  svg: 'image/svg+xml',
  woff2: 'font/woff2',
};

/** Waits, as a script in the page, until its worker serves it. */
export const READY = `navigator.serviceWorker.ready.then(({ active }) => active.state === 'activated' || new Promise((done) => active.addEventListener('statechange', () => done(true))))`;

/** A site on a server of this machine, as any static server serves it. */
export interface Served {
  readonly origin: string;
  /** Puts another release in its place. */
  readonly publish: (files: Files) => void;
  readonly close: () => Promise<void>;
}

export async function serve(first: Files): Promise<Served> {
  let files = first;
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://127.0.0.1');
    const path = pathname.slice(1).replace(/(^|\/)$/, '$1index.html');
    const bytes = files.get(path);
    const type = TYPES[path.split('.').at(-1) ?? ''] ?? 'application/octet-stream';
    response.writeHead(bytes === undefined ? 404 : 200, { 'content-type': type });
    response.end(bytes ?? 'nothing here');
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  const { port } = server.address() as AddressInfo;
  return {
    origin: `http://127.0.0.1:${String(port)}`,
    publish: (next) => {
      files = next;
    },
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}

export interface Look {
  readonly width?: number;
  readonly dark?: boolean;
  readonly scripts?: boolean;
  /** What runs before the page does. */
  readonly before?: string;
  /** Whether its service worker may be registered. */
  readonly worker?: boolean;
}

/** Opens a page in a browser that has nothing kept, uses it, and closes it. Errors of it are thrown. */
export async function visit<T>(
  browser: Browser,
  address: string,
  look: Look,
  use: (page: Page, context: BrowserContext) => Promise<T>,
): Promise<T> {
  const context = await browser.newContext({
    viewport: { width: look.width ?? 1440, height: 800 },
    colorScheme: look.dark === true ? 'dark' : 'light',
    javaScriptEnabled: look.scripts !== false,
    serviceWorkers: look.worker === true ? 'allow' : 'block',
    acceptDownloads: true,
  });
  try {
    await context.grantPermissions(['clipboard-read', 'clipboard-write']);
    if (look.before !== undefined) await context.addInitScript(look.before);
    const page = await context.newPage();
    const faults: Error[] = [];
    page.on('pageerror', (fault) => faults.push(fault));
    await page.goto(address);
    const came = await use(page, context);
    if (faults[0]) throw faults[0];
    return came;
  } finally {
    await context.close();
  }
}
