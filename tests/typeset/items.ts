import type { BreakPoints, Flexible } from '../../pipeline/typeset/optimum.js';

/** The boxes, glue and penalties of Knuth and Plass (1981), as plain values. */
export type Item =
  | { readonly kind: 'box'; readonly width: number }
  | {
      readonly kind: 'glue';
      readonly width: number;
      readonly stretch: number;
      readonly shrink: number;
    }
  | { readonly kind: 'penalty'; readonly width: number; readonly flagged: boolean };

/**
 * Widths of the worked example of the paper, in its units; typed in from memory, and confirmed by
 * the ratios that TeX and a second program found with them. What it does not list is 10 wide.
 */
const WIDTHS: Readonly<Record<string, number>> = {
  ...{ a: 9, b: 10, c: 8, d: 10, e: 8, f: 6, g: 9, h: 10, i: 5, j: 6, k: 10, l: 5, m: 15 },
  ...{ n: 10, o: 9, p: 10, q: 10, r: 7, s: 7, t: 7, u: 10, v: 9, w: 13, x: 10, y: 10, z: 8 },
  ...{ C: 13, I: 6, '-': 6, ',': 5, '.': 5, ';': 5, "'": 5 },
};

const HYPHEN_WIDTH = 6;

/** The space after a word, by its last character: width, stretch and shrink. */
const SPACES: Readonly<Record<string, readonly [number, number, number]>> = {
  ',': [6, 4, 2],
  ';': [6, 4, 1],
  '.': [8, 6, 1],
};

function widthOf(text: string): number {
  return Array.from(text).reduce((sum, letter) => sum + (WIDTHS[letter] ?? 10), 0);
}

/** The items of a text; soft hyphens are the places where it may be divided. */
export function itemsOf(text: string, stretch = 1, shrink = 1): Item[] {
  return text.split(/( |\u00ad|(?<=\w)-(?=\w))/u).flatMap((token, index, tokens): Item[] => {
    if (token === '') return [];
    if (token === '\u00ad') return [{ kind: 'penalty', width: HYPHEN_WIDTH, flagged: true }];
    if (token === '-' && index % 2 === 1) {
      return [
        { kind: 'box', width: widthOf('-') },
        { kind: 'penalty', width: 0, flagged: true },
      ];
    }
    if (token !== ' ') return [{ kind: 'box', width: widthOf(token) }];
    const [width, more, less] = SPACES[tokens[index - 1]?.at(-1) ?? ''] ?? [6, 3, 2];
    return [{ kind: 'glue', width, stretch: more * stretch, shrink: less * shrink }];
  });
}

/** A line ends before an item: the penalty or glue there, or the end. */
export interface ItemBreaks extends BreakPoints {
  /** Index of the item at which each break is; the last is the number of items. */
  readonly places: readonly number[];
}

/** The breaks of a list of items, with 50 for every hyphen. */
export function breakPointsOf(items: readonly Item[]): ItemBreaks {
  const places = items.flatMap((item, index) => (item.kind === 'box' ? [] : [index]));
  places.push(items.length);
  const line = (from: number, to: number): Flexible => {
    const end = places[to] ?? 0;
    const start = from < 0 ? 0 : afterBreak(items, places[from] ?? 0);
    const sum = { natural: 0, stretch: 0, shrink: 0 };
    for (const item of items.slice(start, end)) {
      if (item.kind === 'penalty') continue;
      sum.natural += item.width;
      if (item.kind === 'glue') {
        sum.stretch += item.stretch;
        sum.shrink += item.shrink;
      }
    }
    const at = items[end];
    if (at?.kind === 'penalty') sum.natural += at.width;
    return to === places.length - 1 ? { ...sum, stretch: Infinity } : sum;
  };
  return {
    places,
    count: places.length,
    penalty: (at) => {
      if (at === places.length - 1) return -10_000;
      return items[places[at] ?? 0]?.kind === 'penalty' ? 50 : 0;
    },
    flagged: (at) => items[places[at] ?? 0]?.kind === 'penalty',
    line,
  };
}

/** What a line starts with: glue and penalties after a break are dropped. */
function afterBreak(items: readonly Item[], at: number): number {
  let start = at;
  while (start < items.length && items[start]?.kind !== 'box') start += 1;
  return start;
}

/** A measure in the units of the paper, a tolerance of TeX, and how far spaces give. */
export interface TexSetting {
  readonly measure: number;
  readonly tolerance: number;
  readonly stretch: number;
  readonly shrink: number;
}

export const SETTINGS: readonly TexSetting[] = [
  { measure: 390, tolerance: 200, stretch: 1, shrink: 1 },
  { measure: 390, tolerance: 1000, stretch: 1, shrink: 1 },
  { measure: 300, tolerance: 2000, stretch: 1, shrink: 1 },
  { measure: 500, tolerance: 200, stretch: 2, shrink: 1 },
];
