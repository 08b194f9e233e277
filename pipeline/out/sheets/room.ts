import { TO_BE_REVEALED, type View, type ViewCard, type ViewRun } from '../../gate/index.js';
import { countWords } from '../../model/index.js';
import { fitText, type Fit, type FontShelf } from '../../typeset/index.js';
import { whyVoid, wordsOf, type Listed } from '../card/index.js';
import { TOLD } from './columns.js';

/** What bios are measured with. */
export interface RoomSetting {
  /** The fonts of the layouts. */
  readonly fonts: FontShelf;
  /** Names that are never divided at the end of a line; for the house, whose view has all names. */
  readonly undivided?: readonly string[];
}

/** The zone that a bio fills. */
const ZONE = 'bio';

/** How much room the bio of a card has, as the view tells it: lines used, lines there are, words. */
export function roomCells(
  view: View,
  listed: Listed,
  setting: RoomSetting,
): readonly (readonly [string, string])[] {
  const words = listed.card.bio.map((runs) => countWords(runs.map(shownText).join('')));
  const used = words.reduce((sum, each) => sum + each, 0);
  const fit = fitOf(view, listed, setting);
  return [
    ...(fit === null
      ? []
      : [
          [TOLD.lines, String(fit.lineCount)] as const,
          [TOLD.linesThere, String(fit.capacity)] as const,
          [TOLD.fit, sayRoom(fit)] as const,
        ]),
    ...(used === 0 ? [] : [[TOLD.words, String(used)] as const]),
    ...boundCells(listed),
  ];
}

/** What the plan asks of its length; of a card that is held nobody is to write anything. */
function boundCells({ subset: { words }, card }: Listed): readonly (readonly [string, string])[] {
  if (words === null || card.state === 'placeholder') return [];
  const { min, max } = words;
  return [
    ...(min === null ? [] : [[TOLD.wordsMin, String(min)] as const]),
    ...(max === null ? [] : [[TOLD.wordsMax, String(max)] as const]),
  ];
}

function shownText(run: ViewRun): string {
  if ('held' in run) return ' ';
  return run.text === '\n' ? ' ' : run.text;
}

/** The bio set anew from the view; null where nothing of it prints. An empty bio takes no line. */
function fitOf(view: View, listed: Listed, { fonts, undivided = [] }: RoomSetting): Fit | null {
  const { layout, card } = listed;
  if (layout === null || layout.blank === true || whyVoid(listed) !== null) return null;
  const zone = layout.zones[ZONE];
  const faces = zone && fonts.get(layout.id)?.get(zone.font);
  if (!zone || !faces) return null;
  const text = wordsOf(view, card, layout).get(ZONE) ?? [];
  return fitText(text, zone, faces, view.audience === 'house' ? { undivided } : {});
}

/** "2 lines free", "tight" or "overset by 2 lines: cut about 7 words". */
function sayRoom({ overset, wide, tight, free, wordsToCut }: Fit): string {
  const cut = `cut about ${counted(wordsToCut, 'word')}`;
  if (overset > 0) return `overset by ${counted(overset, 'line')}: ${cut}`;
  if (wide > 0) return `${counted(wide, 'line')} too wide: ${cut}`;
  return tight ? 'tight' : `${counted(free, 'line')} free`;
}

function counted(number: number, noun: string): string {
  return `${String(number)} ${noun}${number === 1 ? '' : 's'}`;
}

/** The one mark for whatever is held. It never tells how much it stands for. */
const MARK = `[${TO_BE_REVEALED.toLowerCase()}]`;

/**
 * A bio as its reader may see it: emphasis between `*`, strong between `**`, an empty line between
 * paragraphs. Words that are held, but not from this reader, stand as `[words](held)`.
 */
export function bioText({ bio, bioHeld }: Pick<ViewCard, 'bio' | 'bioHeld'>): string {
  return bioHeld ? MARK : bio.map((runs) => runs.map(runText).join('')).join('\n\n');
}

function runText(run: ViewRun): string {
  if ('held' in run) return MARK;
  if (run.text.trim() === '') return run.text;
  const stars = `${run.italic ? '*' : ''}${run.bold ? '**' : ''}`;
  const words = run.text.replace(/\S(?:[^]*\S)?/, (inner) => `${stars}${inner}${stars}`);
  return run.opens === null ? words : `[${words}](held)`;
}
