import type { PropertyFile } from '../../schema/index.js';
import type { Card } from '../model/index.js';

/** An id that no file can give to an embargo: ids have no space in them. */
const HELD_BACK = 'held back';

/** A property with an embargo more, which nobody knows and nothing announces. */
export function withHeldBack(property: PropertyFile): PropertyFile {
  const embargo = { id: HELD_BACK, label: HELD_BACK, lift: 'unset', announce: false } as const;
  return { ...property, embargoes: [...(property.embargoes ?? []), embargo] };
}

/** A card that is held like anything else that has no date. */
export function heldBack(card: Card): Card {
  const embargo = [...(card.front.embargo ?? []), HELD_BACK];
  return { ...card, front: { ...card.front, embargo } };
}
