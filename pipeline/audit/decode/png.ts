import { eightBit, utf8 } from './characters.js';
import {
  closedPiece,
  filePiece,
  metadataPiece,
  textPiece,
  type Format,
  type Piece,
  type Purse,
} from './piece.js';
import { unpack } from './unpack.js';
import { has, highFirst } from './view.js';

const SIGNATURE = '\x89PNG\r\n\x1a\n';

/** Chunks that hold the picture and how to show it. */
const PICTURE = new Set(
  'IHDR PLTE IDAT IEND tRNS cHRM gAMA sBIT sRGB bKGD hIST pHYs tIME acTL fcTL fdAT cICP'.split(' '),
);

/** A chunk of a PNG file (W3C PNG, third edition). */
export interface Chunk {
  readonly kind: string;
  readonly data: Uint8Array;
}

/** The chunks of a PNG file and what follows the last; null if it is none. */
export function pngChunks(
  bytes: Uint8Array,
): { readonly chunks: readonly Chunk[]; readonly rest: Uint8Array } | null {
  if (!has(bytes, 0, SIGNATURE)) return null;
  const chunks: Chunk[] = [];
  let at = SIGNATURE.length;
  while (at + 12 <= bytes.length) {
    const length = highFirst(bytes, at, 4);
    const kind = eightBit(bytes.subarray(at + 4, at + 8));
    if (at + 12 + length > bytes.length) break;
    chunks.push({ kind, data: bytes.subarray(at + 8, at + 8 + length) });
    at += 12 + length;
    if (kind === 'IEND') break;
  }
  return { chunks, rest: bytes.subarray(at) };
}

/** The words of a PNG file: text chunks, metadata, and whatever else is no part of the picture. */
export const png: Format = (bytes, purse) => {
  const file = pngChunks(bytes);
  if (!file) return null;
  return [
    ...file.chunks
      .filter(({ kind }) => !PICTURE.has(kind))
      .flatMap((chunk) => chunkPieces(chunk, purse)),
    filePiece('after the picture', file.rest),
  ];
};

function chunkPieces({ kind, data }: Chunk, purse: Purse): Piece[] {
  const key = data.subarray(0, Math.max(0, data.indexOf(0)));
  const value = data.subarray(key.length + 1);
  const named = textPiece(kind, eightBit(key));
  switch (kind) {
    case 'tEXt':
      return [named, textPiece(kind, eightBit(value))];
    case 'zTXt':
    case 'iCCP':
      return [named, packed(kind, value.subarray(1), purse)];
    case 'iTXt':
      return [named, ...international(value, purse)];
    case 'eXIf':
      return [metadataPiece(kind, data)];
    default:
      return [textPiece('chunk', kind), filePiece(kind, data)];
  }
}

/** Two bytes that say how it is packed, a language, the key in it, and the text. */
function international(value: Uint8Array, purse: Purse): Piece[] {
  const language = value.indexOf(0, 2);
  const key = value.indexOf(0, language + 1);
  const head = textPiece('iTXt', utf8(value.subarray(2, key)).replace('\0', ' '));
  const words = value.subarray(key + 1);
  return [head, value[0] === 1 ? packed('iTXt', words, purse) : textPiece('iTXt', utf8(words))];
}

function packed(kind: string, bytes: Uint8Array, purse: Purse): Piece {
  const stream = unpack(bytes, purse, false);
  if (!stream.ok) {
    return closedPiece(stream.tooLarge ? 'it unpacks to too much' : 'it is damaged', kind);
  }
  return kind === 'iCCP'
    ? metadataPiece(kind, stream.bytes)
    : textPiece(kind, eightBit(stream.bytes));
}
