import { createDecipheriv, pbkdf2Sync } from 'node:crypto';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

import axe, { type AxeResults } from 'axe-core';
import fc from 'fast-check';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import { passphraseFrom, passphraseLetters, seal } from '../../pipeline/out/packet/index.js';
import { openBrowser } from '../site/support.js';

const SECRET = '<!doctype html><title>Held</title><h1>Ysolde Marrack is the voice</h1>';
const PASSPHRASE = 'K7Q2M-00ABC-XYZ12-34567';
const chance = (octet: number) => ({
  salt: new Uint8Array(16).fill(octet),
  nonce: new Uint8Array(12).fill(octet + 1),
});

let sealed: string;
beforeAll(async () => {
  sealed = await seal(SECRET, PASSPHRASE, chance(1));
});

/** The octets that a sealed page carries, its last 16 the tag. */
function carried(page: string): Buffer {
  const [, text = ''] = /<template [^>]*>([^<]*)<\/template>/.exec(page) ?? [];
  return Buffer.from(text, 'base64');
}

/** What another implementation (OpenSSL by node:crypto) makes of a sealed page. */
function opened(page: string, typed: string): Buffer {
  const letters = passphraseLetters(typed);
  const key = pbkdf2Sync(letters, chance(1).salt, 600_000, 32, 'sha256');
  const octets = carried(page);
  const decipher = createDecipheriv('aes-256-gcm', key, chance(1).nonce);
  decipher.setAuthTag(octets.subarray(-16));
  return Buffer.concat([decipher.update(octets.subarray(0, -16)), decipher.final()]);
}

describe('a sealed page', () => {
  it('is AES-256-GCM with a key by PBKDF2-HMAC-SHA-256 of 600,000 rounds', () => {
    const plain = opened(sealed, PASSPHRASE);
    expect(plain.readUInt32BE(0)).toBe(Buffer.byteLength(SECRET));
    expect(plain.subarray(4, 4 + Buffer.byteLength(SECRET)).toString()).toBe(SECRET);
    expect(plain.length % 65_536).toBe(0);
    expect(plain.subarray(4 + Buffer.byteLength(SECRET)).every((octet) => octet === 0)).toBe(true);
  });

  it('does not open with another passphrase, or if a bit of it is changed', () => {
    expect(() => opened(sealed, 'K7Q2M-00ABC-XYZ12-34568')).toThrow();
    const octets = carried(sealed);
    octets[100] = (octets[100] ?? 0) ^ 1;
    const broken = sealed.replace(carried(sealed).toString('base64'), octets.toString('base64'));
    expect(() => opened(broken, PASSPHRASE)).toThrow();
  });

  it('tells in the clear nothing of what is in it: all of them are alike but for their octets', async () => {
    const other = await seal('<p>1</p>', 'AAAAAAAAAAAAAAAAAAAA', chance(5));
    const bare = (page: string): string => page.replace(/<template [^>]*>[^<]*/, '');
    expect(bare(other)).toBe(bare(sealed));
    expect(other.length).toBe(sealed.length);
    expect(sealed).not.toContain('Marrack');
  });

  it('refuses a passphrase that is too short, and chance of another size', async () => {
    await expect(seal('', 'K7Q2M-00ABC-XYZ12', chance(1))).rejects.toThrow('at least 16');
    const short = { ...chance(1), nonce: new Uint8Array(11) };
    await expect(seal('', PASSPHRASE, short)).rejects.toThrow(RangeError);
  });
});

describe('a passphrase', () => {
  it('has 100 bits, in groups', () => {
    expect(passphraseFrom(Uint8Array.from({ length: 20 }, (_, at) => at))).toBe(
      '01234-56789-ABCDE-FGHJK',
    );
    fc.assert(
      fc.property(fc.uint8Array({ minLength: 20, maxLength: 20 }), (octets) => {
        expect(passphraseFrom(octets)).toMatch(
          /^(?:[0-9A-HJKMNP-TV-Z]{5}-){3}[0-9A-HJKMNP-TV-Z]{5}$/,
        );
      }),
    );
  });

  it('is the same however it is typed', () => {
    expect(passphraseLetters(' k7q2m 0oabc–xyz12-3456l'.replace('–', '-'))).toBe(
      'K7Q2M00ABCXYZ1234561',
    );
  });
});

describe('in a browser, from a disk', () => {
  let folder: string;
  let browser: Browser;
  let page: Page;
  const asked: string[] = [];
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'holdback-seal-'));
    writeFileSync(join(folder, 'sealed.html'), sealed);
    browser = await openBrowser();
    page = await browser.newPage({ viewport: { width: 360, height: 640 } });
    page.on('request', (request) => asked.push(request.url()));
    await page.goto(pathToFileURL(join(folder, 'sealed.html')).href);
  });
  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  });

  it('says so if the passphrase is another, and opens with the right one, typed badly', async () => {
    await page.fill('#passphrase', 'K7Q2M-00ABC-XYZ12-99999');
    await page.click('button');
    await page.getByText('It does not open with that passphrase').waitFor();
    const found: AxeResults = await page.evaluate(`${axe.source}; axe.run()`);
    expect(found.violations).toEqual([]);
    await page.fill('#passphrase', 'k7q2m oOabc xyz12 34567');
    await page.keyboard.press('Enter');
    await page.waitForSelector('text=Ysolde Marrack is the voice');
    expect(await page.title()).toBe('Held');
    expect(asked).toEqual([page.url()]);
  });
});
