import type { View, ViewSet, ViewSubset } from '../../gate/index.js';
import {
  type CardText,
  type Listed,
  mm,
  type Point,
  setCard,
  type Size,
  whyVoid,
} from '../card/index.js';
import { Bookmarks } from './bookmarks.js';
import { caption, draw } from './chrome.js';
import { QUIET } from './colours.js';
import { DECISION_STRIP, drawDecisions } from './decisions.js';
import { drawFitPages, fitPages } from './fit-page.js';
import { PAPERS } from './geometry.js';
import { REACH } from './marks.js';
import { drawNotes, headingOf } from './notes.js';
import { drawOdds, oddsPages } from './odds-pages.js';
import type { PageLabel, Pen } from './pen.js';
import { putSide } from './put.js';
import { drawReturn } from './return-page.js';
import { drawSales, salesPages } from './sales-pages.js';
import { drawFoot, drawHead, drawHeadRule } from './strips.js';
import { HEAD, MARGIN, roomDown, templateFor, type Template } from './template.js';
import type { PlacedSide, ProofOptions } from './types.js';
import { drawWatermark } from './watermark.js';

type Side = 'front' | 'back';

/** A page to be drawn: rows of cards of one subset. */
interface SheetPlan {
  readonly set: ViewSet;
  readonly subset: ViewSubset;
  readonly template: Template;
  readonly sides: readonly Side[];
  readonly rows: readonly Listed[];
}

/** Draws each card at true size, front beside back, with what is to be known of it. */
export function drawAnnotated(
  pen: Pen,
  view: View,
  cards: readonly Listed[],
  options: ProofOptions,
): { readonly placed: readonly PlacedSide[]; readonly labels: readonly PageLabel[] } {
  const below = options.submission ? DECISION_STRIP : 0;
  const plans = planSheets(cards, PAPERS[options.paper], below);
  const texts = new Map(cards.map((listed) => [listed, setCard(view, listed, options)]));
  const before = view.audience === 'house' ? fitPages(texts, options) : 0;
  const { submission } = options;
  const sales = submission ? salesPages(view, submission, options) : [];
  const odds = oddsPages(pen, view, options);
  const cardsEnd = before + plans.length;
  const oddsEnd = cardsEnd + odds.length;
  const of = oddsEnd + sales.length + (submission ? 1 : 0);
  const bookmarks = new Bookmarks(pen);
  if (before > 0) drawFitPages(pen, view, texts, of, options);
  const placed = plans.flatMap((plan) => {
    pen.addPage(plan.template.page);
    bookmarks.mark(plan);
    drawEdges(pen, view, plan, { page: pen.pages, of }, options);
    return drawRows(pen, view, plan, texts, options);
  });
  drawOdds(pen, view, odds, of, options);
  if (submission) {
    drawSales(pen, view, sales, submission, of, options);
    drawReturn(pen, view, submission, of, options);
  }
  const after = submission ? [{ from: of - 1, prefix: 'To return' }] : [];
  const outward = sales.length > 0 ? [{ from: oddsEnd, prefix: 'Sales' }] : [];
  const promised = odds.length > 0 ? [{ from: cardsEnd, prefix: 'Odds' }] : [];
  return { placed, labels: [...labelsOf(plans, before), ...promised, ...outward, ...after] };
}

/** Each subset starts a page; so does a card of another size. */
function planSheets(cards: readonly Listed[], paper: Size, below: number): readonly SheetPlan[] {
  const plans: SheetPlan[] = [];
  for (const listed of cards) {
    const { set, subset } = listed;
    const template = templateFor(listed.trim, listed.bleed, paper, below);
    if (template.sides === 'one') {
      const sheet = { set, subset, template, rows: [listed] };
      plans.push({ ...sheet, sides: ['front'] }, { ...sheet, sides: ['back'] });
      continue;
    }
    const last = plans.at(-1);
    if (last?.subset === subset && last.rows.length < last.template.rows && alike(last, listed)) {
      plans[plans.length - 1] = { ...last, rows: [...last.rows, listed] };
    } else {
      plans.push({ set, subset, template, sides: ['front', 'back'], rows: [listed] });
    }
  }
  return plans;
}

