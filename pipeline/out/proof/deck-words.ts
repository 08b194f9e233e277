import type { View, ViewRun } from '../../gate/index.js';
import type { ZoneText } from '../../model/index.js';
import type { Faces, TextRun } from '../../typeset/index.js';
import { type Listed, wordsOf } from '../card/index.js';
import { block, plain } from './chrome.js';
import { codePoint } from './fit-words.js';

/** A text of a card under the name of its zone. */
export interface NamedText {
  readonly name: string;
  readonly paragraphs: ZoneText;
}

/** In the order in which a reader takes them; texts of a zone of another name follow the bio. */
const LAST = ['facts', 'credits', 'legal'];

/** The texts of a card but its number and name, which are its heading. */
export function textsOf(view: View, { card, layout }: Listed): readonly NamedText[] {
  const words = wordsOf(view, card, layout ?? {});
  const rank = (name: string): number => (name === 'bio' ? -1 : LAST.indexOf(name) + 1);
  return [...words]
    .filter(([name]) => name !== 'number' && name !== 'name')
    .sort(([a], [b]) => rank(a) - rank(b))
    .map(([name, text]) => {
      const held = name === 'bio' && view.audience === 'house' && !card.bioHeld;
      return { name, paragraphs: held ? card.bio.map((runs) => bracketed(runs)) : text };
    });
}

/** Words that are held stand in brackets, after the id of what holds them. */
export function bracketed(runs: readonly ViewRun[]): readonly TextRun[] {
  const told: TextRun[] = [];
  let open: string | null = null;
  const turnTo = (hold: string | null): void => {
    if (hold === open) return;
    if (open !== null) told.push(plain(']'));
    if (hold !== null) told.push(plain(`[${hold}: `));
    open = hold;
  };
  for (const run of runs) {
    if ('held' in run) continue;
    turnTo(run.hold);
    told.push({ text: run.text, italic: run.italic, bold: run.bold });
  }
  turnTo(null);
  return told;
}

/** A character that the sheets' own faces lack is told by its code point. */
export function legible(runs: readonly TextRun[], faces: Faces): readonly TextRun[] {
  const style = { size: 9, leading: 11, colour: '' };
  const { missing } = block(runs, { x: 0, y: 0 }, 1000, style, faces);
  if (missing.length === 0) return runs;
  const lacking = new Set(missing.map(({ character }) => character));
  const tell = (letter: string): string =>
    lacking.has(letter) ? `[${codePoint(letter)}]` : letter;
  return runs.map((run) => ({ ...run, text: Array.from(run.text, tell).join('') }));
}
