import { approvalsOf, readReview, type Folder, type PropertyReading } from '../read/index.js';
import { lacksForPrint, type ForPrint } from '../release/index.js';
import type { Released } from '../select/index.js';
import type { Io } from './io.js';
import { plain } from './report-text.js';

/** What is to be printed. */
export interface Printing extends PropertyReading, ForPrint {
  readonly folder: Folder;
  readonly released: Released;
}

const NOT_FINAL = 'there is no final proof: not everything that prints is approved\n';

/** Whether copy, image and layout of all that prints are approved; what is not is said. */
export function isFinal(printing: Printing, io: Io): boolean {
  const { folder, content, fonts, released } = printing;
  const approvals = approvalsOf(folder, content, fonts, readReview(folder));
  const lacks = lacksForPrint({ released, approvals }, printing);
  if (lacks.length === 0) return true;
  io.err(NOT_FINAL);
  for (const line of lacks) io.err(`  ${plain(line)}\n`);
  return false;
}
