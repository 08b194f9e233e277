import type { ViewSet, ViewSubset } from '../../gate/index.js';
import type { Pen } from './pen.js';

/** A bookmark to the first page of each set and, under it, of each subset. */
export class Bookmarks {
  readonly #pen: Pen;
  #set: { readonly of: ViewSet; readonly bookmark: PDFKit.PDFOutline } | null = null;
  #subset: ViewSubset | null = null;

  constructor(pen: Pen) {
    this.#pen = pen;
  }

  /** Marks the page that is open, if it is the first of its set or subset. */
  mark({ set, subset }: { readonly set: ViewSet; readonly subset: ViewSubset }): void {
    if (this.#set?.of !== set) this.#set = { of: set, bookmark: this.#pen.bookmark(set.title) };
    if (this.#subset !== subset) this.#pen.bookmark(subset.title, this.#set.bookmark);
    this.#subset = subset;
  }
}
