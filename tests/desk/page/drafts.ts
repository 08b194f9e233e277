import { execFileSync } from 'node:child_process';

/** Cards of the demo that a test writes anew, with what is typed: an avoided name is in each. */
export const WRITTEN: Readonly<Record<string, string>> = {
  c001: 'She was eleven houses once, all of them on Candle Row. On cold nights her planks still smell of other people’s suppers. The *Patient Heron* crosses the Overmere after dark, when sensible boats are asleep. Miss Thrane would not agree.',
  c002: 'Each of his nine keys has its own note, and Emeric Hask could sing you the ring. He opens the locks at six, shuts them at ten, and writes up the weather even when there hasn’t been any. Miss Thrane finds him stern.',
  c004: 'Watch the far shore at dusk. A spark goes up, then a second, then a whole wobbling row. That is Old Pell on his ladder with the Long Match, giving each lamp the news as he lights it. Miss Thrane nods to each.',
  c005: 'Her fingers have been black since she was nine. Sister Quillon Ash draws the bottom of the lake, one sounding at a time, and puts each drowned chimney back where it stood. Miss Thrane steers by her white paper.',
  c006: 'Ask Dorrit Sill what she found on the lake bed and she will say a piano. Ask how she got it up and she will say it floated. By then her brother has joined in and the piano has a crew. Miss Thrane never asks.',
};

const pathOf = (card: string): string => `high-water/cards/crew/${card}.md`;

/** Makes drafts without copy of these cards. */
export function emptied(files: Map<string, string | Uint8Array>): void {
  for (const card of Object.keys(WRITTEN)) {
    const text = String(files.get(pathOf(card)));
    const front = text.slice(0, text.indexOf('\n---\n') + '\n---\n'.length);
    files.set(pathOf(card), front.replace('state: ready', 'state: draft'));
  }
}

/** The cards of the demo that tests of the page name, and those beside them. */
const FEW = /^high-water\/(?:cards\/crew\/|art\/)c0(?:0\d|1\d|20)\./;

/**
 * Leaves a score of the demo's cards: what rules say of the numbers of a set is beside the point here,
 * and each look at it takes a tenth of the time.
 */
export function fewer(files: Map<string, string | Uint8Array>): void {
  for (const path of files.keys()) {
    const isOfCards = /^[^/]+\/(?:cards|art)\//.test(path);
    if (path.startsWith('depth-charts/') || (isOfCards && !FEW.test(path))) files.delete(path);
  }
}

/** Commits everything below a folder. */
export function commit(folder: string): void {
  git(folder, 'init', '-q');
  git(folder, 'add', '-A');
  git(folder, '-c', 'user.name=A', '-c', 'user.email=a@example.test', 'commit', '-qm', 'before');
}

/** The lines that differ from what was committed, and every file that is new. */
export function changedLines(folder: string): readonly string[] {
  const lines = git(folder, 'diff', '--unified=0').split('\n');
  const other = git(folder, 'ls-files', '--others').split('\n').filter(Boolean);
  return [...lines.filter((line) => /^[+-]/.test(line) && !line.startsWith('---')), ...other];
}

/** The lines that differ when these cards have been written and handed in, and nothing else. */
export function linesOfWritten(cards: readonly string[]): readonly string[] {
  return cards.flatMap((card) => [
    `+++ b/content/${pathOf(card)}`,
    '-state: draft',
    '+state: ready',
    `+${(WRITTEN[card] ?? '').replace('Miss Thrane', 'Captain Thrane')}`,
  ]);
}

function git(folder: string, ...args: readonly string[]): string {
  const env = { PATH: process.env['PATH'], HOME: folder, GIT_CONFIG_NOSYSTEM: '1' };
  return execFileSync('git', ['-C', folder, ...args], { encoding: 'utf8', env });
}
