import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

import { openBrowser } from '../../site/support.js';
import { MadeUpCard } from './stub-answers.js';
import { Stub, TOKEN } from './stub.js';

/** A name that would run if it were taken for markup. */
const HOSTILE = '<script>window.ran=1</script><img src=x onerror="window.ran=1">';
const OVERSET = 'one two three four five six seven eight nine ten bad';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

/** Opens the one card of a stub in a browser of its own, and closes both when it is done. */
async function atCard(
  use: (page: Page, stub: Stub, card: MadeUpCard, address: string) => Promise<void>,
): Promise<void> {
  const card = new MadeUpCard(HOSTILE, OVERSET);
  const stub = new Stub(card);
  const address = await stub.open();
  const context = await browser.newContext();
  try {
    const page = await context.newPage();
    const broken: string[] = [];
    page.on('console', (message) => {
      const isAnswer = message.text().startsWith('Failed to load resource');
      if (message.type() === 'error' && !isAnswer) broken.push(message.text());
    });
    page.on('pageerror', (error) => broken.push(error.message));
    await page.goto(`${address}#token=${TOKEN}`);
    await page.locator('.cards tbody a').click();
    await page.locator('.cm-content').waitFor();
    await use(page, stub, card, address);
    expect(broken).toEqual([]);
  } finally {
    await context.close();
    await stub.close();
  }
}

const copyIn = (page: Page): Promise<string> =>
  page
    .locator('.cm-line')
    .allTextContents()
    .then((lines) => lines.join('\n'));
const savedState = (page: Page): Promise<string> => page.locator('#saved-state').innerText();

/** Somebody writes other words into the file, and the desk tells its pages. */
function changeOutside(stub: Stub, card: MadeUpCard, copy: string): void {
  card.changeOutside(copy);
  stub.tell({
    type: 'changed',
    cards: [{ card: MadeUpCard.key, digest: card.digest }],
    others: false,
  });
}

/** Puts other words in place of the copy, as somebody does who types. */
async function typeCopy(page: Page, words: string): Promise<void> {
  await page.locator('.cm-content').click();
  await page.keyboard.press('Control+a');
  await page.keyboard.insertText(words);
}

describe('a card at the desk', () => {
  test('shows markup in a name as text, and runs none of it', () =>
    atCard(async (page) => {
      await expect.poll(() => page.locator('h1').innerText()).toBe(`1 · ${HOSTILE}`);
      expect(await page.locator('#field-name').inputValue()).toBe(HOSTILE);
      expect(await page.evaluate('window.ran')).toBeUndefined();
    }));

  test('keeps the token out of the address', () =>
    atCard(async (page) => {
      expect(page.url()).not.toContain(TOKEN);
    }));

  test('goes from overset to a free line, and says so when typing rests', () =>
    atCard(async (page) => {
      expect(await page.locator('#copy-fit').innerText()).toBe('overset by 1 line');
      await typeCopy(page, 'one two');
      await expect.poll(() => page.locator('#copy-fit').innerText()).toBe('1 line free');
      await expect.poll(() => page.locator('#said').innerText()).toBe('bio: 1 line free');
      expect(await savedState(page)).toBe('Not saved');
    }));

  test('underlines what was found, and mends it by one press', () =>
    atCard(async (page) => {
      expect(await page.locator('.cm-lintRange-error').innerText()).toBe('bad');
      await page.locator('.findings').getByRole('button', { name: 'Change to “good”' }).click();
      await expect.poll(() => copyIn(page)).toBe(OVERSET.replace('bad', 'good'));
      expect(await page.locator('.findings li').count()).toBe(0);
    }));

  test('loses no key that is typed while a save is under way', () =>
    atCard(async (page, stub, card) => {
      await typeCopy(page, 'one');
      let go = (): void => undefined;
      stub.holdSaves = new Promise((resolve) => (go = resolve));
      await page.keyboard.press('Control+s');
      // The save is on its way with what was typed so far; what comes now is not in it.
      await expect.poll(() => stub.saves).toBe(1);
      await page.keyboard.press('End');
      await page.keyboard.insertText(' two');
      go();
      await expect.poll(() => card.copy).toBe('one');
      await expect.poll(() => savedState(page)).toBe('Not saved');
      expect(await copyIn(page)).toBe('one two');
      await page.keyboard.press('Control+s');
      await expect.poll(() => card.copy).toBe('one two');
      await expect.poll(() => savedState(page)).toBe('Saved');
    }));

  test('takes in what somebody else saved where nothing is typed', () =>
    atCard(async (page, stub, card) => {
      card.changeOutside('theirs');
      stub.tell({
        type: 'changed',
        cards: [{ card: MadeUpCard.key, digest: card.digest }],
        others: false,
      });
      await expect.poll(() => copyIn(page)).toBe('theirs');
    }));
});

