export { ALWAYS, differenceIn, timeline, type Stretch, type TimelineStep } from './timeline.js';
export type { Changes } from './changes.js';
export { differenceText, timelineText } from './timeline-text.js';
export { timelineCalendar } from './timeline-calendar.js';
export { timelinePicture } from './timeline-picture.js';
export { statusSheet, type StatusGround, type StatusQuestion } from './sheet.js';
export type { Reviewed } from './card-states.js';
export { statusText } from './sheet-text.js';
