import type { View, ViewSet, ViewSubset } from '../../gate/index.js';
import { type Listed, mm } from '../card/index.js';
import { Bookmarks } from './bookmarks.js';
import { pour, type FlowItem } from './flow.js';
import { PAPERS } from './geometry.js';
import type { PageLabel, Pen } from './pen.js';
import { drawHead, drawHeadRule, drawTextFoot } from './strips.js';
import { HEAD, roomDown } from './template.js';
import type { ProofOptions } from './types.js';

/** The margin of pages of text, wider than that of sheets with cards. */
export const TEXT_MARGIN = mm(18);

/** What is to be read of one subset. */
export interface TextPart {
  readonly set: ViewSet;
  readonly subset: ViewSubset;
  readonly items: readonly FlowItem[];
}

/** Cards by subset, in the order of the view. */
export function bySubset(
  cards: readonly Listed[],
  itemsOf: (listed: Listed) => readonly FlowItem[],
): readonly TextPart[] {
  const subsets = [...new Set(cards.map(({ subset }) => subset))];
  return subsets.flatMap((subset) => {
    const within = cards.filter((each) => each.subset === subset);
    const items = within.flatMap((listed) => itemsOf(listed));
    const [first] = within;
    return first && items.length > 0 ? [{ set: first.set, subset, items }] : [];
  });
}

/** Draws pages of text; each subset starts a page and has a bookmark. */
export function drawTextPages(
  pen: Pen,
  view: View,
  parts: readonly TextPart[],
  note: string,
  options: ProofOptions,
): readonly PageLabel[] {
  const page = PAPERS[options.paper];
  const width = page.width - 2 * TEXT_MARGIN;
  const poured = parts.map((part) => ({ ...part, pages: pour(part.items, roomDown(page)) }));
  const of = poured.reduce((sum, { pages }) => sum + pages.length, 0);
  const head = { matrix: [1, 0, 0, 1, TEXT_MARGIN, mm(10)] as const, width };
  const foot = { matrix: [1, 0, 0, 1, TEXT_MARGIN, page.height - mm(7)] as const, width };
  const bookmarks = new Bookmarks(pen);
  return poured.map(({ set, subset, pages }) => {
    const from = pen.pages;
    for (const chunks of pages) {
      pen.addPage(page);
      bookmarks.mark({ set, subset });
      drawHead(pen, head, { title: set.short, part: subset.title }, view, options);
      drawHeadRule(pen, head);
      drawTextFoot(pen, foot, { note, page: pen.pages, of }, view, options);
      for (const chunk of chunks) chunk.item.draw(chunk.from, chunk.to, HEAD + mm(2) + chunk.y);
    }
    return { from, prefix: subset.title };
  });
}
