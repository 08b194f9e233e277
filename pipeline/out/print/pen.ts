import PDFDocument from 'pdfkit';

import type { Instant } from '../../model/index.js';
import type { Point, Size } from './papers.js';
import { featuresOf, type PrintFont } from './print-font.js';
import type { Ink, Line } from './set-lines.js';

type Element = PDFKit.PDFStructureElement;
type Tag = 'H1' | 'H2' | 'L' | 'LI' | 'Lbl' | 'LBody' | 'P' | 'Table' | 'TR' | 'TH' | 'TD';

/** An element of what a screen reader reads. It comes into being where it is first drawn. */
export interface Part {
  readonly tag: Tag;
  /** The document, if not said. */
  readonly within?: Part;
  /** Which cells a heading of a table heads. */
  readonly scope?: 'Column' | 'Row';
  /** The words, where a character of them cannot be drawn. */
  readonly actual?: string;
}

const PRODUCER = 'Holdback';

/** Draws pages of a PDF. What a screen reader reads is drawn in a part, all else as furniture. */
export class Pen {
  readonly #doc: PDFKit.PDFDocument;
  readonly #document: Element;
  readonly #elements = new Map<Part, Element>();
  readonly #fonts = new Map<PrintFont, string>();
  #boxes: Point[] = [];
  #pages = 0;

  constructor(title: string, made: Instant) {
    this.#doc = new PDFDocument({
      autoFirstPage: false,
      font: '',
      pdfVersion: '1.7',
      tagged: true,
      lang: 'en-GB',
      displayTitle: true,
      info: {
        Title: title,
        Producer: PRODUCER,
        Creator: PRODUCER,
        CreationDate: new Date(made),
        ModDate: new Date(made),
      },
    });
    this.#document = this.#doc.struct('Document', { title });
    this.#doc.addStructure(this.#document);
  }

  addPage({ width, height }: Size): void {
    this.#doc.addPage({ size: [width, height], margin: 0 });
    this.#pages += 1;
  }

  /** The page that is open, from 1. */
  get page(): number {
    return this.#pages;
  }

  /** Draws something to be read. What is drawn in one part at two places is read as one. */
  reads(part: Part, draw: () => void): void {
    const element = this.#element(part);
    const content = this.#doc.markStructureContent(part.tag);
    draw();
    this.#doc.endMarkedContent();
    element.add(content);
  }

  /** Makes a part without words, such as an empty cell. */
  leaves(part: Part): void {
    this.#element(part);
  }

  /** Draws what no screen reader need read. */
  furniture(type: 'Layout' | 'Pagination', draw: () => void): void {
    this.#doc.markContent('Artifact', { type });
    draw();
    this.#doc.endMarkedContent();
  }

  #element(part: Part): Element {
    const known = this.#elements.get(part);
    if (known) return known;
    const parent = part.within ? this.#element(part.within) : this.#document;
    const options = {
      ...(part.scope ? { scope: part.scope } : {}),
      ...(part.actual === undefined ? {} : { actual: part.actual }),
    };
    const element = this.#doc.struct(part.tag, options);
    parent.add(element);
    this.#elements.set(part, element);
    return element;
  }

  /** A bookmark to a height on the page. */
  bookmark(title: string, y: number): void {
    // The library measures the left edge of the view from the right edge of the page.
    const where = { expanded: false, top: y, left: this.#doc.page.width, zoom: 0 };
    this.#doc.outline.addItem(title, where);
  }

  /** Draws a line of words from a point on its baseline. */
  line({ pieces }: Line, { x, y }: Point): void {
    for (const { font, text, size, ink, figures, x: along, width } of pieces) {
      const options: PDFKit.Mixins.TextOptions = { lineBreak: false, baseline: 'alphabetic' };
      // The library's types lack both: features as a set, and the width of the text, which it
      // would measure again.
      Object.assign(options, { features: featuresOf(figures), textWidth: width, wordCount: 1 });
      this.#doc.fillColor(black(ink)).font(this.#fontOf(font), size);
      this.#doc.text(text, x + along, y, options);
    }
  }

  #fontOf(font: PrintFont): string {
    const known = this.#fonts.get(font);
    if (known !== undefined) return known;
    const key = `font ${String(this.#fonts.size + 1)}`;
    this.#doc.registerFont(key, font.drawn);
    this.#fonts.set(font, key);
    return key;
  }

  /** Puts a tick box on the page by its top left corner. Those of a page are drawn together. */
  box(corner: Point): void {
    this.#boxes.push(corner);
  }

  /** Draws the tick boxes of the page: squares of a side and a weight of line, in points. */
  drawBoxes(side: number, weight: number): void {
    const boxes = this.#boxes;
    this.#boxes = [];
    if (boxes.length === 0) return;
    this.furniture('Layout', () => {
      this.#doc.lineWidth(weight);
      for (const { x, y } of boxes) this.#doc.rect(x, y, side, side);
      this.#doc.stroke(black(100));
    });
  }

  /** A level rule. */
  rule({ x, y }: Point, width: number, weight: number, ink: Ink): void {
    this.#doc
      .lineWidth(weight)
      .moveTo(x, y)
      .lineTo(x + width, y);
    this.#doc.stroke(black(ink));
  }

  /** A line of water: waves of one length, as many as end within the width. */
  wave({ x, y }: Point, width: number, weight: number, ink: Ink): void {
    this.#doc.lineWidth(weight).moveTo(x, y);
    const crests = Math.floor(width / HALF_WAVE);
    const half = width / crests;
    for (let crest = 0; crest < crests; crest += 1) {
      const from = x + crest * half;
      const lift = crest % 2 === 0 ? -LIFT : LIFT;
      this.#doc.quadraticCurveTo(from + half / 2, y + lift, from + half, y);
    }
    this.#doc.stroke(black(ink));
  }

  /** Ends the document. The pen draws nothing after it. */
  async finish(): Promise<Uint8Array> {
    this.#document.end();
    this.#doc.end();
    const chunks: Uint8Array[] = [];
    for await (const chunk of this.#doc) if (chunk instanceof Uint8Array) chunks.push(chunk);
    return new Uint8Array(Buffer.concat(chunks));
  }
}

/** Points from one crossing of the waterline to the next, and how far its control points lie off. */
const HALF_WAVE = 7;
const LIFT = 2.4;

/** Black ink alone, so that no printer mixes it of others. */
function black(ink: Ink): [number, number, number, number] {
  return [0, 0, 0, ink];
}
