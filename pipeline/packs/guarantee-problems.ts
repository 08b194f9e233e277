import type { Guarantee } from './plan.js';
import { problem, type Problem } from './problem.js';
import type { LineReport, ProductReport } from './report.js';
import { copiesInProduct } from './copies-in.js';
import { compare, whole } from './fraction.js';
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
  const even = product.lines.reduce((sum, line) => sum + evenIn(line, guarantee, product), 0);
  if (even >= atLeast || product.collation === 'sequenced') return [];
  return [
    problem(
      'guarantee-by-hand',
      about,
      `${promise}, but they come by chance, so that some ${per === 'box' ? 'boxes' : 'cases'} would hold fewer; enter them by the ${per}, or have them placed.`,
      { atLeast },
    ),
  ];
}

/** How many of a line each box or case is sure to hold. */
function evenIn({ kind, even, copies }: LineReport, guarantee: Guarantee, product: ProductReport) {
  if (kind === null || even === null || !guarantee.kinds.includes(kind)) return 0;
  if (guarantee.per === 'case') return Math.floor(copies / product.cases);
  return even === 'box' ? Math.floor(copies / product.boxes) : 0;
}
