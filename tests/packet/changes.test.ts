import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import { plainWords } from '../../pipeline/out/packet/now.js';
import { openBrowser } from '../site/support.js';
import { VIEW, openPacket, sealedPacket, submissionOf, submitted, type Packet } from './fixture.js';
import { press, saved, standing } from './pages.js';

const SHOWN = VIEW.sets.flatMap((set) =>
  set.subsets.flatMap((subset) =>
    subset.cards
      .filter(({ state, bio }) => state === 'shown' && bio.length > 0)
      .map((card) => ({
        card,
        key: `${set.id}/${card.identity ?? ''}`,
        subset: `${set.id}/${subset.id}`,
      })),
  ),
);
const PLAIN = SHOWN.find(({ card }) => card.facts.length > 0 && card.bio[0]?.length === 1);
const HELD = SHOWN.find(({ card }) =>
  card.bio.flat().some((run) => !('held' in run) && run.opens !== null),
);
if (!PLAIN || !HELD) throw new Error('the demo has no such cards');
const BIO = plainWords(PLAIN.card.bio);
const BOTH = submissionOf([submitted(PLAIN.key), submitted(HELD.key)]);

let browser: Browser;
let packet: Packet;
beforeAll(async () => {
  browser = await openBrowser();
  packet = await sealedPacket(BOTH);
});
afterAll(() => browser.close());

async function opened(): Promise<Page> {
  return openPacket(packet, await browser.newContext());
}

const accept = (page: Page): Promise<void> =>
  page.getByRole('button', { name: 'Accept the changes' }).click();

/** The words of the drawing in the dialog, in their order. */
async function drawn(page: Page): Promise<string> {
  const words = await page.locator('dialog svg').first().locator('tspan').allTextContents();
  return words.join(' ');
}

describe('approved with changes', () => {
  it('sets the card anew, and gives the exact text of what was changed alone', async () => {
    const page = await opened();
    await press(page, 'c');
    await page.getByText('It fits.').waitFor();
    const before = await drawn(page);
    expect(before).toContain(BIO.split(' ').slice(0, 3).join(' '));
    const text = BIO.replace(/^\S+/, 'Zounds');
    await page.getByLabel('Bio').fill(`  ${text}  `);
    await expect.poll(() => drawn(page)).toContain('Zounds');
    await accept(page);
    await page.locator('dialog').waitFor({ state: 'hidden' });
    await press(page, 'k');
    expect(await standing(page)).toContain('words: approved with changes');
    expect(await standing(page)).toContain('picture: approved');
    await press(page, 'f');
    const { decisions } = await saved(page, BOTH);
    expect(decisions[0]).toEqual({
      card: PLAIN.key,
      part: 'copy',
      digest: decisions[0]?.digest,
      decision: 'approved with changes',
      changes: [{ field: 'bio', text }],
    });
    expect(decisions.slice(1).map(({ decision }) => decision)).toEqual(
      Array.from({ length: 3 }, () => 'approved'),
    );
  });

  it('says by how many lines a text is overset, and is not accepted until it fits', async () => {
    const page = await opened();
    await press(page, 'c');
    await page.getByText('It fits.').waitFor();
    await page.getByLabel('Bio').fill(`${BIO} ${'Water and more water. '.repeat(60)}`);
    await page.getByText(/The bio is overset by \d+ lines\./).waitFor();
    await accept(page);
    await page.waitForTimeout(300);
    expect(await page.locator('dialog').isVisible()).toBe(true);
    expect(await standing(page)).toBe('Nothing decided yet.');
    await page.getByLabel('Bio').fill(`${BIO} So.`);
    await page.getByText('It fits.').waitFor();
    await accept(page);
    await page.locator('dialog').waitFor({ state: 'hidden' });
  });

  it('is not accepted with a character that the font has not, nor without a text', async () => {
    const page = await opened();
    await press(page, 'c');
    await page.getByLabel('Bio').fill(`${BIO} 水`);
    await page.getByText('The bio has “水”, which the font has not.').waitFor();
    await accept(page);
    await page.waitForTimeout(200);
    expect(await page.locator('dialog').isVisible()).toBe(true);
    await page.getByLabel('Bio').fill('');
    await page.getByText('Bio: a text cannot be empty.').waitFor();
    await page.getByLabel('Bio').fill(BIO);
    await page.getByText('It fits.').waitFor();
    await accept(page);
    await page.getByText('Nothing is changed').waitFor();
  });

  it('keeps held words as they are, and says so at once', async () => {
    const page = await opened();
    await press(page, 'j', 'c');
    const held = HELD.card.bio
      .flat()
      .flatMap((run) => ('held' in run || run.opens === null ? [] : [run.text]));
    const words = held.join('');
    await page.getByText('Held words stay as they are').waitFor();
    const bio = plainWords(HELD.card.bio);
    await page.getByLabel('Bio').fill(bio.replace(words.slice(0, 8), ''));
    await page.getByText('These words are held and must stay as they are').first().waitFor();
    await accept(page);
    expect(await page.locator('dialog').isVisible()).toBe(true);
    expect(await standing(page)).toBe('Nothing decided yet.');
  });
});

