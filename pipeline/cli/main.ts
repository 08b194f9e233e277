import { Command, CommanderError } from 'commander';

import { MergeError, SheetError } from '../out/sheets/index.js';
import { SiteError } from '../out/site/index.js';
import { ArtError } from '../read/index.js';
import { TableError } from '../sheet/index.js';
import { PlaceError } from '../write/index.js';
import { addAudit } from './audit.js';
import { addBrief } from './brief.js';
import { addCheck } from './check.js';
import { addChecked } from './checked.js';
import { addDesk } from './desk.js';
import { addExplain } from './explain.js';
import { addExport } from './export.js';
import { Cancelled } from './interrupts.js';
import { COULD_NOT_RUN, FINE, REFUSED, type Io } from './io.js';
import { addImport } from './import.js';
import { addLedger } from './ledger.js';
import { addLsp } from './lsp.js';
import { addNew } from './new.js';
import { addPacket } from './packet.js';
import { addPacks } from './packs.js';
import { addProof } from './proof.js';
import { addPublish } from './publish.js';
import { addRecord } from './record.js';
import { addRenumber } from './renumber.js';
import { addReveals } from './reveals.js';
import { addStatus } from './status.js';

/** Errors that say what is wrong with what was given, not with how. */
const REFUSALS = [PlaceError, SiteError, ArtError, MergeError, SheetError, TableError] as const;

/**
 * Runs a command. The clock enters here and nowhere else: no flag or variable sets it.
 * @returns the exit code: 0 fine, 1 findings or refused, 2 could not run.
 */
export async function main(argv: readonly string[], io: Io): Promise<number> {
  let code = FINE;
  const program = new Command('holdback')
    .description('The words of licensed trading-card sets: written, checked, proofed, published.')
    .option('--content <dir>', 'the content folder', 'content')
    .option('--debug', 'show where in the program something went wrong')
    .exitOverride()
    .configureOutput({ writeOut: io.out, writeErr: io.err });
  const finish = (result: number): void => {
    code = result;
  };
  for (const add of [
    addCheck,
    addExplain,
    addStatus,
    addProof,
    addPacket,
    addRecord,
    addChecked,
    addPublish,
    addAudit,
    addReveals,
    addBrief,
    addLedger,
    addExport,
    addImport,
    addDesk,
    addLsp,
    addNew,
    addRenumber,
    addPacks,
  ]) {
    add(program, io, finish);
  }
  try {
    await program.parseAsync([...argv], { from: 'user' });
    return code;
  } catch (error) {
    return sayError(error, argv.includes('--debug'), io);
  }
}

/** The pages are made by a child, which Ctrl-C may end before anything else hears of it. */
function isCancelled(error: unknown, { interrupts }: Io): boolean {
  return (
    error instanceof Cancelled ||
    (error instanceof SiteError && interrupts?.signal.aborted === true)
  );
}

/** One sentence, and the code of what could not run: no findings, and not done either. */
function sayCancelled(io: Io): number {
  io.err(`${new Cancelled().message}\n`);
  return COULD_NOT_RUN;
}

function sayError(error: unknown, debug: boolean, io: Io): number {
  if (isCancelled(error, io)) return sayCancelled(io);
  if (error instanceof CommanderError) return error.exitCode === 0 ? FINE : COULD_NOT_RUN;
  const text = error instanceof Error ? error.message : String(error);
  io.err(`${text}\n`);
  if (debug && error instanceof Error) io.err(`${error.stack ?? ''}\n`);
  return REFUSALS.some((kind) => error instanceof kind) ? REFUSED : COULD_NOT_RUN;
}
