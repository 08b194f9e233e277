/** How the files of a subset are called: letters and a number of so many digits. */
interface Manner {
  readonly letters: string;
  readonly digits: number;
  /** Whether the number in it is the one that was printed when it was given. */
  readonly followsNumber: boolean;
}

/**
 * Ids for new cards, in the manner of those that are there: `c021` after `c020`. They are made of
 * the subset's id and of numbers alone, since a name may be held, and never of one that was ever used:
 * decisions and packets go by it.
 * @param known pairs of id and running number (null for a code) of the cards that are there.
 * @param used ids that are taken, those of cards that are gone too.
 */
export function stubIds(
  subset: string,
  known: readonly (readonly [id: string, running: number | null])[],
  used: Iterable<string>,
  wanted: readonly (number | null)[],
): readonly string[] {
  const manner = mannerOf(subset, known);
  const taken = new Set(used);
  let last = 0;
  for (const id of taken) last = Math.max(last, numberIn(id, manner) ?? 0);
  return wanted.map((running) => {
    const wished = manner.followsNumber && running !== null ? idOf(manner, running) : null;
    let id = wished;
    while (id === null || taken.has(id)) {
      last += 1;
      id = idOf(manner, last);
    }
    taken.add(id);
    return id;
  });
}

function idOf({ letters, digits }: Manner, number: number): string {
  return `${letters}${String(number).padStart(digits, '0')}`;
}

function numberIn(id: string, { letters }: Manner): number | null {
  const digits = id.startsWith(letters) ? /^\d{1,9}$/.exec(id.slice(letters.length)) : null;
  return digits ? Number(digits[0]) : null;
}

/** The manner of most cards; of a subset without any, its first letter and three digits. */
function mannerOf(
  subset: string,
  known: readonly (readonly [id: string, running: number | null])[],
): Manner {
  const manners = new Map<string, { manner: Manner; times: number; follow: number }>();
  for (const [id, running] of known) {
    const [, letters, digits] = /^([a-z]+(?:-[a-z]+)*-?)(\d{1,9})$/.exec(id) ?? [];
    if (letters === undefined || digits === undefined) continue;
    const key = `${letters} ${String(digits.length)}`;
    const own = manners.get(key) ?? {
      manner: { letters, digits: digits.length, followsNumber: false },
      times: 0,
      follow: 0,
    };
    own.times += 1;
    if (running === Number(digits)) own.follow += 1;
    manners.set(key, own);
  }
  const most = [...manners.values()].sort((a, b) => b.times - a.times)[0];
  if (!most) return { letters: /[a-z]/.exec(subset)?.[0] ?? 'c', digits: 3, followsNumber: true };
  return { ...most.manner, followsNumber: most.follow * 2 > most.times };
}
