import type { Kind } from './plan.js';
import { problem, type Problem } from './problem.js';
import type { Prepared, Tally } from './tally.js';
import { counted as count, grouped } from './words.js';

/** Runs that are promised and not what is packed, and reserves that are too large. */
export function runProblems({ plan, sharings }: Prepared, counted: Tally): readonly Problem[] {
  return plan.kinds.flatMap((kind) => {
    const { run, reserve = 0 } = kind;
    if (run === undefined) return [];
    if (reserve > run) return [reserveOver(kind, run, reserve)];
    const packed = counted.packed.get(kind.id);
    if (packed === null) return [];
    const cards = sharings.get(kind.id)?.cards ?? 0;
    return unpacked(kind, { run, cards, packed: packed ?? 0, kept: reserve * cards });
  });
}

function reserveOver({ id, title }: Kind, run: number, reserve: number): Problem {
  return problem(
    'reserve-over-run',
    { kind: id },
    `${title}: ${grouped(reserve)} of each are kept in reserve, but the run is ${grouped(run)} of each.`,
    { reserve, run },
  );
}

function unpacked(
  { id, title }: Kind,
  {
    run,
    cards,
    packed,
    kept,
  }: {
    readonly run: number;
    readonly cards: number;
    readonly packed: number;
    readonly kept: number;
  },
): readonly Problem[] {
  const promised = run * cards;
  const missing = promised - packed - kept;
  if (missing === 0) return [];
  const kind = missing > 0 ? 'run-unpacked' : 'run-exceeded';
  const apart =
    missing > 0
      ? `${grouped(missing)} ${missing === 1 ? 'goes' : 'go'} nowhere`
      : `that is ${grouped(-missing)} too many`;
  return [
    problem(
      kind,
      { kind: id },
      `${title}: ${grouped(run)} of each of ${count(cards, 'card')} are promised, ${grouped(promised)} in all, but ${grouped(packed)} are packed and ${grouped(kept)} kept in reserve: ${apart}.`,
      { promised, packed, kept, missing },
    ),
  ];
}
