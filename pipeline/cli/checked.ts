import type { Command } from 'commander';

import { recordChecked } from '../submission/index.js';
import { FINE, REFUSED, type Io } from './io.js';
import { contentOf, type Common } from './options.js';
import { plain } from './report-text.js';

interface CheckedFlags extends Common {
  readonly cut: string;
  readonly by: string;
  readonly set?: string;
}

/** `holdback checked`: says that copy was read against a cut. */
export function addChecked(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('checked')
    .description('say that the copy of cards was read against a cut (for the house)')
    .argument(
      '<cards...>',
      'set, subset and card, such as high-water/crew/c017; subset/card or a number where only one card has it',
    )
    .requiredOption('--cut <id>', 'the cut that it was read against')
    .requiredOption('--by <person>', 'who of the house read it')
    .option('--set <id>', 'the set in which the cards are looked for')
    .action(async (cards: string[], _flags: unknown, command: Command) => {
      finish(await runChecked(cards, command.optsWithGlobals<CheckedFlags>(), io));
    });
}

async function runChecked(cards: readonly string[], flags: CheckedFlags, io: Io): Promise<number> {
  const { cut, by, set } = flags;
  const outcome = await recordChecked({
    contentPath: contentOf(flags, io).path,
    now: io.now,
    cards,
    cut,
    by,
    ...(set === undefined ? {} : { set }),
  });
  if (!outcome.done) {
    io.err('refused: nothing was recorded and no file was changed\n');
    for (const line of outcome.why) io.err(`  ${plain(line)}\n`);
    return REFUSED;
  }
  io.out('INTERNAL\n\n');
  for (const line of outcome.lines) io.out(`${plain(line)}\n`);
  io.out(
    outcome.stamped === 0 ? '\nnothing was recorded: there is nothing to do\n' : '\nrecorded\n',
  );
  return FINE;
}