function alike({ rows: [first] }: SheetPlan, { trim, bleed }: Listed): boolean {
  return (
    first?.trim.width === trim.width && first.trim.height === trim.height && first.bleed === bleed
  );
}

function labelsOf(plans: readonly SheetPlan[], before: number): readonly PageLabel[] {
  const first = before > 0 ? [{ from: 0, prefix: 'Fit' }] : [];
  const subsets = plans.flatMap(({ subset }, at) =>
    plans[at - 1]?.subset === subset ? [] : [{ from: before + at, prefix: subset.title }],
  );
  return [...first, ...subsets];
}

function drawEdges(
  pen: Pen,
  view: View,
  { set, subset, template: { page } }: SheetPlan,
  count: { readonly page: number; readonly of: number },
  options: ProofOptions,
): void {
  const width = page.width - 2 * MARGIN;
  const head = { matrix: [1, 0, 0, 1, MARGIN, mm(10)] as const, width };
  const foot = { matrix: [1, 0, 0, 1, MARGIN, page.height - mm(7)] as const, width };
  drawHead(pen, head, { title: set.short, part: subset.title }, view, options);
  drawHeadRule(pen, head);
  drawFoot(pen, foot, { note: footNote(view), ...count }, view, options);
}

function footNote({ audience, property }: View): string {
  const times = `Times: ${property.zone}.`;
  if (audience === 'house') return times;
  return `${times} Cut to this reader: some cards will print otherwise.`;
}

function drawRows(
  pen: Pen,
  view: View,
  { template, sides, rows }: SheetPlan,
  texts: ReadonlyMap<Listed, CardText>,
  options: ProofOptions,
): readonly PlacedSide[] {
  const house = view.audience === 'house';
  const { submission } = options;
  const pitch = roomDown(template.page) / template.rows;
  return rows.flatMap((listed, row) => {
    const section = pen.section(headingOf(listed.card));
    const text = texts.get(listed) ?? setCard(view, listed, options);
    const { scale, notes } = template;
    const bleed = listed.bleed * scale;
    const y = HEAD + row * pitch + REACH + bleed;
    const cell = 2 * REACH + 2 * bleed + listed.trim.width * scale;
    const placed = sides.map((side, column) => {
      const corner = { x: MARGIN + REACH + bleed + column * cell, y };
      drawSideName(pen, corner, bleed, side, listed, options);
      const how = { side, corner, turn: 'none', scale, bleeds: true, banner: null } as const;
      const marks = { warned: house, marked: house };
      const put = putSide(pen, section, listed, text, { ...how, ...marks }, options);
      if (submission) drawWatermark(pen, put.trim, submission, options);
      return put;
    });
    const height = pitch - 2 * REACH - (submission ? DECISION_STRIP : 0);
    const beside = { x: notes.x, y: y - bleed, width: notes.width, height };
    drawNotes(pen, section, beside, view, listed, text, scale, options);
    if (submission && sides.includes('back')) {
      const strip = { x: MARGIN + REACH, y: y + listed.trim.height * scale + bleed + REACH };
      const width = template.page.width - 2 * MARGIN - 2 * REACH;
      const rect = { ...strip, width, height: DECISION_STRIP };
      drawDecisions(pen, section, rect, listed, submission, options);
    }
    section.end();
    return placed;
  });
}

/** "Front" or "Back" between the crop marks above a card. */
function drawSideName(
  pen: Pen,
  corner: Point,
  bleed: number,
  side: Side,
  listed: Listed,
  { chrome }: ProofOptions,
): void {
  const blank = side === 'back' && listed.layout?.blank === true && whyVoid(listed) === null;
  const words = side === 'front' ? 'Front' : blank ? 'Back: blank' : 'Back';
  const at = { x: corner.x + mm(1.5), y: corner.y - bleed - mm(1.4) };
  const style = { size: 6.5, leading: 8, colour: QUIET };
  pen.furniture(() => draw(pen, caption(words, at, mm(40), style, chrome)));
}
