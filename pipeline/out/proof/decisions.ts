import { HAIRLINE, type Listed, mm, type Rect } from '../card/index.js';
import { bold, caption, draw, plain, type Style } from './chrome.js';
import { INK, QUIET } from './colours.js';
import { segment } from './marks.js';
import { headingOf } from './notes.js';
import { HAIR, type Pen, type Section } from './pen.js';
import type { ProofOptions, SubmissionSheets } from './types.js';
import { saysWhose } from './watermark.js';

const BODY: Style = { size: 7.6, leading: 9, colour: INK };
const SMALL: Style = { size: 6.4, leading: 7.5, colour: QUIET };

/** What a reviewer may say of a card, in the order of the boxes. */
export const DECISIONS = [
  'approved',
  'approved with changes',
  'approved as noted',
  'revise and resubmit',
  'rejected',
  'on hold',
] as const;

/** What the boxes and lines of a card take of the height of a page, in points. */
export const DECISION_STRIP = mm(22);

const BOX = mm(3.2);
/** Baselines below the top of the strip. */
const ROWS = { whose: mm(4), boxes: mm(9), remarks: mm(14.6), initials: mm(20.4) };
/** Where the lines for initials and date start, from the right end of the strip. */
const INITIALS = mm(78);
const DATE = mm(38);

/** What may be decided on, and what it is called. */
interface Decidable {
  readonly heading: string;
  readonly parts: readonly string[];
}

/** Below a card: whom it was sent to, a box for each decision, and lines to write on. */
export function drawDecisions(
  pen: Pen,
  section: Section,
  rect: Rect,
  listed: Listed,
  submission: SubmissionSheets,
  options: ProofOptions,
): void {
  const of = { heading: headingOf(listed.card), parts: partsOf(listed, submission) };
  drawDecisionRow(pen, section, rect, of, submission, options);
}

/** The same below anything that can be decided on. */
export function drawDecisionRow(
  pen: Pen,
  section: Section,
  rect: Rect,
  { heading: title, parts }: Decidable,
  submission: SubmissionSheets,
  options: ProofOptions,
): void {
  const { x, y, width } = rect;
  const says = (words: Parameters<typeof caption>[0], left: number, down: number, style = BODY) => {
    const block = caption(words, { x: x + left, y: y + down }, width - left, style, options.chrome);
    pen.reads(section, 'P', () => draw(pen, block));
    return block.width;
  };
  pen.furniture(() => pen.rules([segment(x, y, x + width, y)], HAIR, HAIRLINE));
  const asked = parts.length === 0 ? 'nothing to decide here' : `decide on ${listOf(parts)}`;
  const heading = [bold(title), plain(`: ${asked} · ${saysWhose(submission)}`)];
  says(heading, 0, ROWS.whose);
  if (parts.length === 0) return;
  let left = 0;
  for (const decision of DECISIONS) {
    const box = { x: x + left, y: y + ROWS.boxes - BOX + mm(0.5), width: BOX, height: BOX };
    pen.furniture(() => pen.outline(box, 0.6, INK));
    left += BOX + mm(1.4);
    left += says(decision, left, ROWS.boxes) + mm(5);
  }
  const line = (from: number, to: number, down: number): void => {
    const at = y + down + mm(0.8);
    pen.furniture(() => pen.rules([segment(x + from, at, x + to, at)], 0.5, QUIET));
  };
  const gap = mm(1.5);
  line(says('Remarks', 0, ROWS.remarks, SMALL) + gap, width, ROWS.remarks);
  line(0, width - INITIALS - gap, ROWS.initials);
  const initials = width - INITIALS;
  const date = width - DATE;
  line(
    initials + says('Initials', initials, ROWS.initials, SMALL) + gap,
    date - gap,
    ROWS.initials,
  );
  line(date + says('Date', date, ROWS.initials, SMALL) + gap, width, ROWS.initials);
}

/** What may be decided on of a card; nothing of one that is not issued or not told apart. */
function partsOf({ set, card }: Listed, { decides }: SubmissionSheets): readonly string[] {
  return card.identity === null || card.state === 'not issued'
    ? []
    : (decides.get(`${set.id}/${card.identity}`) ?? []);
}

/** "copy, image and layout". */
function listOf(words: readonly string[]): string {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} and ${last}`;
}
