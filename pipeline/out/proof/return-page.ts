import type { View } from '../../gate/index.js';
import { mm } from '../card/index.js';
import { block, draw, type Style } from './chrome.js';
import { INK, QUIET } from './colours.js';
import { PAPERS } from './geometry.js';
import { segment } from './marks.js';
import type { Pen } from './pen.js';
import { drawHead, drawHeadRule, drawTextFoot } from './strips.js';
import { TEXT_MARGIN } from './text-pages.js';
import type { ProofOptions, SubmissionSheets } from './types.js';
import { saysWhose } from './watermark.js';

const TITLE: Style = { size: 15, leading: 19, colour: INK, face: 'bold' };
const BODY: Style = { size: 10, leading: 14.5, colour: INK };
const SMALL: Style = { size: 8, leading: 10, colour: QUIET };

/** What a reviewer does with the sheets when they are filled in. */
const TOLD = [
  'Mark one box for each card, and put your initials and the date beside it. A card without a mark is not decided: silence is never taken for approval.',
  'With “approved with changes”, write the exact words that are to print. With “revise and resubmit”, say what is to change. With “on hold”, say who has it now.',
  'Please return this by mail to whoever sent it, as a scan or as a file with your marks in it. Keep it closed with its password on the way.',
  'The sheets are for you alone. Your name is on each of them.',
] as const;

/** The last page: how to send the sheets back, and lines to sign on for all of them. */
export function drawReturn(
  pen: Pen,
  view: View,
  submission: SubmissionSheets,
  of: number,
  options: ProofOptions,
): void {
  const page = PAPERS[options.paper];
  const width = page.width - 2 * TEXT_MARGIN;
  const strip = (y: number) => ({ matrix: [1, 0, 0, 1, TEXT_MARGIN, y] as const, width });
  pen.addPage(page);
  pen.bookmark('To return');
  drawHead(pen, strip(mm(10)), { title: view.property.title, part: 'To return' }, view, options);
  drawHeadRule(pen, strip(mm(10)));
  const count = { note: saysWhose(submission), page: pen.pages, of };
  drawTextFoot(pen, strip(page.height - mm(7)), count, view, options);
  const section = pen.section('To return');
  let y = mm(24);
  const says = (words: string, style: Style, tag: 'H1' | 'P', x = TEXT_MARGIN): void => {
    const set = block(words, { x, y }, width, style, options.chrome);
    pen.reads(section, tag, () => draw(pen, set));
    y += set.height + mm(3);
  };
  says('When you have decided', TITLE, 'H1');
  for (const words of TOLD) says(words, BODY, 'P');
  for (const label of ['Remarks on all of it', '', '', 'Name', 'Signature and date']) {
    y += mm(9);
    pen.furniture(() => pen.rules([segment(TEXT_MARGIN, y, TEXT_MARGIN + width, y)], 0.5, QUIET));
    if (label === '') continue;
    y += mm(0.8);
    says(label, SMALL, 'P');
    y -= mm(3);
  }
}
