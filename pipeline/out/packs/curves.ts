import {
  approximately,
  drawsForChances,
  openingsOf,
  packsForChances,
  type Completion,
  type LineReport,
  type ProductReport,
} from '../../packs/index.js';

/** Parts of all collectors by which a curve is told: 5, 10, … 95, and 99 of a hundred. */
export const SHARES: readonly number[] = [
  ...Array.from({ length: 19 }, (_, at) => ((at + 1) * 5) / 100),
  0.99,
];

/** Packs after which each of these parts has the set; none where more are expected than are made. */
export function curveOf(product: ProductReport, completion: Completion): readonly number[] {
  const line = product.lines.find(({ kind }) => kind === completion.kind);
  if (line === undefined) return [];
  switch (completion.model) {
    case 'packs': {
      if (completion.points === null) return [];
      const { cards } = completion;
      const collecting = { cards, openings: openingsOf(line.aPack, cards) };
      return packsForChances(collecting, SHARES).map(Math.ceil);
    }
    case 'draws':
      return completion.points === null ? [] : byDraws(line);
    case 'trading':
    case 'sequenced':
      return [];
  }
}

function byDraws({ cards, aPack }: LineReport): readonly number[] {
  const groups = cards
    .filter(({ filling }) => filling.over > 0n)
    .map((group) => ({ cards: group.cards.length, copies: approximately(group.filling) }));
  const all = groups.reduce((sum, group) => sum + group.cards * group.copies, 0);
  const likelihoods = groups.map((group) => ({ cards: group.cards, chance: group.copies / all }));
  const each = approximately(aPack);
  return drawsForChances(likelihoods, SHARES).map((draws) => Math.ceil(draws / each));
}
