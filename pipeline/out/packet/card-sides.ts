import type { BackFile } from '../../../schema/index.js';
import {
  PANEL,
  backGround,
  bleedOf,
  frontStrips,
  whyVoid,
  type CardText,
  type Listed,
} from '../card/index.js';
import { sideSvg, type SideDrawing } from './side-svg.js';

type Drawn = Pick<Listed, 'trim' | 'bleed'>;
type KeyOf = SideDrawing['keyOf'];

/** The front with its texts, over its art or a hatch. */
export function frontSvg(
  listed: Drawn,
  layout: BackFile,
  text: CardText,
  art: SideDrawing['art'],
  keyOf: KeyOf,
): string {
  const extent = bleedOf(listed);
  return sideSvg({
    label: 'The front as it prints',
    trim: listed.trim,
    extent,
    ground: [{ rect: extent, colour: layout.frontPaper ?? '#ffffff' }],
    art,
    strips: frontStrips(text.front, layout),
    zones: text.front,
    keyOf,
  });
}

/** The back with its texts, which stand as text beside it too. */
export function backSvg(listed: Drawn, layout: BackFile, text: CardText, keyOf: KeyOf): string {
  const extent = bleedOf(listed);
  return sideSvg({
    label: 'The back as it prints; its words stand beside it',
    trim: listed.trim,
    extent,
    ground: backGround(layout, extent),
    art: null,
    strips: [],
    zones: text.back,
    keyOf,
  });
}

/** A side on which nothing is drawn, with why; null where there is something. */
export function voidSvg(listed: Listed): string | null {
  const reason = whyVoid(listed);
  if (reason === null) return null;
  const extent = bleedOf(listed);
  return sideSvg({
    label: reason,
    trim: listed.trim,
    extent,
    ground: [{ rect: extent, colour: PANEL }],
    art: { hatched: reason },
    strips: [],
    zones: [],
    keyOf: () => '',
  });
}
