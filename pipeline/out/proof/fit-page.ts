import type { View, ViewSet, ViewSubset } from '../../gate/index.js';
import { tallyFits, type Fit, type FitTally } from '../../typeset/index.js';
import { type CardText, HAIRLINE, type Listed, mm, type Rect } from '../card/index.js';
import { block, caption, draw, type Style } from './chrome.js';
import { INK, PENCIL, QUIET, WARNING } from './colours.js';
import { count } from './fit-words.js';
import { PAPERS } from './geometry.js';
import { drawTriangle, segment } from './marks.js';
import { HAIR, type Pen, type Section } from './pen.js';
import { drawHead, drawHeadRule, drawTextFoot } from './strips.js';
import { HEAD, roomDown } from './template.js';
import { TEXT_MARGIN } from './text-pages.js';
import type { ProofOptions } from './types.js';

/** The title of the pages that show how full the bios are. */
export const FIT_TITLE = 'How full the bios are';

const HEADING: Style = { size: 13, leading: 17, colour: INK, face: 'bold' };
const NAME: Style = { size: 8.5, leading: 10.5, colour: INK };
const SMALL: Style = { size: 7.5, leading: 9, colour: QUIET };
const OVER: Style = { ...SMALL, colour: WARNING, face: 'bold' };
const AXIS: Style = { size: 7, leading: 9, colour: QUIET, align: 'center' };

const NAMES = mm(48);
const PLOT = mm(70);
const ROW = mm(9.5);
const BAR = mm(6.5);
/** The first row, below the heading, its sentence and the scale. */
const TOP = mm(24);

/** How full the bios of a subset are. */
interface SubsetFits {
  readonly set: ViewSet;
  readonly subset: ViewSubset;
  readonly tally: FitTally;
}

/** How many pages show how full the bios are: none where no bio is set. */
export function fitPages(
  texts: ReadonlyMap<Listed, CardText>,
  { paper }: Pick<ProofOptions, 'paper'>,
): number {
  return Math.ceil(fitsOf(texts).length / rowsOf(paper));
}

/** Draws a plot of how full the bios of each subset are, on pages of its own. */
export function drawFitPages(
  pen: Pen,
  view: View,
  texts: ReadonlyMap<Listed, CardText>,
  of: number,
  options: ProofOptions,
): void {
  const fits = fitsOf(texts);
  const rows = rowsOf(options.paper);
  for (let from = 0; from < fits.length; from += rows) {
    drawPage(pen, view, fits.slice(from, from + rows), of, options);
  }
}

function rowsOf(paper: ProofOptions['paper']): number {
  return Math.floor((roomDown(PAPERS[paper]) - TOP) / ROW);
}

function fitsOf(texts: ReadonlyMap<Listed, CardText>): readonly SubsetFits[] {
  const bios = new Map<ViewSubset, { readonly set: ViewSet; readonly fits: Fit[] }>();
  for (const [{ set, subset }, { back }] of texts) {
    const fits = back.filter(({ name }) => name === 'bio').map(({ setting }) => setting);
    const before = bios.get(subset);
    if (before) before.fits.push(...fits);
    else if (fits.length > 0) bios.set(subset, { set, fits });
  }
  return [...bios].map(([subset, { set, fits }]) => ({ set, subset, tally: tallyFits(fits) }));
}

function drawPage(
  pen: Pen,
  view: View,
  fits: readonly SubsetFits[],
  of: number,
  options: ProofOptions,
): void {
  const page = PAPERS[options.paper];
  const width = page.width - 2 * TEXT_MARGIN;
  pen.addPage(page);
  const at = (y: number) => ({ matrix: [1, 0, 0, 1, TEXT_MARGIN, y] as const, width });
  drawHead(pen, at(mm(10)), { title: view.property.title, part: FIT_TITLE }, view, options);
  drawHeadRule(pen, at(mm(10)));
  const foot = { note: `Times: ${view.property.zone}.`, page: pen.pages, of };
  drawTextFoot(pen, at(page.height - mm(7)), foot, view, options);
  const section = pen.section(FIT_TITLE);
  says(pen, section, 'H1', FIT_TITLE, HEAD + mm(3), HEADING, options);
  says(pen, section, 'P', HOW_TO_READ, HEAD + mm(11), SMALL, options);
  const plot = { x: TEXT_MARGIN + NAMES, y: HEAD + TOP, width: PLOT, height: fits.length * ROW };
  drawScale(pen, plot, options);
  fits.forEach((row, index) => {
    drawRow(pen, section, row, HEAD + TOP + index * ROW, options);
  });
}

