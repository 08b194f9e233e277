import type { Card } from '../model/index.js';
import type { Subject } from './subject.js';

/**
 * Rules whose findings in the file of a card depend on that card and on what is no card: nothing that
 * stands on another card changes them. So they can look at one card again without the others; what
 * they find in other files may depend on every card. `tests/checks/one-card.test.ts` holds them to it.
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
  'approval-missing',
  'approval-stale',
]);

/**
 * A subject with one card alone: for `CARD_RULES`. Its numbering and its story are those of all cards.
 * Null for a card that is not among those of the subject.
 */
export function withCardAlone(subject: Subject, card: Card): Subject | null {
  const set = subject.sets.find(({ id }) => id === card.set);
  if (!set?.cards.includes(card)) return null;
  const alone = { ...set, cards: [card], sales: [] };
  const hold = subject.holds.get(card);
  return {
    ...subject,
    content: { ...subject.content, sets: [alone] },
    sets: [alone],
    subsets: subject.subsets.flatMap((subset) =>
      subset.set === set && subset.plan.id === card.subset
        ? [{ ...subset, set: alone, cards: [card] }]
        : [],
    ),
    cards: [card],
    sales: [],
    holds: new Map(hold ? [[card, hold]] : []),
  };
}
