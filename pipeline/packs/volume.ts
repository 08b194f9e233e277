import type { Product } from './plan.js';

/** How much of a product is made. */
export interface Volume {
  readonly cases: number;
  readonly boxes: number;
  readonly packs: number;
  /** Places for cards of ordinary thickness. */
  readonly places: number;
}

/** What so many cases of a product hold. */
export function volumeOf(product: Product, cases: number): Volume {
  const boxes = cases * product.boxesACase;
  const packs = boxes * product.packsABox;
  return { cases, boxes, packs, places: packs * product.cardsAPack };
}
