import type { View, ViewCard } from '../../gate/index.js';

/** Cells that a spreadsheet program would run as a formula (OWASP, CSV Injection). */
const FORMULA = /^[=+\-@\t\r\n]/;

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
  return [['Set', 'Subset', 'Number', 'Name', 'State'], ...rows]
    .map((row) => `${row.map(cell).join(',')}\r\n`)
    .join('');
}

function numberOf(card: ViewCard): string {
  return `${card.number ?? ''}${card.letter ?? ''}`;
}

function cell(text: string): string {
  const safe = FORMULA.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
