import { countGraphemes } from '../../text/index.js';

/** Columns of a line of plain text: what mail and forums show without breaking it. */
export const COLUMNS = 78;

/** How wide a text stands, a column for each character as a reader counts them. */
export function widthOf(text: string): number {
  return /^[\x20-\x7e]*$/.test(text) ? text.length : countGraphemes(text);
}

/**
 * Lines of at most 78 columns wherever words allow.
 * @param opening what the first line opens with; the others stand in as far.
 */
export function wrapped(text: string, opening = ''): string[] {
  const lines: string[] = [];
  let line = opening;
  let width = widthOf(opening);
  const indent = ' '.repeat(width);
  let isOpen = true;
  for (const word of text.split(' ')) {
    const more = widthOf(word) + (isOpen ? 0 : 1);
    if (width + more > COLUMNS && line.trim() !== '') {
      lines.push(line.trimEnd());
      line = indent;
      width = indent.length;
      isOpen = true;
    }
    const part = isOpen ? word : ` ${word}`;
    line += part;
    width += widthOf(part);
    isOpen = false;
  }
  return [...lines, line.trimEnd()];
}
