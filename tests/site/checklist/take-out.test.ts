import axe, { type AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { data } from '../fixture.js';
import {
  box,
  focused,
  KEPT,
  openPages,
  plus,
  rows,
  SET,
  SUBSET,
  words,
  type Pages,
} from './pages.js';

const WIDTHS = [
  [SET, 360],
  [SET, 768],
  [SET, 1440],
  [SUBSET, 360],
] as const;

let pages: Pages;

beforeAll(async () => {
  pages = await openPages();
});

afterAll(() => pages.close());

const at: Pages['at'] = (path, look, use) => pages.at(path, look, use);

describe('a want list', () => {
  it('is copied, and read back on another device', async () => {
    const [want, doubles] = await at(SET, {}, async (page) => {
      for (const id of ['crew--1', 'crew--2', 'charts--lc-1']) await box(page, id).click();
      await plus(page, 'crew--2').click();
      await page.selectOption('#tools--printing', 'varnished');
      await box(page, 'crew--9').click();
      const clip = () => page.evaluate<string>('navigator.clipboard.readText()');
      await page.click('.copy-want');
      await page.locator('.said:text("Copied")').waitFor();
      const first = await clip();
      await page.click('.copy-doubles');
      await page.locator('.said:text("doubles")').waitFor();
      return [first, await clip()];
    });
    expect(want).toBe(
      'High Water, want: 3-18, 17b, 49, 50; LC-2-LC-4; SG-1, SG-9; TR-3; Varnished: 1-8, 10-18, 17b',
    );
    expect(doubles).toBe('High Water, doubles: 2 x1');
    await at(SET, {}, async (page) => {
      await page.click('.more summary');
      await page.click('.read-list');
      await page.fill('#tools--text', `${want}, 99\n${doubles}`);
      await page.click('#tools--list .look');
      expect(
        (await words(page, '#tools--list .outcome')).split('\n').filter((line) => line !== ''),
      ).toEqual([
        'This cannot be read:',
        `“99”, at sign ${String(want.length + 3)}: no card here has this number`,
        'This would tick 4 cards.',
      ]);
      expect(await page.locator('.had').count()).toBe(0);
      await page.click('#tools--list .agree');
      expect(await page.evaluate(KEPT)).toEqual({
        format: 1,
        cards: { 'charts/LC-1': 1, 'crew/1': 1, 'crew/2': 2 },
        parallels: { varnished: { 'crew/9': 1 } },
      });
      expect(await words(page, '.said')).toBe('4 cards are changed. Undo takes it back.');
      await page.click('.undo');
      expect(await page.evaluate(KEPT)).toEqual({ format: 1, cards: {}, parallels: {} });
    });
  });

  it('of a subset is read on the page of its set; of another set on neither', () =>
    at(SET, {}, async (page) => {
      const read = async (text: string) => {
        await page.fill('#tools--text', text);
        await page.click('#tools--list .look');
        return words(page, '#tools--list .outcome');
      };
      await page.click('.more summary');
      await page.click('.read-list');
      expect(await read('High Water (Lake Charts), want: LC-2')).toBe('This would tick 3 cards.');
      expect(await read('Depth Charts, want: 2')).toBe(
        'This is a list of Depth Charts. This page is of High Water.',
      );
      expect(await page.locator('#tools--list .agree').isVisible()).toBe(false);
    }));

  it('is shown to be copied by hand where the browser refuses', () =>
    at(
      SET,
      { before: 'navigator.clipboard.writeText = () => Promise.reject(new Error("no"));' },
      async (page) => {
        await page.click('.copy-doubles');
        await page.locator('#tools--list').waitFor();
        expect(await page.inputValue('#tools--text')).toBe('High Water, doubles: nothing');
      },
    ));

  it('is printed on a sheet of its own, and the page is as it was', () =>
    at(
      SET,
      { before: 'window.print = () => { window.printed = document.documentElement.className; };' },
      async (page) => {
        await box(page, 'crew--1').click();
        await page.keyboard.press('p');
        expect(await page.evaluate('window.printed')).toBe('printing-want');
        await page.emulateMedia({ media: 'print' });
        expect(await page.locator('main > :visible').count()).toBe(1);
        expect(await words(page, '.want-sheet h1')).toBe('High Water: want list');
        expect(await page.locator('.want-sheet h2').allInnerTexts()).toEqual([
          'Crew and Craft',
          'High Water',
          'Lake Charts',
          'Signatures',
          'Timber relics',
        ]);
        const lines = await page.locator('.want-sheet li').allInnerTexts();
        expect(lines).toHaveLength(27);
        expect(lines[0]).toMatch(/^2\s+Tamsin Oakum$/);
        expect(lines[17]).toMatch(/^18\s*$/);
        expect(await words(page, '.want-sheet')).toContain('As of 16 April 2027');
        expect(await words(page, '.want-sheet .legal')).toBe('© 2027 Lantern & Oar');
        await page.evaluate('dispatchEvent(new Event("afterprint"))');
        expect(await page.locator('.want-sheet').isVisible()).toBe(false);
        expect(await page.locator('.cards').first().isVisible()).toBe(true);
        expect(await page.locator('.tools').isVisible()).toBe(false);
      },
    ));
});

describe('ticks in a file', () => {
  it('are saved and loaded once somebody has agreed', () =>
    at(SET, {}, async (page) => {
      await box(page, 'crew--1').click();
      await plus(page, 'crew--1').click();
      await page.click('.more summary');
      const coming = page.waitForEvent('download');
      await page.click('.save-ticks');
      const download = await coming;
      expect(download.suggestedFilename()).toBe('high-water-ticks.json');
      const chunks: Buffer[] = [];
      for await (const chunk of await download.createReadStream())
        chunks.push(Buffer.from(chunk as Uint8Array));
      const file = Buffer.concat(chunks);
      expect(JSON.parse(file.toString('utf8'))).toEqual({
        format: 1,
        site: 'The Ferrywrights',
        set: 'high-water',
        asOf: data.asOf,
        ticks: { cards: { 'crew/1': 2 }, parallels: {} },
      });
      await page.keyboard.press('Control+z');
      await box(page, 'crew--2').click();
      const load = async (buffer: Buffer) => {
        await page.setInputFiles('#tools--file', {
          name: 'a.json',
          mimeType: 'application/json',
          buffer,
        });
        await page.locator('#tools--sure').waitFor();
        return words(page, '#tools--sure .outcome');
      };
      expect(await load(Buffer.from('{}'))).toContain('This is no file of ticks.');
      await page.click('#tools--sure .leave');
      expect(await load(file)).toBe(
        'This would take the tick off 1 card, change the number of 1 card.',
      );
      await page.click('#tools--sure .agree');
      expect(await page.evaluate(KEPT)).toMatchObject({ cards: { 'crew/1': 2 } });
      await page.keyboard.press('Control+z');
      expect(await page.evaluate(KEPT)).toMatchObject({ cards: { 'crew/1': 1, 'crew/2': 1 } });
    }));
});

describe('the keyboard', () => {
  it('does it all: from the home page to a printed list in seven keys', () =>
    at('', { before: 'window.print = () => { window.printed = true; };' }, async (page) => {
      for (const key of ['/', 'l', 'c', '4']) await page.keyboard.press(key);
      await Promise.all([page.waitForURL(/high-water\/\?find=lc4$/), page.keyboard.press('Enter')]);
      await page.locator('.had, .box').first().waitFor({ state: 'attached' });
      expect(await focused(page)).toBe('charts--lc-4');
      await page.keyboard.press('Space');
      await page.keyboard.press('p');
      expect(await page.evaluate('window.printed')).toBe(true);
      expect(await page.evaluate(KEPT)).toMatchObject({ cards: { 'charts/LC-4': 1 } });
    }));

  it('moves from box to box, counts, and goes from the line to the first box', () =>
    at(SET, {}, async (page) => {
      await page.keyboard.press('/');
      await page.keyboard.type('crew');
      await page.keyboard.press('Enter');
      expect(await focused(page)).toBe('crew--1');
      for (const [key, id] of [
        ['ArrowDown', 'crew--2'],
        ['ArrowDown', 'crew--3'],
        ['ArrowUp', 'crew--2'],
        ['End', 'crew--18'],
        ['ArrowDown', 'crew--18'],
        ['Home', 'crew--1'],
      ] as const) {
        await page.keyboard.press(key);
        expect(await focused(page), key).toBe(id);
      }
      for (const key of ['+', '+', '-', '+']) await page.keyboard.press(key);
      expect(await box(page, 'crew--1').innerText()).toBe('2');
      await page.keyboard.press('/');
      await page.keyboard.type('#20');
      await page.keyboard.press('Enter');
      expect(await focused(page)).toBe('crew--20');
    }));

  it('has its single signs turned off, and remembers it', () =>
    at(SET, { before: 'window.print = () => { window.printed = true; };' }, async (page) => {
      await page.click('.more summary');
      await page.uncheck('#tools--keys');
      await page.reload();
      await page.keyboard.press('p');
      await page.keyboard.press('/');
      expect(await page.evaluate('window.printed')).toBe(undefined);
      expect(await focused(page)).not.toBe('find--box');
      await page.click('.more summary');
      await page.check('#tools--keys');
      await page.keyboard.press('/');
      expect(await focused(page)).toBe('find--box');
      await page.keyboard.press('p');
      expect(await page.evaluate('window.printed')).toBe(undefined);
    }));
});

describe.each(WIDTHS)('%s at %d px', (path, width) => {
  it('nothing moves, all that is tapped is 44 px high, and everyone can use it in both schemes', () =>
    at(path, { width, before: WATCH }, async (page) => {
      await page.evaluate('document.fonts.ready.then(() => true)');
      await box(page, 'charts--lc-2').click();
      await plus(page, 'charts--lc-2').click();
      await page.goto(`${pages.origin}/about/`);
      await page.goto(`${pages.origin}/${path}`);
      await page.evaluate('document.fonts.ready.then(() => true)');
      expect(await page.evaluate('window.shifts')).toEqual([]);
      expect(
        await page.evaluate('document.documentElement.scrollWidth - innerWidth'),
      ).toBeLessThanOrEqual(0);
      await page.click('.more summary');
      expect(await page.evaluate(SMALL)).toEqual([]);
      await page.evaluate(axe.source);
      expect(await axeFindings(page)).toEqual([]);
      await page.emulateMedia({ colorScheme: 'dark' });
      expect(await axeFindings(page)).toEqual([]);
      await page.click('.read-list');
      expect(await axeFindings(page)).toEqual([]);
    }));
});

/** Everything that moves by itself, as the Layout Instability API tells it. */
const WATCH = `window.shifts = [];
new PerformanceObserver((list) => {
  for (const entry of list.getEntries()) {
    if (!entry.hadRecentInput) window.shifts.push([entry.value, entry.sources.map(({ node, previousRect, currentRect }) => [node?.nodeName, node?.parentNode?.outerHTML?.slice(0, 200), JSON.stringify(previousRect), JSON.stringify(currentRect)])]);
  }
}).observe({ type: 'layout-shift', buffered: true });`;

/** Targets under 44 px, but for links and labels within a line of words. */
const SMALL = `[...document.querySelectorAll('main a, main button, main summary, main select, main label:has(input), #find--box')]
  .filter((target) => target.checkVisibility({ visibilityProperty: true }) && !target.closest('p'))
  .map((target) => [target.getBoundingClientRect(), target.outerHTML])
  .filter(([{ width, height }]) => height < 43.9 || width < 24)
  .map(([, html]) => html.slice(0, 90))`;

async function axeFindings(page: Page): Promise<readonly string[]> {
  const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
  const options = JSON.stringify({ runOnly: { type: 'tag', values: tags } });
  const { violations } = await page.evaluate<AxeResults>(`axe.run(document, ${options})`);
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
}

describe('the page', () => {
  it('can be read without scripts, and shows no tool that does nothing', () =>
    at(SET, { scripts: false, width: 360 }, async (page) => {
      expect(await page.locator('.tools, main > .find').filter({ visible: true }).count()).toBe(0);
      expect(await rows(page)).toHaveLength(37);
      expect(await page.locator('[id="charts--lc-4"] a.name').getAttribute('href')).toBe(
        '../high-water/charts/LC-4/',
      );
      await page.emulateMedia({ media: 'print' });
      const boxes = page.locator('.cards .tick:visible');
      expect(await boxes.count()).toBeGreaterThan(27);
    }));

  it('asks nobody else for anything, and gets all that it asks for', () =>
    at(SET, {}, async (page) => {
      const asked: string[] = [];
      page.on('response', (answer) =>
        asked.push(`${String(answer.status())} ${new URL(answer.url()).origin}`),
      );
      await page.reload({ waitUntil: 'networkidle' });
      await box(page, 'crew--1').click();
      await page.click('.copy-want');
      expect(asked.length).toBeGreaterThan(10);
      expect([...new Set(asked)]).toEqual([`200 ${pages.origin}`]);
    }));

  it('marks the row that an address leads to', () =>
    at(`${SET}#charts--lc-4`, {}, async (page) => {
      const ground = (id: string) =>
        page.evaluate<string>(`getComputedStyle(document.getElementById("${id}")).backgroundColor`);
      expect(await ground('charts--lc-4')).not.toBe(await ground('charts--lc-3'));
      const { y = 0 } = (await page.locator('[id="charts--lc-4"]').boundingBox()) ?? {};
      expect(y).toBeGreaterThan(0);
      expect(y).toBeLessThan(800);
    }));
});
