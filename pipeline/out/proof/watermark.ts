import { mm, type Rect } from '../card/index.js';
import { caption, draw, type Style } from './chrome.js';
import type { Pen } from './pen.js';
import type { ProofOptions, SubmissionSheets } from './types.js';

/** A grey that shows on light and on dark, so faint that words under it are read without effort. */
const GREY = '#80868c';
const OPACITY = 0.32;
const STYLE: Style = { size: 10, leading: 12, colour: GREY, face: 'bold', align: 'center' };

/** Writes faintly across a side of a card, from corner to corner, whom it was sent to. */
export function drawWatermark(
  pen: Pen,
  { x, y, width, height }: Rect,
  submission: SubmissionSheets,
  { chrome }: ProofOptions,
): void {
  const length = Math.hypot(width, height);
  const [cos, sin] = [width / length, -height / length];
  const words = caption(saysWhose(submission), { x: 0, y: mm(1) }, length, STYLE, chrome);
  // Along the diagonal from the lower left corner to the upper right one.
  const along = [cos, sin, -sin, cos, x, y + height] as const;
  pen.furniture(() =>
    pen.clipped({ x, y, width, height }, () =>
      pen.within(along, () => pen.faintly(OPACITY, () => draw(pen, words))),
    ),
  );
}

/** "Amara Linde, submission 2". */
export function saysWhose({ person, round }: SubmissionSheets): string {
  return `${person}, submission ${String(round)}`;
}
