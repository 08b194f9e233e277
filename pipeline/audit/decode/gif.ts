import { eightBit } from './characters.js';
import { filePiece, metadataPiece, textPiece, type Format, type Piece } from './piece.js';
import { has, joinBytes } from './view.js';

const EXTENSION = 0x21;
const IMAGE = 0x2c;
const COMMENT = 0xfe;
const PLAIN_TEXT = 0x01;
const CONTROL = 0xf9;

/** The words of a GIF file (version 89a): comments, drawn text, and the data of applications. */
export const gif: Format = (bytes) => {
  if (!has(bytes, 0, 'GIF87a') && !has(bytes, 0, 'GIF89a')) return null;
  const pieces: Piece[] = [];
  let at = 13 + tableSize(bytes[10] ?? 0);
  for (;;) {
    if (bytes[at] === EXTENSION) {
      const label = bytes[at + 1] ?? 0;
      const blocks = blocksAt(bytes, at + 2);
      pieces.push(...extensionPieces(label, blocks.data, bytes.subarray(at + 2, blocks.end)));
      at = blocks.end;
    } else if (bytes[at] === IMAGE) {
      at = blocksAt(bytes, at + 11 + tableSize(bytes[at + 9] ?? 0)).end;
    } else {
      break;
    }
  }
  return [...pieces, filePiece('after the picture', bytes.subarray(at + 1))];
};

function tableSize(flags: number): number {
  return (flags & 0x80) === 0 ? 0 : 3 * 2 ** ((flags & 7) + 1);
}

/** Blocks of up to 255 bytes, each after its length, up to an empty one. */
function blocksAt(bytes: Uint8Array, from: number): { data: Uint8Array; end: number } {
  const blocks: Uint8Array[] = [];
  let at = from;
  for (let size = bytes[at] ?? 0; size > 0; size = bytes[at] ?? 0) {
    blocks.push(bytes.subarray(at + 1, at + 1 + size));
    at += 1 + size;
  }
  return { data: joinBytes(blocks), end: at + 1 };
}

/** XMP stands in an application's block as one text, whatever the lengths of blocks say. */
function extensionPieces(label: number, data: Uint8Array, raw: Uint8Array): Piece[] {
  if (label === COMMENT) return [textPiece('comment', eightBit(data))];
  if (label === PLAIN_TEXT) return [textPiece('plain text', eightBit(data.subarray(12)))];
  if (label === CONTROL) return [];
  return [metadataPiece('application', data), metadataPiece('application', raw)];
}
