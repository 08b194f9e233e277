import type { Command } from 'commander';

import {
  ENCODINGS,
  WHATS,
  type Encoding,
  type SheetFormat,
  type What,
} from '../out/sheets/index.js';
import { bookFormat, exportBook } from './export-book.js';
import { cuttingOf, type CutFlags, type Cutting } from './export-cut.js';
import { exportMerge, mergeFormat } from './export-merge.js';
import { REFUSED, UsageError, type Io } from './io.js';
import { oneOf } from './options.js';
import { withProgress, type Working } from './progress.js';

interface ExportFlags extends CutFlags {
  readonly merge?: boolean;
  readonly set?: string;
  readonly what?: What;
  readonly format?: SheetFormat;
  readonly encoding?: Encoding;
  readonly asTyped?: boolean;
}

const TABLES = ['csv', 'tsv'] as const satisfies readonly SheetFormat[];

/** `holdback export`: the cards as rows for other programs. */
export function addExport(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('export')
    .description('the cards as a spreadsheet, or as rows for a page-layout program')
    .argument('<file>', 'the file to write: .xlsx or .csv')
    .option('--what <what>', 'copy, with every key, or checklist', oneOf('what', WHATS))
    .option('--set <id>', 'this set alone')
    .option('--for <person>', 'cut to what this person may see; a writer gets the cards they write')
    .option('--at <instant>', 'cut to what is public at this instant')
    .option('--preview', 'allow an instant to come; the file says so')
    .option('--merge', 'for page layout: one row a card, with the columns of `merge` in plan.yaml')
    .option(
      '--format <format>',
      'with --merge: csv or tsv; by the name of the file',
      oneOf('format', TABLES),
    )
    .option(
      '--encoding <encoding>',
      'with --merge: utf-16, with a byte order mark, or utf-8, without (default: "utf-16")',
      oneOf('encoding', ENCODINGS),
    )
    .option(
      '--as-typed',
      'with --merge: leave cells that begin with = + - @ alone; never for a spreadsheet',
    )
    .action(async (file: string, _flags: unknown, command: Command) => {
      const flags = command.optsWithGlobals<ExportFlags>();
      finish(
        await withProgress(io, (progress, whole) =>
          runExport(file, flags, io, { progress, whole }),
        ),
      );
    });
}

async function runExport(
  file: string,
  flags: ExportFlags,
  io: Io,
  working: Working,
): Promise<number> {
  const write = flags.merge === true ? mergeWriter(file, flags) : bookWriter(file, flags);
  const cutting = await working.whole(() => cuttingOf(flags, io, working.progress));
  if ('refused' in cutting) {
    io.err(`${cutting.refused}\n`);
    return REFUSED;
  }
  return write(cutting, io, working);
}

type Writer = (cutting: Cutting, io: Io, working: Working) => Promise<number>;

/** @throws UsageError for a file of another name, and for options of a spreadsheet. */
function mergeWriter(file: string, flags: ExportFlags): Writer {
  if (flags.what !== undefined) {
    throw new UsageError('--what is for a spreadsheet: `merge` in plan.yaml says what --merge has');
  }
  const format = mergeFormat(file, flags);
  return (cutting, io, working) => exportMerge(file, format, flags, { cutting, io, working });
}

/** @throws UsageError for a file of another name, and for options of a merge file. */
function bookWriter(file: string, flags: ExportFlags): Writer {
  const stray = [
    ...(flags.format === undefined ? [] : ['--format']),
    ...(flags.encoding === undefined ? [] : ['--encoding']),
    ...(flags.asTyped === true ? ['--as-typed'] : []),
  ];
  if (stray.length > 0) throw new UsageError(`${stray.join(', ')}: only with --merge`);
  const format = bookFormat(file);
  return (cutting, io, working) => exportBook(file, format, flags, { cutting, io, working });
}
