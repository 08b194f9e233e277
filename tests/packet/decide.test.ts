import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import { instantOf } from '../../pipeline/model/index.js';
import { openBrowser } from '../site/support.js';
import {
  VIEW,
  digest,
  openPacket,
  sealedPacket,
  submissionOf,
  submitted,
  unlock,
  type Packet,
} from './fixture.js';
import { heading, press, saved, standing } from './pages.js';

/** Three cards of the crew, one of which is as it was decided on. */
const [FIRST = '', SECOND = '', THIRD = ''] = VIEW.sets.flatMap((set) =>
  set.subsets
    .filter(({ id }) => id === 'crew')
    .flatMap(({ cards }) => cards.map(({ identity }) => `${set.id}/${identity ?? ''}`)),
);
const SAME = submitted(SECOND).parts.map((part) => ({
  ...part,
  last: { verdict: 'approved' as const, isCurrent: true },
}));
const THREE = submissionOf([
  submitted(FIRST),
  submitted(SECOND, { parts: SAME }),
  submitted(THIRD),
]);

const all = (card: string, decision: string, more: object = {}): object[] =>
  (['copy', 'image', 'layout', 'web'] as const).map((part, at) => ({
    card,
    part,
    digest: digest(at + 1),
    decision,
    ...more,
  }));

let browser: Browser;
let packet: Packet;
beforeAll(async () => {
  browser = await openBrowser();
  packet = await sealedPacket(THREE);
});
afterAll(() => browser.close());

/** A page of its own storage. */
async function opened(which: Packet = packet): Promise<Page> {
  const page = await openPacket(which, await browser.newContext());
  page.on('pageerror', (error) => {
    throw error;
  });
  return page;
}

describe('a packet from the disk', () => {
  it('opens with its passphrase alone, and asks nothing of a network', async () => {
    const context = await browser.newContext();
    const page = await context.newPage();
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    await page.goto(packet.address);
    await page.fill('#passphrase', 'K7Q2M-00ABC-XYZ12-99999');
    await page.keyboard.press('Enter');
    await page.getByText('It does not open with that passphrase').waitFor();
    expect(await page.locator('#card').count()).toBe(0);
    await unlock(page);
    expect(await page.title()).toBe('Submission 2 for Amara Linde');
    expect(await page.locator('#warning').isVisible()).toBe(false);
    await press(page, 'c');
    await page.getByText('It fits.').waitFor();
    expect(asked.filter((url) => !/^(?:blob|data):/.test(url))).toEqual([packet.address]);
  });

  it('is decided on by keys, and gives a file that the house takes', async () => {
    const page = await opened();
    await press(page, 'a');
    expect(await heading(page)).toMatch(/^2 /);
    await press(page, 'r');
    await page.keyboard.type('Too early in the story.');
    await page.getByRole('button', { name: 'Accept' }).click();
    expect(await heading(page)).toMatch(/^3 /);
    await press(page, 'h');
    await page.keyboard.type('the maker');
    await page.keyboard.press('Enter');
    await page.getByText('All is decided.').waitFor();
    expect(await standing(page)).toBe('You decided: on hold.');
    await press(page, 'f');
    expect(await page.locator('dialog').innerText()).toContain('Revise and resubmit: 1 text');
    expect(await saved(page, THREE)).toEqual({
      format: 1,
      property: 'ferrywrights',
      packet: 'amara-2',
      person: 'amara',
      decisions: [
        ...all(FIRST, 'approved'),
        ...all(SECOND, 'revise and resubmit', { remark: 'Too early in the story.' }),
        ...all(THIRD, 'on hold', { with: 'the maker' }),
      ],
      remarks: [],
      signature: expect.stringMatching(/^[\w-]{86}$/) as string,
    });
    await page.getByText('decisions-amara-2.json is among your downloads').waitFor();
  });

  it.each([
    ['n', 'approved as noted', 'A small thing.'],
    ['x', 'rejected', 'Not with us.'],
  ])('the key %s: %s', async (key, decision, remark) => {
    const page = await opened();
    await press(page, key);
    await page.getByLabel('Remark, if any').fill(remark);
    await page.getByRole('button', { name: 'Accept' }).click();
    await press(page, 'f');
    const { decisions } = await saved(page, THREE);
    expect(decisions).toEqual(all(FIRST, decision, { remark }));
  });

  it('asks for the remark of what is sent back, and with whom it lies', async () => {
    const page = await opened();
    await press(page, 'r');
    await page.getByRole('button', { name: 'Accept' }).click();
    await page.getByText('Say what is to be revised').waitFor();
    await press(page, 'Escape', 'h');
    await page.getByLabel('Remark, if any').fill('Later.');
    await page.getByRole('button', { name: 'Accept' }).click();
    await page.getByText('Say with whom it lies').waitFor();
    await press(page, 'Escape');
    expect(await standing(page)).toBe('Nothing decided yet.');
  });

  it('is decided on part by part', async () => {
    const page = await opened();
    await page.getByText('Decide part by part').click();
    await page.getByRole('checkbox', { name: 'Words' }).uncheck();
    await press(page, 'a');
    expect(await standing(page)).toBe(
      'picture: approved · layout: approved · website: approved · words: open',
    );
    await page.getByRole('checkbox', { name: 'Words' }).check();
    for (const name of ['Picture', 'Layout', 'Website'])
      await page.getByRole('checkbox', { name }).uncheck();
    await press(page, 'x');
    await page.getByRole('button', { name: 'Accept' }).click();
    expect(await heading(page)).toMatch(/^2 /);
    await press(page, 'f');
    const { decisions } = await saved(page, THREE);
    expect(decisions.map(({ part, decision }) => [part, decision])).toEqual([
      ['copy', 'rejected'],
      ['image', 'approved'],
      ['layout', 'approved'],
      ['web', 'approved'],
    ]);
  });

  it('takes back what was decided, one by one', async () => {
    const page = await opened();
    await press(page, 'a', 'a', 'u');
    expect(await page.locator('#progress').innerText()).toBe('1 of 3 decided');
    await press(page, 'u');
    expect(await page.locator('#progress').innerText()).toBe('0 of 3 decided');
    await press(page, 'u');
    expect(await page.locator('#said').innerText()).toBe('There is nothing to undo.');
  });

  it('approves the rest of what was opened, and nothing else', async () => {
    const page = await opened();
    await press(page, 'j', 'f');
    await page.getByRole('button', { name: 'Approve the rest that I have opened (2)' }).click();
    const said = await page.locator('dialog').innerText();
    expect(said).toContain('Not decided: 1 text');
    expect(said).toContain('Approved: 2 texts');
    const { decisions } = await saved(page, THREE);
    expect(decisions).toEqual([...all(FIRST, 'approved'), ...all(SECOND, 'approved')]);
  });

  it('shows only what changed', async () => {
    const page = await opened();
    expect(await page.locator('#list li').count()).toBe(3);
    await press(page, 'o', 'j');
    expect(await heading(page)).toMatch(/^3 /);
    expect(await page.locator('#list li').count()).toBe(2);
    await press(page, 'k', 'o', 'j');
    expect(await heading(page)).toMatch(/^2 /);
  });

  it('has keys that can be switched off, and none while somebody types', async () => {
    const page = await opened();
    await press(page, 'm');
    await page.getByLabel('Remark', { exact: true }).fill('');
    await page.keyboard.type('jaxu');
    expect(await page.getByLabel('Remark', { exact: true }).inputValue()).toBe('jaxu');
    await press(page, 'Escape', '?');
    await page.getByLabel('Single keys work').uncheck();
    await press(page, 'Escape', 'a', 'j');
    expect(await heading(page)).toMatch(/^1 /);
    expect(await standing(page)).toBe('Nothing decided yet.');
  });
});

