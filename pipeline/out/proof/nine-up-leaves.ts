import type { ViewSet } from '../../gate/index.js';
import { grow, type Listed, type Point, type Rect, type Size, sizeInMm } from '../card/index.js';
import { turnedSize } from './geometry.js';
import { REACH } from './marks.js';
import type { PageBoxes } from './pen.js';
import { FOOT, HEAD, MARGIN } from './template.js';

/** A pocket page holds three rows of three cards of 2.5 x 3.5 in. */
export const ACROSS = 3;
export const DOWN = 3;
const CELL = sizeInMm(63.5, 88.9);
/** Points by which a card may differ from its pocket: a tenth of a millimetre. */
const SAME = 0.3;

/** A sheet of paper, printed on both sides. */
export interface Leaf {
  readonly set: ViewSet;
  readonly page: Size;
  readonly places: readonly Place[];
  /** Where the cards are that share their edges; null for a card by itself. */
  readonly block: Rect | null;
}

export interface Place {
  readonly listed: Listed;
  /** On the front of the leaf: top left corners of the trimmed card. */
  readonly corner: Point;
  readonly turned: boolean;
  readonly scale: number;
}

/** Of each set first the cards that a pocket holds, nine by nine, then each other by itself. */
export function planLeaves(cards: readonly Listed[], paper: Size): readonly Leaf[] {
  const issued = cards.filter(({ card }) => card.state !== 'not issued');
  return [...new Set(issued.map(({ set }) => set))].flatMap((set) => {
    const own = issued.filter((listed) => listed.set === set);
    const pocketed = own.filter((listed) => isPocketed(listed.trim));
    const perLeaf = ACROSS * DOWN;
    return [
      ...Array.from({ length: Math.ceil(pocketed.length / perLeaf) }, (_, index) =>
        gridLeaf(set, pocketed.slice(index * perLeaf, (index + 1) * perLeaf), paper),
      ),
      ...own.filter(({ trim }) => !isPocketed(trim)).map((listed) => singleLeaf(listed, paper)),
    ];
  });
}

function isPocketed(trim: Size): boolean {
  return isSize(trim, CELL) || isSize(turnedSize(trim), CELL);
}

function isSize(a: Size, b: Size): boolean {
  return Math.abs(a.width - b.width) < SAME && Math.abs(a.height - b.height) < SAME;
}

function gridLeaf(set: ViewSet, cards: readonly Listed[], page: Size): Leaf {
  const block = centred({ width: ACROSS * CELL.width, height: DOWN * CELL.height }, page);
  const places = cards.map((listed, index) => ({
    listed,
    corner: {
      x: block.x + (index % ACROSS) * CELL.width,
      y: block.y + Math.floor(index / ACROSS) * CELL.height,
    },
    turned: listed.trim.width > listed.trim.height,
    scale: 1,
  }));
  return { set, page, places, block };
}

/** On the side of the paper on which the card is largest, at true size if it can be. */
function singleLeaf(listed: Listed, paper: Size): Leaf {
  const [page, scale] = [paper, turnedSize(paper)]
    .map((size) => [size, scaleOn(listed, size)] as const)
    .reduce((best, each) => (each[1] > best[1] ? each : best));
  const { width, height } = listed.trim;
  const corner = centred({ width: width * scale, height: height * scale }, page);
  return { set: listed.set, page, places: [{ listed, corner, turned: false, scale }], block: null };
}

function scaleOn({ trim, bleed }: Listed, page: Size): number {
  const across = (page.width - 2 * (MARGIN + REACH)) / (trim.width + 2 * bleed);
  const down = (page.height - 2 * (Math.max(HEAD, FOOT) + REACH)) / (trim.height + 2 * bleed);
  return Math.min(1, across, down);
}

function centred({ width, height }: Size, page: Size): Rect {
  return { x: (page.width - width) / 2, y: (page.height - height) / 2, width, height };
}

/** The page of a grid is trimmed to its block, that of a single card to the card. */
export function boxesOf({ block, places: [place] }: Leaf): PageBoxes {
  if (block) return { trim: block, bleed: block };
  if (!place) return {};
  const { listed, corner, scale } = place;
  const { width, height } = listed.trim;
  const trim = { ...corner, width: width * scale, height: height * scale };
  return { trim, bleed: grow(trim, listed.bleed * scale) };
}
