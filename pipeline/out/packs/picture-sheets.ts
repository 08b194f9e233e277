import type { PacksSet } from '../../../schema/index.js';
import { captionOf } from './sheet-caption.js';
import { LARGEST, cellsOf, sizeOf } from './sheet-cells.js';
import { formsOf, type NamedForm } from './sheets-text.js';
import { EDGE, GREY, fitted, heading, num, words, type Panel } from './svg.js';

const TOP = 70;
/** Sheets side by side, as wide as the largest that is drawn, and what is between them. */
const ABREAST = 3;
const GAP = 34;
const BELOW = 34;
/** For a line of words above or below a sheet. */
const ROOM = LARGEST.wide + GAP - 8;
/** Above a sheet, for its title. */
const TITLE = 12;
const LINE = 16;

interface Block {
  readonly marks: readonly string[];
  readonly high: number;
}

/** The press sheets of a set, side by side, each place drawn, and what comes of them. */
export function sheetsPanel(set: Pick<PacksSet, 'kinds'>): Panel | null {
  const blocks = formsOf(set).map(blockOf);
  if (blocks.length === 0) return null;
  const drawn: string[] = [];
  let top = TOP;
  for (let first = 0; first < blocks.length; first += ABREAST) {
    const row = blocks.slice(first, first + ABREAST);
    drawn.push(...row.map(({ marks }, at) => moved(EDGE + at * (LARGEST.wide + GAP), top, marks)));
    top += Math.max(...row.map(({ high }) => high)) + BELOW;
  }
  const head = heading(
    'Press sheets',
    'A double frame: printed double. A cross: blank. Where a card stands on its sheet is for the printer to say.',
  );
  return { marks: [...head, ...drawn], high: top - BELOW };
}

function blockOf(named: NamedForm): Block {
  const { title, sheets, form } = named;
  const { high } = sizeOf(sheets);
  const lines = captionOf(form);
  const marks = [
    words(0, 0, fitted(title, ROOM), { more: 'font-weight="bold"' }),
    moved(0, TITLE, cellsOf(sheets, form)),
    ...lines.map((line, at) =>
      words(0, TITLE + high + (at + 1) * LINE + 2, fitted(line, ROOM, 12), {
        size: 12,
        fill: GREY,
      }),
    ),
  ];
  return { marks, high: TITLE + high + lines.length * LINE };
}

function moved(x: number, y: number, marks: readonly string[]): string {
  return `<g transform="translate(${num(x)} ${num(y)})">\n${marks.join('\n')}\n</g>`;
}
