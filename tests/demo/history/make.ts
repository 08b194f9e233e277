import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createHash } from 'node:crypto';
import { dirname, join } from 'node:path';

import type { Io } from '../../../pipeline/cli/index.js';
import { instantOf } from '../../../pipeline/model/index.js';
import { openBrowser } from '../../site/support.js';
import { answerPacket } from './browse.js';
import { RELEASES, ROUNDS, type Round, type Sent } from './rounds.js';

/** The built command: a packet carries scripts that are made when it is built. */
type Main = typeof import('../../../pipeline/cli/index.js').main;

/** What happened, or a part of it. */
export interface History {
  readonly rounds: readonly Round[];
  readonly releases: readonly string[];
}

/** The passphrase of every packet of the demo: there is nothing in them that is not in the clone. */
const PASSPHRASE = 'THEFE-RRYWR-IGHTS-DEM00';

const SEALED = ['--passphrase-file', 'passphrase'] as const;

/**
 * Makes the demo's approval history: each round is sent as a packet, answered in a browser by typing,
 * and recorded. The same content gives the same history: its clock is stated and its keys are seeded.
 * @param content the content folder as it stands today; it is not changed.
 * @param place an empty folder to work in.
 * @returns the folder of `review/` that was made.
 */
export async function makeHistory(
  main: Main,
  content: string,
  place: string,
  { rounds, releases }: History = { rounds: ROUNDS, releases: RELEASES },
): Promise<string> {
  const work = join(place, 'content');
  const browser = await openBrowser();
  try {
    rmSync(place, { recursive: true, force: true });
    mkdirSync(place, { recursive: true });
    writeFileSync(join(place, 'passphrase'), PASSPHRASE);
    for (const round of rounds) {
      layOut(content, work, round);
      const fileOf = ({ to }: Sent, ending: string): string => join(place, `${to}.${ending}`);
      for (const sent of round.packets) {
        const key = ['--for', sent.to, '--out', fileOf(sent, 'html'), ...SEALED];
        await run(main, ['packet', ...key], place, sent.sent);
      }
      for (const sent of [...round.packets].sort((a, b) => instantOf(a.back) - instantOf(b.back))) {
        const [file, saveTo] = [fileOf(sent, 'html'), fileOf(sent, 'json')];
        await answerPacket(browser, sent, { file, passphrase: PASSPHRASE, saveTo });
        await run(main, ['record', saveTo], place, sent.back);
      }
    }
    for (const at of releases) {
      await run(main, ['publish', '--out', join(place, 'site')], place, at);
    }
    return join(work, 'review');
  } finally {
    await browser.close();
  }
}

/** The content as it was when a round began; what was recorded before stays. */
function layOut(content: string, work: string, { earlier }: Round): void {
  cpSync(content, work, {
    recursive: true,
    filter: (path) => !path.startsWith(join(content, 'review')),
  });
  for (const { file, today, then } of earlier) {
    const path = join(work, file);
    const text = readFileSync(path, 'utf8');
    if (!text.includes(today)) throw new Error(`${file} has no "${today}" any more`);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(
      path,
      text.replace(today, () => then),
    );
  }
}

async function run(main: Main, argv: readonly string[], cwd: string, at: string): Promise<void> {
  let said = '';
  const io: Io = {
    now: instantOf(at),
    cwd,
    env: {},
    elapsed: () => performance.now(),
    random: seeded(`${argv[0] ?? ''} ${at}`),
    terminal: false,
    out: (text) => void (said += text),
    err: (text) => void (said += text),
  };
  const code = await main(argv, io);
  if (code !== 0) throw new Error(`holdback ${argv.join(' ')}: exit ${String(code)}\n${said}`);
}

/** Octets by SHA-256 of a seed and a counter: repeatable, and good for nothing but a demo. */
function seeded(seed: string): Io['random'] {
  let asked = 0;
  return (octets) => {
    const made = new Uint8Array(octets);
    for (let at = 0; at < octets; at += 32) {
      asked += 1;
      const block = createHash('sha256')
        .update(`${seed} ${String(asked)}`)
        .digest();
      made.set(block.subarray(0, Math.min(32, octets - at)), at);
    }
    return made;
  };
}
