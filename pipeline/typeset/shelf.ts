import type { Faces } from './types.js';

/** The fonts of each layout, opened: by layout, then by the name that the layout gives a font. */
export type FontShelf = ReadonlyMap<string, ReadonlyMap<string, Faces>>;
