import {
  cardHold,
  copyText,
  fieldHold,
  heldSpans,
  holdNamed,
  identityOf,
  isCoded,
  join,
  numberOf,
  paragraphText,
  subsetOf,
  type Card,
  type CardSet,
  type Hold,
} from '../model/index.js';
import { letters } from './fold.js';
import { RUN } from './fingerprint.js';
import type { Standing } from './standing.js';
import { target, unseen, type Target } from './target.js';
import { CARD } from './told-card.js';
import { tell } from './told.js';

/** `set/subset/id`. */
export function keyOf(card: Card): string {
  return `${card.set}/${identityOf(card)}`;
}

/** What is held of a card: its fields, its copy, the spans in it, and its code. */
export function cardTargets(card: Card, set: CardSet, standing: Standing): Target[] {
  const key = keyOf(card);
  const hold = cardHold(standing.schedule, set.plan.value, card);
  const isOpen = openFields(card, hold, standing);
  const fields = unseen(tell(CARD, card.front), isOpen);
  const spans = heldSpans(card.bio).filter(
    (span) => !standing.isOpen(join(hold, holdNamed(standing.schedule, span.hold))),
  );
  const { publicName } = card.front;
  const isAbsent = standing.isAbsent(hold);
  return [
    ...fields.map(({ field, words }) => target(words, `${field} of ${key}`)),
    ...(isAbsent && publicName !== undefined ? [target(publicName, `publicName of ${key}`)] : []),
    ...(standing.isOpen(hold) ? [] : codeOf(card, set, key)),
    ...(isOpen('bio') ? [] : bioWords(card).map((words) => target(words, `bio of ${key}`))),
    ...spans.map(({ text }) => target(text, `a held span of ${key}`)),
  ].map((each) => ({ ...each, card: key }));
}

/** Which fields of a card are open. */
export function openFields(card: Card, hold: Hold, standing: Standing): (field: string) => boolean {
  return (field) => standing.isOpen(fieldHold(standing.schedule, hold, card, field));
}

/** A code is held together with its card. */
function codeOf(card: Card, set: CardSet, key: string): Target[] {
  const number = numberOf(card);
  const subset = subsetOf(set.plan.value, card.subset);
  if (number === null || !subset || !isCoded(subset.numbers)) return [];
  return [target(number, `number of ${key}`)];
}

/** The whole bio; a paragraph too short to be found in it by its letters stands for itself. */
function bioWords({ bio }: Card): string[] {
  const short = bio.map(paragraphText).filter((text) => letters(text).length < RUN);
  return bio.length > 1 ? [copyText(bio), ...short] : [copyText(bio)];
}
