import { fieldHold, heldSpans, holdNamed, join, type Hold } from '../model/index.js';
import type { Looked } from './field.js';

type Held = Pick<Looked, 'card' | 'hold' | 'lens'>;
type Apart = readonly (readonly [what: string, hold: Hold])[];

/** Fields that `holds` names, each with its whole hold. */
export function heldFields({ card, hold, lens }: Held): Apart {
  return Object.keys(card.front.holds ?? {}).map((field) => [
    field,
    fieldHold(lens.schedule, hold, card, field),
  ]);
}

/** Held words of the bio, each with its whole hold. */
export function heldWords({ card, hold, lens }: Held): Apart {
  const bio = fieldHold(lens.schedule, hold, card, 'bio');
  return heldSpans(card.bio).map((span) => [
    span.text,
    join(bio, holdNamed(lens.schedule, span.hold)),
  ]);
}
