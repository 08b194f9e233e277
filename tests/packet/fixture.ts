import { generateKeyPairSync } from 'node:crypto';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

import type { Browser, BrowserContext, Page } from 'playwright-core';

import type { View } from '../../pipeline/gate/index.js';
import { instantOf, type Instant } from '../../pipeline/model/index.js';
import {
  packetPage,
  seal,
  type Submission,
  type SubmittedText,
} from '../../pipeline/out/packet/index.js';
import type { FontShelf } from '../../pipeline/typeset/index.js';
import type { PacketRecord } from '../../schema/index.js';
import { DAY, DEMO, person, seenBy } from '../proof/fixture.js';
import { packetScripts } from '../setup/bundle.mjs';

/** What Amara Linde sees of the demo on the day. */
export const VIEW = seenBy(person('amara'));
export const PASSPHRASE = 'K7Q2M-00ABC-XYZ12-34567';
export const SCRIPTS = await packetScripts();

const KEYS = generateKeyPairSync('ed25519');
const PRIVATE_KEY = KEYS.privateKey.export({ type: 'pkcs8', format: 'der' }).toString('base64url');
const PUBLIC_KEY = KEYS.publicKey.export({ format: 'jwk' }).x ?? '';

/** A digest that is as good as any: 64 digits made of a number. */
export function digest(number: number): string {
  return number.toString(16).padStart(64, '0');
}

/** A card to be decided on by all its parts. */
export function submitted(key: string, more: Partial<SubmittedText> = {}): SubmittedText {
  const parts = (['copy', 'image', 'layout', 'web'] as const).map((part, at) => ({
    part,
    digest: digest(at + 1),
    last: null,
  }));
  return { key, parts, was: [], earlier: [], findings: [], ...more };
}

/** A submission to Amara Linde that is open long after the day of the test. */
export function submissionOf(
  texts: readonly SubmittedText[],
  expires: Instant = instantOf('2100-01-01T00:00:00+00:00[Europe/London]'),
): Submission {
  return {
    id: 'amara-2',
    property: 'ferrywrights',
    round: 2,
    person: { id: 'amara', name: 'Amara Linde' },
    made: DAY,
    expires,
    privateKey: PRIVATE_KEY,
    texts,
  };
}

/** What stays in the house of a submission. */
export function recordOf({ id, property, person: whom, round, texts }: Submission): PacketRecord {
  const seen = { openings: [], inHands: 'never' as const, shows: [] };
  return {
    format: 1,
    id,
    property,
    person: whom.id,
    clearance: 'finale',
    round,
    made: '2026-12-01T10:00:00+00:00[Europe/London]',
    expires: '2100-01-01T00:00:00+00:00[Europe/London]',
    publicKey: PUBLIC_KEY,
    ledger: 'none',
    decides: texts.flatMap(({ key, parts }) =>
      parts.map(({ part, digest: own }) => ({ card: key, part, digest: own, seen })),
    ),
  };
}

export interface Packet {
  readonly html: string;
  readonly address: string;
}

let count = 0;
const folder = mkdtempSync(join(tmpdir(), 'holdback-packet-'));

/** Seals a submission into a file on the disk. */
export async function sealedPacket(
  submission: Submission,
  view: View = VIEW,
  fonts: FontShelf = DEMO.fonts,
  art: (source: string) => Uint8Array | null = () => null,
): Promise<Packet> {
  count += 1;
  const page = packetPage(view, submission, { fonts, art, scripts: SCRIPTS });
  const chance = { salt: new Uint8Array(16).fill(count), nonce: new Uint8Array(12).fill(count) };
  const html = await seal(page, PASSPHRASE, chance, Object.values(SCRIPTS));
  const file = join(folder, `${String(count)}.html`);
  writeFileSync(file, html);
  return { html, address: pathToFileURL(file).href };
}

/** Opens a packet in a browser, from the disk. */
export async function openPacket(
  { address }: Packet,
  where: Browser | BrowserContext,
  size = { width: 1280, height: 900 },
): Promise<Page> {
  const page = await where.newPage('newContext' in where ? { viewport: size } : undefined);
  await page.setViewportSize(size);
  await page.goto(address);
  await unlock(page);
  return page;
}

export async function unlock(page: Page): Promise<void> {
  await page.fill('#passphrase', PASSPHRASE);
  await page.keyboard.press('Enter');
  await page.locator('#card h2').waitFor();
}
