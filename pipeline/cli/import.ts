import { existsSync, readFileSync, statSync } from 'node:fs';
import { basename, extname, resolve } from 'node:path';
import type { Command } from 'commander';

import type { ImportReport, MappingFile } from '../../schema/index.js';
import { importSheet, isOwnFile, writeChanges } from '../mend/index.js';
import { placeOf } from '../model/index.js';
import { readMapping } from '../read/index.js';
import { LARGEST_FILE, mappingText, readTable, tooLarge, type Table } from '../sheet/index.js';
import { realDisk, writeWhole } from '../write/index.js';
import { importText } from './import-text.js';
import { FINE, REFUSED, UsageError, type Io } from './io.js';
import { contentOf, oneOf, type Common } from './options.js';
import { countedFolder, withProgress } from './progress.js';
import { plain } from './report-text.js';

const FORMATS = ['text', 'json'] as const;

interface ImportFlags extends Common {
  readonly set: string;
  readonly mapping?: string;
  readonly saveMapping?: string;
  readonly sheet?: string[];
  readonly into?: string;
  readonly write?: boolean;
  readonly overwrite?: boolean;
  readonly format: (typeof FORMATS)[number];
}

/** `holdback import`: the rows of a spreadsheet into card files. */
export function addImport(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('import')
    .description(
      'the rows of a spreadsheet into card files; shows what would change (for the house)',
    )
    .argument('<file>', 'an .xlsx workbook or a .csv file')
    .requiredOption('--set <id>', 'the set that its cards are of')
    .option('--mapping <file>', 'a file that says which heading is which key')
    .option('--save-mapping <file>', 'write the mapping that was used, to be changed and kept')
    .option('--sheet <name...>', 'these sheets alone; a hidden one is read only if it is named')
    .option('--into <subset>', 'the subset of rows that do not say their own')
    .option('--write', 'write the cards; without it, what would change is only shown')
    .option('--overwrite', 'take what the sheet says where a card says something else')
    .option('--format <format>', 'text or json', oneOf('format', FORMATS), 'text')
    .action(async (file: string, _flags: unknown, command: Command) => {
      finish(await runImport(file, command.optsWithGlobals<ImportFlags>(), io));
    });
}

async function runImport(file: string, flags: ImportFlags, io: Io): Promise<number> {
  const mapping = mappingOf(flags, io);
  if (mapping === null) return REFUSED;
  const { path, folder } = contentOf(flags, io);
  const { report, files } = await withProgress(io, async (progress, whole) => {
    progress('reading the sheet');
    const table = await whole(() => tableOf(file, io));
    return whole(() =>
      importSheet({
        folder: countedFolder(folder, progress),
        set: flags.set,
        table,
        mapping: mapping ?? null,
        sheets: flags.sheet ?? [],
        into: flags.into ?? null,
        overwrite: flags.overwrite === true,
        mayWrite: (name) => isOwnFile(realDisk, path, name),
        progress,
      }),
    );
  });
  const isRefused = report.refused.length > 0;
  let failed: readonly string[] = [];
  if (flags.write === true && files.size > 0) {
    const written = await writeChanges({ contentPath: path, now: io.now }, files);
    if (!written.done) failed = written.why;
  }
  const isWritten = flags.write === true && files.size > 0 && failed.length === 0;
  const told = { ...report, written: isWritten, refused: [...report.refused, ...failed] };
  const ok = report.ok && failed.length === 0;
  io.out(
    flags.format === 'json' ? `${JSON.stringify({ ...told, ok }, null, 2)}\n` : importText(told),
  );
  if (flags.saveMapping !== undefined && !isRefused) saveMapping(flags.saveMapping, report, io);
  if (flags.format === 'text') sayEnd(told, flags, io, files.size);
  return ok ? FINE : REFUSED;
}

function sayEnd(report: ImportReport, flags: ImportFlags, io: Io, files: number): void {
  if (report.refused.length > 0) io.err('refused: nothing was written\n');
  else if (report.written) io.out('written\n');
  else if (files > 0 && flags.write !== true) {
    io.out('nothing is written: add --write to write it\n');
  }
}

/** @throws UsageError for a file that cannot be read; TableError for what is no table. */
function tableOf(file: string, io: Io): Table {
  const path = resolve(io.cwd, file);
  const found = statSync(path, { throwIfNoEntry: false });
  if (found?.isFile() !== true) throw new UsageError(`there is no file ${file}`);
  const kind = extname(file).toLowerCase();
  if (!['.xlsx', '.xlsm', '.csv', '.tsv', '.txt'].includes(kind)) {
    throw new UsageError(`${file}: save it as .xlsx or .csv, which can be read`);
  }
  if (found.size > LARGEST_FILE) throw tooLarge();
  return readTable(basename(file), readFileSync(path));
}

/** The mapping that is named, undefined if none is, null if something is wrong with it. */
function mappingOf({ mapping }: ImportFlags, io: Io): MappingFile | undefined | null {
  if (mapping === undefined) return undefined;
  let bytes: Uint8Array;
  try {
    bytes = readFileSync(resolve(io.cwd, mapping));
  } catch {
    throw new UsageError(`${mapping} cannot be read: name a mapping that was saved`);
  }
  const reading = readMapping(mapping, bytes);
  if (reading.ok) return reading.value;
  io.err('refused: nothing was written\n');
  for (const { spot, message, found, expected } of reading.faults) {
    const { line, column } = placeOf(spot.source.text, spot.from);
    const more = [
      ...(found === undefined ? [] : [`found ${found}`]),
      ...(expected === undefined ? [] : [`expected ${expected}`]),
    ];
    io.err(
      `  ${plain(`${mapping}:${String(line)}:${String(column)}  ${[message, ...more].join(', ')}`)}\n`,
    );
  }
  return null;
}

/** @throws UsageError for a file that is there: it may have been changed by hand. */
function saveMapping(file: string, { mapping }: ImportReport, io: Io): void {
  const path = resolve(io.cwd, file);
  if (existsSync(path))
    throw new UsageError(`${file} is there already: give the mapping another name`);
  writeWhole(realDisk, path, new TextEncoder().encode(mappingText(mapping)));
}
