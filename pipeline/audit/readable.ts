import { unzipSync } from 'node:zlib';

import { fromBase64, utf8, withoutEscapes, withoutTags } from './decode.js';

/** How many wrappings (compressed, base64) are opened that stand inside each other. */
const DEEPEST = 3;
/** No file of a site unpacks to more than this, in bytes; what does is searched as it stands. */
const LARGEST = 64 * 1024 * 1024;

/**
 * Everything that a file and its name could be read as, by decoders of the audit's own: as it
 * stands, with escapes resolved, with tags taken out, unpacked, out of base64. What a file is called
 * or says it is does not count: each is read in all ways.
 */
export function readable(file: string, bytes: Uint8Array): readonly string[] {
  const texts = new Set<string>();
  addText(texts, file, 0);
  addBytes(texts, bytes, 0);
  return [...texts];
}

function addBytes(texts: Set<string>, bytes: Uint8Array, depth: number): void {
  const text = wide(bytes) ?? utf8(bytes);
  const binary = /[\0\ufffd]/.test(text);
  addText(texts, binary ? printable(text) : text, depth);
  if (!binary || depth >= DEEPEST) return;
  for (const unpacked of packedIn(bytes)) addBytes(texts, unpacked, depth + 1);
}

function addText(texts: Set<string>, text: string, depth: number): void {
  const plain = withoutEscapes(text);
  const forms = [text, plain, withoutEscapes(withoutTags(text)), withoutTags(plain)];
  for (const form of forms) if (form.trim() !== '') texts.add(form);
  if (depth >= DEEPEST) return;
  for (const form of new Set([text, plain])) {
    for (const decoded of fromBase64(form)) addBytes(texts, decoded, depth + 1);
  }
}

/** Text in UTF-16, which says so by its first two bytes. */
function wide(bytes: Uint8Array): string | null {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  if (first === 0xfe && second === 0xff) return new TextDecoder('utf-16be').decode(bytes);
  return null;
}

/** The stretches of a binary file that could be words: metadata, text chunks. */
function printable(text: string): string {
  const stretches = text
    .replace(/\ufffd/g, '\0')
    .match(/[\p{L}\p{M}\p{N}\p{P}\p{S}\p{Cf}\p{Zs}\r\n\t]{6,}/gu);
  return (stretches ?? []).join('\n');
}

/** What unpacks in bytes: gzip (RFC 1952) and zlib (RFC 1950) streams, wherever they begin. */
function packedIn(bytes: Uint8Array): Uint8Array[] {
  const found: Uint8Array[] = [];
  for (let at = 0; at + 1 < bytes.length; at += 1) {
    if (!isPacked(bytes[at], bytes[at + 1])) continue;
    const stream = unpacked(bytes.subarray(at));
    if (stream) found.push(stream);
  }
  return found;
}

function isPacked(first = 0, second = 0): boolean {
  if (first === 0x1f) return second === 0x8b;
  return first === 0x78 && [0x01, 0x5e, 0x9c, 0xda].includes(second);
}

function unpacked(bytes: Uint8Array): Uint8Array | null {
  try {
    return unzipSync(bytes, { maxOutputLength: LARGEST });
  } catch {
    return null;
  }
}
