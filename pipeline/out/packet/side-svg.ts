import { escapeMarkup } from '../../text/index.js';
import type { Face, SetLine, SetPiece } from '../../typeset/index.js';
import {
  CARD_INK,
  HAIRLINE,
  PANEL,
  mm,
  type Fill,
  type Rect,
  type Size,
  type ZoneSetting,
} from '../card/index.js';
import { FONT_PREFIX } from './font-prefix.js';

/** A side of a card as it will print, in points from its trimmed top left corner. */
export interface SideDrawing {
  readonly label: string;
  readonly trim: Size;
  readonly extent: Rect;
  /** What lies under everything. */
  readonly ground: readonly Fill[];
  /**
   * The picture as a data: address, or as the key of one that the page puts in when it shows the
   * side; a hatch with words where there is none; null for neither.
   */
  readonly art:
    | { readonly address: string }
    | { readonly picture: string }
    | { readonly hatched: string }
    | null;
  /** What lies under the texts. */
  readonly strips: readonly Fill[];
  readonly zones: readonly ZoneSetting[];
  readonly keyOf: (face: Face) => string;
}

/** Draws a side of a card, trimmed, word for word where it was measured. */
export function sideSvg(side: SideDrawing): string {
  const { trim, label } = side;
  const box = `0 0 ${figure(trim.width)} ${figure(trim.height)}`;
  return (
    `<svg viewBox="${box}" role="img" aria-label="${escapeMarkup(label)}">` +
    side.ground.map(fillOf).join('') +
    artOf(side) +
    side.strips.map(fillOf).join('') +
    side.zones.map((zone) => zoneOf(zone, side.keyOf)).join('') +
    '</svg>'
  );
}

/** Hundredths of a point. */
function figure(length: number): string {
  return String(Math.round(length * 100) / 100);
}

function rectOf({ x, y, width, height }: Rect): string {
  return `x="${figure(x)}" y="${figure(y)}" width="${figure(width)}" height="${figure(height)}"`;
}

function fillOf({ rect, colour }: Fill): string {
  return `<rect ${rectOf(rect)} fill="${escapeMarkup(colour)}"/>`;
}

function artOf({ art, extent, trim }: SideDrawing): string {
  if (art === null) return '';
  if ('address' in art) return imageOf(extent, `href="${art.address}"`);
  if ('picture' in art) return imageOf(extent, `data-picture="${art.picture}"`);
  return hatch(extent) + words(art.hatched, trim);
}

function imageOf(extent: Rect, source: string): string {
  return `<image ${rectOf(extent)} preserveAspectRatio="xMidYMid slice" ${source}/>`;
}

/** Slanting lines, light enough to be read over. */
function hatch(rect: Rect): string {
  const step = mm(3.5);
  const { x, y, width, height } = rect;
  const count = Math.ceil((width + height) / step);
  const lines = Array.from({ length: count }, (_, index) => {
    const at = x + index * step;
    return `M${figure(at)} ${figure(y)}L${figure(at - height)} ${figure(y + height)}`;
  });
  return (
    fillOf({ rect, colour: PANEL }) +
    `<path d="${lines.join('')}" stroke="${HAIRLINE}" stroke-width=".4"/>`
  );
}

/** Words in the middle of a side. */
function words(said: string, { width, height }: Size): string {
  const half = said.length * 2.6;
  const strip = { x: width / 2 - half, y: height / 2 - 8, width: 2 * half, height: 16 };
  return (
    fillOf({ rect: strip, colour: '#ffffff' }) +
    `<text x="${figure(width / 2)}" y="${figure(height / 2 + 3)}" text-anchor="middle" font-size="9" fill="#55646c">${escapeMarkup(said)}</text>`
  );
}

const WARNING = '#b3261e';

function zoneOf({ zone, setting }: ZoneSetting, keyOf: SideDrawing['keyOf']): string {
  const ink = zone.colour ?? CARD_INK;
  const outline = setting.fits
    ? ''
    : `<rect ${rectOf({ x: mm(zone.x), y: mm(zone.y), width: mm(zone.width), height: mm(zone.height) })} fill="none" stroke="${WARNING}" stroke-width=".5"/>`;
  const lines = setting.lines.map((line) => lineOf(line, line.overset ? WARNING : ink, keyOf));
  return `<g font-size="${figure(setting.size)}">${lines.join('')}</g>${outline}`;
}

function lineOf(line: SetLine, ink: string, keyOf: SideDrawing['keyOf']): string {
  return line.pieces.map((piece) => pieceOf(piece, line, ink, keyOf)).join('');
}

function pieceOf(piece: SetPiece, line: SetLine, ink: string, keyOf: SideDrawing['keyOf']): string {
  const tracking = piece.tracking === 0 ? '' : ` letter-spacing="${figure(piece.tracking)}"`;
  const ligatures = piece.ligatures ? '' : ' font-variant-ligatures="none"';
  const set = piece.words.map(
    ({ text, x }) => `<tspan x="${figure(line.x + x)}">${escapeMarkup(text)}</tspan>`,
  );
  return `<text y="${figure(line.baseline)}" font-family="${FONT_PREFIX}${keyOf(piece.face)}" fill="${escapeMarkup(ink)}"${tracking}${ligatures}>${set.join(' ')}</text>`;
}
