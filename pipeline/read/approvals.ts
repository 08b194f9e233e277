import type { Content } from '../model/index.js';
import { decisionsOf, surroundingsOf, type Approvals, type Digests } from '../review/index.js';
import type { FontShelf } from '../typeset/index.js';
import { readDigests } from './digests.js';
import type { Folder } from './folder.js';
import { keptArtPaths, readKeptText } from './kept.js';
import type { Review } from './review.js';

/**
 * Everything that tells what of a content is approved: nothing, if anything in `review/` is wrong.
 * @param digests of art and fonts, if they are known.
 */
export function approvalsOf(
  folder: Folder,
  content: Content,
  fonts: FontShelf,
  { ledger, packets, faults }: Review,
  digests: Digests = readDigests(folder, content, fonts),
): Approvals {
  return {
    decisions: faults.length > 0 ? [] : keptDecisions(ledger, packets),
    // Read when it is asked for: most of it is as it stands in the cards.
    kept: (digest) => readKeptText(folder, 'approved', digest),
    keptArt: keptArtPaths(folder),
    around: (set, card) => surroundingsOf(content, set, card, digests),
  };
}

const made = new WeakMap<
  Review['ledger'],
  Pick<Review, 'packets'> & Pick<Approvals, 'decisions'>
>();

/** The decisions of a ledger that was read once are worked out once, however often content is read. */
function keptDecisions(
  ledger: Review['ledger'],
  packets: Review['packets'],
): Approvals['decisions'] {
  const before = made.get(ledger);
  if (before?.packets === packets) return before.decisions;
  const decisions = decisionsOf(ledger, packets);
  made.set(ledger, { packets, decisions });
  return decisions;
}
