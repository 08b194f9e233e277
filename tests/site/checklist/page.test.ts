import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  box,
  focused,
  KEPT,
  KEY,
  openPages,
  plus,
  rows,
  SET,
  SUBSET,
  words,
  type Pages,
} from './pages.js';

let pages: Pages;

beforeAll(async () => {
  pages = await openPages();
});

afterAll(() => pages.close());

const at: Pages['at'] = (path, look, use) => pages.at(path, look, use);

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
      expect(await words(page, '.found')).toBe('1 of 36 cards');
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
      expect(await words(page, '.found')).toBe('0 of 36 cards');
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
      expect(page.url()).toBe(`${pages.origin}/${SET}`);
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
      await other.goto(`${pages.origin}/${SUBSET}`);
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
