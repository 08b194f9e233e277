export { timeline, timelineText, type TimelineStep } from './timeline.js';
export { statusSheet } from './sheet.js';
export { statusText } from './sheet-text.js';
