import { eightBit } from './characters.js';
import { filePiece, metadataPiece, textPiece, type Format, type Piece } from './piece.js';
import { has, lowFirst } from './view.js';

/** Chunks that hold the picture. */
const PICTURE = new Set(['VP8 ', 'VP8L', 'VP8X', 'ALPH', 'ANIM', 'ANMF']);

/** The words of a WebP file (RFC 9649): Exif, XMP, and whatever else is no part of the picture. */
export const webp: Format = (bytes) => {
  if (!has(bytes, 0, 'RIFF') || !has(bytes, 8, 'WEBP')) return null;
  const pieces: Piece[] = [];
  let at = 12;
  while (at + 8 <= bytes.length) {
    const kind = eightBit(bytes.subarray(at, at + 4));
    const length = lowFirst(bytes, at + 4, 4);
    const end = at + 8 + length;
    if (end > bytes.length || !/^[\x20-\x7e]{4}$/.test(kind)) break;
    if (!PICTURE.has(kind)) pieces.push(chunkPiece(kind, bytes.subarray(at + 8, end)));
    at = end + (length % 2);
  }
  return [...pieces, filePiece('after the picture', bytes.subarray(at))];
};

function chunkPiece(kind: string, data: Uint8Array): Piece {
  if (kind === 'XMP ') return textPiece('XMP', eightBit(data));
  if (kind === 'EXIF' || kind === 'ICCP') return metadataPiece(kind, data);
  return filePiece(kind, data);
}
