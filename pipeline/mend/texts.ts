import type { SourceFile } from '../model/index.js';
import type { Folder } from '../read/index.js';

const MARK = '\ufeff';
const decoder = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });

/** A text file as it is read, and whether a byte order mark stands before it. */
export interface MarkedText {
  readonly source: SourceFile;
  readonly isMarked: boolean;
}

/**
 * The text of a file that was read before, so that it is UTF-8.
 * @throws TypeError for a file that is not; what the folder throws.
 */
export function textOf(folder: Folder, file: string): MarkedText {
  const text = decoder.decode(folder.read(file));
  const isMarked = text.startsWith(MARK);
  return { source: { file, text: isMarked ? text.slice(1) : text }, isMarked };
}

/** The bytes of a text, with the mark that its file had. */
export function bytesOf({ text }: Pick<SourceFile, 'text'>, isMarked = false): Uint8Array {
  return new TextEncoder().encode(isMarked ? `${MARK}${text}` : text);
}
