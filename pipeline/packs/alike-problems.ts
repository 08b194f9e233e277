import { problem, type Problem } from './problem.js';
import type { CardsReport, LineReport, ProductReport } from './report.js';
import type { Prepared } from './tally.js';
import { copiesWords, counted } from './words.js';

/** Cards of which there are more than packs, though there is room for all copies of their line. */
export function alikeProblems(
  prepared: Prepared,
  products: readonly ProductReport[],
): readonly Problem[] {
  return products.flatMap((product) =>
    product.lines.flatMap((line) => {
      const cards = line.cards.reduce((sum, group) => sum + group.cards.length, 0);
      if (line.what === 'decoy' || line.copies > cards * product.packs) return [];
      const most = line.cards.find((group) => wholeCopies(group) > BigInt(product.packs));
      return most === undefined ? [] : [alike(product, line, most, prepared)];
    }),
  );
}

/** Copies of each that are sure to be in the product, where products share them. */
function wholeCopies({ copies }: CardsReport): bigint {
  return copies.over / copies.under;
}

function alike(
  product: ProductReport,
  line: LineReport,
  group: CardsReport,
  { plan, kinds }: Prepared,
): Problem {
  const card = group.cards[0] ?? '';
  const label = kinds.get(group.kind)?.cards.find(({ id }) => id === card)?.label ?? card;
  const copies = Number(wholeCopies(group));
  const at = plan.entries.findIndex(
    (entry) => entry.product === product.id && entry.kind === line.kind,
  );
  return problem(
    'alike-in-pack',
    {
      product: product.id,
      kind: group.kind,
      card,
      ...(at < 0 ? {} : { list: 'entries' as const, at }),
    },
    `${product.title}: some packs hold the same card twice, since there are ${copiesWords(copies, `${line.title}, ${label}`)}, in ${counted(product.packs, 'pack')}.`,
    { copies, packs: product.packs },
  );
}
