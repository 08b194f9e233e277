import { execFileSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

import type { Browser, Page } from 'playwright-core';
import sharp from 'sharp';

import type { Io } from '../../pipeline/cli/index.js';
import { filesBelow } from '../release/site-at.js';
import { programPath } from '../setup/programs.mjs';
import { openBrowser, openPage } from '../site/support.js';
import { demoFiles } from './copy.js';
import { DEMO_NOW } from './day.js';
import { textPage } from './pictures/text-page.js';

/**
 * `npm run pictures`: the pictures that README.md shows, made of what the built command makes of the
 * demo on the demo's day. They go into `pictures/`.
 */
const root = fileURLToPath(new URL('../../', import.meta.url));
const work = join(root, 'out', 'pictures');
const gallery = join(root, 'pictures');
const built: typeof import('../../pipeline/cli/index.js') = await import(
  new URL('../../dist/pipeline/cli/index.js', import.meta.url).href
);

/** Of the packet that is pictured: there is nothing in it that is not in the clone. */
const PASSPHRASE = 'THEFE-RRYWR-IGHTS-DEM00';
/** As wide as README.md is shown, in pixels. */
const WIDE = 800;

/** Runs the command in a folder, and returns what it printed. */
async function holdback(place: string, argv: readonly string[]): Promise<string> {
  const said = { out: '', err: '' };
  const io: Io = {
    now: DEMO_NOW,
    cwd: place,
    env: {},
    elapsed: () => 0,
    random: (octets) => new Uint8Array(octets).fill(7),
    terminal: false,
    out: (text) => void (said.out += text),
    err: (text) => void (said.err += text),
  };
  const code = await built.main(argv, io);
  if (code !== 0) throw new Error(`holdback ${argv.join(' ')}: exit ${String(code)}\n${said.err}`);
  return said.out;
}

/** A content folder in a folder of its own below the place of work. */
function layOut(name: string, files: ReadonlyMap<string, string | Uint8Array>): string {
  const place = join(work, name);
  for (const [path, bytes] of files) {
    const whole = join(place, 'content', path);
    mkdirSync(dirname(whole), { recursive: true });
    writeFileSync(whole, bytes);
  }
  return place;
}

/** Keeps a picture, of few colours, since it is of paper and ink. */
async function keep(name: string, png: Uint8Array, colours = 96): Promise<void> {
  const small = sharp(png)
    .resize({ width: WIDE, withoutEnlargement: true })
    .png({ palette: true, colours, dither: 0, effort: 10, compressionLevel: 9 });
  const { data, info } = await small.toBuffer({ resolveWithObject: true });
  writeFileSync(join(gallery, `${name}.png`), data);
  const size = `${String(info.width)} × ${String(info.height)}`;
  process.stdout.write(
    `pictures/${name}.png  ${size}, ${String(Math.ceil(data.length / 1000))} kB\n`,
  );
}

async function shoot(page: Page, height: number): Promise<Uint8Array> {
  const width = page.viewportSize()?.width ?? WIDE;
  await page.setViewportSize({ width, height });
  return page.screenshot({ animations: 'disabled', caret: 'hide' });
}

/** Pages of today's site. What nobody approved changes no byte of it, so nobody is asked here. */
async function drawSite(browser: Browser): Promise<void> {
  const place = layOut('site', demoFiles({ art: true }));
  await holdback(place, ['publish', '--plain', '--out', 'site']);
  const files = filesBelow(join(place, 'site'));
  const list = await openPage(browser, files, 'high-water/', { width: WIDE });
  await tick(list, ['lc-1', 'lc-2', 'lc-5']);
  await list.evaluate("document.querySelector('#charts').scrollIntoView()");
  // Clear of the box that stays at the top of the page.
  await list.evaluate('scrollBy(0, -64)');
  await list.mouse.move(0, 0);
  await keep('checklist', await shoot(list, 820));
  await list.context().close();
  const phone = await openPage(browser, files, 'high-water/', { width: 390 });
  await phone.fill('#find--box', 'lc4');
  await phone.keyboard.press('Enter');
  await tick(phone, ['lc-4']);
  await keep('checklist-on-a-phone', await shoot(phone, 780));
  await phone.context().close();
  const card = await openPage(browser, files, 'high-water/crew/1/', { width: 1200 });
  await keep('card-page', await shoot(card, 1000));
  await card.context().close();
}

/** Ticks charts, as a collector does who has just opened a pack. */
async function tick(page: Page, cards: readonly string[]): Promise<void> {
  for (const card of cards) await page.locator(`#charts--${card} .tick button.box`).click();
}

async function drawProof(): Promise<void> {
  const place = layOut('proof', demoFiles({ art: true, approvals: true }));
  await holdback(place, ['proof', '--subset', 'crew', '--out', 'proof.pdf']);
  const page = ['-r', '97', '-f', '2', '-l', '2', '-png', '-singlefile'];
  execFileSync(programPath('pdftoppm'), [...page, join(place, 'proof.pdf'), join(place, 'page')]);
  await keep('proof-sheet', readFileSync(join(place, 'page.png')));
}

/** The packet of the first round: nothing is decided yet. */
async function drawPacket(browser: Browser): Promise<void> {
  const files = demoFiles({ art: true, approvals: true });
  const place = layOut(
    'packet',
    new Map([...files].filter(([path]) => !path.startsWith('review/'))),
  );
  writeFileSync(join(place, 'passphrase'), PASSPHRASE);
  const to = ['--for', 'amara', '--out', 'amara.html', '--passphrase-file', 'passphrase'];
  await holdback(place, ['packet', ...to]);
  const context = await browser.newContext({ viewport: { width: 1000, height: 900 } });
  const page = await context.newPage();
  await page.clock.setFixedTime(DEMO_NOW);
  await page.goto(pathToFileURL(join(place, 'amara.html')).href);
  await page.fill('#passphrase', PASSPHRASE);
  await page.keyboard.press('Enter');
  await page.locator('#card h2').waitFor();
  await goTo(page, 'Odalys Thrane');
  await keep('packet', await shoot(page, 900));
  await context.close();
}

/** Goes on from card to card of a packet until a name stands in the heading. */
async function goTo(page: Page, name: string): Promise<void> {
  const card = page.locator('#card');
  while (!((await card.getAttribute('aria-label')) ?? '').endsWith(name)) {
    if (await page.locator('#next').isDisabled()) throw new Error(`the packet has no ${name}`);
    await page.keyboard.press('j');
  }
}

/** What the terminal shows, on a page of its own. */
async function drawStatus(browser: Browser): Promise<void> {
  const place = layOut('status', demoFiles({ art: true, approvals: true }));
  const text = await holdback(place, ['status']);
  const page = await browser.newPage({ viewport: { width: 920, height: 200 } });
  await page.setContent(textPage('holdback status', text));
  await keep('status-sheet', await page.screenshot({ fullPage: true }), 12);
  await page.close();
}

rmSync(work, { recursive: true, force: true });
mkdirSync(gallery, { recursive: true });
const browser = await openBrowser();
try {
  await drawSite(browser);
  await drawProof();
  await drawPacket(browser);
  await drawStatus(browser);
} finally {
  await browser.close();
}
