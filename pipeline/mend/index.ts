export { fixContent, type Fixing, type FixOrder } from './fix.js';
export { laidOver, look, type Looked, type LookOptions } from './look.js';
export { newCards, type NewCardsOrder, type Stub, type Stubs } from './new-cards.js';
export { renumber, type Renumbering, type RenumberOrder, type Moved } from './renumber.js';
export type { Wish } from './new-numbers.js';
export { textOf } from './texts.js';
export { isOwnFile, writeChanges, type FileChange } from './write.js';
