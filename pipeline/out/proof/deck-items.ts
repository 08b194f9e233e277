import type { SetLine, TextRun } from '../../typeset/index.js';
import { mm } from '../card/index.js';
import { block, draw, type Style } from './chrome.js';
import { INK, QUIET, WARNING } from './colours.js';
import { legible } from './deck-words.js';
import type { FitWords } from './fit-words.js';
import type { FlowItem } from './flow.js';
import { PAPERS } from './geometry.js';
import { drawTriangle } from './marks.js';
import type { Pen, Section } from './pen.js';
import { TEXT_MARGIN } from './text-pages.js';
import type { ProofOptions } from './types.js';

const NAME: Style = { size: 11, leading: 14, colour: INK, face: 'bold' };
const TEXT: Style = { size: 9.5, leading: 12.5, colour: INK };
const SIDE: Style = { size: 7.5, leading: 12.5, colour: QUIET };
const BAD: Style = { ...SIDE, colour: WARNING, face: 'bold' };

/** The columns of a page of text: names of zones, words, and how they fit. */
const LABEL = mm(20);
const FIT = mm(36);
const GAP = mm(4);

/** What stands of a text before, in and after its column. */
export interface Row {
  readonly label: string;
  readonly runs: readonly TextRun[];
  readonly fits: readonly FitWords[];
}

/** Makes what is to be read of one card, in one section. */
export class CardItems {
  readonly #middle: number;

  constructor(
    readonly pen: Pen,
    readonly section: Section,
    readonly options: ProofOptions,
  ) {
    this.#middle = PAPERS[options.paper].width - 2 * TEXT_MARGIN - LABEL - FIT - 2 * GAP;
  }

  heading(words: string): FlowItem {
    const width = LABEL + GAP + this.#middle;
    return this.#alone(words, TEXT_MARGIN, width, NAME, 'H1', mm(5));
  }

  /** A line under the heading. */
  note(words: string): FlowItem {
    const left = TEXT_MARGIN + LABEL + GAP;
    return this.#alone(words, left, this.#middle, SIDE, 'P', 0);
  }

  row({ label, runs, fits }: Row, before: number): FlowItem {
    const { chrome } = this.options;
    const left = TEXT_MARGIN + LABEL + GAP;
    const right = left + this.#middle + GAP;
    const words = legible(runs, chrome);
    const text = block(words, { x: left, y: 0 }, this.#middle, TEXT, chrome);
    const name = block(label, { x: TEXT_MARGIN, y: 0 }, LABEL, SIDE, chrome);
    const beside = fits.map((fit) => ({
      bad: fit.bad,
      ...block(fit.words, { x: right + 8, y: 0 }, FIT - 8, fit.bad ? BAD : SIDE, chrome),
    }));
    const deep = beside.reduce((sum, { lines }) => sum + lines.length, 0);
    const lines = Math.max(text.lines.length, name.lines.length, deep);
    const drawRow = (from: number, to: number, y: number): void => {
      const lowered = y + TEXT.size - SIDE.size;
      this.pen.reads(this.section, 'P', () => {
        if (from === 0) draw(this.pen, { ...name, lines: lower(name.lines, lowered) });
        const here = text.lines.slice(from, to);
        draw(this.pen, { ...text, lines: lower(here, y - from * TEXT.leading) });
      });
      if (from > 0) return;
      let top = lowered;
      for (const fit of beside) {
        const at = { x: right, y: top + SIDE.size * 0.92 };
        const down = top;
        if (fit.bad) this.pen.furniture(() => drawTriangle(this.pen, at));
        this.pen.reads(this.section, 'P', () =>
          draw(this.pen, { ...fit, lines: lower(fit.lines, down) }),
        );
        top += fit.height;
      }
    };
    // What stands beside is drawn with the first lines, so that those are never fewer.
    const whole = text.lines.length < Math.max(name.lines.length, deep);
    return { before, lines, leading: TEXT.leading, keep: whole, draw: drawRow };
  }

  #alone(
    words: string,
    x: number,
    width: number,
    style: Style,
    tag: 'H1' | 'P',
    before: number,
  ): FlowItem {
    const { chrome } = this.options;
    const set = block(
      legible([{ ...PLAIN, text: words }], chrome),
      { x, y: 0 },
      width,
      style,
      chrome,
    );
    return {
      before,
      lines: set.lines.length,
      leading: style.leading,
      keep: true,
      draw: (from, to, y) => {
        const lines = lower(set.lines.slice(from, to), y - from * style.leading);
        this.pen.reads(this.section, tag, () => draw(this.pen, { ...set, lines }));
      },
    };
  }
}

const PLAIN = { italic: false, bold: false };

/** Lines that were set at the top of the page, further down. */
export function lower(lines: readonly SetLine[], by: number): readonly SetLine[] {
  return lines.map((line) => ({ ...line, baseline: line.baseline + by }));
}
