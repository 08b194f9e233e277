import type { PublicData, PublicSet } from '../../../schema/index.js';
import { instantOf } from '../../model/index.js';
import { momentWords } from '../wording/index.js';
import type { PrintFaces } from './faces.js';
import { footOf, type Foot } from './foot.js';
import { headBand } from './head.js';
import { leadingOf } from './items.js';
import { EDGE, PAPERS, SIDE, type Paper, type Size } from './papers.js';
import { Pen } from './pen.js';
import { pour, type Band, type Room, type Stood } from './pour.js';
import { BOX_SIDE, BOX_WEIGHT } from './rows.js';
import { setLines, span, type Line } from './set-lines.js';

/** What a sheet is of. */
export interface Sheet {
  readonly data: PublicData;
  readonly set: PublicSet;
  /** What it is: "Checklist". */
  readonly kind: string;
  /** What is told in a line below the title. */
  readonly facts: string;
  readonly paper: Paper;
  readonly faces: PrintFaces;
}

/** The frame of a sheet's pages: where its text stands and what is on each page. */
export interface Frame {
  readonly room: Room;
  readonly head: Band;
  readonly foot: Foot;
  readonly page: Size;
  /** Set over every page of a preview. */
  readonly preview: Line | null;
  /** Names the sheet on pages after the first. */
  readonly running: Line | null;
}

const PREVIEW_DEEP = 20;
const RUNNING_DEEP = 18;
const RUNNING_SIZE = 8;

export function frameOf(sheet: Sheet): Frame {
  const { data, faces, paper } = sheet;
  const page = PAPERS[paper];
  const width = page.width - 2 * SIDE;
  const foot = footOf(data, faces, width);
  const top = EDGE + (data.preview ? PREVIEW_DEEP : 0);
  return {
    page,
    foot,
    room: {
      x: SIDE,
      width,
      top: (index) => top + (index === 0 ? 0 : RUNNING_DEEP),
      bottom: page.height - EDGE - foot.height,
    },
    head: headBand(sheet, width),
    preview: data.preview ? previewLine(sheet) : null,
    running: runningLine(sheet, width),
  };
}

function previewLine({ data, faces }: Sheet): Line | null {
  const words = `Preview: not to be passed on before ${momentWords(data.asOf, data.property.zone)}`;
  return setLines([span(words, faces.text.bold, 10, 100)], Infinity)[0] ?? null;
}

/** The title and what the sheet is; the latter alone where both take more than a line. */
function runningLine({ set, kind, faces }: Sheet, width: number): Line | null {
  const title = span(set.title, faces.text.regular, RUNNING_SIZE, 70);
  const what = span(`· ${kind}, continued`, faces.labels.regular, RUNNING_SIZE, 70);
  const lines = setLines([title, what], width);
  return (lines.length === 1 ? lines : setLines([what], width))[0] ?? null;
}

/** Draws the bands of a sheet on as many pages as they take. */
export async function drawSheet(
  sheet: Sheet,
  frame: Frame,
  bands: readonly Band[],
): Promise<Uint8Array> {
  const { data, set, kind } = sheet;
  const pen = new Pen(`${set.title}: ${kind.toLowerCase()}`, instantOf(data.asOf));
  const { pages } = pour([frame.head, ...bands, ...frame.foot.further], frame.room);
  pages.forEach((stood, index) => drawPage(pen, frame, stood, { index, of: pages.length }));
  return pen.finish();
}

function drawPage(
  pen: Pen,
  frame: Frame,
  stood: readonly Stood[],
  { index, of }: { readonly index: number; readonly of: number },
): void {
  pen.addPage(frame.page);
  drawPreview(pen, frame, index === 0);
  if (index > 0) drawRunning(pen, frame, index);
  for (const { item, at } of stood) item.draw(pen, at);
  pen.drawBoxes(BOX_SIDE, BOX_WEIGHT);
  frame.foot.draw(pen, { x: frame.room.x, y: frame.room.bottom }, { page: index + 1, of });
}

/** The words are read once; they stand on every page. */
function drawPreview(pen: Pen, { preview, room }: Frame, first: boolean): void {
  if (preview === null) return;
  const words = (): void => {
    pen.line(preview, { x: room.x, y: EDGE + 9 });
  };
  if (first) pen.reads({ tag: 'P' }, words);
  else pen.furniture('Pagination', words);
  pen.furniture('Layout', () => {
    pen.rule({ x: room.x, y: EDGE + 13.5 }, room.width, 0.8, 100);
  });
}

function drawRunning(pen: Pen, { running, room }: Frame, index: number): void {
  const y = room.top(index) - RUNNING_DEEP + leadingOf(RUNNING_SIZE) * 0.78;
  pen.furniture('Pagination', () => {
    if (running) pen.line(running, { x: room.x, y });
    pen.rule({ x: room.x, y: y + 4 }, room.width, 0.4, 35);
  });
}
