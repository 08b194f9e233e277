export { findingOf, type DemoEdit, type FileEdit, type Swap } from './edit.js';
import type { DemoEdit } from './edit.js';
import { FILES_EDITS } from './files.js';
import { LEVELS_EDITS } from './levels.js';
import { NUMBERS_EDITS } from './numbers.js';
import { COUNTS_EDITS } from './counts.js';
import { COPY_EDITS } from './copy.js';
import { FIT_EDITS } from './fit.js';
import { SPOILERS_EDITS } from './spoilers.js';
import { NAMES_EDITS } from './names.js';
import { TRUTH_EDITS } from './truth.js';
import { LANGUAGE_EDITS } from './language.js';
import { LEGAL_EDITS } from './legal.js';
import { PACKS_EDITS } from './packs.js';
import { APPROVAL_EDITS } from './approval.js';

/** One for each rule that `check` knows: what its user would see going wrong on a real set. */
export const DEMO_EDITS: readonly DemoEdit[] = [
  ...FILES_EDITS,
  ...LEVELS_EDITS,
  ...NUMBERS_EDITS,
  ...COUNTS_EDITS,
  ...COPY_EDITS,
  ...FIT_EDITS,
  ...SPOILERS_EDITS,
  ...NAMES_EDITS,
  ...TRUTH_EDITS,
  ...LANGUAGE_EDITS,
  ...LEGAL_EDITS,
  ...PACKS_EDITS,
  ...APPROVAL_EDITS,
];
