import type { View, ViewCard } from '../../gate/index.js';
import { delimited, neutral } from './cells.js';

/**
 * The checklist of a view as CSV (RFC 4180): one row a card, in the order of the checklist. A cell
 * that would be a formula gets an apostrophe before it.
 */
export function checklistCsv(view: View): string {
  const rows = view.sets.flatMap((set) =>
    set.subsets.flatMap((subset) =>
      subset.cards.map((card) => [set.title, subset.title, numberOf(card), card.name, card.state]),
    ),
  );
  const all = [['Set', 'Subset', 'Number', 'Name', 'State'], ...rows];
  return delimited(
    all.map((row) => row.map(neutral)),
    'csv',
  );
}

function numberOf(card: ViewCard): string {
  return `${card.number ?? ''}${card.letter ?? ''}`;
}
