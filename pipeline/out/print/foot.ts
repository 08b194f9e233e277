import type { PublicData } from '../../../schema/index.js';
import { momentWords } from '../wording/index.js';
import type { PrintFaces } from './faces.js';
import { drawLines, leadingOf, paragraph } from './items.js';
import type { Point } from './papers.js';
import type { Pen } from './pen.js';
import type { Band } from './pour.js';
import { setLines, span, type Line, type Span } from './set-lines.js';

/** What stands at the foot of each page. */
export interface Foot {
  /** Points that it takes, with the white above it. */
  readonly height: number;
  /** What is too long for a foot stands once, after all else. */
  readonly further: readonly Band[];
  readonly draw: (
    pen: Pen,
    at: Point,
    count: { readonly page: number; readonly of: number },
  ) => void;
}

const SIZE = 6.8;
const LEADING = leadingOf(SIZE);
const ABOVE = 10;
/** More lines than this of legal words and terms do not stand at the foot. */
const MOST_LINES = 6;
/** Points that the words "Page 12 of 34" may take, and the white before them. */
const COUNT_WIDTH = 80;

/** As of when, whose it is and on what terms; they are read once, on the last page. */
export function footOf(data: PublicData, faces: PrintFaces, width: number): Foot {
  const { legal, dataTerms, zone } = data.property;
  const small = (text: string): Span => span(text, faces.labels.regular, SIZE, 70);
  const asOf = setLines(
    [small(`As of ${momentWords(data.asOf, zone)}. The list may change.`)],
    width - COUNT_WIDTH,
  );
  const rights = [legal, dataTerms].flatMap((text) => (text === null ? [] : [small(text)]));
  const set = rights.map((words) => setLines([words], width));
  const long = set.flat().length > MOST_LINES;
  const paragraphs = [asOf, ...(long ? [] : set)];
  const lines = paragraphs.flat().length;
  return {
    height: ABOVE + lines * LEADING,
    further: long ? [rightsBand(rights, width)] : [],
    draw: (pen, { x, y }, count) => {
      const top = { x, y: y + ABOVE };
      drawCount(pen, top, width, count, small);
      const read = count.page === count.of;
      drawParagraphs(pen, paragraphs, top, read);
    },
  };
}

function drawCount(
  pen: Pen,
  { x, y }: Point,
  width: number,
  { page, of }: { readonly page: number; readonly of: number },
  small: (text: string) => Span,
): void {
  const lines = setLines([small(`Page ${String(page)} of ${String(of)}`)], Infinity);
  pen.furniture('Pagination', () => {
    pen.rule({ x, y: y - 4 }, width, 0.4, 35);
    drawLines(pen, lines, { x: x + width - (lines[0]?.width ?? 0), y }, LEADING);
  });
}

function drawParagraphs(
  pen: Pen,
  paragraphs: readonly (readonly Line[])[],
  { x, y }: Point,
  read: boolean,
): void {
  let down = y;
  for (const lines of paragraphs) {
    const at = { x, y: down };
    const draw = (): void => drawLines(pen, lines, at, LEADING);
    if (read) pen.reads({ tag: 'P' }, draw);
    else pen.furniture('Pagination', draw);
    down += lines.length * LEADING;
  }
}

function rightsBand(rights: readonly Span[], width: number): Band {
  const items = rights.flatMap((words) =>
    paragraph({
      part: { tag: 'P' },
      spans: [words],
      width,
      leading: LEADING,
      before: LEADING,
      keep: false,
    }),
  );
  return { columns: 1, gap: 0, before: 2 * LEADING, items };
}
