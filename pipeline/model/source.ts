/** A text file as it was read: BOM taken off, line ends kept. */
export interface SourceFile {
  /** Relative to the content folder, with /. */
  readonly file: string;
  readonly text: string;
}

/** A stretch of a source file, in UTF-16 units from its start; `to` is not part of it. */
export interface Spot {
  readonly source: SourceFile;
  readonly from: number;
  readonly to: number;
}

/** Line and column from 1; columns are UTF-16 units. */
export interface Place {
  readonly line: number;
  readonly column: number;
}

/** The place of an offset. A line ends with LF, CRLF or CR alone. */
export function placeOf(text: string, offset: number): Place {
  const end = Math.min(offset, text.length);
  let line = 1;
  let start = 0;
  for (let at = 0; at < end; at++) {
    const code = text.charCodeAt(at);
    if (code === 13 && text.charCodeAt(at + 1) === 10) continue;
    if (code === 10 || code === 13) {
      line += 1;
      start = at + 1;
    }
  }
  return { line, column: end - start + 1 };
}

/** The first character of a file: where a finding about the file as a whole stands. */
export function startOf(source: SourceFile): Spot {
  return { source, from: 0, to: 0 };
}
