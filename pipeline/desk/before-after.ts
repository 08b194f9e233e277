import { diffWordsWithSpace } from 'diff';

import { subsetOf, type Card, type CardSet, type Content } from '../model/index.js';
import { approvedVersions, covers, fieldTexts, type Approvals } from '../review/index.js';
import type { BeforeAfter, RedlinePiece } from './protocol.js';

/** A card as it stood, by field. */
export interface Before {
  readonly says: string;
  readonly approved: boolean;
  readonly texts: ReadonlyMap<string, string>;
}

/** The copy of a card as it was last approved; null where nobody approved it. */
export function approvedBefore(
  content: Content,
  set: CardSet,
  card: Card,
  approvals: Approvals,
): Before | null {
  const property = content.property?.value;
  if (!property) return null;
  const people = content.people?.value.people ?? [];
  const subset = subsetOf(set.plan.value, card.subset) ?? null;
  const order = { set, card, subset, parts: ['copy'] as const };
  const ground = { property, people, decisions: approvals.decisions };
  const version = approvedVersions(order, ground, approvals).find(({ by }) => by.length > 0);
  if (!version) return null;
  const names = version.by.map(
    ({ person }) => people.find(({ id }) => id === person)?.name ?? person,
  );
  return {
    says: `As approved by ${[...new Set(names)].join(' and ')}`,
    approved: true,
    texts: textsOf(set, version.card, approvals),
  };
}

/** A card as it was when the desk first looked at it. */
export function openedBefore(set: CardSet, card: Card, approvals: Approvals): Before {
  return {
    says: 'As it was when the desk was opened',
    approved: false,
    texts: textsOf(set, card, approvals),
  };
}

/** What differs between a card as it stood and as it stands, field by field. */
export function changeSince(
  before: Before,
  set: CardSet,
  card: Card,
  approvals: Approvals,
): BeforeAfter {
  const now = textsOf(set, card, approvals);
  const fields = [...new Set([...before.texts.keys(), ...now.keys()])].flatMap((field) => {
    const [was, is] = [before.texts.get(field) ?? '', now.get(field) ?? ''];
    return was === is ? [] : [{ field, before: was, after: is, pieces: redline(was, is) }];
  });
  return { says: before.says, approved: before.approved, fields };
}

function textsOf(set: CardSet, card: Card, approvals: Approvals): ReadonlyMap<string, string> {
  return fieldTexts(covers('copy', card, approvals.around(set, card)));
}

function redline(was: string, is: string): readonly RedlinePiece[] {
  return diffWordsWithSpace(was, is).map(({ value, added, removed }) => ({
    is: added ? 'added' : removed ? 'removed' : 'kept',
    text: value,
  }));
}
