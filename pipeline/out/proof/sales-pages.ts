import {
  TO_BE_REVEALED,
  type View,
  type ViewRun,
  type ViewSales,
  type ViewSet,
} from '../../gate/index.js';
import type { TextRun } from '../../typeset/index.js';
import { mm } from '../card/index.js';
import { block, draw, plain, type Block, type Style } from './chrome.js';
import { INK, QUIET } from './colours.js';
import { DECISION_STRIP, drawDecisionRow } from './decisions.js';
import { PAPERS } from './geometry.js';
import type { Pen } from './pen.js';
import { drawHead, drawHeadRule, drawTextFoot } from './strips.js';
import { FOOT, HEAD } from './template.js';
import { TEXT_MARGIN } from './text-pages.js';
import type { ProofOptions, SubmissionSheets } from './types.js';
import { saysWhose } from './watermark.js';

const TITLE: Style = { size: 13, leading: 17, colour: INK, face: 'bold' };
const KIND: Style = { size: 8, leading: 11, colour: QUIET };
const BODY: Style = { size: 9.5, leading: 13.5, colour: INK };
const GAP = mm(2.5);

/** A page of an outward text: its lines, and whether its boxes stand below them. */
export interface SalesPage {
  readonly set: ViewSet;
  readonly text: ViewSales;
  readonly parts: readonly string[];
  readonly blocks: readonly Block[];
  readonly isLast: boolean;
}

/** The outward texts that a reviewer may decide on, in pages; each starts a page. */
export function salesPages(
  view: View,
  submission: SubmissionSheets,
  options: ProofOptions,
): readonly SalesPage[] {
  return view.sets
    .filter(({ id }) => options.set === undefined || id === options.set)
    .flatMap((set) =>
      set.sales.flatMap((text) => {
        const parts = submission.decides.get(`${set.id}/sales/${text.id}`);
        if (parts === undefined) return [];
        const pages = poured(blocksOf(text, options), options);
        return pages.map((blocks, at) => {
          return { set, text, parts, blocks, isLast: at === pages.length - 1 };
        });
      }),
    );
}

function widthOf({ paper }: ProofOptions): number {
  return PAPERS[paper].width - 2 * TEXT_MARGIN;
}

function blocksOf(text: ViewSales, options: ProofOptions): readonly Block[] {
  const set = (words: string | readonly TextRun[], style: Style): Block =>
    block(words, { x: TEXT_MARGIN, y: 0 }, widthOf(options), style, options.chrome);
  const paragraphs = text.words.map((runs) => set(runs.map(runOf), BODY));
  return [set(titleOf(text), TITLE), set(text.kind, KIND), ...paragraphs];
}

function titleOf({ title, id }: ViewSales): string {
  return title ?? id;
}

function runOf(run: ViewRun): TextRun {
  return 'held' in run ? plain(`[${TO_BE_REVEALED.toLowerCase()}]`) : run;
}

/** Blocks by page; one that is longer than what is left goes on, line by line. */
function poured(blocks: readonly Block[], { paper }: ProofOptions): readonly (readonly Block[])[] {
  const room = PAPERS[paper].height - HEAD - FOOT - DECISION_STRIP;
  const pages: Block[][] = [[]];
  let left = room;
  for (const whole of blocks) {
    const { leading } = whole.style;
    for (let lines = whole.lines; lines.length > 0;) {
      const fitting = Math.max(0, Math.floor(left / leading));
      const here = lines.slice(0, fitting);
      lines = lines.slice(fitting);
      if (here.length > 0) {
        pages.at(-1)?.push({ ...whole, lines: here, height: here.length * leading });
        left -= here.length * leading + GAP;
      }
      if (lines.length === 0) continue;
      pages.push([]);
      left = room;
    }
  }
  return pages;
}

/** Draws the pages; the last of each text has its boxes. */
export function drawSales(
  pen: Pen,
  view: View,
  pages: readonly SalesPage[],
  submission: SubmissionSheets,
  of: number,
  options: ProofOptions,
): void {
  const page = PAPERS[options.paper];
  const width = widthOf(options);
  const strip = (y: number) => ({ matrix: [1, 0, 0, 1, TEXT_MARGIN, y] as const, width });
  for (const { set, text, parts, blocks, isLast } of pages) {
    pen.addPage(page);
    pen.bookmark(titleOf(text));
    drawHead(pen, strip(mm(10)), { title: set.short, part: titleOf(text) }, view, options);
    drawHeadRule(pen, strip(mm(10)));
    const count = { note: saysWhose(submission), page: pen.pages, of };
    drawTextFoot(pen, strip(page.height - mm(7)), count, view, options);
    const section = pen.section(titleOf(text));
    let y = HEAD;
    for (const each of blocks) {
      const down = y - (each.lines[0] ? topOf(each) : 0);
      pen.reads(section, 'P', () => pen.within([1, 0, 0, 1, 0, down], () => draw(pen, each)));
      y += each.height + GAP;
    }
    if (!isLast) continue;
    const rect = { x: TEXT_MARGIN, y: y + mm(2), width, height: DECISION_STRIP };
    drawDecisionRow(pen, section, rect, { heading: titleOf(text), parts }, submission, options);
  }
}

/** How far the first line of a block lies below where the block was set. */
function topOf({ lines, style }: Block): number {
  const [first] = lines;
  return first ? first.baseline - style.size : 0;
}
