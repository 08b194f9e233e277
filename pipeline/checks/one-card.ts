import type { Card, CardSet } from '../model/index.js';
import { wholeOf, type Subject } from './subject.js';

/**
 * Rules whose findings in the file of a card depend on that card and on what is no card. So they can
 * look at one card again without the others; what they find in other files may depend on every card.
 * What a rule gathers of all cards to know the names of people it takes from `wholeOf` its subject.
 * `spelling` would be one of them, but to think of what is meant by a word that is half typed takes
 * longer than a letter may. `tests/checks/one-card.test.ts` holds them to it.
 */
export const CARD_RULES: ReadonlySet<string> = new Set([
  'art-missing',
  'path-outside',
  'id-tells',
  'level-unknown',
  'number-range',
  'number-tells',
  'copy-empty',
  'copy-words',
  'copy-characters',
  'control-character',
  'mixed-script',
  'overset',
  'fit-tight',
  'glyph-missing',
  'leak',
  'secret',
  'early-print',
  'name-held',
  'held-span',
  'depicts-held',
  'name-avoided',
  'name-near',
  'name-style',
  'depicts-unknown',
  'cut-stale',
  'fact-unsourced',
  'source-withdrawn',
  'quote-unsourced',
  'repeated-word',
  'house-style',
  'readability',
  'legal-missing',
  'legal-form',
  'approval-missing',
  'approval-stale',
]);

/** A subject with one card alone; null for a card that is not among those of the subject. */
export function withCardAlone(subject: Subject, card: Card): Subject | null {
  const set = subject.sets.find(({ id }) => id === card.set);
  return set?.cards.includes(card) === true ? withCardsAlone(subject, set, [card]) : null;
}

/**
 * A subject with some cards of a set alone: for `CARD_RULES`. Its numbering, its story and whom it
 * knows are those of all cards.
 */
export function withCardsAlone(subject: Subject, set: CardSet, cards: readonly Card[]): Subject {
  const alone = { ...set, cards: [...cards], sales: [] };
  const bySubset = new Map<string, Card[]>();
  for (const card of cards) {
    bySubset.set(card.subset, [...(bySubset.get(card.subset) ?? []), card]);
  }
  return {
    ...subject,
    whole: wholeOf(subject),
    content: { ...subject.content, sets: [alone] },
    sets: [alone],
    subsets: subject.subsets.flatMap((subset) => {
      const own = subset.set === set ? bySubset.get(subset.plan.id) : undefined;
      return own ? [{ ...subset, set: alone, cards: own }] : [];
    }),
    cards,
    sales: [],
    holds: new Map(
      cards.flatMap((card) => {
        const hold = subject.holds.get(card);
        return hold ? [[card, hold] as const] : [];
      }),
    ),
  };
}
