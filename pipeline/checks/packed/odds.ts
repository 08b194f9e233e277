import { spotOf, type CardSet } from '../../model/index.js';
import { ODDS_STEPS, oddsToPublish, whole, type OddsStep } from '../../packs/index.js';
import { grouped } from './expected.js';
import type { Packed, PackedSaid } from './plan.js';
import type { Remark } from '../rule.js';

/** Lines of what is in packs of which nobody says how rare they are. */
export function oddsMissing(set: CardSet, { report }: Packed): readonly Remark[] {
  const { stage, products = [] } = set.plan.value;
  return products.flatMap(({ id, title, contents = [] }, at) => {
    const lines = report.products.find((product) => product.id === id)?.lines ?? [];
    return contents.flatMap(({ of, odds }, position): readonly Remark[] => {
      if (odds !== undefined) return [];
      const oneIn = lines.find(({ kind }) => kind === of)?.oneIn ?? null;
      return [
        {
          spot: spotOf(set.plan.source, ['products', at, 'contents', position, 'of']),
          message: `\`${title}\`: nothing says the odds of \`${of}\``,
          found: 'no `odds`',
          expected: oneIn === null ? '`odds`: one in so many packs' : `\`odds: ${String(oneIn)}\``,
          ...(stage === 'locked' ? {} : { severity: 'warning' }),
        },
      ];
    });
  });
}

/**
 * Odds that are worse than the truth, though not so much worse that nobody would round so, in a
 * product whose other odds are rounded less: most likely a slip.
 */
export function oddsUnlike(set: CardSet, packed: Packed): readonly Remark[] {
  return packed.report.products.flatMap((product) => {
    const said = packed.said.filter((each) => each.product === product.id);
    const judged = said.flatMap((each) => {
      const line = product.lines.find(({ kind }) => kind === each.kind);
      const odds = line ? oddsToPublish(whole(line.copies), product.packs) : null;
      return odds === null ? [] : [{ said: each, odds }];
    });
    const step = usualStep(judged);
    return judged.flatMap(({ said: each, odds }): readonly Remark[] => {
      const { packs } = each;
      if (packs <= odds.whole || packs === odds[step] || packs > odds.coarse) return [];
      return [
        {
          spot: spotOf(set.plan.source, each.path),
          message: `\`${product.title}\`: 1:${grouped(packs)} packs for ${each.title} is worse than the truth, 1:${grouped(odds.whole)}, and not rounded as the other odds are`,
          found: String(packs),
          expected: String(odds[step]),
          fix: String(odds[step]),
          severity: 'warning',
        },
      ];
    });
  });
}

interface Judged {
  readonly said: PackedSaid;
  readonly odds: Readonly<Record<OddsStep, number>>;
}

/** How round most odds of a product are; of several steps the finest. */
function usualStep(judged: readonly Judged[]): OddsStep {
  const counts = ODDS_STEPS.map(
    (step) => judged.filter(({ said, odds }) => said.packs === odds[step]).length,
  );
  return ODDS_STEPS[counts.indexOf(Math.max(...counts))] ?? 'whole';
}
