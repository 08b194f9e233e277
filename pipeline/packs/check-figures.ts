import { count, MOST } from './count.js';
import type { Entry, Kind, Product, ReleasePlan } from './plan.js';
import { problem, type Problem } from './problem.js';
import { titlesOf, type Titles } from './titles.js';
import { grouped } from './words.js';

/** Figures that are no counts, and counts that no printer makes. */
export function checkFigures(plan: ReleasePlan): readonly Problem[] {
  const titles = titlesOf(plan);
  const found = [
    ...plan.products.flatMap(checkProduct),
    ...plan.kinds.flatMap(checkKind),
    ...plan.entries.flatMap((entry, at) => checkEntry(entry, at, titles)),
    ...(plan.guarantees ?? []).flatMap((each, at) =>
      count(each.atLeast, 1, `${titles.product(each.product)}: what is promised`, {
        product: each.product,
        list: 'guarantees',
        at,
      }),
    ),
    ...(plan.published ?? []).flatMap((each, at) =>
      count(
        each.packs,
        1,
        `${titles.product(each.product)}: the N of 1:N packs for ${titles.kind(each.kind)}`,
        {
          product: each.product,
          kind: each.kind,
          list: 'published',
          at,
        },
      ),
    ),
  ];
  return found.length > 0 ? found : tooLarge(plan);
}

function checkProduct(product: Product): readonly Problem[] {
  const about = { product: product.id };
  const { title } = product;
  return [
    ...count(product.cardsAPack, 1, `${title}: cards a pack`, about),
    ...count(product.packsABox, 1, `${title}: packs a box`, about),
    ...count(product.boxesACase, 1, `${title}: boxes a case`, about),
    ...(product.cases === 'unset' ? [] : count(product.cases, 1, `${title}: cases`, about)),
  ];
}

function checkKind({ id, title, places, run, stated, reserve, sheet }: Kind): readonly Problem[] {
  const about = { kind: id };
  const figures: readonly (readonly [number | undefined, 0 | 1, string])[] = [
    [places, 1, 'places that a card takes'],
    [run, 1, 'the run of each card'],
    [stated, 1, 'copies of each card'],
    [reserve, 0, 'copies of each card in reserve'],
    [sheet?.columns, 1, 'columns of its sheet'],
    [sheet?.rows, 1, 'rows of its sheet'],
    [sheet?.ordered, 1, 'sheets ordered'],
    [sheet?.spare, 0, 'spare sheets'],
  ];
  return figures.flatMap(([figure, least, what]) =>
    figure === undefined ? [] : count(figure, least, `${title}: ${what}`, about),
  );
}

function checkEntry(
  { product, kind, amount }: Entry,
  at: number,
  titles: Titles,
): readonly Problem[] {
  if (amount.by === 'run') return [];
  const about = { product, kind, list: 'entries', at } as const;
  const asked = `${titles.product(product)}: ${FIGURES[amount.by]} ${titles.kind(kind)}`;
  return count(amount.by === 'odds' ? amount.packs : amount.copies, 1, asked, about);
}

const FIGURES = {
  odds: 'the N of 1:N packs for',
  copies: 'copies of',
  each: 'copies of each card of',
  box: 'copies a box of',
  case: 'copies a case of',
};

function tooLarge(plan: ReleasePlan): readonly Problem[] {
  const kinds = new Map(plan.kinds.map((kind) => [kind.id, kind]));
  const products = new Map(plan.products.map((product) => [product.id, product]));
  const large = (parts: readonly number[]): boolean =>
    parts.reduce((whole, part) => whole * BigInt(part), 1n) > BigInt(MOST);
  return [
    ...plan.products
      .filter((each) =>
        large([
          each.cardsAPack,
          each.packsABox,
          each.boxesACase,
          each.cases === 'unset' ? 1 : each.cases,
        ]),
      )
      .map(({ id, title }) =>
        problem('too-large', { product: id }, `${title} has more than ${grouped(MOST)} places.`),
      ),
    ...plan.entries.flatMap((entry, at) => {
      const kind = kinds.get(entry.kind);
      const product = products.get(entry.product);
      if (kind === undefined || product === undefined) return [];
      if (!large([...copiesAtMost(entry, kind, product), kind.places ?? 1])) return [];
      const about = { product: product.id, kind: kind.id, list: 'entries', at } as const;
      const message = `${product.title}: ${kind.title} take more than ${grouped(MOST)} places.`;
      return [problem('too-large', about, message)];
    }),
    ...plan.kinds
      .filter(({ cards, run = 0, stated = 0, reserve = 0 }) =>
        large([Math.max(run, stated, reserve), cards.reduce(withWeight, 0)]),
      )
      .map(({ id, title }) =>
        problem('too-large', { kind: id }, `${title} have more than ${grouped(MOST)} copies.`),
      ),
  ];
}

/** Counts whose product is at least the copies of an entry. */
function copiesAtMost({ amount }: Entry, kind: Kind, product: Product): readonly number[] {
  const cases = product.cases === 'unset' ? 1 : product.cases;
  switch (amount.by) {
    case 'odds':
      return [1];
    case 'copies':
      return [amount.copies];
    case 'each':
      return [amount.copies, kind.cards.reduce(withWeight, 0)];
    case 'box':
      return [amount.copies, product.boxesACase, cases];
    case 'case':
      return [amount.copies, cases];
    case 'run':
      return [kind.run ?? 0, kind.cards.length];
  }
}

function withWeight(sum: number, { weight = 1 }: { readonly weight?: number }): number {
  return sum + weight;
}
