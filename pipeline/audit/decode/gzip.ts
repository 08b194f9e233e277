import { unpack } from './unpack.js';
import { closedPiece, filePiece, metadataPiece, type Format } from './piece.js';

/** A gzip file (RFC 1952): what it holds, and the names in its head. */
export const gzip: Format = (bytes, purse) => {
  if (bytes[0] !== 0x1f || bytes[1] !== 0x8b) return null;
  const stream = unpack(bytes, purse);
  const head = metadataPiece('head', bytes.subarray(0, 1024));
  if (stream.ok) return [head, filePiece('unpacked', stream.bytes)];
  return [head, closedPiece(stream.tooLarge ? 'it unpacks to too much' : 'it is damaged')];
};
