import axe, { type AxeResults } from 'axe-core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildSite } from '../../../pipeline/out/site/index.js';
import { data, images } from '../fixture.js';
import { openBrowser } from '../support.js';
import { serve, visit, type Look, type Served } from './served.js';

const SET = 'high-water/';
const SUBSET = 'high-water/charts/';
const WIDTHS = [
  [SET, 360],
  [SET, 768],
  [SET, 1440],
  [SUBSET, 360],
] as const;

const KEY = '"holdback:/high-water/"';
const KEPT = `JSON.parse(localStorage.getItem(${KEY}))`;

let browser: Browser;
let served: Served;

beforeAll(async () => {
  browser = await openBrowser();
  served = await serve(await buildSite(data, { images, inThisProcess: true }));
});

afterAll(async () => {
  await browser.close();
  await served.close();
});

const at = <T>(path: string, look: Look, use: Parameters<typeof visit<T>>[3]) =>
  visit(browser, `${served.origin}/${path}`, look, use);

/** The numbers of the rows in sight, in their order. */
async function rows(page: Page): Promise<readonly string[]> {
  const numbers = page.locator('.cards tbody tr:visible .number');
  return (await numbers.allTextContents()).map((number) => number.trim());
}

const box = (page: Page, id: string) => page.locator(`[id="${id}"] .box`);
const plus = (page: Page, id: string) => page.locator(`[id="${id}"] .plus`);
const words = (page: Page, selector: string) => page.locator(selector).innerText();
const focused = (page: Page) =>
  page.evaluate<string>('document.activeElement.closest("tr")?.id ?? document.activeElement.id');

describe('the line on which a card is looked for', () => {
  it('finds a card however its number is typed, and by what is told of it', () =>
    at(SET, {}, async (page) => {
      const found = async (typed: string) => {
        await page.fill('#find--box', typed);
        return rows(page);
      };
      for (const typed of ['lc4', 'LC 4', 'LC-004', 'l c 4', 'lc-o4', 'fourth gate']) {
        expect(await found(typed), typed).toEqual(['LC-4']);
      }
      expect(await words(page, '.found')).toBe('1 of 37 cards');
      const titles = page.locator('section.subset:visible h2');
      expect(await titles.allInnerTexts()).toEqual(['Lake Charts']);
      expect(await found('#4')).toEqual(['4', 'LC-4', 'TR-4']);
      expect(await found('17')).toEqual(['17', '17b']);
      expect(await found('voss')).toEqual(['SG-9']);
      expect(await found('crew 5')).toEqual(['5']);
      expect(await found('to be rev')).toEqual([
        '19',
        '20',
        '51',
        '52',
        '53',
        '54',
        '55',
        'no number',
      ]);
      expect(await found('2027')).toEqual([]);
      expect(await words(page, '.found')).toBe('0 of 37 cards');
    }));

  it('stands in the address, is filled from it, and is emptied by Escape', () =>
    at(`${SET}?find=lc`, { width: 360 }, async (page) => {
      expect(await page.inputValue('#find--box')).toBe('lc');
      expect(await rows(page)).toEqual(['LC-1', 'LC-2', 'LC-3', 'LC-4']);
      expect(await focused(page)).toBe('charts--lc-1');
      await page.keyboard.press('/');
      await page.keyboard.type('lc4');
      await page.waitForURL(/\?find=lc4$/);
      await page.keyboard.press('Escape');
      expect(await rows(page)).toHaveLength(37);
      expect(page.url()).toBe(`${served.origin}/${SET}`);
    }));

  it('finds whom a card is credited to, which no row says', () =>
    at(SET, {}, async (page) => {
      await page.fill('#find--box', 'lindqvist');
      expect(await rows(page)).toEqual(['17']);
    }));

  it('finds what is folded away only once it is opened', () =>
    at(SET, {}, async (page) => {
      await page.fill('#find--box', 'lamp tender');
      expect(await rows(page)).toEqual([]);
      await page.fill('#find--box', '');
      await page.click('.more summary');
      await page.check('input[name="telling"][value="1"]');
      await page.fill('#find--box', 'lamp tender');
      expect(await rows(page)).toEqual(['18']);
      const label = await box(page, 'crew--18').getAttribute('aria-label');
      expect(label).toBe('18 The lamp tender’s boy: have none');
    }));
});

describe('sorting', () => {
  it('is by name, with what is not told last, and by number again', () =>
    at(SET, {}, async (page) => {
      const before = await rows(page);
      const sorted = page.locator('.cards thead [aria-sort="ascending"]');
      const isFocused = 'document.activeElement.textContent';
      expect(await sorted.first().innerText()).toContain('Number');
      await page.locator('.cards thead button:text("Name")').first().press('Enter');
      const names = await page.locator('#crew tbody th .name').allTextContents();
      expect(names.map((name) => name.trim()).slice(0, 3)).toEqual([
        'Dace Sill',
        'Dorrit Sill',
        'Emeric Hask',
      ]);
      expect((await rows(page)).slice(19, 21)).toEqual(['18', '20']);
      expect(await page.evaluate(isFocused)).toBe('Name');
      expect(await sorted.first().innerText()).toContain('Name');
      expect(await words(page, '#tools--heard')).toBe('Sorted by name.');
      await page.locator('.cards thead button:text("Number")').first().click();
      expect(await rows(page)).toEqual(before);
      expect(await page.evaluate(isFocused)).toBe('Number');
    }));
});

