/** Lines that follow one another down a page and over to the next. */
export interface FlowItem {
  /** Points above it; none at the top of a page. */
  readonly before: number;
  readonly lines: number;
  /** Points from line to line. */
  readonly leading: number;
  /** It stands on the page on which the next item starts. */
  readonly keep: boolean;
  /** Draws its lines from one up to another, the first of them at a height. */
  readonly draw: (from: number, to: number, y: number) => void;
}

/** Lines of an item that stand on one page. */
export interface Chunk {
  readonly item: FlowItem;
  readonly from: number;
  readonly to: number;
  readonly y: number;
}

/** An item of so many lines is never divided. */
const WHOLE = 4;
/** So many lines of a divided item stand together at least, at either end. */
const LEAST = 2;

/** Pours items into pages that are `height` points high; at least a line stands on each. */
export function pour(items: readonly FlowItem[], height: number): readonly (readonly Chunk[])[] {
  const pages: Chunk[][] = [];
  let page: Chunk[] = [];
  let y = 0;
  const turn = (): void => {
    pages.push(page);
    page = [];
    y = 0;
  };
  items.forEach((item, index) => {
    const start = startOf(items, index);
    if (page.length > 0 && y + start > height) turn();
    if (page.length > 0) y += item.before;
    for (let from = 0; from < item.lines;) {
      const room = Math.floor((height - y) / item.leading);
      const to = from + share(item.lines - from, room, item.lines);
      page.push({ item, from, to, y });
      y += (to - from) * item.leading;
      from = to;
      if (from < item.lines) turn();
    }
  });
  if (page.length > 0) pages.push(page);
  return pages;
}

/** What must have room for an item to start on a page, with all that it is kept with. */
function startOf(items: readonly FlowItem[], index: number): number {
  const item = items[index];
  if (!item) return 0;
  const { before, lines, leading, keep } = item;
  const first = before + (keep || lines <= WHOLE ? lines : LEAST) * leading;
  return keep ? first + startOf(items, index + 1) : first;
}

/** How many of the lines that are left stand here: all, or so many that the rest is not one line. */
function share(left: number, room: number, of: number): number {
  if (left <= room) return left;
  const most = Math.max(1, room);
  return of > WHOLE && most > LEAST && left - most < LEAST ? most - 1 : most;
}
