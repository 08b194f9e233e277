import type { PublicCompletion, PublicMade, PublicProduct } from '../../../schema/index.js';
import type { ViewProduct } from '../../gate/index.js';
import type { ToldCompletion, ToldProduct, ToldRun } from '../packs/index.js';

/** What a shop sells, with its odds and what can be worked out of them. */
export function publicProduct(
  { id, title, pack, box, odds }: ViewProduct,
  told: ToldProduct | undefined,
): PublicProduct {
  const complete = told?.complete ?? [];
  return {
    id,
    title,
    pack,
    box,
    odds: odds.map(({ subset, parallel, title: of, packs }) => ({
      subset,
      parallel,
      title: of,
      packs,
    })),
    ...(complete.length > 0 && { complete: complete.map(publicCompletion) }),
  };
}

function publicCompletion(told: ToldCompletion): PublicCompletion {
  const { subset, title, cards, expected, half, ninety, ninetyNine, curve } = told;
  return { subset, title, cards, expected, half, ninety, ninetyNine, curve: [...curve] };
}

/** A run that is told. */
export function publicMade({ title, cards, copies }: ToldRun): PublicMade {
  return { title, cards, copies };
}
