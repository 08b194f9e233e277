import type { View } from '../../gate/index.js';
import { isCut, setCard, whyVoid } from '../card/index.js';
import { Bookmarks } from './bookmarks.js';
import { INK } from './colours.js';
import { PAPERS } from './geometry.js';
import { gridMarks } from './marks.js';
import { ACROSS, boxesOf, DOWN, planLeaves, type Leaf, type Place } from './nine-up-leaves.js';
import { nineUpStrips } from './nine-up-strips.js';
import { headingOf } from './notes.js';
import { HAIR, type PageLabel, type Pen } from './pen.js';
import { putSide, type Putting } from './put.js';
import { drawFoot, drawHead } from './strips.js';
import type { PlacedSide, ProofOptions } from './types.js';

type Side = 'front' | 'back';

const FOOT_NOTES: Readonly<Record<Side, string>> = {
  front: 'The backs follow on the next page: print both sides, turned on the long edge.',
  back: 'Backs of the page before, so the columns run from right to left.',
};

/** Draws nine cards to a page, trim to trim, each page of fronts before that of their backs. */
export function drawNineUp(
  pen: Pen,
  view: View,
  cards: Parameters<typeof planLeaves>[0],
  options: ProofOptions,
): { readonly placed: readonly PlacedSide[]; readonly labels: readonly PageLabel[] } {
  const leaves = planLeaves(cards, PAPERS[options.paper]);
  const bookmarks = new Bookmarks(pen);
  const placed = leaves.flatMap((leaf) => {
    const filled = leaf.places.map((place) => ({
      ...place,
      text: setCard(view, place.listed, options),
    }));
    const turnTo = (side: Side): void => {
      pen.addPage(leaf.page, boxesOf(leaf));
      drawEdges(pen, view, leaf, side, 2 * leaves.length, options);
    };
    const put = (side: Side): readonly PlacedSide[] =>
      filled.map(({ text, ...place }) => {
        const section = pen.section(`${headingOf(place.listed.card)}, ${side}`);
        const how = puttingOf(view, leaf, place, side);
        const stands = putSide(pen, section, place.listed, text, how, options);
        section.end();
        return stands;
      });
    turnTo('front');
    for (const { listed } of leaf.places) bookmarks.mark(listed);
    const fronts = put('front');
    turnTo('back');
    return [...fronts, ...put('back')];
  });
  return { placed, labels: labelsOf(leaves) };
}

/**
 * The back of a leaf is seen from the other side: left is right, and a card that lies with its top
 * to the right on the front has it to the left on the back.
 */
function puttingOf(view: View, { page, block }: Leaf, place: Place, side: Side): Putting {
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
    warned: view.audience === 'house',
    marked: false,
    banner: whyVoid(listed) !== null ? headingOf(card) : isCut(card) ? 'Not as printed' : null,
  };
}

function drawEdges(
  pen: Pen,
  view: View,
  { set, page, block, places: [first] }: Leaf,
  side: Side,
  of: number,
  options: ProofOptions,
): void {
  const { head, foot } = nineUpStrips(page, block);
  const scale = first?.scale ?? 1;
  const shown = scale < 1 ? `, shown at ${String(Math.floor(scale * 100))} %` : '';
  const part = (side === 'front' ? 'fronts' : 'backs') + shown;
  drawHead(pen, head, { title: set.short, part }, view, options);
  drawFoot(pen, foot, { note: FOOT_NOTES[side], page: pen.pages, of }, view, options);
  if (block) {
    pen.furniture(() => pen.rules(gridMarks(block, ACROSS, DOWN), HAIR, INK));
  }
}

function labelsOf(leaves: readonly Leaf[]): readonly PageLabel[] {
  return leaves.flatMap(({ set }, index) =>
    leaves[index - 1]?.set === set ? [] : [{ from: 2 * index, prefix: set.short }],
  );
}
