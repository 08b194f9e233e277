import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Command } from 'commander';

import { LedgerEntry } from '../../schema/index.js';
import { readReview, validate, type Review } from '../read/index.js';
import { headOf, historyOf, ledgerText, merged, readLedger } from '../review/index.js';
import { withdrawPacket } from '../submission/index.js';
import { realDisk, takeLock, thisProcess, writeWhole } from '../write/index.js';
import { FINE, REFUSED, UsageError, type Io } from './io.js';
import { contentOf, type Common } from './options.js';
import { count, plain } from './report-text.js';

/** `holdback ledger`: verify the approval history, show a card's, join two branches of it. */
export function addLedger(program: Command, io: Io, finish: (code: number) => void): void {
  const ledger = program
    .command('ledger')
    .description('verify the ledger of submissions and decisions (for the house)')
    .action((_flags: unknown, command: Command) => {
      finish(verify(command.optsWithGlobals<Common>(), io));
    });
  ledger
    .command('show')
    .description('the approval history of a card')
    .argument('<card>', 'set, subset and card, such as high-water/crew/c017')
    .action((card: string, _flags: unknown, command: Command) => {
      finish(show(card, command.optsWithGlobals<Common>(), io));
    });
  ledger
    .command('merge')
    .description('add what another branch of the ledger has more')
    .argument('<file>', 'the other ledger.jsonl')
    .action((file: string, _flags: unknown, command: Command) => {
      finish(merge(file, command.optsWithGlobals<Common>(), io));
    });
  ledger
    .command('withdraw')
    .description('take no more decisions on a packet')
    .argument('<packet>', 'the packet, such as amara-2')
    .requiredOption('--by <person>', 'who of the house withdraws it')
    .requiredOption('--why <text>', 'why')
    .action(async (packet: string, _flags: unknown, command: Command) => {
      finish(await withdraw(packet, command.optsWithGlobals<WithdrawFlags>(), io));
    });
}

interface WithdrawFlags extends Common {
  readonly by: string;
  readonly why: string;
}

async function withdraw(packet: string, flags: WithdrawFlags, io: Io): Promise<number> {
  const { path } = contentOf(flags, io);
  const { by, why } = flags;
  const outcome = await withdrawPacket({ contentPath: path, now: io.now, packet, by, why });
  if (outcome.done) {
    io.out(`${plain(packet)} is withdrawn: no more decisions on it are taken\n`);
    return FINE;
  }
  for (const line of outcome.why) io.err(`${plain(line)}\n`);
  return REFUSED;
}

/** The review folder; null if something in it is wrong, which is said. */
function reviewOf(flags: Common, io: Io): Review | null {
  const review = readReview(contentOf(flags, io).folder);
  if (review.faults.length === 0) return review;
  for (const { file, line, message } of review.faults) {
    io.err(`${plain(file)}${line === null ? '' : `:${String(line)}`}  ${plain(message)}\n`);
  }
  return null;
}

function verify(flags: Common, io: Io): number {
  const review = reviewOf(flags, io);
  if (!review) return REFUSED;
  const { ledger, packets } = review;
  const entries = ledger.entries.length;
  io.out(
    `${count(entries, 'entry', 'entries')}, ${count(packets.size, 'packet')}: the chain is whole\n`,
  );
  if (entries > 0) io.out(`its head is ${headOf(ledger)}\n`);
  return FINE;
}

function show(card: string, flags: Common, io: Io): number {
  const review = reviewOf(flags, io);
  if (!review) return REFUSED;
  const packetsOf = new Map(
    [...review.packets].map(([id, { decides }]) => [
      id,
      decides.filter((part) => part.card === card).map(({ part }) => part),
    ]),
  );
  const lines = historyOf(review.ledger, card, packetsOf);
  io.out(`INTERNAL\n\nApproval history of ${plain(card)}\n`);
  if (lines.length === 0) io.out('  nothing yet\n');
  for (const { at, what, who, more } of lines) {
    io.out(`  ${at}  ${plain(who)}  ${plain(what)}\n`);
    for (const line of more) io.out(`    ${plain(line)}\n`);
  }
  return FINE;
}

function merge(file: string, flags: Common, io: Io): number {
  const { path } = contentOf(flags, io);
  const lock = takeLock(realDisk, join(path, 'review', 'ledger.jsonl'), thisProcess, io.now);
  if (!lock.free) {
    io.err(`the ledger is being written by somebody else; if not, remove ${lock.path}\n`);
    return REFUSED;
  }
  try {
    return mergeAlone(file, path, flags, io);
  } finally {
    lock.release();
  }
}

function mergeAlone(file: string, path: string, flags: Common, io: Io): number {
  const review = reviewOf(flags, io);
  if (!review) return REFUSED;
  const other = readLedger(textOf(file, io), (value) => {
    const valid = validate(LedgerEntry, value);
    return valid.ok ? valid.value : { why: 'this is no entry of a ledger' };
  });
  if (!other.ok) {
    for (const { line, message } of other.faults) {
      io.err(`${plain(file)}:${String(line)}  ${plain(message)}\n`);
    }
    return REFUSED;
  }
  const both = merged(review.ledger, other.ledger);
  const added = both.entries.length - review.ledger.entries.length;
  if (added > 0) {
    const text = new TextEncoder().encode(ledgerText(both));
    writeWhole(realDisk, join(path, 'review', 'ledger.jsonl'), text);
  }
  io.out(`${count(added, 'entry', 'entries')} added\n`);
  return FINE;
}

function textOf(file: string, io: Io): string {
  try {
    return readFileSync(resolve(io.cwd, file), 'utf8');
  } catch {
    throw new UsageError(`${file} cannot be read: name the other ledger.jsonl`);
  }
}
