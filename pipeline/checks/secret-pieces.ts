import { OPEN, join, opensLater, type Hold } from '../model/index.js';
import type { NameMatch } from '../text/index.js';
import type { SecretEntry } from './secret-entries.js';
import type { ToldScan } from './told/scan.js';
import type { ToldText } from './told/text.js';

/** A part of a secret that a text has: a name of the cast, or a word. */
export interface Piece {
  readonly bearers: readonly string[];
  /** Entries of secrets of which it is a form. */
  readonly words: readonly string[];
  /** It is a name with one letter wrong, or the like. */
  readonly doubtful: boolean;
  readonly from: number;
  readonly to: number;
  readonly in: ToldText;
  readonly hold: Hold;
}

/** Names of the cast that a secret speaks of, and words of a secret that are in no name. */
export function piecesOf(
  { text, names, words }: ToldScan,
  bearers: ReadonlySet<string>,
): readonly Piece[] {
  const listed = names.filter(({ of }) => of.some(({ surname }) => !surname));
  const sure = listed.filter(({ doubt }) => doubt === null);
  const piece = ({ from, to, doubt }: NameMatch<unknown>): Omit<Piece, 'bearers' | 'words'> => ({
    doubtful: doubt !== null,
    from,
    to,
    in: text,
    hold: text.holdOf(from, to),
  });
  return [
    ...listed
      .filter(({ of }) => of.some(({ name }) => bearers.has(name)))
      .map((match) => ({ ...piece(match), words: [], bearers: match.of.map(({ name }) => name) })),
    ...words
      .filter((match) => !sure.some(({ from, to }) => from < match.to && to > match.from))
      .map((match) => ({ ...piece(match), words: match.of, bearers: [] })),
  ];
}

/** The first combination without a doubt, else the first. */
export function toldIn(
  parts: readonly (readonly Piece[])[],
  groups: readonly (readonly SecretEntry[])[],
  hold: Hold,
): readonly Piece[] | null {
  for (const doubtful of [false, true]) {
    for (const pieces of parts) {
      const some = doubtful ? pieces : pieces.filter((piece) => !piece.doubtful);
      const found = combination(groups, some, hold);
      if (found) return found;
    }
  }
  return null;
}

/** A piece for each group, so chosen that all of them are told before the secret may be; else null. */
function combination(
  groups: readonly (readonly SecretEntry[])[],
  pieces: readonly Piece[],
  hold: Hold,
  around = OPEN,
): readonly Piece[] | null {
  const [group, ...others] = groups;
  if (!group) return [];
  for (const piece of pieces.filter((each) => group.some((entry) => fits(entry, each)))) {
    const own = join(around, piece.hold);
    const rest = opensLater(hold, own) ? combination(others, pieces, hold, own) : null;
    if (rest) return [piece, ...rest];
  }
  return null;
}

/** Whether there is something for every group at all. */
export function hasAll(
  groups: readonly (readonly SecretEntry[])[],
  pieces: readonly Piece[],
): boolean {
  return groups.every((group) => pieces.some((piece) => group.some((entry) => fits(entry, piece))));
}

function fits({ bearers, word }: SecretEntry, piece: Piece): boolean {
  return piece.words.includes(word) || bearers.some((name) => piece.bearers.includes(name));
}
