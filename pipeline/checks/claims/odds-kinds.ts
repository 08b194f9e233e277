import type { Parallel, Subset } from '../../../schema/index.js';
import type { CardSet } from '../../model/index.js';
import type { Findable, Trade } from './odds-thing.js';
import { partsOf } from '../totals.js';

/** Ids of the subsets and parallels that something findable is; null where the plan cannot tell. */
export function kindsOf(whats: readonly Findable[], set: CardSet): readonly string[] | null {
  const all = whats.map((what) => kindsOfOne(what, set));
  const known = all.filter((kinds) => kinds !== null);
  return known.length === 0 ? null : [...new Set(known.flat())];
}

function kindsOfOne(what: Findable, set: CardSet): readonly string[] | null {
  switch (what.kind) {
    case 'part': {
      const parts = partsOf(set, what.id);
      return parts.ok ? [...parts.subsets] : null;
    }
    case 'parallel':
      return [what.id];
    case 'trade':
      return kindsOfTrade(what.trade, set);
  }
}

const GROUPS = {
  autograph: /^(?:autograph|signature)/,
  relic: /^relic/,
  sketch: /^sketch/,
} as const;

function kindsOfTrade(trade: Trade, { plan }: CardSet): readonly string[] {
  const { subsets, parallels = [] } = plan.value;
  const ids = (fits: (subset: Subset) => boolean): readonly string[] =>
    subsets.filter(fits).map(({ id }) => id);
  const ofParallels = (fits: (parallel: Parallel) => boolean): readonly string[] =>
    parallels.filter(fits).map(({ id }) => id);
  switch (trade) {
    case 'autograph':
    case 'relic':
    case 'sketch':
      return ids((subset) => isMade(subset, trade));
    case 'hit':
      return ids((subset) =>
        (['autograph', 'relic', 'sketch'] as const).some((made) => isMade(subset, made)),
      );
    case 'insert':
      return ids(({ group }) => group.startsWith('insert'));
    case 'redemption':
      return [
        ...ids(({ found }) => found === 'redemption'),
        ...ofParallels(({ found }) => found === 'redemption'),
      ];
    case 'parallel':
      return ofParallels(() => true);
    case 'numbered':
      return ofParallels(({ run }) => run !== undefined);
  }
}

function isMade({ carries, group }: Subset, made: keyof typeof GROUPS): boolean {
  return carries === made || GROUPS[made].test(group);
}

/** The title of a subset or parallel. */
export function titleOf(id: string, { plan }: CardSet): string {
  const { subsets, parallels = [] } = plan.value;
  return [...subsets, ...parallels].find((each) => each.id === id)?.title ?? id;
}
