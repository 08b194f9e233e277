import { readFileSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

import { sampleWith } from '../../../pipeline/checks/index.js';
import { SET_FILES } from '../sample-files.js';
import { barriers } from '../../packet/pages.js';
import { openBrowser } from '../../site/support.js';
import { WRITTEN, changedLines, commit, emptied, fewer, linesOfWritten } from './drafts.js';
import { openDesk, type RealDesk } from './real-desk.js';

let browser: Browser;
let open: RealDesk;
beforeAll(async () => {
  browser = await openBrowser();
  open = await openDesk(browser, {}, (files) => {
    fewer(files);
    emptied(files);
  });
  commit(open.placed.root);
});
afterAll(async () => {
  await open[Symbol.asyncDispose]();
  await browser.close();
});

/** Waits for what is slow while many work on one machine. */
const soon = { timeout: 20_000 };

async function goTo(page: Page, hash: string, ready: string): Promise<void> {
  await page.evaluate(`location.hash = ${JSON.stringify(hash)}`);
  await page.locator(ready).first().waitFor(soon);
}

const textOf = (page: Page, selector: string): Promise<string> =>
  page.locator(selector).first().innerText();

/** Presses keys in turn: nothing else is touched. */
async function press(page: Page, ...keys: readonly string[]): Promise<void> {
  for (const key of keys) await page.keyboard.press(key);
}

test('five bios are written, mended, saved and handed in by keys alone, and git tells just that', async () => {
  const { page, placed } = open;
  await goTo(page, '#/status', '.cards tbody a');
  await press(page, '/');
  await page.keyboard.type('high-water/crew/c001');
  await expect.poll(() => textOf(page, '#listed'), soon).toMatch(/^1 card of/);
  await press(page, 'Enter', 'Enter');
  const cards = Object.keys(WRITTEN);
  for (const card of cards) {
    await expect.poll(() => page.url(), soon).toContain('/crew/');
    while (!page.url().endsWith(card)) {
      const before = await textOf(page, 'h1');
      await press(page, 'Alt+PageDown');
      await expect.poll(() => textOf(page, 'h1'), soon).not.toBe(before);
      await page.locator('.sides svg').first().waitFor(soon);
    }
    await page.locator('.cm-content').waitFor(soon);
    await press(page, 'Alt+c');
    await page.keyboard.insertText((WRITTEN[card] ?? '') + ' And so on, and so on.'.repeat(20));
    await expect.poll(() => textOf(page, '#copy-fit'), soon).toMatch(/^overset by \d+ lines$/);
    await press(page, 'Control+a');
    await page.keyboard.insertText(WRITTEN[card] ?? '');
    await expect
      .poll(() => textOf(page, '#copy-fit'), soon)
      .toMatch(/^(?:\d+ lines?|no line) free$/);
    await expect.poll(() => textOf(page, '.findings'), soon).toContain('Miss Thrane');
    await press(page, 'Alt+m');
    await expect.poll(() => textOf(page, '.cm-content'), soon).toContain('Captain Thrane');
    await press(page, 'Control+s');
    await expect.poll(() => textOf(page, '#saved-state'), soon).toBe('Saved');
    await press(page, 'Control+Enter');
    await expect.poll(() => textOf(page, '.bar .state'), soon).toBe('handed in');
  }
  expect(changedLines(placed.root)).toEqual(linesOfWritten(cards));
  expect([open.broken, open.failed]).toEqual([[], []]);
});

test('a proof is made, and a preview, which opens on another port; another is stopped', async () => {
  await using small = await openDesk(browser, {}, (files) => {
    files.clear();
    for (const [path, text] of sampleWith(SET_FILES)) files.set(path, text);
  });
  const { page, context, desk } = small;
  const state = page.locator('.jobs li').first();
  await goTo(page, '#/making/one/base/a1', '#proof-of');
  await page.getByRole('button', { name: 'Make the proof' }).click();
  const proof = page.getByRole('link', { name: 'Open the proof (PDF)' });
  await proof.waitFor({ timeout: 40_000 });
  const at = new URL((await proof.getAttribute('href')) ?? '', desk.address);
  const answer = await context.request.get(at.href);
  expect(answer.headers()['content-type']).toBe('application/pdf');
  expect((await answer.body()).subarray(0, 5).toString()).toBe('%PDF-');

  await expect
    .poll(() => page.locator('#preview-at').inputValue(), soon)
    .toContain('2027-04-16T20:00');
  await page.getByRole('button', { name: 'Make the preview' }).click();
  const preview = page.getByRole('link', { name: 'Open the preview' });
  await preview.waitFor({ timeout: 90_000 });
  const coming = context.waitForEvent('page');
  await preview.click();
  const site = await coming;
  await site.waitForLoadState();
  const { hostname, port } = new URL(site.url());
  expect([hostname, port === String(desk.port)]).toEqual(['127.0.0.1', false]);
  expect(await site.locator('h1').first().innerText()).toContain('The Lake');
  await site.close();

  await page.getByRole('button', { name: 'Make the preview' }).click();
  await page.getByRole('button', { name: 'Stop' }).click(soon);
  await expect.poll(() => state.getAttribute('data-state'), soon).toBe('cancelled');
});

test('a save is undone and made again', async () => {
  const { page, placed } = open;
  const path = join(placed.content, 'high-water/cards/crew/c007.md');
  const before = readFileSync(path, 'utf8');
  await goTo(page, '#/card/high-water/crew/c007', '#field-facts-Berth');
  await page.locator('#field-facts-Berth').fill('Bottom bunk, for now');
  await expect.poll(() => textOf(page, '#saved-state'), soon).toBe('Not saved');
  await press(page, 'Control+s');
  await expect.poll(() => textOf(page, '#saved-state'), soon).toBe('Saved');
  const after = readFileSync(path, 'utf8');
  expect(after).toContain('"Bottom bunk, for now"');
  await page.getByRole('button', { name: 'Undo the save' }).click();
  await expect.poll(() => readFileSync(path, 'utf8'), soon).toBe(before);
  await expect
    .poll(() => page.locator('#field-facts-Berth').inputValue(), soon)
    .not.toContain('now');
  await page.getByRole('button', { name: 'Redo the save' }).click();
  await expect.poll(() => readFileSync(path, 'utf8'), soon).toBe(after);
});

test('each kind of field is written by its own control, and lands in the file as it was meant', async () => {
  const { page, placed } = open;
  const path = join(placed.content, 'high-water/cards/crew/c009.md');
  const before = readFileSync(path, 'utf8');
  await goTo(page, '#/card/high-water/crew/c009', '#field-name');
  const addField = async (key: string): Promise<void> => {
    await page.locator('#add-field').selectOption(key);
    await page.getByRole('button', { name: 'Add this field' }).click();
  };
  await page.locator('#field-name').fill('A name of its own'); // words
  await page.locator('#field-spoiler').selectOption('shops'); // a choice
  await addField('ships'); // an instant
  await page.locator('#field-ships').fill('2027-04-20T09:00:00+01:00[Europe/London]');
  await page.locator('#field-facts-key').fill('Ladder'); // a record
  await page.locator('#field-facts-key').press('Enter');
  await page.locator('#field-facts-Ladder').fill('Nine rungs');
  await addField('credits'); // a list of groups
  await page.locator('#field-credits-0-role').fill('Illustration');
  await page.locator('#field-credits-0-name').fill('Tove Lindqvist');
  await addField('embargo'); // a list of choices
  await page.locator('#field-embargo-0').selectOption('second-signers');
  await page.getByRole('button', { name: 'Add to embargo' }).click();
  await page.getByRole('button', { name: 'Take off embargo 2' }).click();
  await addField('run'); // a number
  await page.locator('#field-run').fill('250');
  await press(page, 'Control+s');
  await expect.poll(() => textOf(page, '#saved-state'), soon).toBe('Saved');
  const added = readFileSync(path, 'utf8').split('\n');
  const kept = before.split('\n');
  expect(added.filter((line) => !kept.includes(line))).toMatchInlineSnapshot(`
    [
      "name: A name of its own",
      "spoiler: shops",
      "embargo: [second-signers]",
      "ships: "2027-04-20T09:00:00+01:00[Europe/London]"",
      "facts: { Berth: "A dry house, uphill", Ladder: Nine rungs }",
      "credits: [{ role: Illustration, name: Tove Lindqvist }]",
      "run: "250"",
    ]
  `);
  expect(readFileSync(path, 'utf8').slice(-200)).toBe(before.slice(-200));
});

test('somebody else’s edit of the file ends with both texts shown, and nothing is lost', async () => {
  const { page, placed } = open;
  const path = join(placed.content, 'high-water/cards/crew/c008.md');
  const before = readFileSync(path, 'utf8');
  await goTo(page, '#/card/high-water/crew/c008', '.sides svg');
  await press(page, 'Alt+c', 'Control+End');
  await page.keyboard.insertText(' Mine.');
  await expect.poll(() => textOf(page, '#saved-state'), soon).toBe('Not saved');
  writeFileSync(
    path,
    before.replace('---\n', '---\n# a note of theirs\n').trimEnd() + ' Theirs.\n',
  );
  await page.getByRole('button', { name: 'Show both texts' }).click(soon);
  const dialog = page.getByRole('dialog');
  await dialog.waitFor(soon);
  expect(await dialog.innerText()).toMatch(/Mine\.[\s\S]*In the file[\s\S]*Theirs\./);
  expect(readFileSync(path, 'utf8')).toContain('Theirs.');
  for (const colorScheme of ['dark', 'light'] as const) {
    await page.emulateMedia({ colorScheme });
    expect(await barriers(page)).toEqual([]);
  }
  await page.locator('#merge').fill('Both. Mine. Theirs.');
  await page.getByRole('button', { name: 'Save what stands here' }).click();
  await expect.poll(() => readFileSync(path, 'utf8'), soon).toContain('Both. Mine. Theirs.');
  expect(readFileSync(path, 'utf8')).toContain('# a note of theirs');
});

describe('another page in the same browser', () => {
  test('can neither read the desk, nor write to it, nor show it', async () => {
    const { context, desk } = open;
    const server = createServer((_, response) => {
      response.writeHead(200, { 'content-type': 'text/html' });
      response.end('<!doctype html><title>Elsewhere</title><p>Elsewhere');
    });
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    const place = server.address();
    const port = typeof place === 'object' ? place?.port : 0;
    const elsewhere = await context.newPage();
    try {
      await elsewhere.goto(`http://127.0.0.1:${String(port)}/`);
      const target = `http://127.0.0.1:${String(desk.port)}`;
      const tried = await elsewhere.evaluate(attack, { target, token: desk.token });
      expect(tried).toEqual({
        read: 'TypeError',
        readWithToken: 'TypeError',
        opaque: 'TypeError',
        post: 'TypeError',
        plainPost: 'TypeError',
        events: 'error',
        frame: 'nothing',
        picture: 'error',
      });
      const before = changedLines(open.placed.root);
      await elsewhere.evaluate(sendForm, target);
      await elsewhere.waitForLoadState();
      expect(await elsewhere.innerText('body')).toContain(
        'only the page of the desk itself may ask',
      );
      expect(changedLines(open.placed.root)).toEqual(before);
    } finally {
      await elsewhere.close();
      server.close();
    }
  });
});

/** Runs in the other page: what each way to the desk came to. */
async function attack({ target, token }: { target: string; token: string }) {
  const nameOf = (error: unknown): string => (error instanceof Error ? error.name : 'odd');
  const tell = (asked: Promise<Response>): Promise<string> =>
    asked.then(
      async (answer) =>
        `${answer.type} ${String(answer.status)} ${String((await answer.text()).length)}`,
      nameOf,
    );
  const json = { 'content-type': 'application/json', 'x-holdback-token': token };
  const body = JSON.stringify({ card: 'high-water/crew/c009', base: '', edit: { copy: 'Theirs' } });
  const loads = (make: () => EventTarget): Promise<string> =>
    new Promise((resolve) => {
      const made = make();
      for (const kind of ['load', 'open', 'error']) {
        made.addEventListener(kind, () => {
          resolve(kind);
        });
      }
    });
  const put = (tag: 'iframe' | 'img', path: string) => {
    const element = document.createElement(tag);
    element.src = target + path;
    document.body.append(element);
    return element;
  };
  const events = loads(() => new EventSource(`${target}/api/events`));
  const picture = loads(() => put('img', '/icon.svg'));
  const frame = put('iframe', '/') as HTMLIFrameElement;
  await loads(() => frame);
  // What a page may not look into has no document for it.
  const shown = frame.contentDocument?.body.textContent ?? 'nothing';
  return {
    read: await tell(fetch(`${target}/api/status`)),
    readWithToken: await tell(fetch(`${target}/api/status`, { headers: json })),
    opaque: await tell(fetch(`${target}/api/status`, { mode: 'no-cors' })),
    post: await tell(fetch(`${target}/api/save`, { method: 'POST', headers: json, body })),
    plainPost: await tell(fetch(`${target}/api/save`, { method: 'POST', mode: 'no-cors', body })),
    events: await events,
    frame: shown,
    picture: await picture,
  };
}

/** Runs in the other page: sends a form to the desk, which needs nobody’s leave. */
function sendForm(target: string): void {
  const form = document.createElement('form');
  form.method = 'post';
  form.enctype = 'text/plain';
  form.action = `${target}/api/save`;
  document.body.append(form);
  form.submit();
}

describe('nobody is shut out by', () => {
  const screens = [
    ['the status sheet', '#/status', '.cards tbody a'],
    ['a card', '#/card/high-water/crew/c017', '.sides svg'],
    ['the reveals', '#/reveals', '.steps li'],
    ['proofs and preview', '#/making', '#proof-of'],
  ] as const;

  test.each(screens)('%s, light or dark, wide or narrow', async (_, hash, ready) => {
    const { page } = open;
    await goTo(page, hash, ready);
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      expect(await barriers(page)).toEqual([]);
    }
    await page.setViewportSize({ width: 390, height: 844 });
    const wider = 'document.documentElement.scrollWidth - document.documentElement.clientWidth';
    expect(await page.evaluate(wider)).toBe(0);
    expect(await barriers(page)).toEqual([]);
    await page.setViewportSize({ width: 1440, height: 900 });
    expect(await page.locator('h1').count()).toBe(1);
    expect(await page.title()).toBe(`${await textOf(page, 'h1')} – Writers’ desk`);
  });

  test('the list of shortcuts, which a key opens and another closes', async () => {
    const { page } = open;
    await goTo(page, '#/status', '.cards tbody a');
    await press(page, '?');
    const dialog = page.getByRole('dialog', { name: 'Shortcuts' });
    await dialog.waitFor(soon);
    expect(await dialog.innerText()).toContain('Status sheet');
    expect(await barriers(page)).toEqual([]);
    await press(page, 'Escape');
    await dialog.waitFor({ state: 'detached' });
  });
});
