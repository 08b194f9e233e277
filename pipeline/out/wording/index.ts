/** The words of lists and sheets. They read as those of the pages, so that a reader knows them again. */

export { isNameless, nameTells, notes, printed, signerWords, type Note } from './cards.js';
export { cardCount, grouped, listed, runWords, series, subsetCount } from './counts.js';
export { capital, foundWords, groupName, kindWords, regionName } from './kinds.js';
export { BEFORE_ODDS_PRINT, ODDS_CAUTIONS, oddsWords } from './odds.js';
export {
  asOfWords,
  parallelOf,
  parallelRun,
  previewWords,
  rightsLines,
  streetWords,
  titleParts,
} from './sets.js';
export { dayWords, isoDay, momentWords, plainDayWords, rfc3339, utc } from './times.js';
