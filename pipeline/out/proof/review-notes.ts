import type { View, ViewCard, ViewSource } from '../../gate/index.js';
import { sayLift, type Column } from './notes.js';

/** What a reviewer is told of a card besides what prints: what opens when, and where it is from. */
export function tellReview(column: Column, { review }: ViewCard, view: View): void {
  if (!review) return;
  const { zone } = view.property;
  const { openings, inHands, publicName, depicts, ref, signers, sources } = review;
  column.rule();
  for (const { what, label, at } of openings) {
    column.says(`${capitalised(what)}: ${sayLift(at, zone)} (${label})`, column.quiet);
  }
  column.pair('Collectors have it', inHands === Infinity ? 'no date yet' : sayLift(inHands, zone));
  if (publicName !== null) column.pair('Until then', publicName);
  if (depicts.length > 0) column.pair('Shows', depicts.join(', '));
  if (ref !== null) column.pair('After', ref);
  if (signers.length > 0) {
    column.pair('Signs', signers.map(({ name, state }) => `${name} (${state})`).join(', '));
  }
  if (sources.length === 0) return;
  column.rule();
  for (const source of sources) column.says(saySource(source), column.quiet);
}

/** "Berth: Shooting script 4, p. 31". */
function saySource({ title, ref, for: field }: ViewSource): string {
  const place = ref === null ? title : `${title}, ${ref}`;
  return field === null ? `Source: ${place}` : `${field}: ${place}`;
}

function capitalised(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
