import type { ChangedCard } from '../checks/index.js';
import type { CardSet, Content } from '../model/index.js';
import { isSameMap } from './reader.js';

/**
 * The cards in which two readings of a folder differ; null if they differ in anything else, or in
 * which cards there are.
 */
export function changedCards(before: Content, after: Content): readonly ChangedCard[] | null {
  const alike =
    before.property === after.property &&
    before.names === after.names &&
    before.people === after.people &&
    before.cardFiles === after.cardFiles &&
    isSameMap(before.layouts, after.layouts) &&
    before.sets.length === after.sets.length;
  if (!alike) return null;
  const changes: ChangedCard[] = [];
  for (const [at, set] of after.sets.entries()) {
    const old = before.sets[at];
    if (!old || !isAlike(old, set)) return null;
    for (const [position, is] of set.cards.entries()) {
      const was = old.cards[position];
      if (was?.source.file !== is.source.file) return null;
      if (was !== is) changes.push({ was, is });
    }
  }
  return changes;
}

/** Whether nothing but the words of cards differs. */
function isAlike(a: CardSet, b: CardSet): boolean {
  return (
    a.plan === b.plan &&
    a.corrections === b.corrections &&
    isSameMap(a.rosters, b.rosters) &&
    a.cards.length === b.cards.length &&
    a.sales.length === b.sales.length &&
    a.sales.every((text, at) => text === b.sales[at]) &&
    isSameSet(a.art, b.art) &&
    isSameSet(a.unread, b.unread)
  );
}

function isSameSet(a: ReadonlySet<string>, b: ReadonlySet<string>): boolean {
  return a.size === b.size && [...a].every((each) => b.has(each));
}
