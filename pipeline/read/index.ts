export { readReview, type Review, type ReviewFault } from './review.js';
export { readContent } from './content.js';
export { diskFolder, memoryFolder, type Entry, type Folder } from './folder.js';
export { validate, type Validation } from './validate.js';
export { SAID_KEYWORDS } from './sentences.js';
export { readFonts, type FontReading } from './fonts.js';
export { ArtError, rasterise, readArt, type Raster } from './art.js';
export { readProperty, type PropertyReading } from './property.js';
