/** Bytes as UTF-8; what is no UTF-8 as U+FFFD. */
export function utf8(bytes: Uint8Array): string {
  return UTF_8.decode(bytes);
}

const UTF_8 = new TextDecoder('utf-8');

/** Bytes as UTF-8 if they are that, else as Windows-1252, of which Latin-1 is nearly a part. */
export function eightBit(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

/** Bytes as characters of the same number. */
export function latin1(bytes: Uint8Array): string {
  return Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length).toString('latin1');
}

/** Characters below 256 as bytes of the same number. */
export function bytesOf(text: string): Uint8Array {
  return new Uint8Array(Buffer.from(text, 'latin1'));
}

/** The part of the bytes of a text in Windows-1252 that may be none of ASCII. */
const MOST_HIGH = 0.3;

/**
 * The text that bytes are, or null if they are something else: UTF-16 where a byte order mark says
 * so, else UTF-8 without control characters, or Windows-1252 that is mostly ASCII.
 */
export function textOf(bytes: Uint8Array): string | null {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  if (first === 0xfe && second === 0xff) return new TextDecoder('utf-16be').decode(bytes);
  let high = 0;
  for (let at = 0; at < bytes.length; at += 1) {
    const byte = bytes[at] ?? 0;
    if (byte < 32 && (byte < 9 || byte > 13) && byte !== 27) return null;
    if (byte >= 0x80) high += 1;
  }
  const text = utf8(bytes);
  if (high === 0 || !text.includes('\ufffd')) return text;
  return high <= MOST_HIGH * bytes.length ? eightBit(bytes) : null;
}
