export { readContent } from './content.js';
export { diskFolder, memoryFolder, type Entry, type Folder } from './folder.js';
export { validate, type Validation } from './validate.js';
export { SAID_KEYWORDS } from './sentences.js';
