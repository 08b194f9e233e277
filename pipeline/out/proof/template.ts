import { mm, type Size } from '../card/index.js';
import { turnedSize } from './geometry.js';
import { REACH } from './marks.js';

/** How cards of one size stand on annotated sheets. */
export interface Template {
  /** The page, upright or on its side. */
  readonly page: Size;
  /** Front beside back, or each on a page of its own. */
  readonly sides: 'pair' | 'one';
  readonly rows: number;
  /** 1, but for a card that is larger than the paper. */
  readonly scale: number;
  /** Where the notes start, and how wide they are. */
  readonly notes: { readonly x: number; readonly width: number };
}

export const MARGIN = mm(8);
/** What the head and the foot of a page take. */
export const HEAD = mm(15);
export const FOOT = mm(12);

const NOTES_GAP = mm(2.5);
const NOTES_LEAST = mm(33);
const NOTES_MOST = mm(70);
/** The least height of a row, so that the notes have room. */
const ROW_LEAST = mm(70);

/**
 * The first of these that has room on the paper: pairs on an upright page, pairs on a page on its
 * side, single sides on either; else single sides made smaller.
 * @param below what is kept free below each row, in points.
 */
export function templateFor(trim: Size, bleed: number, paper: Size, below = 0): Template {
  const pages = [paper, turnedSize(paper)];
  const side = { width: trim.width + 2 * bleed, height: trim.height + 2 * bleed };
  const fitting = (['pair', 'one'] as const)
    .flatMap((sides) => pages.map((page) => template(side, sides, page, 1, below)))
    .find(({ rows, notes }) => rows > 0 && notes.width >= NOTES_LEAST);
  if (fitting) return fitting;
  const scales = pages.map((page) => ({ page, scale: largestScale(side, page, below) }));
  const { page, scale } = scales.reduce((best, each) => (each.scale > best.scale ? each : best));
  return { ...template(side, 'one', page, scale, below), rows: 1 };
}

function template(
  side: Size,
  sides: Template['sides'],
  page: Size,
  scale: number,
  below: number,
): Template {
  const columns = sides === 'pair' ? 2 : 1;
  const cell = 2 * REACH + side.width * scale;
  const x = MARGIN + columns * cell + NOTES_GAP;
  const row = Math.max(ROW_LEAST, 2 * REACH + side.height * scale) + below;
  return {
    page,
    sides,
    rows: Math.floor(roomDown(page) / row),
    scale,
    notes: { x, width: Math.min(page.width - MARGIN - x, NOTES_MOST) },
  };
}

function largestScale(side: Size, page: Size, below: number): number {
  const across = page.width - 2 * MARGIN - 2 * REACH - NOTES_GAP - NOTES_LEAST;
  return Math.min(1, across / side.width, (roomDown(page) - below - 2 * REACH) / side.height);
}

/** What is left of the height of a page between head and foot. */
export function roomDown(page: Size): number {
  return page.height - HEAD - FOOT;
}
