import type { View, ViewSet } from '../../gate/index.js';
import { Bookmarks } from './bookmarks.js';
import { INK } from './colours.js';
import {
  grow,
  PAPERS,
  sizeInMm,
  turnedSize,
  type Point,
  type Rect,
  type Size,
} from './geometry.js';
import { gridMarks, REACH } from './marks.js';
import { headingOf } from './notes.js';
import { nineUpStrips } from './nine-up-strips.js';
import { HAIR, type PageLabel, type Pen } from './pen.js';
import { isCut, setCard, whyVoid, type CardText, type Listed } from './prepare.js';
import { putSide, type Putting } from './put.js';
import { drawFoot, drawHead } from './strips.js';
import { FOOT, HEAD, MARGIN } from './template.js';
import type { PlacedSide, ProofOptions } from './types.js';

/** A pocket page holds three rows of three cards of 2.5 x 3.5 in. */
const ACROSS = 3;
const DOWN = 3;
const CELL = sizeInMm(63.5, 88.9);
/** Points by which a card may differ from its pocket: a tenth of a millimetre. */
const SAME = 0.3;

/** A sheet of paper, printed on both sides. */
interface Leaf {
  readonly set: ViewSet;
  readonly page: Size;
  readonly places: readonly Place[];
  /** Where the cards are that share their edges; null for a card by itself. */
  readonly block: Rect | null;
}

interface Place {
  readonly listed: Listed;
  /** On the front of the leaf: top left corners of the trimmed card. */
  readonly corner: Point;
  readonly turned: boolean;
  readonly scale: number;
}

const NO_TEXT: CardText = { front: [], back: [] };

const NOTES = {
  front: 'The backs follow on the next page: print both sides, turned on the long edge.',
  back: 'Backs of the page before, so the columns run from right to left.',
} as const;

/** Draws nine cards to a page, trim to trim, each page of fronts before that of their backs. */
export function drawNineUp(
  pen: Pen,
  view: View,
  cards: readonly Listed[],
  options: ProofOptions,
): { readonly placed: readonly PlacedSide[]; readonly labels: readonly PageLabel[] } {
  const leaves = planLeaves(cards, PAPERS[options.paper]);
  const bookmarks = new Bookmarks(pen);
  const placed = leaves.flatMap((leaf) => {
    const texts = leaf.places.map(({ listed }) => setCard(view, listed, options));
    return (['front', 'back'] as const).flatMap((side) => {
      pen.addPage(leaf.page, boxesOf(leaf));
      if (side === 'front') for (const { listed } of leaf.places) bookmarks.mark(listed);
      drawEdges(pen, view, leaf, side, 2 * leaves.length, options);
      return leaf.places.map((place, index) => {
        const { listed } = place;
        const section = pen.section(`${headingOf(listed.card)}, ${side}`);
        const text = texts[index] ?? NO_TEXT;
        const placed = putSide(pen, section, listed, text, puttingOf(leaf, place, side), options);
        section.end();
        return placed;
      });
    });
  });
  return { placed, labels: labelsOf(leaves) };
}

/** Of each set first the cards that a pocket holds, nine by nine, then each other by itself. */
function planLeaves(cards: readonly Listed[], paper: Size): readonly Leaf[] {
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
function boxesOf({ block, places: [place] }: Leaf): { trim?: Rect; bleed?: Rect } {
  if (block) return { trim: block, bleed: block };
  if (!place) return {};
  const { listed, corner, scale } = place;
  const { width, height } = listed.trim;
  const trim = { ...corner, width: width * scale, height: height * scale };
  return { trim, bleed: grow(trim, listed.bleed * scale) };
}

/**
 * The back of a leaf is seen from the other side: left is right, and a card that lies with its top
 * to the right on the front has it to the left on the back.
 */
function puttingOf({ page, block }: Leaf, place: Place, side: 'front' | 'back'): Putting {
  const { listed, corner, turned, scale } = place;
  const { card, trim } = listed;
  const width = (turned ? trim.height : trim.width) * scale;
  const x = side === 'front' ? corner.x : page.width - corner.x - width;
  return {
    side,
    corner: { x, y: corner.y },
    turn: !turned ? 'none' : side === 'front' ? 'clockwise' : 'counter-clockwise',
    scale,
    bleeds: block === null,
    marked: false,
    banner: whyVoid(listed) !== null ? headingOf(card) : isCut(card) ? 'Not as printed' : null,
  };
}

function drawEdges(
  pen: Pen,
  view: View,
  { set, page, block }: Leaf,
  side: 'front' | 'back',
  of: number,
  options: ProofOptions,
): void {
  const { head, foot } = nineUpStrips(page, block);
  const part = side === 'front' ? 'fronts' : 'backs';
  drawHead(pen, head, { title: set.short, part }, view, options);
  drawFoot(pen, foot, { note: NOTES[side], page: pen.pages, of }, view, options);
  if (block) {
    pen.furniture(() => pen.rules(gridMarks(block, ACROSS, DOWN), HAIR, INK));
  }
}

function labelsOf(leaves: readonly Leaf[]): readonly PageLabel[] {
  return leaves.flatMap(({ set }, index) =>
    leaves[index - 1]?.set === set ? [] : [{ from: 2 * index, prefix: set.short }],
  );
}