describe('a box', () => {
  it('is ticked, counted and cleared, and every step is taken back', () =>
    at(SET, { width: 360 }, async (page) => {
      const label = () => box(page, 'charts--lc-4').getAttribute('aria-label');
      const boxes = page.locator('.cards tbody .box');
      expect(await boxes.count()).toBe(28);
      expect(await page.locator('.to-come .box, .not-issued .box').count()).toBe(0);
      await box(page, 'charts--lc-4').click();
      expect(await label()).toBe('LC-4 The fourth gate: have 1');
      expect(await words(page, '#tools--heard')).toBe('LC-4 The fourth gate: have 1');
      await plus(page, 'charts--lc-4').click();
      await plus(page, 'charts--lc-4').click();
      expect(await box(page, 'charts--lc-4').innerText()).toBe('3');
      expect(await page.evaluate(KEPT)).toEqual({
        format: 1,
        cards: { 'charts/LC-4': 3 },
        parallels: {},
      });
      await box(page, 'charts--lc-4').click();
      expect(await label()).toBe('LC-4 The fourth gate: have 2');
      await box(page, 'charts--lc-4').click();
      await box(page, 'charts--lc-4').click();
      expect(await label()).toBe('LC-4 The fourth gate: have none');
      expect(await plus(page, 'charts--lc-4').isVisible()).toBe(false);
      await page.click('.undo');
      expect(await words(page, '.said')).toBe('Taken back. LC-4 The fourth gate: have 1.');
      for (const have of ['2', '3', '2', '1', 'none']) {
        await page.keyboard.press('Control+z');
        expect(await label()).toBe(`LC-4 The fourth gate: have ${have}`);
      }
      await page.locator('.undo').press('Enter');
      expect(await words(page, '.said')).toBe('There is nothing to take back.');
      expect(await page.evaluate(KEPT)).toEqual({ format: 1, cards: {}, parallels: {} });
    }));

  it('says how far one has come, with runs and doubles', () =>
    at(SET, {}, async (page) => {
      expect(await words(page, '.progress')).toBe(
        'You have none of 27 cards and none of 1 variation.',
      );
      for (const id of ['crew--1', 'crew--3', 'crew--17b', 'charts--lc-1'])
        await box(page, id).click();
      await plus(page, 'crew--3').click();
      expect(await words(page, '.progress')).toBe(
        'You have 3 of 27 cards and 1 of 1 variation; missing 2, 4-18, 49, 50, LC-2-LC-4, SG-1, SG-9, TR-3; 1 double.',
      );
    }));

  it('of a parallel stands where the parallel is printed, and is counted for itself', () =>
    at(SET, {}, async (page) => {
      await box(page, 'crew--1').click();
      await page.selectOption('#tools--printing', 'varnished');
      expect(await page.locator('.box:visible').count()).toBe(19);
      expect(await box(page, 'crew--1').getAttribute('aria-label')).toBe(
        '1 Emeric Hask: have none',
      );
      await box(page, 'crew--2').click();
      expect(await words(page, '.progress')).toBe(
        'Varnished: you have 1 of 18 cards and none of 1 variation; missing 1, 3-18, 17b.',
      );
      expect(await page.evaluate(KEPT)).toEqual({
        format: 1,
        cards: { 'crew/1': 1 },
        parallels: { varnished: { 'crew/2': 1 } },
      });
    }));

  it('that is ticked stays in sight until something else is looked for', () =>
    at(SET, {}, async (page) => {
      await box(page, 'crew--1').click();
      await plus(page, 'crew--1').click();
      await page.check('input[value="missing"]');
      expect((await rows(page)).slice(0, 2)).toEqual(['2', '3']);
      expect(await rows(page)).toHaveLength(27);
      await box(page, 'crew--2').click();
      expect(await rows(page)).toHaveLength(27);
      await page.check('input[value="doubles"]');
      expect(await rows(page)).toEqual(['1']);
      await page.check('input[value="missing"]');
      expect(await rows(page)).toHaveLength(26);
    }));

  it('is kept, on the page of its subset too, and in another window at once', () =>
    at(SET, {}, async (page, context) => {
      const other = await context.newPage();
      await other.goto(`${served.origin}/${SUBSET}`);
      await box(page, 'charts--lc-2').click();
      await other.locator('[id="charts--lc-2"] .had').waitFor();
      await box(other, 'charts--lc-3').click();
      await page.locator('[id="charts--lc-3"] .had').waitFor();
      expect(await words(other, '.progress')).toBe('You have 2 of 4 cards; missing LC-1, LC-4.');
      await page.reload();
      expect(await page.locator('.had').count()).toBe(2);
    }));
});

describe('what is kept', () => {
  it('and cannot be read is set aside, and said', () =>
    at(
      SET,
      { before: `if (localStorage.length === 0) localStorage.setItem(${KEY}, '{"format":7}')` },
      async (page) => {
        expect(await words(page, '.said')).toContain('It is set aside, not thrown away');
        await box(page, 'crew--1').click();
        expect(await page.evaluate('localStorage.getItem("holdback:/high-water/:aside")')).toBe(
          '{"format":7}',
        );
        expect(await page.evaluate(KEPT)).toMatchObject({ cards: { 'crew/1': 1 } });
      },
    ));

  it('where the browser refuses, lasts until the page is closed, and that is said', () =>
    at(
      SET,
      { before: 'Storage.prototype.setItem = () => { throw new Error("full"); };' },
      async (page) => {
        expect(await words(page, '.said')).toBe('');
        await box(page, 'crew--1').click();
        await box(page, 'crew--2').click();
        expect(await page.locator('.had').count()).toBe(2);
        expect(await words(page, '.said')).toContain('its storage is full or turned off');
      },
    ));
});

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
      await page.goto(`${served.origin}/about/`);
      await page.goto(`${served.origin}/${path}`);
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
      expect([...new Set(asked)]).toEqual([`200 ${served.origin}`]);
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
