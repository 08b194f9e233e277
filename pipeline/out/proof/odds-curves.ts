import { CARD_PAPER, HAIRLINE, mm, type Point, type Rect } from '../card/index.js';
import { SHARES, type ToldCompletion } from '../packs/index.js';
import { cardCount, grouped } from '../wording/index.js';
import { caption, draw, type Style } from './chrome.js';
import { INK, QUIET } from './colours.js';
import type { FlowItem } from './flow.js';
import { PAPERS } from './geometry.js';
import { curveScale, type LogScale } from './log-scale.js';
import { segment } from './marks.js';
import {
  CELL,
  CELL_HEAD,
  cellsOf,
  drawCells,
  lazily,
  rowHeight,
  type Stand,
  widthOf,
} from './odds-cells.js';
import { HAIR, type Dashes, type Pen } from './pen.js';
import { TEXT_MARGIN } from './text-pages.js';
import type { ProofOptions } from './types.js';

/** How the curves of one picture are told apart, besides by their numbers. */
const DASHES: readonly (Dashes | null)[] = [
  null,
  { dash: 4, gap: 2.5 },
  { dash: 1.2, gap: 1.8 },
  { dash: 8, gap: 3 },
  { dash: 2.5, gap: 5 },
];
/** Where the number of a curve stands on it, in turn, so that those of neighbours stay apart. */
const MARKED = [0.5, 0.75, 0.25];

const COLUMNS = { names: mm(56), figures: mm(13.5), gap: mm(2) };
/** In packs: the mean, then after how many so many of a hundred collectors have all cards. */
const HEADS = ['Packs to have all cards of', 'On average', '50 of 100', '90 of 100', '99 of 100'];

const PLOT = { height: mm(24), above: mm(3), below: mm(7) };
const AXIS: Style = { size: 7, leading: 9, colour: QUIET };

/**
 * What it takes to have all cards of a subset, as items of a flow: a table, and beside it the curves
 * of as many subsets as can be told apart.
 */
export function completionItems(
  complete: readonly ToldCompletion[],
  stand: Stand,
): readonly FlowItem[] {
  const groups = Math.ceil(complete.length / DASHES.length);
  return Array.from({ length: groups }, (_, at) =>
    groupItem(complete.slice(at * DASHES.length, (at + 1) * DASHES.length), stand),
  );
}

function groupItem(complete: readonly ToldCompletion[], stand: Stand): FlowItem {
  const { pen, section, options } = stand;
  const head = cellsOf(HEADS, COLUMNS, CELL_HEAD, options);
  const rows = complete.map((each, at) => cellsOf(figuresOf(each, at), COLUMNS, CELL, options));
  const heights = [head, ...rows].map(rowHeight);
  const table = lazily(() => pen.part(section(), 'Table'));
  const left = TEXT_MARGIN + widthOf(COLUMNS, HEADS.length) + mm(14);
  const width = PAPERS[options.paper].width - TEXT_MARGIN - mm(4) - left;
  const leading = Math.max(
    heights.reduce((sum, height) => sum + height, 0),
    PLOT.above + PLOT.height + PLOT.below,
  );
  return {
    before: mm(2),
    lines: 1,
    leading,
    keep: false,
    draw: (_from, _to, y) => {
      let down = y;
      [head, ...rows].forEach((cells, at) => {
        drawCells(pen, table(), cells, at === 0 ? 'Column' : 'Row', down);
        down += heights[at] ?? 0;
      });
      const plot = { x: left, y: y + PLOT.above, width, height: PLOT.height };
      drawPlot(complete, plot, stand);
    },
  };
}

function figuresOf(
  { title, cards, expected, half, ninety, ninetyNine }: ToldCompletion,
  at: number,
): readonly string[] {
  return [
    `${String(at + 1)}  ${title}, ${cardCount(cards)}`,
    ...[expected, half, ninety, ninetyNine].map(grouped),
  ];
}

/** The curves of how many of a hundred have all cards, by the packs that each opened. */
function drawPlot(
  complete: readonly ToldCompletion[],
  plot: Rect,
  { pen, section, options }: Stand,
): void {
  const starts = complete.map(({ curve }) => curve[0] ?? 1);
  const ends = complete.map(({ ninetyNine }) => ninetyNine);
  const scale = curveScale(Math.min(...starts), Math.max(...ends), plot.width);
  pen.furniture(() => drawAxes(pen, plot, scale, options));
  pen.figure(section(), altOf(complete), () => {
    complete.forEach(({ curve }, at) => {
      const pointOf = (share: number): Point => ({
        x: plot.x + scale.along(curve[SHARES.indexOf(share)] ?? 1),
        y: plot.y + plot.height * (1 - share),
      });
      pen.curve(SHARES.map(pointOf), 0.9, INK, DASHES[at] ?? null);
      const mark = pointOf(MARKED[at % MARKED.length] ?? 0.5);
      pen.disc(mark, 4, CARD_PAPER, INK);
      const style = { ...AXIS, size: 6, colour: INK, align: 'center' } as const;
      const number = { x: mark.x - 6, y: mark.y + 2 };
      draw(pen, caption(String(at + 1), number, 12, style, options.chrome));
    });
  });
}

function drawAxes(pen: Pen, plot: Rect, scale: LogScale, { chrome }: ProofOptions): void {
  const { x, y, width, height } = plot;
  const foot = y + height;
  for (const percent of [0, 50, 100]) {
    const level = foot - (height * percent) / 100;
    pen.rules([segment(x, level, x + width, level)], HAIR, HAIRLINE);
    const at = { x: x - mm(12), y: level + 2.4 };
    draw(pen, caption(String(percent), at, mm(11), { ...AXIS, align: 'right' }, chrome));
  }
  for (const tick of scale.ticks) {
    const along = x + scale.along(tick);
    pen.rules([segment(along, y, along, foot)], HAIR, HAIRLINE);
    const at = { x: along - mm(8), y: foot + 8 };
    draw(pen, caption(grouped(tick), at, mm(16), { ...AXIS, align: 'center' }, chrome));
  }
  const told = 'of 100 who do not trade, by packs opened';
  const at = { x: x - mm(6), y: foot + 17 };
  draw(pen, caption(told, at, width + mm(10), { ...AXIS, align: 'center' }, chrome));
}

function altOf(complete: readonly ToldCompletion[]): string {
  const told = complete.map(({ title, half, ninety, ninetyNine }) => {
    const by = `half by ${grouped(half)} packs, 90 of 100 by ${grouped(ninety)}, 99 by ${grouped(ninetyNine)}`;
    return `${title}: ${by}`;
  });
  return `Curves of how many of 100 collectors have all cards. ${told.join('; ')}.`;
}
