import PDFDocument from 'pdfkit';

import type { Instant } from '../../model/index.js';
import { featureSet, type SetLine, type SetPiece } from '../../typeset/index.js';
import type { Point, Rect, Size } from '../card/index.js';
import { FontKeys } from './font-keys.js';
import type { Matrix } from './geometry.js';
import { ProofError, type PdfPasswords } from './types.js';

/** An element of the document's structure, in reading order. */
export type Section = PDFKit.PDFStructureElement;

/** A part of a section, in which what is drawn at several places is read together. */
export interface Part {
  readonly tag: 'Table' | 'TR' | 'TH' | 'TD' | 'Figure';
  readonly element: Section;
}

/** Points. */
export interface Dashes {
  readonly dash: number;
  readonly gap: number;
}

/** The boxes of a page; trim and bleed are the page where they are not given. */
export interface PageBoxes {
  readonly trim?: Rect;
  readonly bleed?: Rect;
}

/** Pages that carry a label: from the page (from 0) on, until the next. */
export interface PageLabel {
  readonly from: number;
  readonly prefix: string;
}

const PRODUCER = 'Holdback';

/** Draws pages of a PDF. What a screen reader reads is drawn in a section, all else as furniture. */
export class Pen {
  readonly #doc: PDFKit.PDFDocument;
  readonly #fonts: FontKeys;
  readonly #document: Section;
  #pages = 0;

  /** @param password seals the document; then its bytes differ each time, by the library's chance. */
  constructor(title: string, made: Instant, password?: PdfPasswords) {
    this.#doc = new PDFDocument({
      autoFirstPage: false,
      font: '',
      ...(password ? sealedWith(password) : { pdfVersion: '1.7' }),
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
    this.#fonts = new FontKeys(this.#doc);
    this.#document = this.#doc.struct('Document', { title });
    this.#doc.addStructure(this.#document);
  }

  /** How many pages there are. */
  get pages(): number {
    return this.#pages;
  }

