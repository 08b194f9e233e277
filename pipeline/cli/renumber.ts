import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Command } from 'commander';

import { isOwnFile, renumber, writeChanges, type Renumbering, type Wish } from '../mend/index.js';
import { realDisk } from '../write/index.js';
import { FINE, REFUSED, UsageError, type Io } from './io.js';
import { contentOf, oneOf, type Common } from './options.js';
import { countedFolder, withProgress } from './progress.js';
import { findingsText, plain } from './report-text.js';
import { renumberText } from './renumber-text.js';

const KEYS = ['name', 'story', 'current'] as const;

interface RenumberFlags extends Common {
  readonly set: string;
  readonly move?: string;
  readonly to?: string;
  readonly swap?: string[];
  readonly by?: (typeof KEYS)[number];
  readonly order?: string;
  readonly closeGaps?: boolean;
  readonly write?: boolean;
  readonly afterPress?: boolean;
}

/** `holdback renumber`: numbers moved without touching identities. */
export function addRenumber(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('renumber')
    .description(
      'give the cards of a subset other numbers; shows what that touches (for the house)',
    )
    .argument('<subset>', 'the subset, such as crew')
    .requiredOption('--set <id>', 'the set that it is of')
    .option(
      '--move <card>',
      'this card, such as c017, to the number of --to; those between make room',
    )
    .option('--to <number>', 'where --move takes the card')
    .option('--swap <card...>', 'the numbers of two cards, exchanged')
    .option('--by <order>', 'name, story, or current (with --close-gaps)', oneOf('by', KEYS))
    .option('--order <file>', 'a file that lists every card of the subset, a line each')
    .option('--close-gaps', 'give out the first numbers of the plan, so that no gap stays')
    .option('--write', 'write the numbers; without it they are only shown')
    .option('--after-press', 'change numbers that are printed or public all the same')
    .action(async (subset: string, _flags: unknown, command: Command) => {
      finish(await runRenumber(subset, command.optsWithGlobals<RenumberFlags>(), io));
    });
}

async function runRenumber(subset: string, flags: RenumberFlags, io: Io): Promise<number> {
  const wish = wishOf(flags, io);
  const { path, folder } = contentOf(flags, io);
  const result = await withProgress(io, (progress, whole) =>
    whole(() =>
      renumber({
        folder: countedFolder(folder, progress),
        now: io.now,
        set: flags.set,
        subset,
        wish,
        closeGaps: flags.closeGaps === true,
        mayWrite: (file) => isOwnFile(realDisk, path, file),
        progress,
      }),
    ),
  );
  if (!result.ok) return refuse(result, io);
  io.out(renumberText(result, `${flags.set}/${subset}`));
  if (flags.write !== true) return sayDry(result, io);
  if (result.late.length > 0 && flags.afterPress !== true) {
    io.err(`refused: nothing was written. ${LATE}\n`);
    return REFUSED;
  }
  const written = await writeChanges({ contentPath: path, now: io.now }, result.files);
  if (!written.done) {
    for (const line of written.why) io.err(`${plain(line)}\n`);
    return REFUSED;
  }
  io.out('\nwritten\n');
  return FINE;
}

const LATE =
  'Numbers may change until press; if these must change all the same, say so with --after-press';

function sayDry({ moved, late }: Extract<Renumbering, { ok: true }>, io: Io): number {
  if (moved.length === 0) return FINE;
  const more = late.length > 0 ? ' --after-press' : '';
  io.out(`\nnothing is written: add --write${more} to write it\n`);
  return FINE;
}

function refuse({ why, worse }: Extract<Renumbering, { ok: false }>, io: Io): number {
  io.err('refused: nothing was written\n');
  for (const line of why) io.err(`  ${plain(line)}\n`);
  io.err(findingsText(worse));
  return REFUSED;
}

/** @throws UsageError unless exactly one way is asked for, with what it needs. */
function wishOf({ move, to, swap, by, order }: RenumberFlags, io: Io): Wish {
  const ways = [move, swap, by, order].filter((way) => way !== undefined);
  if (ways.length !== 1) {
    throw new UsageError(
      'say how: one of --move CARD --to NUMBER, --swap CARD CARD, --by, --order FILE',
    );
  }
  if ((move === undefined) !== (to === undefined)) {
    throw new UsageError('--move CARD and --to NUMBER belong together');
  }
  if (move !== undefined && to !== undefined) return { kind: 'move', card: move, to };
  if (by !== undefined) return { kind: 'by', key: by };
  if (order !== undefined) return { kind: 'order', lines: linesOf(order, io) };
  const [first, second, ...more] = swap ?? [];
  if (first === undefined || second === undefined || more.length > 0) {
    throw new UsageError('--swap takes two cards');
  }
  return { kind: 'swap', cards: [first, second] };
}

/** @throws UsageError for a file that cannot be read. */
function linesOf(file: string, io: Io): readonly string[] {
  try {
    return readFileSync(resolve(io.cwd, file), 'utf8')
      .replace(/^\ufeff/, '')
      .split(/\r\n|\n|\r/);
  } catch {
    throw new UsageError(`${file} cannot be read: name a file that lists the cards`);
  }
}