describe('two who change one card', () => {
  /** Types, lets somebody else save, and tries to save. */
  async function clash(page: Page, card: MadeUpCard): Promise<void> {
    await typeCopy(page, 'my words');
    card.changeOutside('their words');
    await page.keyboard.press('Control+s');
    await page.getByRole('dialog').waitFor();
    const said = await page.getByRole('dialog').innerText();
    expect(said).toContain('my words');
    expect(said).toContain('their words');
    expect(card.copy).toBe('their words');
  }

  test('keep mine', () =>
    atCard(async (page, _, card) => {
      await clash(page, card);
      await page.getByRole('button', { name: 'Keep mine' }).click();
      await expect.poll(() => card.copy).toBe('my words');
      await page.getByRole('dialog').waitFor({ state: 'detached' });
      expect(await savedState(page)).toBe('Saved');
    }));

  test('take the other, and bring mine back', () =>
    atCard(async (page, _, card) => {
      await clash(page, card);
      await page.getByRole('button', { name: 'Take the other' }).click();
      await expect.poll(() => copyIn(page)).toBe('their words');
      await page.getByRole('button', { name: 'Bring my words back' }).click();
      await expect.poll(() => copyIn(page)).toBe('my words');
      expect(await savedState(page)).toBe('Not saved');
      expect(card.copy).toBe('their words');
    }));

  test('write what shall stand', () =>
    atCard(async (page, _, card) => {
      await clash(page, card);
      await page.locator('#merge').fill('our words');
      await page.getByRole('button', { name: 'Save what stands here' }).click();
      await expect.poll(() => card.copy).toBe('our words');
      await expect.poll(() => copyIn(page)).toBe('our words');
    }));

  test('go on writing: nothing is written, and nothing is lost', () =>
    atCard(async (page, _, card) => {
      await clash(page, card);
      await page.keyboard.press('Escape');
      await page.getByRole('dialog').waitFor({ state: 'detached' });
      expect([await copyIn(page), card.copy]).toEqual(['my words', 'their words']);
      await page.getByRole('button', { name: 'Show both texts' }).click();
      await page.getByRole('dialog').waitFor();
    }));
});

test('a change that is told while the card is fetched is not lost', () =>
  atCard(async (page, stub, card) => {
    const { asked } = stub;
    let answer = (): void => {};
    stub.holdCards = new Promise((resolve) => (answer = resolve));
    changeOutside(stub, card, 'the first change');
    await expect.poll(() => stub.asked).toBe(asked + 1);
    changeOutside(stub, card, 'the second change');
    // The page has heard of it: events come in their order.
    await page.waitForTimeout(200);
    stub.holdCards = Promise.resolve();
    answer();
    await expect.poll(() => copyIn(page)).toBe('the second change');
  }));

test('seven tabs share one stream, all of them hear, and another takes over from the first', () =>
  atCard(async (page, stub, card, address) => {
    const others = await Promise.all(
      Array.from({ length: 6 }, async () => {
        const other = await page.context().newPage();
        await other.goto(`${address}#/card/${MadeUpCard.key}`); // no token: the first tab hands it over
        await other.locator('.cm-content').waitFor();
        return other;
      }),
    );
    expect(stub.streams.size).toBe(1);
    const told = async (copy: string, tabs: readonly Page[]): Promise<void> => {
      changeOutside(stub, card, copy);
      for (const tab of tabs) await expect.poll(() => copyIn(tab)).toBe(copy);
    };
    await told('for all', [page, ...others]);
    const first = new Set(stub.streams);
    await others[0]?.close();
    await page.goto('about:blank');
    await expect.poll(() => [...stub.streams].map((each) => first.has(each))).toEqual([false]);
    await told('for the rest', others.slice(1));
  }));

test('a tab without a token says how to open the desk, and asks for nothing', async () => {
  const stub = new Stub(new MadeUpCard('Tamsin Oakum', 'one'));
  const context = await browser.newContext();
  try {
    const page = await context.newPage();
    await page.goto(await stub.open());
    await expect.poll(() => page.locator('h1').innerText()).toBe('The desk is shut here');
    expect(stub.streams.size).toBe(0);
  } finally {
    await context.close();
    await stub.close();
  }
});
