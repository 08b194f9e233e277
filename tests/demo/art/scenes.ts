import { charts } from './charts.js';
import { crewFirst } from './crew-first.js';
import { crewLast } from './crew-last.js';
import { crewCraft } from './crew-craft.js';
import { depths } from './depths.js';
import { inserts } from './inserts.js';
import { keepsakes } from './keepsakes.js';
import { makers } from './makers.js';
import { portrait, type Format } from './palette.js';
import type { Sheet } from './sheet.js';
import { storyFirst } from './story-first.js';
import { storyLast } from './story-last.js';

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
  ...placed('high-water', [...crewCraft, ...crewFirst, ...crewLast, ...storyFirst, ...storyLast]),
  ...placed('high-water', [...charts, ...makers, ...keepsakes, ...inserts]),
  ...placed('depth-charts', depths),
];
