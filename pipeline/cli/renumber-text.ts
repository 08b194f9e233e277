import type { Renumbering } from '../mend/index.js';
import { count, indented, plain } from './report-text.js';

/** What `renumber` would change, and what that touches. */
export function renumberText(
  { moved, approvals, addresses, mentions, late }: Extract<Renumbering, { ok: true }>,
  subset: string,
): string {
  const blocks = [
    'INTERNAL\n',
    moved.length === 0
      ? `${plain(subset)}: no number changes\n`
      : `${plain(subset)}: ${count(moved.length, 'number')} ${moved.length === 1 ? 'changes' : 'change'}\n${tableOf(moved)}`,
    indented(
      'Layout approvals that no longer hold:',
      approvals.map(({ card, person, role }) => `${card}  ${person} (${role})`),
    ),
    indented(
      'Public addresses that change (the old ones lead nowhere, or to another card):',
      addresses.map(({ card, from, to }) => `${card}  ${from} -> ${to}`),
    ),
    indented(
      'Places to look at, which name a number that moves:',
      mentions.map(
        ({ file, line, column, words }) => `${file}:${String(line)}:${String(column)}  ${words}`,
      ),
    ),
    indented('Numbers may change until press, and:', late),
  ];
  return blocks.filter((block) => block !== '').join('\n');
}

function tableOf(moved: Extract<Renumbering, { ok: true }>['moved']): string {
  const rows = [
    ['card', 'old', 'new', 'name'],
    ...moved.map(({ card, from, to, name }) => [card, plain(from), plain(to), plain(name)]),
  ];
  const widths = [0, 1, 2].map((at) => Math.max(...rows.map((row) => row[at]?.length ?? 0)));
  return rows
    .map((row) => `  ${row.map((cell, at) => cell.padEnd(widths[at] ?? 0)).join('  ')}\n`)
    .join('');
}
