export { realDisk, writeWhole, type Disk } from './disk.js';
export { settle, writeAll } from './journal.js';
export { takeLock, thisProcess, type Asker, type Holder, type Lock } from './lock.js';
export { PlaceError, refuseBadPlace, stagePlain, stageSwap } from './site.js';
