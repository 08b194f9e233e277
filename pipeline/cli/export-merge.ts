import { extname, resolve } from 'node:path';

import { view, type Audience } from '../gate/index.js';
import {
  encoded,
  mergeTable,
  mergeText,
  type Encoding,
  type MergeTable,
  type SheetFormat,
} from '../out/sheets/index.js';
import type { Released } from '../select/index.js';
import { realDisk, writeWhole } from '../write/index.js';
import type { Making } from './export-cut.js';
import { FINE, REFUSED, UsageError } from './io.js';
import { count, plain } from './report-text.js';

export interface MergeFlags {
  readonly set?: string;
  readonly format?: SheetFormat;
  readonly encoding?: Encoding;
  readonly asTyped?: boolean;
}

const FORMATS: ReadonlyMap<string, SheetFormat> = new Map([
  ['.csv', 'csv'],
  ['.tsv', 'tsv'],
  ['.txt', 'tsv'],
]);

/** UTF-16 is what every page-layout program knows by its mark. */
const USUAL_ENCODING: Encoding = 'utf-16';

/**
 * The format of a merge file, as said or by its name.
 * @throws UsageError for a name that says none.
 */
export function mergeFormat(file: string, { format }: MergeFlags): SheetFormat {
  const found = format ?? FORMATS.get(extname(file).toLowerCase());
  if (found !== undefined) return found;
  throw new UsageError(`${file}: name it .csv, .tsv or .txt, or say --format csv or --format tsv`);
}

/** Writes the rows for a page-layout program. */
export async function exportMerge(
  file: string,
  format: SheetFormat,
  flags: MergeFlags,
  { cutting, io, working }: Making,
): Promise<number> {
  const { released, audience, preview } = cutting;
  const table = await working.whole(() => tableFor(released, audience, flags, preview));
  if (!table) {
    io.err('nothing of this property is public by then\n');
    return REFUSED;
  }
  const encoding = flags.encoding ?? USUAL_ENCODING;
  working.progress('writing the file');
  writeWhole(realDisk, resolve(io.cwd, file), encoded(mergeText(table, format), encoding));
  io.err(remarksOn(table));
  const what = `${count(table.rows.length, 'card')} written to ${file}`;
  io.out(`${what}, ${format} in ${encoding}${table.mark === null ? '' : `: ${table.mark}`}\n`);
  return FINE;
}

function tableFor(
  released: Released,
  audience: Audience,
  flags: MergeFlags,
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

function remarksOn({ changed, empty }: MergeTable): string {
  const cells = changed.map(({ card, field }) => `  ${plain(card)}: ${plain(field)}\n`).join('');
  const what = `${count(changed.length, 'apostrophe')} put before what begins like a formula`;
  return [
    ...(cells === '' ? [] : [`${what}, and page layout prints it; see --as-typed:\n${cells}`]),
    ...empty.map((heading) => `the column ${plain(heading)} is empty on every card\n`),
  ].join('');
}
