import type { CaseRange } from './cases.js';
import { add, compare, whole } from './fraction.js';
import { oddsOf } from './odds.js';
import type { Kind, PublishedOdds, ReleasePlan } from './plan.js';
import {
  possibleCases,
  type PossibleCases,
  type PublicKind,
  type SaidOdds,
} from './possible-cases.js';
import { asRead, oddsBelow, ODDS_STEPS, roundedOdds, type OddsStep } from './published.js';
import type { KindReport, PackReport, ProductReport } from './report.js';

export interface StepTells {
  /** How round the odds are said; `stated`: as the plan says them now. */
  readonly step: OddsStep | 'stated';
  /** The N of each kind whose run is public, in the order of the product. */
  readonly published: readonly { readonly kind: string; readonly oneIn: number }[];
  readonly possible: PossibleCases;
}

interface Said {
  readonly oneIn: number;
  readonly above: number;
}

/** What is said of a kind in a product; null if nothing is. */
type Saying = (product: ProductReport, kind: string) => Said | null;

/**
 * How far the number of cases of each product can be told from public odds and public runs: from the
 * odds that are stated now, and from those of every line at each step of rounding, the coarser the
 * wider. Of stated odds the public sees the N alone: it is taken to be of the coarsest step that has it,
 * so that odds which are worse than the truth and on no list of round numbers mislead it.
 *
 * A run is public where it is said, times its cards and less its reserve, which the public is taken to
 * know; one that is not what is packed is taken for unknown. Odds of a kind without a run still ask
 * for whole copies. The copies of a run that go in products of which nothing is said, or of which the
 * cases are unset, are not known.
 * @param said the odds that the plan says.
 * @returns by product, those of which the cases are unset not among them.
 * @throws RangeError for a range that is none.
 */
export function whatPublicTells(
  { kinds }: Pick<ReleasePlan, 'kinds'>,
  report: Pick<PackReport, 'products' | 'kinds'>,
  said: readonly PublishedOdds[],
  range: CaseRange,
): ReadonlyMap<string, readonly StepTells[]> {
  const sayings: readonly (readonly [StepTells['step'], Saying])[] = [
    ['stated', asStated(said)],
    ...ODDS_STEPS.map((step) => [step, atStep(step)] as const),
  ];
  const runs = new Map(
    report.kinds.flatMap((made) => {
      const run = publicRun(made, kinds);
      return run === null ? [] : [[made.kind, run] as const];
    }),
  );
  const told = sayings.map(([step, saying]) => ({
    step,
    saying,
    possible: possibleCases(report.products, publicKinds(report, runs, saying), range),
  }));
  return new Map(
    report.products.map((product) => [
      product.id,
      told.flatMap(({ step, saying, possible }): readonly StepTells[] => {
        const own = possible.get(product.id);
        return own ? [{ step, published: published(product, runs, saying), possible: own }] : [];
      }),
    ]),
  );
}

/** At a step everything is said that is packed. */
function atStep(step: OddsStep): Saying {
  return ({ lines, packs }, kind) => {
    const line = lines.find((each) => each.kind === kind);
    const finest = line === undefined ? null : oddsOf(whole(line.copies), packs).oneIn;
    if (finest === null) return null;
    const oneIn = roundedOdds(finest, step);
    return { oneIn, above: oddsBelow(oneIn, step) };
  };
}

function asStated(said: readonly PublishedOdds[]): Saying {
  return (product, kind) => {
    const own = said.find((each) => each.product === product.id && each.kind === kind);
    return own === undefined ? null : asRead(own.packs);
  };
}

/** Copies of a kind that follow from its run; null if none is public, or if it is not what is packed. */
function publicRun(made: KindReport, kinds: readonly Kind[]): number | null {
  const kind = kinds.find(({ id }) => id === made.kind);
  if (kind?.run === undefined) return null;
  const copies = (kind.run - (kind.reserve ?? 0)) * kind.cards.length;
  const apart = compare(made.packed, whole(copies));
  return made.complete ? (apart === 0 ? copies : null) : apart < 0 ? copies : null;
}

function publicKinds(
  { products, kinds }: Pick<PackReport, 'products' | 'kinds'>,
  runs: ReadonlyMap<string, number>,
  saying: Saying,
): readonly PublicKind[] {
  return kinds.map(({ kind, packed, complete }) => {
    let told = whole(0);
    const odds = products.flatMap((product): readonly SaidOdds[] => {
      const line = product.lines.find((each) => each.kind === kind && each.copies > 0);
      const own = line === undefined ? null : saying(product, kind);
      if (line === undefined || own === null) return [];
      told = add(told, whole(line.copies));
      return [{ product: product.id, ...own }];
    });
    const elsewhere = !complete || compare(told, packed) !== 0;
    return { copies: runs.get(kind) ?? null, odds, elsewhere };
  });
}

function published(
  product: ProductReport,
  runs: ReadonlyMap<string, number>,
  saying: Saying,
): StepTells['published'] {
  return product.lines.flatMap(({ kind, copies }) => {
    const said = kind === null || copies === 0 || !runs.has(kind) ? null : saying(product, kind);
    return kind === null || said === null ? [] : [{ kind, oneIn: said.oneIn }];
  });
}
