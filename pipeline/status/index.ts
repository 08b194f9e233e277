export { timeline, timelineText, type TimelineStep } from './timeline.js';
export {
  statusSheet,
  statusText,
  type CardState,
  type StatusSheet,
  type SubsetStatus,
} from './sheet.js';
