import { bytesOf, eightBit, latin1 } from './characters.js';
import { closedPiece, type Piece, type Purse } from './piece.js';
import type { Reading } from './reading.js';
import { unpack } from './unpack.js';

/** Characters in a row without which bytes are no words. */
export const WORDS_FROM = 6;

const PRINTABLE =
  /(?:[\x20-\x7e\t\r\n]|[\xc2-\xdf][\x80-\xbf]|[\xe0-\xef][\x80-\xbf]{2}|[\xf0-\xf4][\x80-\xbf]{3})+/g;
const UTF16_LE = /(?:[\x20-\x7e\xa0-\xff]\0){2,}/g;
const UTF16_BE = /(?:\0[\x20-\x7e\xa0-\xff]){2,}/g;

/**
 * The stretches of bytes that could be words, a line each: UTF-8, and UTF-16 of letters of the west.
 * Places are those of the bytes.
 */
export function stretchesOf(bytes: Uint8Array, least: number): Reading {
  const text = latin1(bytes);
  const found = [
    ...stretches(text, PRINTABLE, (stretch) => eightBit(bytesOf(stretch))),
    ...stretches(text, UTF16_LE, (stretch) => stretch.replace(/\0/g, '')),
    ...stretches(text, UTF16_BE, (stretch) => stretch.replace(/\0/g, '')),
  ].filter(({ words }) => words.length >= least);
  return joined(found);
}

interface Stretch {
  readonly at: number;
  readonly words: string;
}

function stretches(text: string, pattern: RegExp, read: (found: string) => string): Stretch[] {
  return Array.from(text.matchAll(pattern), (match) => ({
    at: match.index,
    words: read(match[0]),
  }));
}

function joined(found: readonly Stretch[]): Reading {
  const starts: number[] = [];
  let length = 0;
  for (const { words } of found) {
    starts.push(length);
    length += words.length + 1;
  }
  return {
    text: found.map(({ words }) => words).join('\n'),
    sourceOf: (at) => {
      const index = Math.max(
        0,
        starts.findLastIndex((start) => start <= at),
      );
      return (found[index]?.at ?? 0) + at - (starts[index] ?? 0);
    },
  };
}

/** What unpacks in bytes of no known kind: gzip and zlib streams, wherever they begin. */
export function packedIn(bytes: Uint8Array, purse: Purse): readonly Piece[] {
  const found: Piece[] = [];
  for (let at = 0; at + 1 < bytes.length; at += 1) {
    if (!mayBePacked(bytes[at], bytes[at + 1])) continue;
    const place = `packed at byte ${String(at)}`;
    const stream = unpack(bytes.subarray(at), purse);
    if (stream.ok) found.push({ is: 'file', inside: [place], bytes: stream.bytes });
    else if (stream.tooLarge) return [...found, closedPiece('it unpacks to too much', place)];
  }
  return found;
}

function mayBePacked(first = 0, second = 0): boolean {
  if (first === 0x1f) return second === 0x8b;
  return first === 0x78 && [0x01, 0x5e, 0x9c, 0xda].includes(second);
}
