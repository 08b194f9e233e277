import { type CardText, grow, type Listed, type Point } from '../card/index.js';
import { apply, lying, placing, type Matrix, type Turn } from './geometry.js';
import { drawCropMarks } from './marks.js';
import type { Pen, Section } from './pen.js';
import { drawSide } from './side.js';
import type { PlacedSide, PlacedWord, ProofOptions } from './types.js';

/** Where and how a side of a card is put on the page. */
export interface Putting {
  readonly side: 'front' | 'back';
  /** The top left corner of the trimmed card as it lies. */
  readonly corner: Point;
  readonly turn: Turn;
  readonly scale: number;
  /** With its bleed and crop marks; else the trimmed card alone. */
  readonly bleeds: boolean;
  readonly warned: boolean;
  readonly marked: boolean;
  readonly banner: string | null;
}

/** Puts a side of a card on the page and tells where it has come to stand. */
export function putSide(
  pen: Pen,
  section: Section,
  listed: Listed,
  text: CardText,
  putting: Putting,
  options: ProofOptions,
): PlacedSide {
  const { side, corner, turn, scale, bleeds, warned, marked, banner } = putting;
  const { width, height } = lying(listed.trim, turn);
  const trim = { ...corner, width: width * scale, height: height * scale };
  const matrix = placing(listed.trim, corner, turn, scale);
  const extent = grow({ x: 0, y: 0, ...listed.trim }, bleeds ? listed.bleed : 0);
  pen.within(matrix, () => {
    drawSide(pen, section, { listed, side, text, extent, warned, marked, banner }, options);
  });
  if (bleeds) pen.furniture(() => drawCropMarks(pen, trim, listed.bleed * scale));
  const { identity, number } = listed.card;
  return {
    set: listed.set.id,
    subset: listed.subset.id,
    identity,
    number,
    side,
    page: pen.pages,
    trim,
    turn,
    scale,
    bio: text[side]
      .filter(({ name }) => name === 'bio')
      .flatMap((bio) => placeWords(bio, matrix, scale)),
  };
}

function placeWords(
  { setting }: CardText['back'][number],
  matrix: Matrix,
  scale: number,
): readonly PlacedWord[] {
  return setting.lines.flatMap((line) =>
    line.words.map(({ text, x, width }) => {
      const start = apply(matrix, { x: line.x + x, y: line.baseline });
      return {
        text,
        x: start.x,
        baseline: start.y,
        width: width * scale,
        overset: line.overset,
      };
    }),
  );
}
