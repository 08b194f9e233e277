export { HOLDING_SENTENCE, briefOf, type Brief } from './brief.js';
export { ownBrief, type OwnBrief } from './own.js';
export { briefPage } from './page.js';
export { briefText } from './text.js';
