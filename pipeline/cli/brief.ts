import { resolve } from 'node:path';
import type { Command } from 'commander';

import { view } from '../gate/index.js';
import { briefOf, briefPage, briefText } from '../out/brief/index.js';
import { readProperty } from '../read/index.js';
import { briefFor } from '../release/index.js';
import { select } from '../select/index.js';
import { realDisk, writeWhole } from '../write/index.js';
import { personOf } from './audience.js';
import { FINE, REFUSED, UsageError, type Io } from './io.js';
import { contentOf, instantFrom, type Common } from './options.js';
import { countedFolder, withProgress, type Working } from './progress.js';
import { sealingFor, type Sealing } from './sealing.js';

interface BriefFlags extends Common {
  readonly at?: string;
  readonly out?: string;
  readonly preview?: boolean;
  readonly passphraseFile?: string;
  readonly for?: string;
}

const STILL_TO_COME =
  'that instant is still to come, and a brief for it tells what is held until then: ' +
  '--preview makes it as a sealed page, with --out FILE\n';

/** `holdback brief`: what may be said on camera. */
export function addBrief(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('brief')
    .description('what may be said on camera: counts in words, names, the holding sentence')
    .option('--at <instant>', 'when it is broadcast; now, if it is not said')
    .option('--for <person>', 'adds what they must not raise; the page is sealed')
    .option('--out <file>', 'a page for the host; without it, text')
    .option('--preview', 'allow an instant to come; the page is sealed and says so')
    .option('--passphrase-file <file>', 'the passphrase of a sealed page; without it, a new one')
    .action(async (_flags: unknown, command: Command) => {
      const flags = command.optsWithGlobals<BriefFlags>();
      finish(await withProgress(io, (progress, whole) => runBrief(flags, io, { progress, whole })));
    });
}

async function runBrief(flags: BriefFlags, io: Io, { progress, whole }: Working): Promise<number> {
  const at = instantFrom(flags.at, io);
  const isToCome = at > io.now;
  if (flags.for !== undefined && flags.out === undefined) {
    throw new UsageError('a brief for a person is a sealed page: --out FILE is missing');
  }
  if (isToCome && (flags.preview !== true || flags.out === undefined)) {
    io.err(STILL_TO_COME);
    return REFUSED;
  }
  const sealing = sealingOf(flags, isToCome || flags.for !== undefined, io);
  const { folder } = contentOf(flags, io);
  const released = await whole(() => select(readProperty(countedFolder(folder, progress)).content));
  if (!released) {
    io.err('some files cannot be read: run `holdback check` first\n');
    return REFUSED;
  }
  if (flags.for !== undefined && flags.out !== undefined) {
    const briefing = briefFor(released, personOf(flags.for, released), { at, now: io.now });
    if (!briefing.ok) return refused(WHY_NOT[briefing.why], io);
    await writePage(briefing.page, flags.out, sealing, io);
    return FINE;
  }
  const seen = view(released, { kind: 'public', at });
  if (!seen) return refused(WHY_NOT['nothing public'], io);
  const brief = briefOf(seen, isToCome);
  if (flags.out === undefined) io.out(briefText(brief));
  else await writePage(briefPage(brief), flags.out, sealing, io);
  return FINE;
}

/** Why there is no brief, and what to do. It names nothing that is held. */
const WHY_NOT = {
  'nothing public': 'nothing of this property is public by then\n',
  'not cleared by then':
    'something lifts until then for which they are not cleared, so that what may be said then would ' +
    'tell them of it today: make the brief when it has lifted, or for an instant before\n',
  'sees some cards':
    'they are sent some cards alone, and a brief for an instant to come would tell of others: ' +
    'make it when that instant has come\n',
} as const;

function refused(why: string, io: Io): number {
  io.err(why);
  return REFUSED;
}

function sealingOf({ passphraseFile }: BriefFlags, isSealed: boolean, io: Io): Sealing | null {
  if (isSealed) return sealingFor(passphraseFile, io);
  if (passphraseFile === undefined) return null;
  throw new UsageError(
    'only a brief for an instant to come or for a person is sealed: leave out --passphrase-file',
  );
}

async function writePage(
  page: string,
  out: string,
  sealing: Sealing | null,
  io: Io,
): Promise<void> {
  const text = sealing ? await sealing.seal(page) : page;
  writeWhole(realDisk, resolve(io.cwd, out), new TextEncoder().encode(text));
  io.out(`the brief is in ${out}\n`);
  if (sealing) io.err(sealing.said);
}
