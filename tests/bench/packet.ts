import { generateKeyPairSync } from 'node:crypto';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

import type { Page } from 'playwright-core';

import { view, type View } from '../../pipeline/gate/index.js';
import { packetPage, seal, type Submission } from '../../pipeline/out/packet/index.js';
import { diskFolder, readProperty } from '../../pipeline/read/index.js';
import { select } from '../../pipeline/select/index.js';
import { DEMO_NOW } from '../demo/day.js';
import { packetScripts } from '../setup/bundle.mjs';
import { openBrowser } from '../site/support.js';
import { median, type Result } from './measure.js';

const PASSPHRASE = 'THEBE-NCHPA-SSPHR-ASE00';
const ROUNDS = 7;

/** Octets in a megabyte. */
const MEGABYTE = 1e6;

/** A packet of all cards without art: its size in MB, and how long it takes to open. */
export async function benchPacket(
  content: string,
): Promise<{ megabytes: number; opening: Result }> {
  const html = await sealedPacket(content);
  const folder = mkdtempSync(join(tmpdir(), 'packet-'));
  const file = join(folder, 'packet.html');
  writeFileSync(file, html);
  const browser = await openBrowser();
  try {
    const opens: number[] = [];
    const derivations: number[] = [];
    for (let round = 0; round < ROUNDS; round++) {
      const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
      await page.goto(pathToFileURL(file).href);
      derivations.push(await timedBy(page, DERIVES));
      opens.push(await timedBy(page, OPENS));
      await page.close();
    }
    return {
      megabytes: Buffer.byteLength(html) / MEGABYTE,
      opening: {
        name: 'packet of 200 cards, until its first is shown',
        milliseconds: median(opens),
        floor: 'key derivation alone',
        floorMilliseconds: median(derivations),
        goal: 3,
      },
    };
  } finally {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

async function sealedPacket(content: string): Promise<string> {
  const { content: read, fonts } = readProperty(diskFolder(content));
  const released = select(read);
  const person = read.people?.value.people[0];
  const seen = released && person && view(released, { kind: 'person', person, at: DEMO_NOW });
  if (!seen) throw new Error('the bench property cannot be released');
  const scripts = await packetScripts();
  const page = packetPage(seen, submissionOf(seen), { fonts, art: () => null, scripts });
  const chance = { salt: new Uint8Array(16).fill(1), nonce: new Uint8Array(12).fill(1) };
  return seal(page, PASSPHRASE, chance, Object.values(scripts));
}

/** All cards of a view, each part of them decided on before and changed since. */
function submissionOf(seen: View): Submission {
  const { privateKey } = generateKeyPairSync('ed25519');
  const keys = seen.sets.flatMap((set) =>
    set.subsets.flatMap(({ cards }) =>
      cards.flatMap(({ identity }) => (identity === null ? [] : [`${set.id}/${identity}`])),
    ),
  );
  const last = { verdict: 'revise and resubmit', isCurrent: false } as const;
  const parts = (['copy', 'image', 'layout', 'web'] as const).map((part, at) => {
    return { part, digest: String(at).repeat(64), last };
  });
  return {
    id: 'jonah-2',
    property: 'bench',
    round: 2,
    person: { id: 'jonah', name: 'Jonah Prewett' },
    made: DEMO_NOW,
    expires: Date.parse('2100-01-01T00:00:00Z'),
    privateKey: privateKey.export({ type: 'pkcs8', format: 'der' }).toString('base64url'),
    texts: keys.map((key, at) => ({
      key,
      parts,
      was: [{ field: 'bio', text: `A lamp tender of lock ${String(at)} climbs, and counts.` }],
      earlier: [],
      findings: [],
    })),
  };
}

/** Milliseconds that a script in the page says it took. */
async function timedBy(page: Page, script: string): Promise<number> {
  const milliseconds: unknown = await page.evaluate(script);
  if (typeof milliseconds === 'number') return milliseconds;
  throw new Error('the page has told no time');
}

/** The key by PBKDF2-HMAC-SHA-256, with as many rounds as the page says, and nothing else. */
const DERIVES = `(async () => {
  const rounds = Number(document.getElementById('sealed').dataset.rounds);
  const letters = new TextEncoder().encode('${PASSPHRASE.replaceAll('-', '')}');
  const from = performance.now();
  const base = await crypto.subtle.importKey('raw', letters, 'PBKDF2', false, ['deriveKey']);
  const how = { name: 'PBKDF2', hash: 'SHA-256', salt: new Uint8Array(16), iterations: rounds };
  await crypto.subtle.deriveKey(how, base, { name: 'AES-GCM', length: 256 }, false, ['decrypt']);
  return performance.now() - from;
})()`;

/** From the passphrase's being sent until a frame is drawn in which the first heading stands. */
const OPENS = `new Promise((done) => {
  document.getElementById('passphrase').value = '${PASSPHRASE}';
  const from = performance.now();
  const look = () => {
    const heading = document.querySelector('#card h2');
    if (heading && heading.getBoundingClientRect().height > 0) done(performance.now() - from);
    else requestAnimationFrame(look);
  };
  document.getElementById('open').requestSubmit();
  look();
})`;
