import { benchesFirst } from './benches-first.js';
import { benchesLast } from './benches-last.js';
import { charts } from './charts.js';
import { crewCraft } from './crew-craft.js';
import { crewErrands } from './crew-errands.js';
import { crewFirst } from './crew-first.js';
import { crewIdlers } from './crew-idlers.js';
import { crewLast } from './crew-last.js';
import { crewOddments } from './crew-oddments.js';
import { crewTimbers } from './crew-timbers.js';
import { crewTrades } from './crew-trades.js';
import { crewUphill } from './crew-uphill.js';
import { crewWindows } from './crew-windows.js';
import { depths07To10 } from './depths-07-10.js';
import { depths11To14 } from './depths-11-14.js';
import { depths15To18 } from './depths-15-18.js';
import { depths19To22 } from './depths-19-22.js';
import { depths23To26 } from './depths-23-26.js';
import { depths27To30 } from './depths-27-30.js';
import { depths31To33 } from './depths-31-33.js';
import { depths34To36 } from './depths-34-36.js';
import { depths } from './depths.js';
import { inserts } from './inserts.js';
import { keepsakes } from './keepsakes.js';
import { lettersLast } from './letters-last.js';
import { makers } from './makers.js';
import { portrait, type Format } from './palette.js';
import { panoramas } from './panoramas.js';
import type { Sheet } from './sheet.js';
import { signalsFirst } from './signals-first.js';
import { signalsLast } from './signals-last.js';
import { signingsLast } from './signings-last.js';
import { signings } from './signings.js';
import { storyChoir } from './story-choir.js';
import { storyDodge } from './story-dodge.js';
import { storyFirst } from './story-first.js';
import { storyFog } from './story-fog.js';
import { storyHat } from './story-hat.js';
import { storyHearsay } from './story-hearsay.js';
import { storyLast } from './story-last.js';
import { storyLock } from './story-lock.js';
import { storyRise } from './story-rise.js';
import { storyTickets } from './story-tickets.js';

/** One picture as a scene file gives it. */
export interface Picture {
  readonly id: string;
  readonly draw: (s: Sheet) => void;
  readonly format?: Format;
  /** Pictures with the same seed have the same hand-cut edges. */
  readonly seed?: string;
}

export interface Scene extends Picture {
  readonly set: string;
  readonly format: Format;
}

const placed = (set: string, pictures: readonly Picture[]): Scene[] =>
  pictures.map((picture) => ({ ...picture, set, format: picture.format ?? portrait }));

export const scenes: readonly Scene[] = [
  ...placed('high-water', [
    ...crewCraft,
    ...crewFirst,
    ...crewLast,
    ...crewErrands,
    ...crewTrades,
    ...crewTimbers,
    ...crewIdlers,
    ...crewOddments,
    ...crewWindows,
    ...crewUphill,
  ]),
  ...placed('high-water', [
    ...storyFirst,
    ...storyLast,
    ...storyRise,
    ...storyHearsay,
    ...storyLock,
    ...storyHat,
    ...storyChoir,
    ...storyDodge,
    ...storyTickets,
    ...storyFog,
  ]),
  ...placed('high-water', [...charts, ...makers, ...benchesFirst, ...benchesLast, ...inserts]),
  ...placed('high-water', [...signalsFirst, ...signalsLast, ...lettersLast, ...panoramas]),
  ...placed('high-water', [...keepsakes, ...signings, ...signingsLast]),
  ...placed('depth-charts', [
    ...depths,
    ...depths07To10,
    ...depths11To14,
    ...depths15To18,
    ...depths19To22,
    ...depths23To26,
    ...depths27To30,
    ...depths31To33,
    ...depths34To36,
  ]),
];
