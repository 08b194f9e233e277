export { NO_DICTIONARIES, type Dictionaries, type Dictionary, type English } from './dictionary.js';
export { editDistance } from './distance.js';
export { countGraphemes } from './graphemes.js';
export { hiddenCharacters, sayCharacter, type HiddenCharacter } from './hidden-characters.js';
export { mixedWords, type MixedWord } from './mixed-script.js';
export { nearest } from './nearest.js';
export { surelyMeant } from './same-letters.js';
export { endsSentence } from './sentence-edges.js';
export { sentences, type Sentence } from './sentences.js';
export { foldedWords, type FoldedWord } from './fold.js';
export type { Doubt, NamedForm, NameMatch } from './name-entry.js';
export { NameIndex } from './name-index.js';
export { countInWords } from './number-words.js';
export {
  mayHaveNumber,
  numbersAmong,
  numbersIn,
  readCount,
  type FoundNumber,
  type NumberForm,
  type NumberKind,
} from './number-find.js';
export { isDash, isHyphen, numberTokens, type NumberToken } from './number-tokens.js';
export { countLike } from './number-write.js';
export { escapeMarkup } from './markup.js';
export { runningWords, type RunningWord } from './running-words.js';
export { CastForms, type CastReading } from './cast-forms.js';
export type { CastForm, FormRole } from './form-entry.js';
export type { FormMatch, FormSlip } from './form-match.js';
export { isCapital, lettersOnly, type NameToken } from './name-tokens.js';
export { NearWords } from './near-words.js';
export { soundOf, soundsOf } from './sound.js';
export { spokenNumbers, type SpokenNumber } from './read-number.js';
export { countSyllables } from './syllables.js';
export { YEARS_BEFORE_SCHOOL, readingOf, type Reading, type ReadSentence } from './readability.js';
export { printOf, type TextPrint } from './shingles.js';
export { likenesses, type Likeness, type Printed } from './likenesses.js';
