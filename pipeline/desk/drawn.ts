import { createHash } from 'node:crypto';

import { view } from '../gate/index.js';
import { undividedNames, type Card, type CardSet, type Content } from '../model/index.js';
import {
  CARD_INK,
  backGround,
  bleedOf,
  frontStrips,
  listCards,
  setCard,
  whyVoid,
  zoneRect,
  type Fill,
  type Listed,
  type ZoneSetting,
} from '../out/card/index.js';
import { select, type Released } from '../select/index.js';
import type { Face, FontShelf, SetLine } from '../typeset/index.js';
import { zoneFit } from './fit-words.js';
import type { CardSides, ColourBox, DrawnLine, DrawnSide, DrawnZone } from './protocol.js';

/** The faces that have been drawn with, by the digest of their bytes. */
export class FaceShelf {
  readonly #keys = new WeakMap<Face, string>();
  readonly #faces = new Map<string, Face>();

  keyOf(face: Face): string {
    const known = this.#keys.get(face);
    if (known !== undefined) return known;
    const key = createHash('sha256').update(face.bytes).digest('hex').slice(0, 16);
    this.#keys.set(face, key);
    this.#faces.set(key, face);
    return key;
  }

  /** The TrueType bytes of a face that was drawn with. */
  bytesOf(key: string): Uint8Array | null {
    return this.#faces.get(key)?.bytes ?? null;
  }
}

/**
 * The content as if this were its one card, for eyes in the house: another file that cannot be read
 * must not keep a writer from seeing a card, and nothing of this leaves.
 */
export function cardAlone(content: Content, set: CardSet, card: Card): Released | null {
  return select({ ...content, faults: [], sets: [{ ...set, cards: [card] }] });
}

/** The two sides of a card as they will print, from the house's view; null if there is no view of it. */
export function cardSides(
  content: Content,
  set: CardSet,
  card: Card,
  fonts: FontShelf,
  faces: FaceShelf,
): CardSides | null {
  const released = cardAlone(content, set, card);
  const seen = released && view(released, { kind: 'house' });
  const [listed] = seen ? listCards(seen, {}) : [];
  if (!seen || !listed) return null;
  const undivided = undividedNames(content.names?.value ?? null);
  const why = whyVoid(listed);
  const { layout } = listed;
  if (why !== null || !layout) return { why, front: null, back: null, fits: [] };
  const text = setCard(seen, listed, { fonts, undivided });
  const hasArt = layout.front !== undefined || listed.card.image !== null;
  const missing = !set.art.has(card.front.image?.file ?? '');
  const extent = bleedOf(listed);
  const front = drawnSide(listed, {
    ground: [{ rect: extent, colour: layout.frontPaper ?? '#ffffff' }],
    art: listed.card.image ? (missing ? 'missing' : 'picture') : 'missing',
    strips: frontStrips(text.front, layout),
    zones: text.front,
    faces,
  });
  const back = drawnSide(listed, {
    ground: backGround(layout, extent),
    art: null,
    strips: [],
    zones: text.back,
    faces,
  });
  return {
    why: null,
    front: hasArt ? front : null,
    back,
    fits: [
      ...text.front.map(({ name, setting }) => zoneFit(name, 'front', setting)),
      ...text.back.map(({ name, setting }) => zoneFit(name, 'back', setting)),
    ],
  };
}

interface SideWords {
  readonly ground: readonly Fill[];
  readonly art: DrawnSide['art'];
  readonly strips: readonly Fill[];
  readonly zones: readonly ZoneSetting[];
  readonly faces: FaceShelf;
}

function drawnSide(listed: Listed, { ground, art, strips, zones, faces }: SideWords): DrawnSide {
  return {
    ...listed.trim,
    extent: bleedOf(listed),
    ground: ground.map(boxOf),
    art,
    strips: strips.map(boxOf),
    zones: zones.map((zone) => drawnZone(zone, faces)),
  };
}

function boxOf({ rect, colour }: Fill): ColourBox {
  return { ...rect, colour };
}

function drawnZone({ name, zone, setting }: ZoneSetting, faces: FaceShelf): DrawnZone {
  return {
    zone: name,
    box: zoneRect(zone),
    colour: zone.colour ?? CARD_INK,
    size: setting.size,
    fits: setting.fits,
    lines: setting.lines.map((line) => drawnLine(line, faces)),
  };
}

function drawnLine(line: SetLine, faces: FaceShelf): DrawnLine {
  return {
    baseline: rounded(line.baseline),
    overset: line.overset,
    pieces: line.pieces.map(({ face, tracking, ligatures, words }) => ({
      font: faces.keyOf(face),
      tracking,
      ligatures,
      words: words.map(({ text, x }) => ({ text, x: rounded(line.x + x) })),
    })),
  };
}

/** Hundredths of a point. */
function rounded(length: number): number {
  return Math.round(length * 100) / 100;
}
