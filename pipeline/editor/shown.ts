/** A line that an editor shows: pieces as they are typed, and how they are set. */
export type Piece = string | { readonly strong: string } | { readonly code: string };
export type Line = readonly Piece[];

/** Lines as Markdown, in which no text of the content is ever markup. */
export function asMarkdown(lines: readonly Line[]): string {
  return lines.map((line) => line.map(markdownOf).join('')).join('\n\n');
}

/** Lines as they are read where no Markdown is shown. */
export function asPlain(lines: readonly Line[]): string {
  return lines.map((line) => line.map(plainOf).join('')).join('\n');
}

function plainOf(piece: Piece): string {
  if (typeof piece === 'string') return piece;
  return 'strong' in piece ? piece.strong : piece.code;
}

function markdownOf(piece: Piece): string {
  if (typeof piece === 'string') return escaped(piece);
  return 'strong' in piece ? `**${escaped(piece.strong)}**` : code(piece.code);
}

/** Every sign of ASCII that may begin markup is escaped, and a line end is a space. */
function escaped(text: string): string {
  return text
    .replace(/\s*[\r\n]\s*/g, ' ')
    .replace(/[!-/:-@[-`{-~]/g, (sign) => (MARKS.has(sign) ? `\\${sign}` : sign));
}

const MARKS = new Set('\\`*_{}[]()<>#+-.!|&~:"$=^');

/** Code in more backticks than stand in it one after another. */
function code(text: string): string {
  const line = text.replace(/\s*[\r\n]\s*/g, ' ');
  const longest = Math.max(0, ...[...line.matchAll(/`+/g)].map(([ticks]) => ticks.length));
  const fence = '`'.repeat(longest + 1);
  const room = /^`|`$/.test(line) ? ' ' : '';
  return `${fence}${room}${line}${room}${fence}`;
}