describe('drafts', () => {
  it('are there again after the page was closed, sealed, and gone once it is saved', async () => {
    const context = await browser.newContext();
    const page = await openPacket(packet, context);
    await press(page, 'a', 'r');
    await page.keyboard.type('Nobody may read this remark.');
    await page.getByRole('button', { name: 'Accept' }).click();
    const stored = (): Promise<Record<string, string>> =>
      page.evaluate<Record<string, string>>('({ ...localStorage })');
    await expect.poll(stored).not.toEqual({});
    const [[name, value] = ['', '']] = Object.entries(await stored());
    expect(name).toMatch(/^[0-9a-f]{32}$/);
    expect(value).toMatch(/^[A-Za-z0-9+/]{16}\.[A-Za-z0-9+/]+=*$/);
    const plain = Buffer.from(value.split('.')[1] ?? '', 'base64').toString('latin1');
    for (const text of ['approved', 'Nobody', 'crew', 'amara']) {
      expect(`${name}${value}${plain}`).not.toContain(text);
    }
    await page.waitForTimeout(200);
    await page.close();
    const again = await openPacket(packet, context);
    await again.getByText('What you had decided is here again.').waitFor();
    expect(await again.locator('#progress').innerText()).toBe('2 of 3 decided');
    await press(again, 'f');
    const { decisions } = await saved(again, THREE);
    expect(decisions[4]).toMatchObject({ remark: 'Nobody may read this remark.' });
    await expect.poll(() => again.evaluate('localStorage.length')).toBe(0);
  });

  it('of another packet are not read', async () => {
    const context = await browser.newContext();
    const page = await openPacket(packet, context);
    await page.evaluate(
      `localStorage.setItem('${'0'.repeat(32)}', 'x'); localStorage.setItem('other', 'y')`,
    );
    await page.close();
    const again = await openPacket(packet, context);
    expect(await again.locator('#progress').innerText()).toBe('0 of 3 decided');
  });
});

it('says so when it has expired, and gives no file', async () => {
  const past = instantOf('2020-01-01T00:00:00+00:00[Europe/London]');
  const page = await opened(await sealedPacket(submissionOf([submitted(FIRST)], past)));
  expect(await page.locator('#warning').innerText()).toContain('This submission has expired');
  await press(page, 'a', 'f');
  await page.getByRole('button', { name: 'Save decision file' }).click();
  await page.getByText('This submission has expired: ask').waitFor();
});

it('says at once where decisions cannot be signed', async () => {
  const context = await browser.newContext();
  await context.addInitScript(`
    const own = SubtleCrypto.prototype.importKey;
    SubtleCrypto.prototype.importKey = function (format, ...rest) {
      if (format === 'pkcs8') return Promise.reject(new DOMException('no', 'NotSupportedError'));
      return own.call(this, format, ...rest);
    };`);
  const page = await openPacket(packet, context);
  expect(await page.locator('#warning').innerText()).toContain('This browser cannot sign');
});