describe('remarks', () => {
  it('are on marked words, a card, a name, a subset and all', async () => {
    const page = await opened();
    const remark = async (about: string, more: () => Promise<void> = async () => {}) => {
      await press(page, 'm');
      await page.getByLabel('About').selectOption(about);
      await more();
      await page.getByLabel('Remark', { exact: true }).fill(`On ${about}.`);
      await page.getByRole('button', { name: 'Add the remark' }).click();
      await page.locator('dialog').waitFor({ state: 'hidden' });
    };
    await remark('words', async () => {
      await page.getByLabel('Mark the words here').focus();
      await press(page, 'Control+Home', 'Shift+ArrowRight', 'Shift+ArrowRight', 'Shift+ArrowRight');
      await page.getByLabel('Reason').selectOption('story too early');
    });
    await remark('card');
    await remark('name', () => page.getByRole('combobox', { name: 'Name' }).fill('Pim'));
    await remark('subset');
    await remark('all');
    expect(await page.locator('#remarks li').count()).toBe(5);
    await page.getByRole('button', { name: 'Take out the remark: On card.' }).click();
    await press(page, 'u', 'f');
    const { remarks, decisions } = await saved(page, BOTH);
    expect(decisions).toEqual([]);
    expect(remarks).toEqual([
      {
        about: PLAIN.key,
        text: 'On words.',
        reason: 'story too early',
        range: { from: 0, to: 3 },
      },
      { about: PLAIN.key, text: 'On card.' },
      { about: 'name:Pim', text: 'On name.' },
      { about: PLAIN.subset, text: 'On subset.' },
      { about: 'all', text: 'On all.' },
    ]);
  });

  it('take over what is marked on the page', async () => {
    const page = await opened();
    const word = 'e';
    const second = BIO.indexOf(word, BIO.indexOf(word) + 1);
    await page.evaluate(`(() => {
      const text = document.querySelector('[data-bio] p').firstChild;
      getSelection().setBaseAndExtent(text, ${String(second)}, text, ${String(second + 1)});
    })()`);
    await press(page, 'm');
    expect(await page.getByLabel('About').inputValue()).toBe('words');
    await page.getByLabel('Remark', { exact: true }).fill('This one.');
    await page.getByRole('button', { name: 'Add the remark' }).click();
    expect(await page.locator('#remarks').innerText()).toContain(`“${word}”: This one.`);
    await press(page, 'f');
    const { remarks } = await saved(page, BOTH);
    expect(remarks[0]?.range).toEqual({ from: second, to: second + 1 });
  });

  it('are asked for whole', async () => {
    const page = await opened();
    await press(page, 'm');
    await page.getByRole('button', { name: 'Add the remark' }).click();
    await page.getByText('Write the remark.').waitFor();
    await page.getByLabel('Remark', { exact: true }).fill('It');
    await page.getByLabel('About').selectOption('words');
    await page.getByRole('button', { name: 'Add the remark' }).click();
    await page.getByText('Mark the words that it is about.').waitFor();
    await page.getByLabel('About').selectOption('name');
    await page.getByRole('button', { name: 'Add the remark' }).click();
    await page.getByText('Say which name it is about.').waitFor();
  });
});
