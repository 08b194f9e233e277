/** What a set packs, told: tables and pictures for the house, a list for packers, odds for a wrapper. */

export { SHARES } from './curves.js';
export { packsSet, type PackedSource } from './figures.js';
export { houseText } from './house-text.js';
export { packingSheet } from './packing-sheet.js';
export { packsPicture } from './picture.js';
export { publicOdds } from './public-odds.js';
export { publicText } from './public-text.js';
export {
  toldFigures,
  type ToldCompletion,
  type ToldFigures,
  type ToldProduct,
  type ToldRun,
} from './told-figures.js';
