import type { Face } from './face.js';

/** A stretch of words in one face. A text of `"\n"` alone is a hard line break. */
export interface TextRun {
  readonly text: string;
  readonly italic: boolean;
  readonly bold: boolean;
}

/** The four faces of one family; a family without one of them names another in its place. */
export interface Faces {
  readonly regular: Face;
  readonly italic: Face;
  readonly bold: Face;
  readonly boldItalic: Face;
}

/** A word as a reader sees it, or the part of a divided word that stands on this line. */
export interface SetWord {
  readonly text: string;
  /** Points from the start of the line. */
  readonly x: number;
  /** Points; the tracking after the last letter is left out. */
  readonly width: number;
}

/** What one drawing call draws: one string in one face, shaped as a whole. */
export interface SetPiece {
  readonly text: string;
  readonly face: Face;
  /** Points from the start of the line. */
  readonly x: number;
  /** Points; equals the advance of the whole string, without the tracking after its last letter. */
  readonly width: number;
  /** Points added after every glyph, for the `characterSpacing` of the drawing call. */
  readonly tracking: number;
  /** False where tracking parts the letters: then no ligature is formed. */
  readonly ligatures: boolean;
  /** The words of this piece alone; a word of two faces is whole only in its line's `words`. */
  readonly words: readonly SetWord[];
}

/** A line in its place: points from the trimmed top left corner, y downwards. */
export interface SetLine {
  readonly x: number;
  readonly baseline: number;
  /** From the start of the first piece to the end of the last one. */
  readonly width: number;
  /** The length that was open to the line: the zone, less its indent and what it avoids. */
  readonly measure: number;
  readonly pieces: readonly SetPiece[];
  readonly words: readonly SetWord[];
  /** Which paragraph the line belongs to, from 0. */
  readonly paragraph: number;
  /** The line ends in a hyphen that the text has not. */
  readonly hyphenated: boolean;
  /** The line stands below what its zone holds. */
  readonly overset: boolean;
}

/** A character that a face has no glyph for. */
export interface MissingGlyph {
  readonly character: string;
  readonly face: string;
}

/** How a text fits its zone: the figures of a setting, without its lines. */
export interface Fit {
  /** Points; smaller than the zone asks for where the text was shrunk. */
  readonly size: number;
  /** Points; shrinks in step with the size. */
  readonly leading: number;
  /** Lines of one paragraph that the zone holds at this size. */
  readonly capacity: number;
  /** All lines, those that are over too. */
  readonly lineCount: number;
  /** Lines that are over. */
  readonly overset: number;
  /** Lines that could follow the last one. */
  readonly free: number;
  /** It fits, and no line is free. */
  readonly tight: boolean;
  /** Lines that stick out at the side, because one word is wider than the zone. */
  readonly wide: number;
  /** No line is over and none sticks out. */
  readonly fits: boolean;
  /** The fewest last words whose loss makes it fit; 0 where it fits. */
  readonly wordsToCut: number;
  readonly shrunk: boolean;
  readonly missing: readonly MissingGlyph[];
}

/** A text set in a zone. */
export interface Setting extends Fit {
  /** All lines, those that are over too. */
  readonly lines: readonly SetLine[];
}

/** What a caller may add to a text. */
export interface SetOptions {
  /** Names and other words that are never divided, in any case; a name of two words counts as two. */
  readonly undivided?: Iterable<string>;
}
