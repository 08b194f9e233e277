/**
 * Hyphenation after F. M. Liang, "Word Hy-phen-a-tion by Com-put-er" (Stanford, 1983): each pattern
 * that occurs in a word gives numbers to the places between its letters, the greatest number wins,
 * and a word may be divided where it is odd. Exceptions go before patterns.
 */
export interface Hyphenator {
  /** Offsets at which a word of small letters may be divided, in order. */
  (word: string): readonly number[];
}

/** Letters that stay together at the start and the end: `\lefthyphenmin` and `\righthyphenmin`. */
export const LEFT_MINIMUM = 2;
export const RIGHT_MINIMUM = 3;

/** Reads a file of `\patterns{…}` and `\hyphenation{…}` and gives a hyphenator that keeps answers. */
export function readPatterns(file: string): Hyphenator {
  const text = file.replace(/%.*$/gmu, '');
  const patterns = new Map<string, readonly number[]>();
  for (const entry of entries(text, 'patterns')) patterns.set(...readPattern(entry));
  const longest = Math.max(...[...patterns.keys()].map((pattern) => pattern.length));
  const known = new Map<string, readonly number[]>();
  for (const entry of entries(text, 'hyphenation'))
    known.set(entry.replaceAll('-', ''), hyphens(entry));
  return (word) => {
    let places = known.get(word);
    if (!places) known.set(word, (places = divide(word, patterns, longest)));
    return places;
  };
}

function entries(text: string, command: string): readonly string[] {
  const body = new RegExp(`\\\\${command}\\s*\\{([^}]*)\\}`, 'u').exec(text)?.[1] ?? '';
  return body.split(/\s+/u).filter((entry) => entry !== '');
}

/** `.ach4` is the letters `.ach` and the numbers 0 0 0 0 4 around them. */
function readPattern(entry: string): [string, readonly number[]] {
  const numbers = [0];
  for (const character of entry) {
    if (character >= '0' && character <= '9') numbers[numbers.length - 1] = Number(character);
    else numbers.push(0);
  }
  return [entry.replace(/[0-9]/gu, ''), numbers];
}

function hyphens(entry: string): readonly number[] {
  const parts = entry.split('-');
  return parts.slice(0, -1).map((_, index) => parts.slice(0, index + 1).join('').length);
}

function divide(
  word: string,
  patterns: ReadonlyMap<string, readonly number[]>,
  longest: number,
): readonly number[] {
  const edged = `.${word}.`;
  const values = new Array<number>(edged.length + 1).fill(0);
  for (let from = 0; from < edged.length; from += 1) {
    for (let to = from + 1; to <= Math.min(edged.length, from + longest); to += 1) {
      patterns.get(edged.slice(from, to))?.forEach((value, index) => {
        values[from + index] = Math.max(values[from + index] ?? 0, value);
      });
    }
  }
  const places: number[] = [];
  for (let place = LEFT_MINIMUM; place <= word.length - RIGHT_MINIMUM; place += 1) {
    if ((values[place + 1] ?? 0) % 2 === 1) places.push(place);
  }
  return places;
}
