import { copiesInProduct } from './copies-in.js';
import { compareStated } from './published.js';
import type { PublishedOdds } from './plan.js';
import { problem, type Problem } from './problem.js';
import type { ProductReport } from './report.js';
import type { Prepared, Tally } from './tally.js';
import { copiesOnAverage, counted as count, grouped } from './words.js';

/** Odds that are said and better than the truth, or far from it; and odds beyond a case. */
export function oddsProblems(
  { plan, kinds }: Prepared,
  { products: tallied }: Tally,
  products: readonly ProductReport[],
): readonly Problem[] {
  return [
    ...tallied.flatMap(({ product, lines }) =>
      lines.flatMap(({ entry, at, kind }) => {
        const inCase = product.packsABox * product.boxesACase;
        if (entry.amount.by !== 'odds' || entry.amount.packs <= inCase) return [];
        return [
          problem(
            'odds-beyond-case',
            { product: product.id, kind: kind.id, list: 'entries', at },
            `${product.title}: ${kind.title} come once in ${count(entry.amount.packs, 'pack')}, and a case has ${grouped(inCase)}, so that many cases have none.`,
            { oneIn: entry.amount.packs, packs: inCase },
          ),
        ];
      }),
    ),
    ...(plan.published ?? []).flatMap((said, at) => {
      const product = products.find(({ id }) => id === said.product);
      if (product === undefined) return [];
      return judge(said, at, product, kinds.get(said.kind)?.title ?? said.kind);
    }),
  ];
}

function judge(
  said: PublishedOdds,
  at: number,
  product: ProductReport,
  title: string,
): readonly Problem[] {
  const about = { product: product.id, kind: said.kind, list: 'published', at } as const;
  const copies = copiesInProduct(product, new Set([said.kind]));
  const { verdict, oneIn, coarsest } = compareStated(said.packs, copies, product.packs);
  const odds = `${product.title}: 1:${grouped(said.packs)} packs for ${title}`;
  const truth = `${copiesOnAverage(copies)} in ${count(product.packs, 'pack')}`;
  switch (verdict) {
    case 'true':
      return [];
    case 'none':
      return [problem('odds-of-none', about, `${odds} is said, but it has none.`)];
    case 'better':
      return [
        problem(
          'odds-better',
          about,
          `${odds} is better than the truth, which is ${truth}: at best 1:${grouped(oneIn)} may be said.`,
          { said: said.packs, oneIn },
        ),
      ];
    case 'coarse':
      return [
        problem(
          'odds-coarse',
          about,
          `${odds} is far worse than the truth, which is ${truth}: 1:${grouped(oneIn)}, or 1:${grouped(coarsest)} in round numbers, may be said.`,
          { said: said.packs, oneIn, coarsest },
        ),
      ];
  }
}
