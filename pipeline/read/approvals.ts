import type { Content } from '../model/index.js';
import { decisionsOf, surroundingsOf, type Approvals } from '../review/index.js';
import type { FontShelf } from '../typeset/index.js';
import { readDigests } from './digests.js';
import type { Folder } from './folder.js';
import { keptArtPaths, readKeptText } from './kept.js';
import type { Review } from './review.js';

/** Everything that tells what of a content is approved: nothing, if anything in `review/` is wrong. */
export function approvalsOf(
  folder: Folder,
  content: Content,
  fonts: FontShelf,
  { ledger, packets, faults }: Review,
): Approvals {
  const digests = readDigests(folder, content, fonts);
  return {
    decisions: faults.length > 0 ? [] : decisionsOf(ledger, packets),
    // Read when it is asked for: most of it is as it stands in the cards.
    kept: (digest) => readKeptText(folder, 'approved', digest),
    keptArt: keptArtPaths(folder),
    around: (set, card) => surroundingsOf(content, set, card, digests),
  };
}
