import { textOf } from './characters.js';
import { gif } from './gif.js';
import { gzip } from './gzip.js';
import { jpeg } from './jpeg.js';
import { pdf } from './pdf.js';
import { closedPiece, type Format, type Piece, type Purse } from './piece.js';
import { png } from './png.js';
import { packedIn, WORDS_FROM } from './stretches.js';
import { webp } from './webp.js';
import { zip } from './zip.js';

/** How many wrappings (archives, compression, base64) are opened that stand inside each other. */
export const DEEPEST = 3;
/** All that one file unpacks to may be this large, in bytes. */
export const LARGEST = 64 * 1024 * 1024;

const CONTAINERS: readonly Format[] = [gzip, zip, pdf];
const PICTURES: readonly Format[] = [png, jpeg, webp, gif];

/** What a file was opened to. */
export interface Opened {
  readonly pieces: readonly Exclude<Piece, { readonly is: 'file' }>[];
  /** Everything that was opened, itself first. */
  readonly contents: readonly OpenedContent[];
}

/** Bytes that are a file of their own. */
export interface OpenedContent {
  readonly inside: readonly string[];
  readonly bytes: Uint8Array;
  /** A raster picture: PNG, JPEG, WebP or GIF. */
  readonly raster: boolean;
}

const NOTHING: Opened = { pieces: [], contents: [] };

/**
 * Opens bytes, and whatever is in them, as far as DEEPEST and the purse go. What a file is called or
 * says it is does not count: its first bytes do. Whatever cannot be opened is said to be closed.
 */
export function open(
  bytes: Uint8Array,
  purse: Purse,
  depth = 0,
  inside: readonly string[] = [],
): Opened {
  if (bytes.length === 0) return NOTHING;
  const itself = { inside, bytes };
  const tooDeep: Opened = {
    pieces: [closedPiece('it is wrapped too often', ...inside)],
    contents: [],
  };
  if (depth > DEEPEST) return tooDeep;
  const picture = firstOf(PICTURES, bytes, purse);
  if (picture) {
    return openAll(picture, purse, depth + 1, { ...itself, raster: true });
  }
  const content = { ...itself, raster: false };
  if (depth === DEEPEST && firstOf(CONTAINERS, bytes.subarray(0, 1024), { left: 0 })) {
    return tooDeep;
  }
  const container = firstOf(CONTAINERS, bytes, purse);
  if (container) return openAll(container, purse, depth + 1, content);
  const text = textOf(bytes);
  if (text !== null) return { pieces: [{ is: 'text', inside, text }], contents: [content] };
  const stretches = { is: 'stretches', inside: [], bytes, least: WORDS_FROM } as const;
  const packed = depth < DEEPEST ? packedIn(bytes, purse) : [];
  return openAll([stretches, ...packed], purse, depth + 1, content);
}

function firstOf(
  formats: readonly Format[],
  bytes: Uint8Array,
  purse: Purse,
): readonly Piece[] | null {
  for (const format of formats) {
    const pieces = format(bytes, purse);
    if (pieces) return pieces;
  }
  return null;
}

function openAll(
  pieces: readonly Piece[],
  purse: Purse,
  depth: number,
  content: OpenedContent,
): Opened {
  const all = pieces.map((piece): Opened => {
    const inside = [...content.inside, ...piece.inside];
    if (piece.is === 'file') return open(piece.bytes, purse, depth, inside);
    return { pieces: [{ ...piece, inside }], contents: [] };
  });
  return {
    pieces: all.flatMap((each) => each.pieces),
    contents: [content, ...all.flatMap((each) => each.contents)],
  };
}
