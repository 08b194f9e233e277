import type { Faces, SetLine } from '../../typeset/index.js';
import {
  backGround,
  bleedOf,
  frontStrips,
  zoneRect,
  type Fill,
  CARD_INK,
  CARD_PAPER,
  type CardText,
  HAIRLINE,
  heldLines,
  type Listed,
  mm,
  PANEL,
  type Rect,
  type Size,
  whyVoid,
  type ZoneSetting,
} from '../card/index.js';
import { draw, caption } from './chrome.js';
import { PENCIL, QUIET, WARNING } from './colours.js';
import { segment } from './marks.js';
import type { Pen, Section } from './pen.js';
import type { ProofOptions } from './types.js';

/** A side to be drawn, in points from the trimmed top left corner of the card. */
export interface SideToDraw {
  readonly listed: Listed;
  readonly side: 'front' | 'back';
  readonly text: CardText;
  /** Nothing is drawn outside of it: the trim, or the trim with its bleed. */
  readonly extent: Rect;
  /** Whether lines that are over are told from those that will print. */
  readonly warned: boolean;
  /** Whether zones that overflow and words that are held are marked. */
  readonly marked: boolean;
  /** Told of a card that is not as printed where nothing beside it can say so. */
  readonly banner: string | null;
}

type Art = Pick<ProofOptions, 'art' | 'chrome'>;

/** Draws one side of a card. */
export function drawSide(pen: Pen, section: Section, side: SideToDraw, options: Art): void {
  pen.clipped(side.extent, () => {
    const reason = whyVoid(side.listed);
    if (reason !== null) drawVoid(pen, section, side, reason, options.chrome);
    else if (side.side === 'front') drawFront(pen, section, side, options);
    else drawBack(pen, section, side);
    if (side.banner !== null) drawBanner(pen, section, side, side.banner, options.chrome);
  });
}

function drawFront(pen: Pen, section: Section, side: SideToDraw, options: Art): void {
  const { card, layout } = side.listed;
  pen.furniture(() => pen.fill(side.extent, layout?.frontPaper ?? CARD_PAPER));
  const image = card.image;
  const bytes = image && options.art(image.source);
  if (bytes) {
    pen.figure(section, image.alt, () => pen.picture(bytes, bleedOf(side.listed), image.source));
  } else if (layout?.frontPaper === undefined || image) {
    pen.furniture(() => hatch(pen, bleedOf(side.listed)));
    pen.reads(section, 'P', () => {
      label(
        pen,
        side.listed.trim,
        side.listed.card.notes ? 'Art to come' : 'No art',
        options.chrome,
      );
    });
  }
  if (layout?.frontPaper !== undefined) {
    pen.furniture(() => fillAll(pen, frontStrips(side.text.front, layout)));
  }
  drawZones(pen, section, side, side.text.front);
}

function fillAll(pen: Pen, fills: readonly Fill[]): void {
  for (const { rect, colour } of fills) pen.fill(rect, colour);
}

function drawBack(pen: Pen, section: Section, side: SideToDraw): void {
  const { layout } = side.listed;
  if (!layout) return;
  pen.furniture(() => {
    fillAll(pen, backGround(layout, side.extent));
  });
  drawZones(pen, section, side, side.text.back);
}

function drawZones(
  pen: Pen,
  section: Section,
  side: SideToDraw,
  zones: readonly ZoneSetting[],
): void {
  for (const { name, zone, setting } of zones) {
    const ink = zone.colour ?? CARD_INK;
    pen.reads(section, 'P', () => {
      pen.lines(setting.lines, setting.size, (line) =>
        side.warned && line.overset ? WARNING : ink,
      );
    });
    if (!side.marked) continue;
    if (!setting.fits) pen.furniture(() => pen.outline(zoneRect(zone), 0.5, WARNING));
    if (name !== 'bio') continue;
    for (const { lines } of heldLines(side.listed.card.bio, setting.lines)) {
      pen.furniture(() => heldRules(pen, lines, mm(zone.x), setting.size, setting.leading));
    }
  }
}

/** A thin rule to the left of each line that has held words. */
function heldRules(
  pen: Pen,
  lines: readonly SetLine[],
  left: number,
  size: number,
  leading: number,
): void {
  const x = left - mm(1.3);
  const bars = lines.map(({ baseline }) => {
    const top = baseline - size * 0.75 - (leading - size) / 2;
    return segment(x, top, x, top + leading);
  });
  pen.rules(bars, 0.75, PENCIL);
}

/** A light panel, crossed from corner to corner, with words in the middle. */
function drawVoid(
  pen: Pen,
  section: Section,
  side: SideToDraw,
  words: string,
  chrome: Faces,
): void {
  const { trim } = side.listed;
  const { width, height } = trim;
  pen.furniture(() => {
    pen.fill(side.extent, PANEL);
    pen.rules([segment(0, 0, width, height), segment(width, 0, 0, height)], 0.5, HAIRLINE);
  });
  pen.reads(section, 'P', () => label(pen, trim, words, chrome));
}

/** Slanting lines, light enough to be read over. */
function hatch(pen: Pen, rect: Rect): void {
  const step = mm(3.5);
  const { x, y, width, height } = rect;
  const count = Math.ceil((width + height) / step);
  const lines = Array.from({ length: count }, (_, index) => {
    const at = x + index * step;
    return segment(at, y, at - height, y + height);
  });
  pen.fill(rect, PANEL);
  pen.clipped(rect, () => pen.rules(lines, 0.4, HAIRLINE));
}

/** Words in the middle of the card, on a strip of paper. */
function label(pen: Pen, { width, height }: Size, words: string, chrome: Faces): void {
  const style = { size: 8, leading: 10, colour: QUIET, align: 'center' as const };
  const block = caption(words, { x: 0, y: height / 2 + style.size * 0.3 }, width, style, chrome);
  const half = block.width / 2 + mm(2);
  pen.fill(
    { x: width / 2 - half, y: height / 2 - mm(2.5), width: 2 * half, height: mm(5) },
    CARD_PAPER,
  );
  draw(pen, block);
}

/** A strip along the foot of the card. */
function drawBanner(
  pen: Pen,
  section: Section,
  { listed: { trim } }: SideToDraw,
  words: string,
  chrome: Faces,
): void {
  const height = mm(3.4);
  const style = { size: 6, leading: 7, colour: QUIET, align: 'center' as const };
  pen.furniture(() =>
    pen.fill({ x: 0, y: trim.height - height, width: trim.width, height }, PANEL),
  );
  pen.reads(section, 'P', () => {
    draw(pen, caption(words, { x: 0, y: trim.height - mm(1.1) }, trim.width, style, chrome));
  });
}
