import { HAIRLINE, mm } from '../card/index.js';
import { grouped } from '../wording/index.js';
import { caption, draw, type Block, type Style } from './chrome.js';
import { PENCIL, QUIET } from './colours.js';
import type { FlowItem } from './flow.js';
import { PAPERS } from './geometry.js';
import { barScale, type LogScale } from './log-scale.js';
import { segment } from './marks.js';
import {
  CELL,
  CELL_HEAD,
  cellsOf,
  drawCells,
  lazily,
  PAD,
  rowHeight,
  type Stand,
  widthOf,
} from './odds-cells.js';
import { HAIR, type Pen } from './pen.js';
import { TEXT_MARGIN } from './text-pages.js';
import type { ProofOptions } from './types.js';

const AXIS: Style = { size: 7, leading: 9, colour: QUIET, align: 'center' };

const COLUMNS = { names: mm(58), figures: mm(18), gap: mm(3) };
const BAR = 6;
/** Most rows of a table that is never parted, since the next page would not have its heads. */
const WHOLE = 14;

/** Values of one kind with a bar each, on a logarithmic scale. */
export interface BarTable {
  /** The heads of the columns before the bars: of what is named, then of each figure. */
  readonly heads: readonly string[];
  readonly rows: readonly BarRow[];
  /** The largest value that the scale has room for: tables of one set may share it. */
  readonly most: number;
  /** What the bars show, in words. */
  readonly alt: string;
}

export interface BarRow {
  readonly title: string;
  /** As many as there are heads but one. */
  readonly figures: readonly string[];
  readonly value: number;
}

/** A table with bars as items of a flow: its heads, and a row each; a short one is kept together. */
export function barTableItems(of: BarTable, stand: Stand): readonly FlowItem[] {
  const { pen, section, options } = stand;
  const { heads, rows, most, alt } = of;
  const left = TEXT_MARGIN + widthOf(COLUMNS, heads.length) + mm(3);
  const plot = PAPERS[options.paper].width - TEXT_MARGIN - mm(4) - left;
  const scale = barScale(most, plot);
  const table = lazily(() => pen.part(section(), 'Table'));
  const bars = lazily(() => {
    table();
    return pen.part(section(), 'Figure', { alt });
  });
  const head = cellsOf(heads, COLUMNS, CELL_HEAD, options);
  return [
    rowItem(head, {
      keep: true,
      draw: (y, height) => {
        drawCells(pen, table(), head, 'Column', y);
        pen.furniture(() => drawTicks(pen, scale, left, y + height, options));
      },
    }),
    ...rows.map(({ title, figures, value }, index) => {
      const cells = cellsOf([title, ...figures], COLUMNS, CELL, options);
      return rowItem(cells, {
        keep: index < rows.length - 1 && (index === 0 || rows.length <= WHOLE),
        draw: (y, height) => {
          drawCells(pen, table(), cells, 'Row', y);
          const middle = y + PAD + CELL.leading / 2;
          pen.furniture(() => drawGrid(pen, scale, left, y, height));
          pen.draws(bars(), () => {
            const bar = { x: left, y: middle - BAR / 2, width: scale.along(value), height: BAR };
            pen.fill(bar, PENCIL);
          });
        },
      });
    }),
  ];
}

/** A row that is never divided. */
function rowItem(
  cells: readonly Block[],
  row: { readonly keep: boolean; readonly draw: (y: number, height: number) => void },
): FlowItem {
  const leading = rowHeight(cells);
  return {
    before: 0,
    lines: 1,
    leading,
    keep: row.keep,
    draw: (_from, _to, y) => {
      row.draw(y, leading);
    },
  };
}

function drawTicks(
  pen: Pen,
  { ticks, along }: LogScale,
  left: number,
  foot: number,
  { chrome }: ProofOptions,
): void {
  for (const tick of ticks) {
    const x = left + along(tick);
    const at = { x: x - mm(8), y: foot - 3 };
    draw(pen, caption(grouped(tick), at, mm(16), AXIS, chrome));
  }
}

function drawGrid(
  pen: Pen,
  { ticks, along }: LogScale,
  left: number,
  y: number,
  height: number,
): void {
  const lines = [0, ...ticks.map(along)].map((x) => segment(left + x, y, left + x, y + height));
  pen.rules(lines, HAIR, HAIRLINE);
}
