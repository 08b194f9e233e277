export { fixContent, type Fixing, type FixOrder } from './fix.js';
export { laidOver, look, type Looked, type LookOptions } from './look.js';
export { newCards, type NewCardsOrder, type Stub, type Stubs } from './new-cards.js';
export { groundOf, newSet, type NewSet } from './new-set.js';
export { answered, answeredAll, offered, unanswered, type Answered } from './new-set-answer.js';
export {
  KEYS as SET_KEYS,
  answerOf,
  type Answers,
  type Ground,
  type Key as SetKey,
} from './new-set-answers.js';
export { filesOf } from './new-set-files.js';
export { QUESTIONS, questionsFor, type Part, type Question } from './new-set-questions.js';
export { writeSpec } from './new-set-spec.js';
export { renumber, type Renumbering, type RenumberOrder, type Moved } from './renumber.js';
export type { Wish } from './new-numbers.js';
export { textOf } from './texts.js';
export { isOwnFile, writeChanges, type FileChange } from './write.js';
export { importSheet, type Importing, type ImportOrder } from './import.js';
