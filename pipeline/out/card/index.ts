export { CARD_INK, CARD_PAPER, HAIRLINE, PANEL } from './colours.js';
export { grow, mm, sizeInMm, type Point, type Rect, type Size } from './geometry.js';
export { backGround, bleedOf, frontStrips, zoneRect, type Fill } from './ground.js';
export { heldLines, type HeldLines } from './held-lines.js';
export {
  isCut,
  listCards,
  setCard,
  whyVoid,
  type CardSetting,
  type Listed,
  type Which,
} from './prepare.js';
export { setSides, type CardText, type ZoneSetting } from './set-sides.js';
export { wordsOf, zoneWordsOf } from './zone-words.js';
