export { HOLDING_SENTENCE, briefOf, type Brief } from './brief.js';
export { briefPage } from './page.js';
export { briefText } from './text.js';
