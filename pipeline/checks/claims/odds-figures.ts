import type { CardSet } from '../../model/index.js';
import { whole, type Fraction, type PackReport } from '../../packs/index.js';
import type { Holder } from './holder.js';
import { packedOf, type Packed } from '../packed/plan.js';

type ProductReport = PackReport['products'][number];
type LineReport = ProductReport['lines'][number];

/** What a product holds of some kinds together. */
export interface Figures {
  readonly product: ProductReport;
  readonly kinds: readonly string[];
  readonly lines: readonly LineReport[];
  readonly copies: number;
  /** The N of "1:N packs" that the plan says; null for several kinds together, or if it says none. */
  readonly said: number | null;
  /** Whether another rule speaks of what the plan says. */
  readonly isSaidDoubtful: boolean;
}

/** The packs of a set, if all that they are worked out of is said; null otherwise. */
export function knownPacks(set: CardSet): Packed | null {
  const packed = packedOf(set);
  return packed === null || packed.gaps.length > 0 ? null : packed;
}

/** Whether what is packed is itself in doubt, as another rule says. */
export function isPackedDoubtful({ report }: Packed): boolean {
  return report.problems.some(
    ({ severity, concerns }) =>
      severity === 'error' && ['figures', 'places', 'divides'].includes(concerns),
  );
}

/** What a product holds; null for one of which it is not known how many cases are made. */
export function figuresIn(packed: Packed, id: string, kinds: readonly string[]): Figures | null {
  const { report } = packed;
  const product = report.products.find((each) => each.id === id);
  if (!product) return null;
  const lines = product.lines.filter(
    ({ kind, what, copies }) =>
      kind !== null && what !== 'decoy' && copies > 0 && kinds.includes(kind),
  );
  const [line, ...others] = lines;
  const alone = line !== undefined && others.length === 0 ? line.kind : null;
  const said = packed.odds.find((each) => each.product === id && each.kind === alone)?.packs;
  return {
    product,
    kinds: lines.flatMap(({ kind }) => kind ?? []),
    lines,
    copies: lines.reduce((sum, { copies }) => sum + copies, 0),
    said: said ?? null,
    isSaidDoubtful: report.problems.some(
      ({ concerns, about }) => concerns === 'odds' && about.product === id && about.kind === alone,
    ),
  };
}

/** Packs in a unit. */
export function packsIn(unit: Holder, { product }: Figures): number {
  if (unit === 'pack') return 1;
  return unit === 'box' ? product.packsABox : product.packsABox * product.boxesACase;
}

/** How many of a unit are made. */
export function unitsOf(unit: Holder, { product }: Figures): number {
  return { pack: product.packs, box: product.boxes, case: product.cases }[unit];
}

/** How many each pack, box or case is sure to hold, by its lines or by what the plan guarantees. */
export function sureIn(unit: Holder, figures: Figures, packed: Packed): number {
  const promised = promisedIn(unit, figures, packed);
  const even = (lines: readonly LineReport[]): number =>
    lines.reduce((sum, line) => sum + evenIn(unit, line, figures), 0);
  const others = figures.lines.filter(
    ({ kind }) => kind !== null && !promised.kinds.includes(kind),
  );
  return Math.max(even(figures.lines), promised.atLeast + even(others));
}

/** As the rule about guarantees counts what is entered by the box or case. */
function evenIn(unit: Holder, { copies, even }: LineReport, figures: Figures): number {
  const units = unitsOf(unit, figures);
  if (unit === 'pack') return copies % units === 0 ? copies / units : 0;
  if (even === null || (unit === 'box' && even !== 'box')) return 0;
  return Math.floor(copies / units);
}

interface Promised {
  readonly atLeast: number;
  readonly kinds: readonly string[];
}

/** What the plan guarantees of these kinds together; of guarantees that share a kind the greatest. */
function promisedIn(unit: Holder, { product, kinds }: Figures, { plan }: Packed): Promised {
  if (unit === 'pack') return { atLeast: 0, kinds: [] };
  const all = (plan.guarantees ?? [])
    .filter((each) => each.product === product.id && (unit === 'case' || each.per === 'box'))
    .filter((each) => each.kinds.every((kind) => kinds.includes(kind)))
    .map(({ kinds: own, atLeast, per }) => ({
      kinds: own,
      atLeast: per === unit ? atLeast : atLeast * product.boxesACase,
    }))
    .toSorted((a, b) => b.atLeast - a.atLeast);
  return all.reduce<Promised>(
    (sum, each) =>
      each.kinds.some((kind) => sum.kinds.includes(kind))
        ? sum
        : { atLeast: sum.atLeast + each.atLeast, kinds: [...sum.kinds, ...each.kinds] },
    { atLeast: 0, kinds: [] },
  );
}

/** Copies as a fraction, for odds. */
export function copiesOf({ copies }: Figures): Fraction {
  return whole(copies);
}