const HOW_TO_READ =
  'Each bar is a twentieth of the zone; its height is how many of the subset’s bios fill so much. At 100 % no line is free. A triangle: overset.';

function says(
  pen: Pen,
  section: Section,
  tag: 'H1' | 'P',
  words: string,
  y: number,
  style: Style,
  { chrome, paper }: ProofOptions,
): void {
  const width = PAPERS[paper].width - 2 * TEXT_MARGIN;
  pen.reads(section, tag, () => {
    draw(pen, block(words, { x: TEXT_MARGIN, y }, width, style, chrome));
  });
}

function drawScale(pen: Pen, { x, y, width, height }: Rect, { chrome }: ProofOptions): void {
  pen.furniture(() => {
    for (const part of [0, 0.5, 1]) {
      const at = x + part * width;
      pen.rules([segment(at, y - mm(1), at, y + height)], HAIR, HAIRLINE);
      const words = `${String(part * 100)} %`;
      draw(pen, caption(words, { x: at - mm(8), y: y - mm(2) }, mm(16), AXIS, chrome));
    }
  });
}

function drawRow(
  pen: Pen,
  section: Section,
  { set, subset, tally }: SubsetFits,
  y: number,
  { chrome, paper }: ProofOptions,
): void {
  const foot = y + ROW - mm(1.5);
  const left = TEXT_MARGIN + NAMES;
  const right = left + PLOT + mm(3);
  const width = PAPERS[paper].width - TEXT_MARGIN - right;
  const names = [
    block(subset.title, { x: TEXT_MARGIN, y: y + mm(1) }, NAMES - mm(3), NAME, chrome),
    block(set.short, { x: TEXT_MARGIN, y: y + mm(4.8) }, NAMES - mm(3), SMALL, chrome),
  ];
  pen.reads(section, 'P', () => {
    for (const name of names) draw(pen, { ...name, lines: name.lines.slice(0, 1) });
  });
  pen.figure(section, `${set.short}, ${subset.title}: ${sayTally(tally)}`, () => {
    drawBars(pen, tally.filled, { x: left, y: foot - BAR, width: PLOT, height: BAR });
  });
  const told = block(tell(tally), { x: right, y: y + mm(1) }, width, SMALL, chrome);
  pen.reads(section, 'P', () => draw(pen, told));
  if (tally.overset === 0) return;
  const under = y + mm(1) + told.height;
  const words = `${String(tally.overset)} overset`;
  pen.furniture(() => drawTriangle(pen, { x: right, y: under + OVER.size * 0.92 }));
  const over = block(words, { x: right + 8, y: under }, width - 8, OVER, chrome);
  pen.reads(section, 'P', () => draw(pen, over));
}

function drawBars(pen: Pen, filled: readonly number[], rect: Rect): void {
  const most = Math.max(...filled, 1);
  const step = rect.width / filled.length;
  const foot = rect.y + rect.height;
  pen.rules([segment(rect.x, foot, rect.x + rect.width, foot)], HAIR, HAIRLINE);
  filled.forEach((number, index) => {
    if (number === 0) return;
    const height = (rect.height * number) / most;
    const bar = { x: rect.x + index * step + 0.4, y: foot - height, width: step - 0.8, height };
    pen.fill(bar, PENCIL);
  });
}

function tell({ texts, tight }: FitTally): string {
  return tight > 0 ? `${count(texts, 'bio')}, ${String(tight)} tight` : count(texts, 'bio');
}

/** "21 bios, 2 tight, 1 overset; from 65 % to 100 % full". */
function sayTally(tally: FitTally): string {
  const step = 100 / tally.filled.length;
  const first = tally.filled.findIndex((number) => number > 0);
  const last = tally.filled.findLastIndex((number) => number > 0);
  const over = tally.overset > 0 ? `, ${String(tally.overset)} overset` : '';
  const range =
    first < 0
      ? ''
      : `; those that fit are from ${String(Math.round(first * step))} % to ${String(Math.round((last + 1) * step))} % full`;
  return `${tell(tally)}${over}${range}`;
}
