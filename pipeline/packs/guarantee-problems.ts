import type { Guarantee } from './plan.js';
import { problem, type Problem } from './problem.js';
import type { LineReport, ProductReport } from './report.js';
import { copiesInProduct } from './copies-in.js';
import { subjectsOf } from './completing.js';
import { compare, whole } from './fraction.js';
import { boxOfSequence } from './sequence.js';
import type { Prepared } from './tally.js';
import { grouped, mixed } from './words.js';

/** Promises for each box or case that cannot be kept, or that chance does not keep. */
export function guaranteeProblems(
  { plan, kinds }: Prepared,
  products: readonly ProductReport[],
): readonly Problem[] {
  return (plan.guarantees ?? []).flatMap((guarantee, at) => {
    const product = products.find(({ id }) => id === guarantee.product);
    if (product === undefined) return [];
    const titles = guarantee.kinds.map((id) => kinds.get(id)?.title ?? id).join(' or ');
    const about = { product: product.id, list: 'guarantees', at } as const;
    return broken(guarantee, product, titles, about);
  });
}

function broken(
  guarantee: Guarantee,
  product: ProductReport,
  titles: string,
  about: Problem['about'],
): readonly Problem[] {
  const { atLeast, per } = guarantee;
  const units = per === 'box' ? product.boxes : product.cases;
  const needed = units * atLeast;
  const copies = copiesInProduct(product, new Set(guarantee.kinds));
  const promise = `${product.title} promises at least ${grouped(atLeast)} of ${titles} a ${per}`;
  if (compare(copies, whole(needed)) < 0) {
    return [
      problem(
        'guarantee-short',
        about,
        `${promise}, ${grouped(needed)} in all, but ${mixed(copies)} are packed.`,
        { atLeast, needed },
      ),
    ];
  }
  const sure = product.lines.reduce((sum, line) => sum + sureIn(line, guarantee, product), 0);
  if (sure >= atLeast) return [];
  const why =
    product.collation === 'sequenced'
      ? 'each of them runs in its own order'
      : 'they come by chance';
  return [
    problem(
      'guarantee-by-hand',
      about,
      `${promise}, but ${why}, so that some ${per === 'box' ? 'boxes' : 'cases'} would hold fewer; enter them by the ${per}, or have them placed.`,
      { atLeast },
    ),
  ];
}

/** How many of a line that a guarantee names each box or case is sure to hold. */
function sureIn(line: LineReport, { kinds, per }: Guarantee, { collation }: ProductReport): number {
  const { kind, even, what } = line;
  const { over, under } = per === 'box' ? line.aBox : line.aCase;
  const each = Number(over / under);
  if (kind === null) return collation === 'sequenced' ? sureOfBase(line, kinds, per) : 0;
  if (what === 'decoy' || !kinds.includes(kind)) return 0;
  const isSure = collation === 'sequenced' || even === per || (even === 'box' && per === 'case');
  return isSure ? each : 0;
}

/** Base cards of some kinds: those of the whole sets that a box or case is sure to hold. */
function sureOfBase(line: LineReport, kinds: readonly string[], per: 'box' | 'case'): number {
  const { sets } = boxOfSequence(subjectsOf(line), per === 'box' ? line.aBox : line.aCase);
  const cards = line.cards.filter(({ kind, filling }) => kinds.includes(kind) && filling.over > 0n);
  return cards.reduce((sum, group) => sum + group.cards.length, 0) * sets;
}
