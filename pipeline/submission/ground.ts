import type { PropertyFile } from '../../schema/index.js';
import { identityOf, type Card, type CardSet, type Content } from '../model/index.js';
import {
  diskFolder,
  readDigests,
  readProperty,
  readReview,
  type Folder,
  type Review,
} from '../read/index.js';
import {
  covers,
  coversSales,
  digestOf,
  surroundingsOf,
  type Digests,
  type Json,
  type Part,
} from '../review/index.js';
import type { FontShelf } from '../typeset/index.js';
import { refused, type Refused } from './lock.js';

/** Everything that a submission or a decision is held against, as it stands on the disk. */
export interface Ground {
  readonly folder: Folder;
  readonly content: Content;
  readonly property: PropertyFile;
  readonly fonts: FontShelf;
  readonly digests: Digests;
  readonly review: Review;
}

/** Reads it; refused if anything of it is wrong, since nothing is decided on what is in doubt. */
export function readGround(contentPath: string): Ground | Refused {
  const folder = diskFolder(contentPath);
  const { content, fonts } = readProperty(folder);
  const review = readReview(folder);
  if (review.faults.length > 0) {
    return refused('what is kept in review/ cannot be trusted: `holdback ledger` says why');
  }
  if (!content.property || content.faults.length > 0) {
    return refused('some files cannot be read: run `holdback check` first');
  }
  const digests = readDigests(folder, content, fonts);
  return { folder, content, property: content.property.value, fonts, digests, review };
}

/** A card with its set. */
export interface Found {
  readonly set: CardSet;
  readonly card: Card;
}

/** The card of a key such as `high-water/crew/c017`. */
export function cardAt({ content }: Pick<Ground, 'content'>, key: string): Found | null {
  for (const set of content.sets) {
    const card = set.cards.find((each) => `${set.id}/${identityOf(each)}` === key);
    if (card) return { set, card };
  }
  return null;
}

/** What a part covers as it stands now; null if it is not there any more. */
export function coversNow(ground: Ground, key: string, part: Part): Json {
  const { content, digests } = ground;
  if (part === 'sales') {
    const text = content.sets
      .flatMap(({ sales }) => sales)
      .find(({ set, id }) => `${set}/sales/${id}` === key);
    return text ? coversSales(text) : null;
  }
  const found = cardAt(ground, key);
  if (!found) return null;
  return covers(part, found.card, surroundingsOf(content, found.set, found.card, digests));
}

/** Its digest. */
export function digestNow(ground: Ground, key: string, part: Part): string | null {
  const covered = coversNow(ground, key, part);
  return covered === null ? null : digestOf(covered);
}
