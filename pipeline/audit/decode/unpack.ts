import { unzipSync } from 'node:zlib';

import type { Purse } from './piece.js';

/** What came of unpacking: bytes, or that they are damaged, or more than may be unpacked. */
export type Unpacked =
  | { readonly ok: true; readonly bytes: Uint8Array }
  | { readonly ok: false; readonly tooLarge: boolean };

/** Z_SYNC_FLUSH of zlib: a stream that breaks off gives what there is of it. */
const AS_FAR_AS_IT_GOES = 2;

/** Unpacks a gzip (RFC 1952) or zlib (RFC 1950) stream that begins the bytes. */
export function unpack(bytes: Uint8Array, purse: Purse, whole = true): Unpacked {
  if (purse.left <= 0) return { ok: false, tooLarge: true };
  try {
    const options = { maxOutputLength: purse.left };
    const unpacked = new Uint8Array(
      unzipSync(bytes, whole ? options : { ...options, finishFlush: AS_FAR_AS_IT_GOES }),
    );
    purse.left -= unpacked.length;
    return { ok: true, bytes: unpacked };
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : null;
    return { ok: false, tooLarge: code === 'ERR_BUFFER_TOO_LARGE' };
  }
}

/** The first two bytes of a zlib stream. */
const ZLIB = [0x78, 0x9c];

/** Unpacks bare deflate data (RFC 1951): a zlib stream without its ends. */
export function inflate(bytes: Uint8Array, purse: Purse): Unpacked {
  const stream = new Uint8Array(bytes.length + ZLIB.length);
  stream.set(ZLIB);
  stream.set(bytes, ZLIB.length);
  return unpack(stream, purse, false);
}
