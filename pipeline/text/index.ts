export { editDistance } from './distance.js';
export { countGraphemes } from './graphemes.js';
export { hiddenCharacters, sayCharacter, type HiddenCharacter } from './hidden-characters.js';
export { mixedWords, type MixedWord } from './mixed-script.js';
export { nearest } from './nearest.js';
export { endsSentence } from './sentence-edges.js';
export { sentences, type Sentence } from './sentences.js';
export { foldedWords, type FoldedWord } from './fold.js';
export { NameIndex, inflected, type NamedForm, type NameMatch } from './name-index.js';
