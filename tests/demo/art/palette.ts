/** The eight inks of the set, with a darker and a lighter mixing of some. */
export const ink = '#14233a';
export const night = '#1d3b54';
export const deep = '#0b5a5c';
export const lake = '#17807a';
export const shoal = '#5aa79b';
export const mist = '#b4d3c6';
export const foam = '#f4e9d0';
export const paper = '#e5d2a9';
export const clay = '#f0cda0';
export const kiln = '#c98a58';
export const amber = '#eda52c';
export const glim = '#f8d283';
export const tar = '#3f2a20';
export const timber = '#6f4a2f';
export const plank = '#a87648';
export const rust = '#b4432a';
export const ember = '#d5714a';

/** A point of the sheet: x to the right, y down. */
export type Pt = readonly [number, number];

/** Format of a card: the trim and the bleed around it. */
export interface Format {
  readonly width: number;
  readonly height: number;
}

export const bleed = 32;
export const portrait: Format = { width: 635, height: 889 };
export const landscape: Format = { width: 889, height: 635 };
export const topper: Format = { width: 1270, height: 1778 };
