import type { Subset } from '../../schema/index.js';

/** Numbers of a list, in the order of the plan. */
export interface NumberList {
  readonly numbers: readonly string[];
  /** Those that stand there by themselves, and not within a range. */
  readonly named: ReadonlySet<string>;
  /** Every part of it that is no number of the plan. */
  readonly why: readonly string[];
}

/**
 * Reads `5-12, 15` as numbers of a subset; the prefix may stand before each, or be left out.
 * @param planned the numbers that the plan gives to the subset, in order.
 */
export function readNumberList(
  text: string,
  { numbers, id }: Pick<Subset, 'numbers' | 'id'>,
  planned: readonly string[],
): NumberList {
  const prefix = numbers !== 'none' && 'prefix' in numbers ? (numbers.prefix ?? '') : '';
  const rank = new Map(planned.map((number, at) => [number, at]));
  const rankOf = (words: string): number | undefined =>
    rank.get(words) ?? rank.get(`${prefix}${words}`);
  const found = new Set<number>();
  const named = new Set<string>();
  const why: string[] = [];
  for (const part of text.split(',').map((each) => each.trim())) {
    const single = rankOf(part);
    if (single !== undefined) {
      found.add(single);
      named.add(planned[single] ?? '');
      continue;
    }
    const ends = rangeIn(part, rankOf);
    if (ends === null) why.push(notPlanned(part, id, planned));
    else for (let at = ends.from; at <= ends.to; at += 1) found.add(at);
  }
  const inOrder = [...found].sort((a, b) => a - b).map((at) => planned[at] ?? '');
  return { numbers: inOrder, named, why };
}

/** Codes have hyphens of their own, so each one is tried as the middle. */
function rangeIn(
  part: string,
  rankOf: (words: string) => number | undefined,
): { readonly from: number; readonly to: number } | null {
  for (const { index } of part.matchAll(/[-–]/g)) {
    const from = rankOf(part.slice(0, index).trim());
    const to = rankOf(part.slice(index + 1).trim());
    if (from !== undefined && to !== undefined && from <= to) return { from, to };
  }
  return null;
}

function notPlanned(part: string, id: string, planned: readonly string[]): string {
  const given =
    planned.length < 4 ? planned.join(', ') : `${planned[0] ?? ''} to ${planned.at(-1) ?? ''}`;
  return `${part === '' ? 'an empty part' : part} is no number that the plan gives to \`${id}\`: it gives ${given}`;
}
