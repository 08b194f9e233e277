import type { View, ViewSet } from '../../gate/index.js';
import { mm } from '../card/index.js';
import { pour, type Chunk } from './flow.js';
import { PAPERS } from './geometry.js';
import { ODDS_TITLE, oddsItems } from './odds-items.js';
import type { Pen } from './pen.js';
import { drawHead, drawHeadRule, drawTextFoot } from './strips.js';
import { HEAD, roomDown } from './template.js';
import { TEXT_MARGIN } from './text-pages.js';
import type { ProofOptions } from './types.js';
import { saysWhose } from './watermark.js';

/** A page of the odds and runs of a set. */
export interface OddsPage {
  readonly set: ViewSet;
  readonly chunks: readonly Chunk[];
}

/**
 * The odds and runs that a view tells, in pages; each set starts a page. None where the view tells
 * none, nor on sheets of one subset.
 */
export function oddsPages(pen: Pen, view: View, options: ProofOptions): readonly OddsPage[] {
  if (options.subset !== undefined) return [];
  return view.sets
    .filter(({ id }) => options.set === undefined || id === options.set)
    .flatMap((set) => {
      const items = oddsItems(pen, set, options);
      return pour(items, roomDown(PAPERS[options.paper]) - mm(4)).map((chunks) => ({
        set,
        chunks,
      }));
    });
}

/** Draws the pages. */
export function drawOdds(
  pen: Pen,
  view: View,
  pages: readonly OddsPage[],
  of: number,
  options: ProofOptions,
): void {
  const page = PAPERS[options.paper];
  const width = page.width - 2 * TEXT_MARGIN;
  const strip = (y: number) => ({ matrix: [1, 0, 0, 1, TEXT_MARGIN, y] as const, width });
  pages.forEach(({ set, chunks }, at) => {
    pen.addPage(page);
    if (pages[at - 1]?.set !== set) pen.bookmark(`${set.short}: ${ODDS_TITLE.toLowerCase()}`);
    drawHead(pen, strip(mm(10)), { title: set.short, part: ODDS_TITLE }, view, options);
    drawHeadRule(pen, strip(mm(10)));
    const foot = { note: footNote(view, options), page: pen.pages, of };
    drawTextFoot(pen, strip(page.height - mm(7)), foot, view, options);
    for (const chunk of chunks) chunk.item.draw(chunk.from, chunk.to, HEAD + mm(3) + chunk.y);
  });
}

function footNote({ audience }: View, { submission }: ProofOptions): string {
  if (submission) return saysWhose(submission);
  return audience === 'house'
    ? 'What is held is among these.'
    : 'Cut to this reader: what is held from them is not among these.';
}