  addPage({ width, height }: Size, boxes: PageBoxes = {}): void {
    this.#doc.addPage({ size: [width, height], margin: 0 });
    this.#pages += 1;
    const whole = { x: 0, y: 0, width, height };
    Object.assign(this.#doc.page.dictionary.data, {
      BleedBox: pdfBox(boxes.bleed ?? whole, height),
      TrimBox: pdfBox(boxes.trim ?? whole, height),
    });
  }

  /** A part of the document, in which what is read next stands. */
  section(title: string, parent: Section = this.#document): Section {
    const section = this.#doc.struct('Sect', { title });
    parent.add(section);
    return section;
  }

  /** Draws something to be read: a heading or a paragraph. */
  reads(section: Section, tag: 'H1' | 'H2' | 'P', draw: () => void): void {
    this.#marked(section, tag, {}, draw);
  }

  /** Draws a picture that `alt` tells in words. */
  figure(section: Section, alt: string, draw: () => void): void {
    this.#marked(section, 'Figure', { alt }, draw);
  }

  #marked(section: Section, tag: string, options: { alt?: string }, draw: () => void): void {
    const content = this.#doc.markStructureContent(tag);
    draw();
    this.#doc.endMarkedContent();
    section.add(this.#doc.struct(tag, options, [content]));
  }

  /** A part of a section, or of a part. A figure is told in words by `alt`. */
  part(
    within: Section | Part,
    tag: Part['tag'],
    options: { readonly alt?: string; readonly scope?: 'Column' | 'Row' } = {},
  ): Part {
    const element = this.#doc.struct(tag, { ...options });
    const parent = 'tag' in within ? within.element : within;
    parent.add(element);
    return { tag, element };
  }

  /** Draws something to be read in a part. */
  draws({ tag, element }: Part, draw: () => void): void {
    const content = this.#doc.markStructureContent(tag);
    draw();
    this.#doc.endMarkedContent();
    element.add(content);
  }

  /** Draws what no screen reader need read. */
  furniture(draw: () => void): void {
    this.#doc.markContent('Artifact', { type: 'Layout' });
    draw();
    this.#doc.endMarkedContent();
  }

  /** A bookmark to the page; returns it, to hang others under it. */
  bookmark(title: string, under: PDFKit.PDFOutline = this.#doc.outline): PDFKit.PDFOutline {
    const where = { expanded: true, fit: true };
    return under.addItem(title, where);
  }

  /** Draws in coordinates of its own. */
  within([a, b, c, d, e, f]: Matrix, draw: () => void): void {
    this.#doc.save().transform(a, b, c, d, e, f);
    draw();
    this.#doc.restore();
  }

  clipped({ x, y, width, height }: Rect, draw: () => void): void {
    this.#doc.save().rect(x, y, width, height).clip();
    draw();
    this.#doc.restore();
  }

  fill({ x, y, width, height }: Rect, colour: string): void {
    this.#doc.rect(x, y, width, height).fill(colour);
  }

  /** Draws so that what lies below shows through; 0 is nothing, 1 covers it. */
  faintly(opacity: number, draw: () => void): void {
    this.#doc.save().fillOpacity(opacity);
    draw();
    this.#doc.restore();
  }

  fillShape(points: readonly Point[], colour: string): void {
    this.#doc.polygon(...points.map(({ x, y }) => [x, y])).fill(colour);
  }

  outline({ x, y, width, height }: Rect, weight: number, colour: string): void {
    this.#doc.lineWidth(weight).rect(x, y, width, height).stroke(colour);
  }

  dotted({ x, y, width, height }: Rect, weight: number, colour: string): void {
    this.#doc.lineWidth(weight).dash(1, { space: 2 }).rect(x, y, width, height).stroke(colour);
    this.#doc.undash();
  }

  /** Straight lines of one weight and colour, each from a point to a point. */
  rules(lines: readonly (readonly [Point, Point])[], weight: number, colour: string): void {
    if (lines.length === 0) return;
    this.#doc.lineWidth(weight);
    for (const [from, to] of lines) this.#doc.moveTo(from.x, from.y).lineTo(to.x, to.y);
    this.#doc.stroke(colour);
  }

  /** A line through points, whole or dashed; the lengths of dash and gap are points. */
  curve(
    [first, ...rest]: readonly Point[],
    weight: number,
    colour: string,
    dashed: Dashes | null,
  ): void {
    if (!first) return;
    this.#doc.save().lineWidth(weight).lineJoin('round');
    if (dashed) this.#doc.dash(dashed.dash, { space: dashed.gap });
    this.#doc.moveTo(first.x, first.y);
    for (const { x, y } of rest) this.#doc.lineTo(x, y);
    this.#doc.stroke(colour).restore();
  }

  /** A disc with an edge. */
  disc({ x, y }: Point, radius: number, fill: string, edge: string): void {
    this.#doc.lineWidth(0.6).circle(x, y, radius).fillAndStroke(fill, edge);
  }

  /**
   * Places a picture so that it covers the rectangle, in the middle of it; what sticks out is cut.
   * @throws ProofError if the bytes are no PNG or JPEG.
   */
  picture(bytes: Uint8Array, rect: Rect, source: string): void {
    const { x, y, width, height } = rect;
    const buffer = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    this.clipped(rect, () => {
      try {
        this.#doc.image(buffer, x, y, {
          cover: [width, height],
          align: 'center',
          valign: 'center',
        });
      } catch (cause) {
        throw new ProofError(`${source} is no PNG or JPEG picture that can be placed`, { cause });
      }
    });
  }

  /** Draws lines of a setting, piece by piece as they were measured. */
  lines(lines: readonly SetLine[], size: number, colourOf: (line: SetLine) => string): void {
    for (const line of lines) {
      this.#doc.fillColor(colourOf(line));
      for (const piece of line.pieces) this.#piece(piece, size, line.x, line.baseline);
    }
  }

  #piece(piece: SetPiece, size: number, x: number, baseline: number): void {
    const options: PDFKit.Mixins.TextOptions = { lineBreak: false, baseline: 'alphabetic' };
    if (piece.tracking !== 0) options.characterSpacing = piece.tracking;
    // The library's types lack both: features as a set, which can also turn one off, and the width
    // of the text, which it would measure again.
    Object.assign(options, { features: featureSet(piece.ligatures), textWidth: piece.width });
    this.#doc.font(this.#fonts.keyOf(piece.face), size);
    this.#doc.text(piece.text, x + piece.x, baseline, options);
  }

  /** Ends the document. The pen draws nothing after it. */
  async finish(labels: readonly PageLabel[]): Promise<Uint8Array> {
    Object.assign(this.#doc._root.data, { PageLabels: pageLabels(labels) });
    this.#document.end();
    this.#doc.end();
    const chunks: Uint8Array[] = [];
    for await (const chunk of this.#doc) if (chunk instanceof Uint8Array) chunks.push(chunk);
    return new Uint8Array(Buffer.concat(chunks));
  }
}

/**
 * AES-256 as Adobe's extension level 3 to ISO 32000-1 has it. The key is made of the password by one
 * round of SHA-256: it is as strong as the password, which must be made by chance.
 */
function sealedWith({ open, owner }: PdfPasswords): PDFKit.PDFDocumentOptions {
  const permissions = {
    printing: 'highResolution',
    annotating: true,
    fillingForms: true,
    contentAccessibility: true,
  } as const;
  return { pdfVersion: '1.7ext3', userPassword: open, ownerPassword: owner, permissions };
}

/** PDF measures from the bottom left corner of the page. */
function pdfBox({ x, y, width, height }: Rect, pageHeight: number): readonly number[] {
  return [x, pageHeight - y - height, x + width, pageHeight - y];
}

/** The number tree of ISO 32000-1, 12.4.2: from which page on, which prefix, counting from 1. */
function pageLabels(labels: readonly PageLabel[]): object {
  return {
    Nums: labels.flatMap(({ from, prefix }) => [from, { S: 'D', P: pdfText(`${prefix} `) }]),
  };
}

/** The library writes a string object as text, and a plain string as a name. */
function pdfText(text: string): unknown {
  return Object(text);
}

/** The least weight of line that every printer draws: a quarter of a point. */
export const HAIR = 0.25;
