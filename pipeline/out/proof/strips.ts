import { sayDay } from '../../model/index.js';
import type { View } from '../../gate/index.js';
import { CARD_PAPER, HAIRLINE, mm } from '../card/index.js';
import { bold, caption, draw, plain, type Block, type Style } from './chrome.js';
import { INK, QUIET } from './colours.js';
import { type Matrix } from './geometry.js';
import { segment } from './marks.js';
import { HAIR, type Pen } from './pen.js';
import type { ProofOptions } from './types.js';

/** A line of words at the edge of a page: it starts at the origin of the matrix and has its baseline there. */
export interface Strip {
  readonly matrix: Matrix;
  readonly width: number;
}

const TITLE: Style = { size: 9, leading: 11, colour: INK };
const TAG: Style = { size: 7.5, leading: 9, colour: CARD_PAPER, face: 'bold' };
const SMALL: Style = { size: 6.8, leading: 8, colour: QUIET };

/** The length of the bar that shows whether a printer has kept to the scale. */
export const BAR = mm(50);

/** Who a sheet is for: what must stand on each page. */
export function saysForWhom(
  { audience, highest, person }: View,
  { submission }: Pick<ProofOptions, 'submission'> = {},
): string {
  if (audience !== 'house') {
    const whom = person === null ? 'For review' : `For ${person}`;
    return submission ? `${whom} · submission ${String(submission.round)}` : whom;
  }
  return highest === null ? 'INTERNAL' : `INTERNAL, up to: ${highest}`;
}

/** The head of a page: what it shows, and on a dark tag whom it is for. */
export function drawHead(
  pen: Pen,
  strip: Strip,
  { title, part }: { readonly title: string; readonly part: string },
  view: View,
  options: ProofOptions,
): void {
  const { chrome } = options;
  const tag = caption(saysForWhom(view, options), { x: 0, y: 0 }, strip.width, TAG, chrome);
  const left = strip.width - tag.width - mm(2);
  const words = [bold(title), plain(` · ${part}`)];
  const heading = caption(words, { x: 0, y: 0 }, left - mm(4), TITLE, chrome);
  pen.furniture(() =>
    pen.within(strip.matrix, () => {
      draw(pen, firstLine(heading));
      const box = { x: left - mm(2), y: -mm(3.1), width: tag.width + mm(4), height: mm(4.3) };
      pen.fill(box, INK);
      pen.within([1, 0, 0, 1, left, 0], () => draw(pen, tag));
    }),
  );
}

/** A heading that is too long for its strip is cut, not wrapped over the card below. */
function firstLine(heading: Block): Block {
  return { ...heading, lines: heading.lines.slice(0, 1) };
}

/** A hairline under the head of a page. */
export function drawHeadRule(pen: Pen, { matrix, width }: Strip): void {
  const y = mm(2.6);
  pen.furniture(() =>
    pen.within(matrix, () => pen.rules([segment(0, y, width, y)], HAIR, HAIRLINE)),
  );
}

/** What stands at the foot of a page. */
interface FootWords {
  readonly note: string;
  readonly page: number;
  readonly of: number;
}

/** The foot of a page: the bar, a note, and the number of the page. */
export function drawFoot(
  pen: Pen,
  strip: Strip,
  words: FootWords,
  view: View,
  options: ProofOptions,
): void {
  const note = ['50 mm at 100 %.', words.note].join(' ');
  const told = footWords(strip, { ...words, note }, BAR + mm(3), view, options);
  pen.furniture(() =>
    pen.within(strip.matrix, () => {
      drawBar(pen);
      for (const each of told) draw(pen, each);
    }),
  );
}

/** The foot of a page on which nothing stands at its size: a note, and the number of the page. */
export function drawTextFoot(
  pen: Pen,
  strip: Strip,
  words: FootWords,
  view: View,
  options: ProofOptions,
): void {
  const told = footWords(strip, words, 0, view, options);
  pen.furniture(() =>
    pen.within(strip.matrix, () => {
      for (const each of told) draw(pen, each);
    }),
  );
}

function footWords(
  { width }: Strip,
  { note, page, of }: FootWords,
  start: number,
  { property }: View,
  { chrome, made }: ProofOptions,
): readonly Block[] {
  const right = { ...SMALL, align: 'right' as const };
  const day = sayDay(made, property.zone);
  const words = `Proof of ${day} · ${String(page)} of ${String(of)}`;
  const end = caption(words, { x: 0, y: 0 }, width, right, chrome);
  const length = width - start - end.width - mm(4);
  return [caption(note, { x: start, y: 0 }, length, SMALL, chrome), end];
}

/** A bar of exactly 50 mm, from edge to edge, with a tick at each centimetre. */
function drawBar(pen: Pen): void {
  const weight = 0.75;
  pen.fill({ x: 0, y: -weight, width: BAR, height: weight }, INK);
  for (let centimetre = 0; centimetre <= 5; centimetre += 1) {
    const height = centimetre % 5 === 0 ? mm(2.2) : mm(1.1);
    const x = (centimetre * (BAR - weight)) / 5;
    pen.fill({ x, y: -height, width: weight, height }, INK);
  }
}
