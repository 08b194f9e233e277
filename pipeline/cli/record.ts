import { readFileSync, statSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Command } from 'commander';

import {
  LARGEST_ANSWER,
  recordAnswer,
  recordByHand,
  type Recorded,
  type Refused,
} from '../submission/index.js';
import { FINE, REFUSED, UsageError, type Io } from './io.js';
import { contentOf, type Common } from './options.js';
import { plain } from './report-text.js';

interface RecordFlags extends Common {
  readonly dryRun?: boolean;
  readonly byHand?: string;
  readonly evidence?: string;
  readonly confirmedBy?: string;
  readonly by?: string;
  readonly received?: string;
}

/** `holdback record`: a decision file into the ledger. */
export function addRecord(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('record')
    .description('put the decisions of a reviewer into the ledger (for the house)')
    .argument('<file>', 'the decision file; with --by-hand, YAML with `decisions`')
    .option('--dry-run', 'show what it would do, and do nothing')
    .option('--by-hand <person>', 'the decisions came by mail from this person')
    .option('--evidence <file>', 'the mail: its digest is kept')
    .option('--confirmed-by <person>', 'who of the house confirms what the mail says')
    .option('--by <person>', 'who of the house enters it')
    .option('--received <day>', 'when it came, such as 2027-01-12')
    .action(async (file: string, _flags: unknown, command: Command) => {
      finish(await runRecord(file, command.optsWithGlobals<RecordFlags>(), io));
    });
}

async function runRecord(file: string, flags: RecordFlags, io: Io): Promise<number> {
  const { path } = contentOf(flags, io);
  const place = { contentPath: path, now: io.now, dryRun: flags.dryRun === true };
  const octets = octetsOf(file, io);
  const outcome =
    flags.byHand === undefined
      ? await recordAnswer({ ...place, ...alone(flags), octets })
      : await recordByHand({ ...place, ...handOf(flags, flags.byHand, io), file, octets });
  return say(outcome, flags, io);
}

function say(outcome: Recorded | Refused, flags: RecordFlags, io: Io): number {
  if (!outcome.done) {
    io.err('refused: nothing was recorded and no file was changed\n');
    for (const line of outcome.why) io.err(`  ${plain(line)}\n`);
    return REFUSED;
  }
  io.out('INTERNAL\n\n');
  for (const line of outcome.lines) io.out(`${plain(line)}\n`);
  io.out(flags.dryRun === true ? '\nnothing was recorded: --dry-run\n' : '\nrecorded\n');
  return FINE;
}

/** Options that mean nothing without --by-hand are no slip to be passed over. */
function alone({ evidence, confirmedBy, by, received }: RecordFlags): object {
  if ([evidence, confirmedBy, by, received].every((flag) => flag === undefined)) return {};
  throw new UsageError('--evidence, --confirmed-by, --by and --received belong to --by-hand');
}

function handOf(flags: RecordFlags, person: string, io: Io) {
  const { evidence, confirmedBy, by, received } = flags;
  if (
    evidence === undefined ||
    confirmedBy === undefined ||
    by === undefined ||
    received === undefined
  ) {
    throw new UsageError(
      '--by-hand needs --evidence FILE, --confirmed-by PERSON, --by PERSON and --received DAY',
    );
  }
  return { person, confirmedBy, by, received, evidence: octetsOf(evidence, io) };
}

/** @throws UsageError for a file that cannot be read, or is larger than any that is taken. */
function octetsOf(file: string, io: Io): Uint8Array {
  const path = resolve(io.cwd, file);
  try {
    if (statSync(path).size <= 10 * LARGEST_ANSWER) return readFileSync(path);
  } catch {
    throw new UsageError(`${file} cannot be read: name a file that is there`);
  }
  throw new UsageError(`${file} is far too large to be a decision file or a mail`);
}
