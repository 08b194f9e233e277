import { placeOf } from '../model/index.js';
import type { Target } from './target.js';

/** Where in a file something stands. */
export interface AuditPlace {
  /** The way into it: entries of archives, chunks of pictures, pages. Empty for the file itself. */
  readonly inside: readonly string[];
  /** From 1, columns in UTF-16 units; null where there are no lines. */
  readonly line: number | null;
  readonly column: number | null;
  /** From 0, in bytes; null where there are lines. */
  readonly byte: number | null;
}

/** Something held that stands in a finished output. House matter: it names what is held. */
export interface AuditFinding {
  readonly file: string;
  readonly place: AuditPlace;
  /** The card that it is of, `set/subset/id`; null for a name, a label, a text of the set. */
  readonly card: string | null;
  /** What it is: a name, a field of a card; or that something could not be opened. */
  readonly from: string;
  readonly words: string;
}

export function findingOf(file: string, place: AuditPlace, target: Target): AuditFinding {
  return { file, place, card: target.card, from: target.from, words: target.words };
}

/** A place in lines of text. */
export function lineAt(inside: readonly string[], text: string, at: number): AuditPlace {
  return { inside, ...placeOf(text, at), byte: null };
}

/** A place in bytes, or nowhere in particular. */
export function byteAt(inside: readonly string[], byte: number | null): AuditPlace {
  return { inside, line: null, column: null, byte };
}

/** `cards.zip > data.json 3:14`, `picture.png > tEXt 1:1`, `font.woff2 byte 714`. */
export function sayAuditPlace({ file, place }: Pick<AuditFinding, 'file' | 'place'>): string {
  const path = [file, ...place.inside].join(' > ');
  if (place.line !== null) return `${path} ${String(place.line)}:${String(place.column ?? 1)}`;
  return place.byte === null ? path : `${path} byte ${String(place.byte)}`;
}
