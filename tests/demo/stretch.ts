type Content = ReadonlyMap<string, string | Uint8Array>;

/**
 * A stretch of a file, between bars in the words around it, such as `says |Verity Snype|, who`. The
 * words stand once in the file.
 */
export interface Stretch {
  readonly file: string;
  readonly words: string;
}

/** Where a stretch stands, as an editor counts: lines and columns from 1, the end after the last. */
export interface Place {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
}

/** Looks a stretch up in the file's text, by nothing of the tool. */
export function placeOf({ file, words }: Stretch, content: Content): Place {
  const [before = '', inside = '', after = ''] = words.split('|');
  const text = String(content.get(file));
  const parts = text.split(before + inside + after);
  if (parts.length !== 2) throw new Error(`${file} does not have "${words}" just once`);
  const lines = `${parts[0] ?? ''}${before}`.split('\n');
  const [line, column] = [lines.length, (lines.at(-1) ?? '').length + 1];
  return { file, line, column, endLine: line, endColumn: column + inside.length };
}

/** Where something that a finding names besides begins. */
export function relatedAt(
  { message, ...stretch }: Stretch & { readonly message: string },
  content: Content,
): Pick<Place, 'file' | 'line' | 'column'> & { readonly message: string } {
  const { file, line, column } = placeOf(stretch, content);
  return { message, file, line, column };
}
