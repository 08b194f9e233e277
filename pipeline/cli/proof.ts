import { resolve } from 'node:path';
import type { Command } from 'commander';

import { view } from '../gate/index.js';
import { identityOf, undividedNames } from '../model/index.js';
import type { ProofKind, ProofPaper } from '../out/proof/index.js';
import {
  approvalsOf,
  rasterise,
  readArt,
  readProperty,
  readReview,
  type Folder,
} from '../read/index.js';
import { approvedForPrint } from '../release/index.js';
import { copyVersion } from '../review/index.js';
import { select, type Released } from '../select/index.js';
import { realDisk, writeWhole } from '../write/index.js';
import { audienceOf } from './audience.js';
import { chromeFaces } from './chrome-faces.js';
import { isFinal } from './final-proof.js';
import { FINE, REFUSED, UsageError, type Io } from './io.js';
import { contentOf, oneOf, type Common } from './options.js';
import { countedFolder, withProgress, type Progress, type Working } from './progress.js';

interface ProofFlags extends Common {
  readonly out?: string;
  readonly paper: ProofPaper;
  readonly kind: ProofKind;
  readonly set?: string;
  readonly subset?: string;
  readonly for?: string;
  readonly final?: boolean;
}

/** Width in pixels of art on a proof: 300 dpi on a card that is 5 inches wide with its bleed. */
const ART_WIDTH = 1575;

/** The kinds that show art. */
const PICTURED: readonly ProofKind[] = ['annotated', 'nine-up'];

/** `holdback proof`: sheets of cards as they will print. */
export function addProof(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('proof')
    .description('PDF sheets of the cards as they will print')
    .requiredOption('--out <file>', 'the PDF to write')
    .option('--paper <paper>', 'a4 or letter', oneOf<ProofPaper>('paper', ['a4', 'letter']), 'a4')
    .option(
      '--kind <kind>',
      'annotated, nine-up, deck or overset',
      oneOf<ProofKind>('kind', ['annotated', 'nine-up', 'deck', 'overset']),
      'annotated',
    )
    .option('--set <id>', 'this set alone')
    .option('--subset <id>', 'this subset alone')
    .option('--for <person>', 'cut to what this person may see')
    .option('--final', 'only if everything that prints is approved')
    .action(async (_flags: unknown, command: Command) => {
      const flags = command.optsWithGlobals<ProofFlags>();
      finish(await withProgress(io, (progress, whole) => runProof(flags, io, { progress, whole })));
    });
}

async function runProof(flags: ProofFlags, io: Io, { progress, whole }: Working): Promise<number> {
  if (flags.out === undefined) throw new UsageError('--out FILE is missing');
  const { folder } = contentOf(flags, io);
  const { content, fonts } = await whole(() => readProperty(countedFolder(folder, progress)));
  const released = await whole(() => select(content));
  if (!released) {
    io.err('some files cannot be read, so there is no proof: run `holdback check` first\n');
    return REFUSED;
  }
  if (flags.final === true && !isFinal({ ...flags, folder, content, fonts, released }, io)) {
    return REFUSED;
  }
  if (flags.kind === 'overset' && flags.for !== undefined) {
    throw new UsageError('the overset sheet is for the house: it has no --for');
  }
  const seen = await whole(() => view(released, audienceOf(flags.for, released, io)));
  if (!seen) throw new UsageError('nothing of this property can be seen yet');
  const { proofArt, proofSheets } = await import('../out/proof/index.js');
  const approvalsNow = () => approvalsOf(folder, content, fonts, readReview(folder));
  const which = {
    ...(flags.set === undefined ? {} : { set: flags.set }),
    ...(flags.subset === undefined ? {} : { subset: flags.subset }),
  };
  const sources = PICTURED.includes(flags.kind) ? proofArt(seen, which) : [];
  const art = await artFor(sources, folder, progress);
  progress('setting sheets');
  const proof = await whole(() =>
    proofSheets(seen, {
      kind: flags.kind,
      paper: flags.paper,
      fonts,
      chrome: chromeFaces(),
      art: (source) => art.get(source) ?? null,
      made: io.now,
      versions: versionsOf(released),
      ...(flags.kind === 'annotated'
        ? { approved: approvedForPrint({ released, approvals: approvalsNow() }) }
        : {}),
      undivided: undividedNames(content.names?.value ?? null),
      ...which,
    }),
  );
  const { pdf } = proof;
  progress('writing');
  writeWhole(realDisk, resolve(io.cwd, flags.out), pdf);
  io.out(`${flags.kind} proof written to ${flags.out}\n`);
  return FINE;
}

/** The version of each card's copy, by `set/subset/id`. */
function versionsOf({ sets }: Released): ReadonlyMap<string, string> {
  const cards = sets.flatMap((set) => set.cards);
  return new Map(cards.map((card) => [`${card.set}/${identityOf(card)}`, copyVersion(card)]));
}

async function artFor(
  sources: readonly string[],
  folder: Folder,
  progress: Progress,
): Promise<ReadonlyMap<string, Uint8Array>> {
  const drawn = new Map<string, Uint8Array>();
  for (const [at, source] of sources.entries()) {
    progress(`drawing pictures: ${String(at + 1)} of ${String(sources.length)}`);
    const { bytes } = await rasterise(readArt(folder, source), ART_WIDTH, 'jpeg');
    drawn.set(source, bytes);
  }
  return drawn;
}
