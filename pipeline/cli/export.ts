import { extname, resolve } from 'node:path';
import type { Command } from 'commander';

import { view, type Audience } from '../gate/index.js';
import {
  ENCODINGS,
  encoded,
  mergeTable,
  mergeText,
  type Encoding,
  type MergeTable,
  type SheetFormat,
} from '../out/sheets/index.js';
import { readProperty } from '../read/index.js';
import { select, type Released } from '../select/index.js';
import { realDisk, writeWhole } from '../write/index.js';
import { audienceOf } from './audience.js';
import { FINE, REFUSED, UsageError, type Io } from './io.js';
import { contentOf, instantFrom, oneOf, type Common } from './options.js';
import { countedFolder, withProgress, type Progress } from './progress.js';
import { count, plain } from './report-text.js';

interface ExportFlags extends Common {
  readonly merge?: boolean;
  readonly for?: string;
  readonly at?: string;
  readonly preview?: boolean;
  readonly set?: string;
  readonly format?: SheetFormat;
  readonly encoding: Encoding;
  readonly asTyped?: boolean;
}

const FORMATS: ReadonlyMap<string, SheetFormat> = new Map([
  ['.csv', 'csv'],
  ['.tsv', 'tsv'],
  ['.txt', 'tsv'],
]);

/** `holdback export`: the cards as rows for other programs. */
export function addExport(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('export')
    .description('the cards as rows, for the merge of a page-layout program')
    .argument('<file>', 'the file to write')
    .option('--merge', 'one row a card, with the columns that `merge` in plan.yaml names')
    .option('--for <person>', 'cut to what this person may see')
    .option('--at <instant>', 'cut to what is public at this instant')
    .option('--preview', 'allow an instant to come; the file says so')
    .option('--set <id>', 'this set alone')
    .option('--format <format>', 'csv or tsv; by the name of the file', oneOf('format', TABLES))
    .option(
      '--encoding <encoding>',
      'utf-16, with a byte order mark, or utf-8, without',
      oneOf('encoding', ENCODINGS),
      'utf-16',
    )
    .option('--as-typed', 'leave cells that begin with = + - @ alone: never for a spreadsheet')
    .action(async (file: string, _flags: unknown, command: Command) => {
      const flags = command.optsWithGlobals<ExportFlags>();
      finish(await withProgress(io, (progress) => runExport(file, flags, io, progress)));
    });
}

const TABLES = ['csv', 'tsv'] as const satisfies readonly SheetFormat[];

function runExport(file: string, flags: ExportFlags, io: Io, progress: Progress): number {
  const format = formatOf(file, flags);
  const at = flags.at === undefined ? null : instantFrom(flags.at, io);
  const preview = at !== null && at > io.now;
  if (preview && flags.preview !== true) {
    io.err('that instant is still to come: --preview writes it, and says so in the file\n');
    return REFUSED;
  }
  const released = select(
    readProperty(countedFolder(contentOf(flags, io).folder, progress)).content,
  );
  if (!released) {
    io.err('some files cannot be read, so there is no export: run `holdback check` first\n');
    return REFUSED;
  }
  const audience: Audience =
    at === null ? audienceOf(flags.for, released, io) : { kind: 'public', at };
  const table = tableFor(released, audience, flags, preview);
  if (!table) {
    io.err('nothing of this property is public by then\n');
    return REFUSED;
  }
  writeWhole(realDisk, resolve(io.cwd, file), encoded(mergeText(table, format), flags.encoding));
  io.err(remarksOn(table));
  const what = `${count(table.rows.length, 'card')} written to ${file}`;
  io.out(
    `${what}, ${format} in ${flags.encoding}${table.mark === null ? '' : `: ${table.mark}`}\n`,
  );
  return FINE;
}

function tableFor(
  released: Released,
  audience: Audience,
  flags: ExportFlags,
  preview: boolean,
): MergeTable | null {
  const seen = view(released, audience);
  if (!seen) return null;
  if (flags.set !== undefined && !seen.sets.some(({ id }) => id === flags.set)) {
    throw new UsageError(`there is no set ${flags.set} to export`);
  }
  return mergeTable(seen, {
    asTyped: flags.asTyped === true,
    preview,
    ...(flags.set === undefined ? {} : { set: flags.set }),
  });
}

/** @throws UsageError for options that do not go together. */
function formatOf(file: string, flags: ExportFlags): SheetFormat {
  if (flags.merge !== true) {
    throw new UsageError('only --merge is there for now: the rows for a page-layout program');
  }
  if (flags.for !== undefined && flags.at !== undefined) {
    throw new UsageError('--for and --at: a file is for a person or for the public');
  }
  const format = flags.format ?? FORMATS.get(extname(file).toLowerCase());
  if (format !== undefined) return format;
  throw new UsageError(`${file}: name it .csv, .tsv or .txt, or say --format csv or --format tsv`);
}

function remarksOn({ changed, empty }: MergeTable): string {
  const cells = changed.map(({ card, field }) => `  ${plain(card)}: ${plain(field)}\n`).join('');
  const what = `${count(changed.length, 'apostrophe')} put before what begins like a formula`;
  return [
    ...(cells === '' ? [] : [`${what}, and page layout prints it; see --as-typed:\n${cells}`]),
    ...empty.map((heading) => `the column ${plain(heading)} is empty on every card\n`),
  ].join('');
}
