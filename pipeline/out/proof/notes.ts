import { sayInstant, type Instant } from '../../model/index.js';
import type { View, ViewCard } from '../../gate/index.js';
import {
  type CardText,
  HAIRLINE,
  heldLines,
  isCut,
  type Listed,
  mm,
  type Rect,
  type ZoneSetting,
} from '../card/index.js';
import { block, draw, type Style } from './chrome.js';
import { INK, PENCIL, QUIET, WARNING } from './colours.js';
import { sayFit, type FitWords } from './fit-words.js';
import { drawTriangle, segment } from './marks.js';
import { HAIR, type Pen, type Section } from './pen.js';
import { drawSignOff, SIGN_OFF } from './sign-off.js';
import { tellReview } from './review-notes.js';
import type { ProofOptions } from './types.js';

const NAME: Style = { size: 9.5, leading: 11.2, colour: INK, face: 'bold' };
const BODY: Style = { size: 7.2, leading: 9, colour: INK };
const SOFT: Style = { ...BODY, colour: QUIET };
const HEADING: Style = { ...BODY, face: 'bold' };
const BAD: Style = { ...BODY, colour: WARNING, face: 'bold' };

/** The width of the names of what is told, in points. */
const LABEL = mm(11.5);

/** Draws notes one under another, as far as the column goes. */
export class Column {
  #y: number;
  #ruled = false;
  readonly quiet = SOFT;

  constructor(
    readonly pen: Pen,
    readonly section: Section,
    readonly rect: Rect,
    readonly options: ProofOptions,
  ) {
    this.#y = rect.y;
  }

