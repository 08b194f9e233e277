import { add, multiply, whole, type Fraction } from './fraction.js';
import type { ProductReport } from './report.js';

/** Copies of these kinds in a product; of base kinds on average. A decoy counts as no card. */
export function copiesInProduct({ lines }: ProductReport, kinds: ReadonlySet<string>): Fraction {
  let copies = whole(0);
  for (const { kind, what, copies: own, cards } of lines) {
    if (kind !== null) {
      if (kinds.has(kind) && what !== 'decoy') copies = add(copies, whole(own));
      continue;
    }
    for (const group of cards) {
      if (!kinds.has(group.kind)) continue;
      copies = add(copies, multiply(group.copies, whole(group.cards.length)));
    }
  }
  return copies;
}
