import type { View } from '../../gate/index.js';
import type { SetLine, TextRun } from '../../typeset/index.js';
import { type Listed, mm, setCard, type ZoneSetting } from '../card/index.js';
import { plain } from './chrome.js';
import { CardItems, type Row } from './deck-items.js';
import { sayFit } from './fit-words.js';
import type { FlowItem } from './flow.js';
import { headingOf } from './notes.js';
import type { PageLabel, Pen } from './pen.js';
import { bySubset, drawTextPages } from './text-pages.js';
import type { ProofOptions } from './types.js';

/**
 * Draws the overset sheet: the texts that do not fit their zones, and no other, as they break into
 * lines, with what is over in bold.
 */
export function drawOverset(
  pen: Pen,
  view: View,
  cards: readonly Listed[],
  options: ProofOptions,
): { readonly placed: readonly []; readonly labels: readonly PageLabel[] } {
  const parts = bySubset(cards, (listed) => itemsOf(pen, view, listed, options));
  return { placed: [], labels: drawTextPages(pen, view, parts, NOTE, options) };
}

const NOTE = 'Line for line as it breaks in its zone; bold: what is over.';

function itemsOf(pen: Pen, view: View, listed: Listed, options: ProofOptions): readonly FlowItem[] {
  const { front, back } = setCard(view, listed, options);
  const rows = [
    ...front.flatMap((zone) => rowOf(`${zone.name}, front`, zone)),
    ...back.flatMap((zone) => rowOf(zone.name, zone)),
  ];
  if (rows.length === 0) return [];
  const heading = headingOf(listed.card);
  const items = new CardItems(pen, pen.section(heading), options);
  return [
    { ...items.heading(heading), keep: true },
    ...rows.map((row, index) => ({ ...items.row(row, index === 0 ? 0 : mm(1.5)), keep: false })),
  ];
}

function rowOf(label: string, { zone, setting }: ZoneSetting): readonly Row[] {
  const fit = sayFit(setting, zone.size);
  return fit.bad ? [{ label, runs: linesOf(setting.lines), fits: [fit] }] : [];
}

/** The lines as they break, each on one of its own; bold from the first that is over. */
function linesOf(lines: readonly SetLine[]): readonly TextRun[] {
  return lines.flatMap((line, index) => {
    const words = line.words.map(({ text }) => text).join(' ');
    const bold = line.overset || line.width > line.measure;
    const run = { ...plain(words), bold };
    return index === 0 ? [run] : [plain('\n'), run];
  });
}
