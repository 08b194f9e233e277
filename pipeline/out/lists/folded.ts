import { escaped } from './plain.js';

/** A piece of HTML, and how much of the story it tells. */
export interface Piece {
  readonly html: string;
  readonly level: number;
}

/**
 * The pieces of a cell: those that tell nothing stand there, the others are folded under what they
 * tell of.
 * @param levels labels of the levels, least revealing first.
 */
export function folded(pieces: readonly Piece[], levels: readonly string[]): string {
  const open = pieces.filter(({ level }) => level === 0);
  const told = pieces.filter(({ level }) => level > 0);
  if (told.length === 0) return joined(open);
  const label = levels[Math.max(...told.map(({ level }) => level))];
  const summary = label === undefined ? 'Tells of the story' : `Tells of ${label}`;
  const fold = `<details><summary>${escaped(summary)}</summary>${joined(told)}</details>`;
  return `${joined(open)}${fold}`;
}

function joined(pieces: readonly Piece[]): string {
  return pieces.map(({ html }) => html).join('; ');
}
