import { parse } from 'csv-parse/sync';

import { view, type Audience, type View } from '../../pipeline/gate/index.js';
import { mergeTable, mergeText, type MergeOptions } from '../../pipeline/out/sheets/index.js';
import { memoryFolder, readContent } from '../../pipeline/read/index.js';
import { select, type Released } from '../../pipeline/select/index.js';

export function released(files: ReadonlyMap<string, string | Uint8Array>): Released {
  const content = readContent(memoryFolder(files));
  const made = select(content);
  if (!made) throw new Error(content.faults.map(({ message }) => message).join('\n'));
  return made;
}

export function viewOf(content: Released, audience: Audience): View {
  const made = view(content, audience);
  if (!made) throw new Error('nothing is public then');
  return made;
}

/** A merge file as CSV. */
export function csvOf(made: View, options: MergeOptions = {}): string {
  return mergeText(mergeTable(made, options), 'csv');
}

/** Its rows, each by heading. */
export function recordsOf(text: string): Record<string, string>[] {
  return parse(text, { columns: true, record_delimiter: '\r\n' });
}
