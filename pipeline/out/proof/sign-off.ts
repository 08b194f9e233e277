import type { View } from '../../gate/index.js';
import { HAIRLINE, type Listed, mm, type Rect } from '../card/index.js';
import { block, caption, draw, type Style } from './chrome.js';
import { INK, QUIET } from './colours.js';
import { segment } from './marks.js';
import { HAIR, type Pen, type Section } from './pen.js';
import type { ProofOptions } from './types.js';

const BODY: Style = { size: 7.2, leading: 9, colour: INK };
const SMALL: Style = { size: 6, leading: 7.5, colour: QUIET };
const BOX = { width: mm(44), height: mm(9) };

/** What the sign-off takes of the height of the notes, in points. */
export const SIGN_OFF = mm(1.5) + 2 * BODY.leading + mm(1.2) + BOX.height;

/** Which copy it is, how far it is approved, and where a reader signs: below the notes. */
export function drawSignOff(
  pen: Pen,
  section: Section,
  { x, y, width }: Rect,
  view: View,
  listed: Listed,
  options: ProofOptions,
): void {
  const { chrome } = options;
  const told = standingOf(view, listed, options);
  pen.furniture(() => pen.rules([segment(x, y, x + width, y)], HAIR, HAIRLINE));
  told.forEach((words, index) => {
    const top = y + mm(1.5) + index * BODY.leading;
    pen.reads(section, 'P', () => draw(pen, block(words, { x, y: top }, width, BODY, chrome)));
  });
  const box = { x, y: y + SIGN_OFF - BOX.height, width: Math.min(width, BOX.width) };
  const half = box.x + box.width / 2;
  const foot = box.y + BOX.height;
  pen.furniture(() => {
    pen.outline({ ...box, width: box.width / 2, height: BOX.height }, 0.5, QUIET);
    pen.rules([segment(half + mm(2), foot, box.x + box.width, foot)], 0.5, QUIET);
  });
  pen.reads(section, 'P', () => {
    const first = box.y + mm(2.6);
    draw(pen, caption('Initials', { x: box.x + mm(1), y: first }, box.width / 2, SMALL, chrome));
    draw(pen, caption('Date', { x: half + mm(2), y: first }, box.width / 2, SMALL, chrome));
  });
}

/** Which copy it is, and how far its approval is: for the house, since no other view is whole. */
function standingOf(
  { audience }: View,
  { set, card }: Listed,
  { versions, approved }: ProofOptions,
): readonly string[] {
  if (audience !== 'house' || card.identity === null) return [];
  const key = `${set.id}/${card.identity}`;
  const version = versions?.get(key);
  const standing = approved?.get(key);
  return [
    ...(version === undefined ? [] : [`Copy version ${version}`]),
    ...(standing === undefined ? [] : [standing]),
  ];
}
