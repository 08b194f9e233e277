import { resolve } from 'node:path';
import type { Command } from 'commander';

import type { PacksReport, PacksSet } from '../../schema/index.js';
import { view } from '../gate/index.js';
import { readProperty } from '../read/index.js';
import { select } from '../select/index.js';
import { realDisk, writeWhole } from '../write/index.js';
import { FINE, REFUSED, UsageError, type Io } from './io.js';
import { checkSet, contentOf, isDiscreet, oneOf, type Common } from './options.js';
import { packsOf } from './packs-figures.js';
import { tellPublic } from './packs-public.js';
import { countedFolder, withProgress, type Working } from './progress.js';

const FORMATS = ['text', 'json'] as const;

/** What `packs` is asked. */
export interface PacksFlags extends Common {
  readonly set?: string;
  readonly public?: boolean;
  readonly packout?: string;
  readonly picture?: string;
  readonly format: (typeof FORMATS)[number];
  readonly at?: string;
  readonly preview?: boolean;
  readonly discreet?: boolean;
}

/** `holdback packs`: print runs, pack-out, odds, and what it takes to complete a set. */
export function addPacks(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('packs')
    .description('print runs, pack-out, odds and completion (for the house); or odds to print')
    .option('--set <id>', 'this set alone')
    .option('--public', 'the odds that may be said, as text for a wrapper')
    .option('--at <instant>', 'with --public: as of that instant; now, if it is not said')
    .option('--preview', 'with --public: allow an instant to come, and say so on it')
    .option('--packout <file>', 'write the list for the packing house (CSV)')
    .option('--picture <file>', 'write what is packed as a picture (SVG)')
    .option('--format <format>', 'text or json', oneOf('format', FORMATS), 'text')
    .option('--discreet', 'tell only what is public now (default where CI is set)')
    .option('--no-discreet', 'tell everything')
    .action(async (_flags: unknown, command: Command) => {
      const flags = command.optsWithGlobals<PacksFlags>();
      checkFlags(flags);
      const run = (working: Working): Promise<number> => runPacks(flags, io, working);
      finish(
        await withProgress(io, (progress, whole) => run({ progress, whole }), {
          discreet: flags.discreet,
        }),
      );
    });
}

function checkFlags(flags: PacksFlags): void {
  if (flags.public === true) {
    if (flags.packout === undefined && flags.picture === undefined) return;
    throw new UsageError('--packout and --picture are for the house: leave out --public');
  }
  if (flags.at !== undefined || flags.preview === true) {
    throw new UsageError('--at and --preview go with --public: the house sees everything');
  }
}

/** What is said where others read the log: every figure of the house tells something. */
const NO_PACKS_HERE =
  'what is packed is not public: run it in private, or with --no-discreet; --public tells what anybody may know\n';

async function runPacks(flags: PacksFlags, io: Io, { progress, whole }: Working): Promise<number> {
  const discreet = isDiscreet(flags.discreet, io);
  if (discreet && (flags.public !== true || flags.preview === true)) {
    io.err(NO_PACKS_HERE);
    return REFUSED;
  }
  const { folder } = contentOf(flags, io);
  const { content, fonts } = await whole(() => readProperty(countedFolder(folder, progress)));
  const released = await whole(() => select(content));
  if (!released) {
    io.err('some files cannot be read: run `holdback check` first\n');
    return REFUSED;
  }
  if (flags.public === true) return tellPublic(flags, released, io);
  checkSet(flags.set, released.sets);
  const report = await whole(() =>
    packsOf(
      { content, fonts, highest: view(released, { kind: 'house' })?.highest ?? null },
      flags.set,
    ),
  );
  if (report.sets.length === 0) {
    io.err('no plan says what is in its packs: `contents` of a product says it\n');
    return FINE;
  }
  const done = await writeFiles(flags, report, io);
  const { houseText } = await import('../out/packs/index.js');
  io.out(flags.format === 'json' ? `${JSON.stringify(report, null, 2)}\n` : houseText(report));
  return done && report.sets.every(isPossible) ? FINE : REFUSED;
}

function isPossible({ findings }: PacksSet): boolean {
  return findings.every(({ severity }) => severity !== 'error');
}

/** Whether all that was asked for is written: a list for packers only of what can be packed. */
async function writeFiles(
  { packout, picture }: PacksFlags,
  { internal, sets }: PacksReport,
  io: Io,
): Promise<boolean> {
  if (packout === undefined && picture === undefined) return true;
  const [set, other] = sets;
  if (set === undefined || other !== undefined) {
    throw new UsageError('a list or a picture is of one set: say which with --set ID');
  }
  const { packingSheet, packsPicture } = await import('../out/packs/index.js');
  const write = (file: string, text: string): void => {
    writeWhole(realDisk, resolve(io.cwd, file), new TextEncoder().encode(text));
    io.err(`wrote ${file}\n`);
  };
  if (picture !== undefined) write(picture, packsPicture(set, internal));
  if (packout === undefined) return true;
  if (!isPossible(set) || set.products.length === 0) {
    io.err('there is no list for the packing house until the figures add up\n');
    return false;
  }
  write(packout, packingSheet(set, internal));
  return true;
}
