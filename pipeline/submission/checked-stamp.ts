import { rewriteScalar, splice } from '../edit/index.js';
import { fenceOf, spotOf, type Card, type SourceFile } from '../model/index.js';
import { rereadCard } from '../read/index.js';

/** Keys that come after `checkedAgainst` in a card, in their order. */
const AFTER = ['remark', 'accepted'] as const;

/**
 * A card whose front matter says that it was read against a cut, and nothing else of whose file is
 * otherwise; null if that cannot be written without changing more.
 */
export function stamped(card: Card, cut: string): Card | null {
  const read = rereadCard(card, withCut(card, cut));
  if (!('front' in read)) return null;
  const isAsAsked =
    JSON.stringify(sortedFront(read)) === JSON.stringify(sortedFront(card, cut)) &&
    JSON.stringify(wordsOf(read)) === JSON.stringify(wordsOf(card));
  return isAsAsked ? read : null;
}

function withCut({ front, source }: Card, cut: string): SourceFile {
  if (front.checkedAgainst !== undefined) {
    return splice(source, [rewriteScalar(source, ['checkedAgainst'], cut)]);
  }
  const at = lineFor(front, source);
  const lineEnd = /\r\n|\n|\r/.exec(source.text)?.[0] ?? '\n';
  // An id that begins with a figure is quoted, as it is everywhere else.
  const value = /^[a-z]/.test(cut) ? cut : `"${cut}"`;
  const spot = { source, from: at, to: at };
  return splice(source, [{ spot, text: `checkedAgainst: ${value}${lineEnd}` }]);
}

/** Before the first key that comes after it, with its comment; else at the end of the front matter. */
function lineFor(front: Card['front'], source: SourceFile): number {
  const end = fenceOf(source.text)?.yamlTo ?? 0;
  const before = AFTER.filter((key) => front[key] !== undefined).map((key) =>
    lineStart(source.text, spotOf(source, [key], 'key').from),
  );
  return before.length === 0 ? end : aboveComments(source.text, Math.min(...before));
}

function lineStart(text: string, at: number): number {
  return Math.max(text.lastIndexOf('\n', at - 1), text.lastIndexOf('\r', at - 1)) + 1;
}

function aboveComments(text: string, at: number): number {
  let line = at;
  while (line > 0) {
    const above = lineStart(text, line - (text.slice(line - 2, line) === '\r\n' ? 2 : 1));
    if (text.charAt(above) !== '#') return line;
    line = above;
  }
  return line;
}

/** The front matter whatever the order of its keys. */
function sortedFront({ front }: Card, cut = front.checkedAgainst): readonly (readonly unknown[])[] {
  return Object.entries({ ...front, checkedAgainst: cut }).sort(([a], [b]) => (a < b ? -1 : 1));
}

/** The words of a bio, wherever they stand. */
function wordsOf({ bio }: Card): unknown {
  return bio.map((paragraph) =>
    paragraph.map(({ text, italic, bold, hold, count }) => ({ text, italic, bold, hold, count })),
  );
}