  get #left(): number {
    return this.rect.y + this.rect.height - this.#y;
  }

  /** Sets words in the column; what goes beyond its foot is cut. */
  says(words: string, style: Style, tag: 'H1' | 'P' = 'P', indent = 0): void {
    this.#set(words, style, tag, { indent, label: null });
  }

  /** A name and, beside it, what it is. */
  pair(name: string, value: string): void {
    this.#set(value, BODY, 'P', { indent: LABEL, label: name });
  }

  #set(
    words: string,
    style: Style,
    tag: 'H1' | 'P',
    { indent, label }: { readonly indent: number; readonly label: string | null },
  ): void {
    this.#drawRule();
    const { pen, section, rect, options } = this;
    const { x } = rect;
    const y = this.#y;
    const set = block(words, { x: x + indent, y }, rect.width - indent, style, options.chrome);
    const lines = set.lines.slice(0, Math.max(0, Math.floor(this.#left / style.leading)));
    this.#y += lines.length * style.leading;
    if (lines.length === 0) return;
    pen.reads(section, tag, () => {
      if (label !== null) draw(pen, block(label, { x, y }, indent, SOFT, options.chrome));
      draw(pen, { ...set, lines });
    });
  }

  /** Draws a rule before whatever is said next; none if nothing is. */
  rule(): void {
    this.#ruled = true;
  }

  #drawRule(): void {
    if (!this.#ruled) return;
    this.#ruled = false;
    const { pen, rect } = this;
    const y = this.#y + mm(0.9);
    pen.furniture(() => pen.rules([segment(rect.x, y, rect.x + rect.width, y)], HAIR, HAIRLINE));
    this.#y += mm(1.8);
  }

  /** A zone and its fit; one that must be mended has a triangle before it. */
  fit(name: string, { words, bad }: FitWords): void {
    if (!bad) {
      this.pair(name, words);
      return;
    }
    this.#drawRule();
    const { pen, rect } = this;
    const corner = { x: rect.x, y: this.#y + BODY.size * 0.92 };
    if (this.#left >= BODY.leading) pen.furniture(() => drawTriangle(pen, corner));
    this.says(`${name}: ${words}`, BAD, 'P', 8);
  }

  /** Words about a mark on the card, with the mark before them. */
  key(words: string): void {
    this.#drawRule();
    const { pen, rect } = this;
    const y = this.#y;
    pen.furniture(() => {
      pen.rules([segment(rect.x + 1, y + 1, rect.x + 1, y + BODY.leading - 1)], 0.75, PENCIL);
    });
    this.says(words, BODY, 'P', 5);
  }
}

/** What stands beside a card on an annotated sheet. */
export function drawNotes(
  pen: Pen,
  section: Section,
  rect: Rect,
  view: View,
  listed: Listed,
  text: CardText,
  scale: number,
  options: ProofOptions,
): void {
  const signs = options.submission === undefined;
  const room = signs ? rect.height - SIGN_OFF - mm(1) : rect.height;
  const column = new Column(pen, section, { ...rect, height: room }, options);
  const { card, subset } = listed;
  column.says(headingOf(card), NAME, 'H1');
  column.says(subset.title, SOFT);
  if (scale < 1) column.says(`Shown at ${String(Math.floor(scale * 100))} %`, BAD);
  column.rule();
  tellOfCard(column, card, view);
  if (isCut(card)) column.says('Not as printed', BAD);
  if (options.submission) tellReview(column, card, view);
  if (view.audience === 'house') tellFit(column, card, text);
  tellRemarks(column, card);
  if (!signs) return;
  const foot = { ...rect, y: rect.y + rect.height - SIGN_OFF, height: SIGN_OFF };
  drawSignOff(pen, section, foot, view, listed, options);
}

/** "17 b  Odalys Thrane". */
export function headingOf({ number, letter, name }: ViewCard): string {
  const numbered = [number, letter].filter((part) => part !== null).join(' ');
  return numbered === '' ? name : `${numbered}  ${name}`;
}

function tellOfCard(column: Column, card: ViewCard, view: View): void {
  const { notes, opens } = card;
  const zone = view.property.zone;
  if (card.state === 'placeholder' && opens !== null) {
    column.pair('Opens', sayInstant(opens, zone));
  }
  if (notes) {
    column.pair('Level', `${notes.level} (${notes.hold})`);
    column.pair('Lift', sayLift(notes.lift, zone));
    column.pair('In hands', sayLift(notes.inHands, zone));
    column.pair('State', card.state === 'not issued' ? 'not issued' : notes.state);
    if (notes.writer !== null) column.pair('Writer', notes.writer);
  }
  if (card.number === null && card.state !== 'placeholder') column.pair('Number', 'none');
  if (card.tell !== null) column.pair('Variation', card.tell);
  if (card.shortPrint !== null) column.pair('Short', card.shortPrint);
  if (card.run !== null) column.pair('Run', String(card.run));
}

/** An instant in words; what was never held is open, and what has no date says so. */
export function sayLift(at: Instant, zone: string): string {
  if (at === -Infinity) return 'open from the start';
  return at === Infinity ? 'no date yet' : sayInstant(at, zone);
}

function tellFit(column: Column, card: ViewCard, { front, back }: CardText): void {
  if (front.length + back.length === 0) return;
  column.rule();
  if (front.length > 0) column.says('Fit, front', HEADING);
  for (const zone of front) column.fit(zone.name, fitOf(zone));
  if (back.length > 0) column.says('Fit, back', HEADING);
  for (const zone of back) column.fit(zone.name, fitOf(zone));
  for (const { name, setting } of back) {
    if (name !== 'bio') continue;
    for (const { hold } of heldLines(card.bio, setting.lines)) column.key(`held: ${hold}`);
  }
}

function fitOf({ setting, zone }: ZoneSetting): FitWords {
  return sayFit(setting, zone.size);
}

function tellRemarks(column: Column, { notes }: ViewCard): void {
  const remarks = [notes?.why, notes?.remark].filter((words) => typeof words === 'string');
  if (remarks.length === 0) return;
  column.rule();
  for (const words of remarks) column.says(words, SOFT);
}
