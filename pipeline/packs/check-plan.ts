import { checkCards } from './check-cards.js';
import { checkFigures } from './check-figures.js';
import type { Entry, ReleasePlan } from './plan.js';
import { problem, type About, type Problem } from './problem.js';
import { titlesOf } from './titles.js';
import { twice } from './twice.js';

/**
 * What must be right before anything can be worked out: figures that are counts, names that are
 * known, nothing said twice.
 */
export function checkPlan(plan: ReleasePlan): readonly Problem[] {
  return [
    ...twice(plan.products.map(({ id }) => id)).map((id) =>
      problem('id-twice', { product: id }, `There are two products “${id}”.`),
    ),
    ...twice(plan.kinds.map(({ id }) => id)).map((id) =>
      problem('id-twice', { kind: id }, `There are two kinds of cards “${id}”.`),
    ),
    ...checkFigures(plan),
    ...checkCards(plan),
    ...checkEntries(plan),
    ...checkReferences(plan),
  ];
}

function checkEntries(plan: ReleasePlan): readonly Problem[] {
  const kinds = new Map(plan.kinds.map((kind) => [kind.id, kind]));
  const titles = titlesOf(plan);
  const seen = new Set<string>();
  return plan.entries.flatMap((entry, at) => {
    const kind = kinds.get(entry.kind);
    const product = titles.product(entry.product);
    const about = { product: entry.product, kind: entry.kind, list: 'entries', at } as const;
    const found: Problem[] = [];
    if (kind?.base === true) {
      found.push(
        problem(
          'base-entered',
          about,
          `${kind.title} are base cards, which are the rest of each pack: ${product} cannot say how many.`,
        ),
      );
    }
    if (kind !== undefined && kind.what !== 'decoy' && kind.cards.length === 0) {
      found.push(problem('no-cards', about, `${kind.title} go in ${product}, but none is issued.`));
    }
    if (kind !== undefined && entry.amount.by === 'run' && kind.run === undefined) {
      found.push(
        problem(
          'run-missing',
          about,
          `${kind.title} go in ${product} by their run, but none is stated.`,
        ),
      );
    }
    const pair = pairOf(entry);
    if (seen.has(pair)) {
      found.push(
        problem(
          'entered-twice',
          about,
          `${titles.kind(entry.kind)} are entered twice for ${product}.`,
        ),
      );
    }
    seen.add(pair);
    return found;
  });
}

function pairOf({ product, kind }: Entry): string {
  return JSON.stringify([product, kind]);
}

/** Entries, guarantees, published odds and redemptions name only what there is. */
function checkReferences(plan: ReleasePlan): readonly Problem[] {
  const products = new Set(plan.products.map(({ id }) => id));
  const kinds = new Set(plan.kinds.map(({ id }) => id));
  const named = [
    ...plan.entries.map((entry, at) => ({
      list: 'entries' as const,
      at,
      product: entry.product,
      kinds: [entry.kind],
    })),
    ...(plan.guarantees ?? []).map((each, at) => ({ list: 'guarantees' as const, at, ...each })),
    ...(plan.published ?? []).map((each, at) => ({
      list: 'published' as const,
      at,
      product: each.product,
      kinds: [each.kind],
    })),
  ];
  return named.flatMap(({ list, at, product, kinds: asked }) => {
    const about: About = { product, list, at };
    return [
      ...(products.has(product)
        ? []
        : [problem('product-unknown', about, `There is no product “${product}”.`)]),
      ...asked
        .filter((kind) => !kinds.has(kind))
        .map((kind) =>
          problem('kind-unknown', { ...about, kind }, `There is no kind of cards “${kind}”.`),
        ),
    ];
  });
}
