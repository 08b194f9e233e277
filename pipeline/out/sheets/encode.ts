/** The encodings of a file for other programs. */
export const ENCODINGS = ['utf-8', 'utf-16'] as const;
export type Encoding = (typeof ENCODINGS)[number];

/**
 * Text as bytes. UTF-16 is little endian and opens with a byte order mark, by which every program
 * knows it. UTF-8 has none: to many programs it would be three more letters of the first heading.
 */
export function encoded(text: string, encoding: Encoding): Uint8Array {
  return encoding === 'utf-8'
    ? new TextEncoder().encode(text)
    : Uint8Array.from(Buffer.from(`\ufeff${text}`, 'utf16le'));
}
