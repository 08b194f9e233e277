import { fraction, whole, type Fraction } from './fraction.js';
import type { Entry, Kind, ReleasePlan } from './plan.js';
import type { Sharing } from './sharing.js';
import type { Volume } from './volume.js';

/** Copies of an entry, exactly; null where that cannot be known yet. */
export type Copies = Fraction | null;

/** The copies of each entry, in the order of the plan; null where that cannot be known yet. */
export function copiesOfEntries(
  plan: ReleasePlan,
  kinds: ReadonlyMap<string, Kind>,
  sharings: ReadonlyMap<string, Sharing>,
  volumes: ReadonlyMap<string, Volume>,
): readonly Copies[] {
  const withFixed = new Set<string>();
  const copies = plan.entries.map((entry) => {
    const sharing = sharings.get(entry.kind);
    const fixed = entry.amount.by === 'each' && !withFixed.has(entry.kind);
    if (fixed) withFixed.add(entry.kind);
    return sharing === undefined
      ? null
      : statedCopies(entry, sharing, volumes.get(entry.product), fixed);
  });
  const byRun = new Map<string, { readonly at: number; readonly product: string }[]>();
  for (const [at, { kind, product, amount }] of plan.entries.entries()) {
    if (amount.by !== 'run') continue;
    const own = byRun.get(kind);
    if (own === undefined) byRun.set(kind, [{ at, product }]);
    else own.push({ at, product });
  }
  const parts = new Map<number, Copies>();
  for (const [id, entries] of byRun) {
    const kind = kinds.get(id);
    const sharing = sharings.get(id);
    if (kind === undefined || sharing === undefined) continue;
    const others = plan.entries.flatMap((entry, at) =>
      entry.kind === id && entry.amount.by !== 'run' ? [copies[at] ?? null] : [],
    );
    const packs = entries.map(({ product }) => volumes.get(product)?.packs);
    const shares = split(restOfRun(kind, sharing, others), packs);
    for (const [index, { at }] of entries.entries()) parts.set(at, shares[index] ?? null);
  }
  return copies.map((each, at) => parts.get(at) ?? each);
}

/** What an entry says by itself. */
function statedCopies(
  { amount }: Entry,
  sharing: Sharing,
  volume: Volume | undefined,
  fixed: boolean,
): Copies {
  switch (amount.by) {
    case 'copies':
      return whole(amount.copies);
    case 'each':
      return whole(amount.copies * sharing.weights + (fixed ? sharing.fixed : 0));
    case 'odds':
      return volume === undefined ? null : fraction(BigInt(volume.packs), BigInt(amount.packs));
    case 'box':
      return volume === undefined ? null : whole(amount.copies * volume.boxes);
    case 'case':
      return volume === undefined ? null : whole(amount.copies * volume.cases);
    case 'run':
      return null;
  }
}

/** What is left of a run when the reserve and other entries have theirs; not below 0. */
function restOfRun(
  { run = 0, reserve = 0 }: Kind,
  { cards }: Sharing,
  others: readonly Copies[],
): number | null {
  let rest = (run - reserve) * cards;
  for (const taken of others) {
    if (taken === null) return null;
    rest -= Number(taken.over / taken.under);
  }
  return Math.max(rest, 0);
}

/** A number in parts in the proportion of these packs. */
function split(rest: number | null, packs: readonly (number | undefined)[]): readonly Copies[] {
  if (rest === null) return packs.map(() => null);
  if (packs.length === 1) return [whole(rest)];
  let all = 0n;
  for (const each of packs) {
    if (each === undefined) return packs.map(() => null);
    all += BigInt(each);
  }
  return packs.map((each) => fraction(BigInt(rest) * BigInt(each ?? 0), all));
}
