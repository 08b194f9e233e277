export { digestOf, type Json } from './digest.js';
export {
  CARD_PARTS,
  COVERED_BY,
  copyDigest,
  copyVersion,
  covers,
  coversSales,
  partDigest,
  salesDigest,
  type CardPart,
  type Part,
  type Surroundings,
} from './parts.js';
export { earlierThanSeen, scheduleSeen, type SeenOpening, type SeenSchedule } from './schedule.js';
export {
  workingDaysAfter,
  workingDaysBefore,
  workingDaysBetween,
  type Holidays,
} from './working-days.js';
