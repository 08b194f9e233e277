import type { BackFile, Zone } from '../../../schema/index.js';
import { CARD_PAPER } from './colours.js';
import { grow, mm, type Rect } from './geometry.js';
import type { Listed } from './prepare.js';
import type { ZoneSetting } from './set-sides.js';

/** A rectangle in one colour, in points from the trimmed top left corner. */
export interface Fill {
  readonly rect: Rect;
  readonly colour: string;
}

/** The card with its bleed. */
export function bleedOf({ trim, bleed }: Pick<Listed, 'trim' | 'bleed'>): Rect {
  return grow({ x: 0, y: 0, ...trim }, bleed);
}

/** What lies under the texts of a back, the lowest first, within `extent`. */
export function backGround(layout: BackFile, extent: Rect): readonly Fill[] {
  const paper = { rect: extent, colour: layout.paper ?? CARD_PAPER };
  if (layout.blank === true) return [paper];
  const panels = layout.panels ?? [];
  return [
    paper,
    ...panels.map((panel) => ({ rect: runOn(panel, layout, 0), colour: panel.colour })),
  ];
}

/** Millimetres of the front's paper around each text that stands on it. */
const STRIP_EDGE = 1.5;

/**
 * The front's paper under its texts, so that words over art can be read. Where it comes to the safe
 * margin it runs on into the bleed; strips that touch look like one.
 */
export function frontStrips(zones: readonly ZoneSetting[], layout: BackFile): readonly Fill[] {
  const { frontPaper, safe } = layout;
  if (frontPaper === undefined) return [];
  return zones.map(({ zone }) => ({
    rect: runOn(grow(zone, STRIP_EDGE), layout, safe),
    colour: frontPaper,
  }));
}

/** A zone in points. */
export function zoneRect({ x, y, width, height }: Pick<Zone, keyof Rect>): Rect {
  return { x: mm(x), y: mm(y), width: mm(width), height: mm(height) };
}

/** A rectangle in millimetres as points; a side as near the trimmed edge as `margin` is in the bleed. */
function runOn(rect: Rect, { trim, bleed }: BackFile, margin: number): Rect {
  const left = rect.x <= margin ? -bleed : rect.x;
  const top = rect.y <= margin ? -bleed : rect.y;
  const right = rect.x + rect.width;
  const bottom = rect.y + rect.height;
  return {
    x: mm(left),
    y: mm(top),
    width: mm((right >= trim.width - margin ? trim.width + bleed : right) - left),
    height: mm((bottom >= trim.height - margin ? trim.height + bleed : bottom) - top),
  };
}
