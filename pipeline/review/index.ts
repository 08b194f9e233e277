export { canonicalText, sha256 } from './canonical.js';
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
export {
  earlierThanSeen,
  scheduleSeen,
  showsOf,
  shownBeforeSeen,
  type SeenOpening,
  type SeenSchedule,
} from './schedule.js';
export {
  workingDaysAfter,
  workingDaysBefore,
  workingDaysBetween,
  type Holidays,
} from './working-days.js';
export {
  EMPTY_LEDGER,
  appended,
  headOf,
  ledgerText,
  lostHeads,
  merged,
  readLedger,
  type Ledger,
  type LedgerFault,
  type LedgerReading,
  type LedgerWords,
} from './ledger.js';
export {
  answerRefusals,
  answerText,
  isSigned,
  packetDigest,
  signedOctets,
  type AnswerGround,
  type AnswerRefusal,
  type RefusalReason,
} from './answer.js';
export {
  PARTS_FOR_PRINT,
  partsForSite,
  rolesFor,
  standingOf,
  type ApprovalGround,
  type Lack,
  type PartNow,
  type RoleStanding,
  type Standing,
} from './approval.js';
export { decisionsOf } from './decisions.js';
export { readSeen, writeSeen } from './seen.js';
export { historyOf, type HistoryLine } from './history.js';
export { salesStandings, standingsOf, type PartStanding } from './standings.js';
export {
  NOTHING_APPROVED,
  approvedVersions,
  type Approvals,
  type Version,
  type VersionOrder,
} from './versions.js';
export { NO_DIGESTS, surroundingsOf, type Digests } from './surroundings.js';
export { fieldTexts, salesText, wordChanges } from './word-changes.js';
export { sayLack } from './say-lack.js';
