import type { ReleasePlan } from './plan.js';

/** Titles by id; an unknown id stands for itself. */
export interface Titles {
  readonly product: (id: string) => string;
  readonly kind: (id: string) => string;
}

export function titlesOf({ products, kinds }: ReleasePlan): Titles {
  const ofProducts = new Map(products.map(({ id, title }) => [id, title]));
  const ofKinds = new Map(kinds.map(({ id, title }) => [id, title]));
  return { product: (id) => ofProducts.get(id) ?? id, kind: (id) => ofKinds.get(id) ?? id };
}
