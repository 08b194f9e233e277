export { openFace, type Face } from './face.js';
export { FontError } from './font-error.js';
export { featureSet } from './shaper.js';
export { fitText, setText } from './set-text.js';
export { tallyFits, type FitTally } from './fit-tally.js';
export { hyphenate } from './divide.js';
export type { FontShelf } from './shelf.js';
export { POINTS_PER_MM, TOLERANCE } from './units.js';
export type {
  Faces,
  Fit,
  MissingGlyph,
  SetLine,
  SetOptions,
  SetPiece,
  SetWord,
  Setting,
  TextRun,
} from './types.js';
