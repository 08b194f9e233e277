import { randomBytes } from 'node:crypto';
import { mkdtemp, mkdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';

import { chromeFaces } from '../../../pipeline/cli/chrome-faces.js';
import { watchDesk } from '../../../pipeline/cli/desk-watch.js';
import { sayRefusal } from '../../../pipeline/cli/publish-text.js';
import { readPageFiles, serveDesk, type ServedDesk } from '../../../pipeline/desk/index.js';
import { diskFolder, drawnBy, rasterise } from '../../../pipeline/read/index.js';
import { demoFiles, placeContent, type Placed } from '../../demo/copy.js';
import { DEMO_NOW } from '../../demo/day.js';
import { deskFiles } from '../../setup/bundle.mjs';

/** A desk over a copy of the demo, opened in a browser. */
export interface RealDesk extends AsyncDisposable {
  readonly placed: Placed;
  readonly desk: ServedDesk;
  readonly context: BrowserContext;
  readonly page: Page;
  /** Errors that the page ran into, and what its policy stopped. */
  readonly broken: string[];
  /** What the desk itself failed at. */
  readonly failed: unknown[];
}

/** Opens the desk over a copy of the demo. */
export async function openDesk(
  browser: Browser,
  look: {
    readonly width?: number;
    readonly scheme?: 'light' | 'dark';
    readonly approvals?: true;
  } = {},
  change: (files: Map<string, string | Uint8Array>) => void = () => undefined,
): Promise<RealDesk> {
  const files = demoFiles({ art: true, ...(look.approvals ? { approvals: true } : {}) });
  change(files);
  const placed = await placeContent(files);
  const own = await mkdtemp(join(tmpdir(), 'holdback-desk-page-'));
  const pages = join(own, 'page');
  await mkdir(pages);
  for (const [name, bytes] of await deskFiles()) await writeFile(join(pages, name), bytes);
  const failed: unknown[] = [];
  const desk = await serveDesk({
    contentPath: placed.content,
    folder: diskFolder(placed.content),
    now: () => DEMO_NOW,
    port: 0,
    random: (octets) => randomBytes(octets),
    page: readPageFiles(pages),
    draftsFolder: join(own, 'drafts'),
    temporary: own,
    draw: {
      picture: (art, width) => rasterise(art, width, 'webp'),
      share: async (svg) => (await rasterise(svg, 1200, 'png')).bytes,
      by: drawnBy,
    },
    chrome: chromeFaces,
    sayRefusal: (refusal) => sayRefusal(refusal, 'the preview', false),
    watch: (changed) => watchDesk(placed.content, changed),
    fail: (error) => failed.push(error),
  });
  const context = await browser.newContext({
    viewport: { width: look.width ?? 1440, height: 900 },
    colorScheme: look.scheme ?? 'light',
  });
  const page = await context.newPage();
  const broken: string[] = [];
  page.on('pageerror', (error) => broken.push(error.message));
  page.on('console', (message) => {
    const isAnswer = message.text().startsWith('Failed to load resource');
    if (message.type() === 'error' && !isAnswer) broken.push(message.text());
  });
  await page.goto(desk.address);
  await page.locator('.cards tbody a').first().waitFor();
  return {
    placed,
    desk,
    context,
    page,
    broken,
    failed,
    async [Symbol.asyncDispose]() {
      await context.close();
      await desk.close();
      await placed[Symbol.asyncDispose]();
      await rm(own, { recursive: true, force: true });
    },
  };
}
