import type { Place } from '../model/index.js';

/** The offset of a line and a column, both from 1; the end of the text for a place beyond it. */
export function offsetOf(text: string, { line, column }: Place): number {
  let at = 0;
  for (let passed = 1; passed < line; passed += 1) {
    while (at < text.length && text[at] !== '\n' && text[at] !== '\r') at += 1;
    at += text.startsWith('\r\n', at) ? 2 : 1;
  }
  return Math.min(at + column - 1, text.length);
}
