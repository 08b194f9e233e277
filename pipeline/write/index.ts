export { realDisk, writeWhole, type Disk } from './disk.js';
export { PlaceError, refuseBadPlace, swapIn, writePlain } from './site.js';
