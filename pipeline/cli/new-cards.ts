import type { Command } from 'commander';

import { newCards, writeChanges } from '../mend/index.js';
import { FINE, REFUSED, type Io } from './io.js';
import { contentOf, type Common } from './options.js';
import { count, plain } from './report-text.js';

interface NewCardsFlags extends Common {
  readonly set: string;
  readonly numbers?: string;
  readonly writer?: string;
  readonly dryRun?: boolean;
}

/** `holdback new cards`: a file for each number of the plan that has none. */
export function addNewCards(group: Command, io: Io, finish: (code: number) => void): void {
  group
    .command('cards')
    .description('stubs for the numbers of a subset that have no card')
    .argument('<subset>', 'the subset, such as crew')
    .requiredOption('--set <id>', 'the set that it is of')
    .option('--numbers <list>', 'these numbers alone, such as 5-12,15')
    .option('--writer <person>', 'who writes them')
    .option('--dry-run', 'show what would be written, and write nothing')
    .action(async (subset: string, _flags: unknown, command: Command) => {
      finish(await runNewCards(subset, command.optsWithGlobals<NewCardsFlags>(), io));
    });
}

async function runNewCards(subset: string, flags: NewCardsFlags, io: Io): Promise<number> {
  const { path, folder } = contentOf(flags, io);
  const { set, numbers, writer } = flags;
  const made = newCards({
    folder,
    set,
    subset,
    ...(numbers === undefined ? {} : { numbers }),
    ...(writer === undefined ? {} : { writer }),
  });
  if (!made.ok) return refuse(made.why, io);
  if (made.stubs.length === 0) {
    io.out(`each of these numbers of ${plain(subset)} has a card\n`);
    return FINE;
  }
  if (flags.dryRun !== true) {
    const written = await writeChanges({ contentPath: path, now: io.now }, made.files);
    if (!written.done) return refuse(written.why, io);
  }
  for (const { file, number } of made.stubs) io.out(`${plain(file)}  ${plain(number)}\n`);
  const cards = count(made.stubs.length, 'card');
  io.out(
    flags.dryRun === true ? `${cards}; nothing is written: --dry-run\n` : `${cards} written\n`,
  );
  return FINE;
}

function refuse(why: readonly string[], io: Io): number {
  io.err('refused: nothing was written\n');
  for (const line of why) io.err(`  ${plain(line)}\n`);
  return REFUSED;
}
