import { spotOf, type CardSet, type Spot, type YamlPath } from '../../model/index.js';
import type { Problem, ProblemKind } from '../../packs/index.js';
import type { Packed } from './plan.js';

/** The key of a subset or parallel that a problem of it is about. */
const KEYS_OF_KIND: Partial<Record<ProblemKind, string>> = {
  'too-thick': 'places',
  'run-unpacked': 'run',
  'run-exceeded': 'run',
  'reserve-over-run': 'reserve',
  'reserve-high': 'reserve',
  'stated-not-made': 'copies',
  'sheets-short': 'sheet',
};

/** The key of a redemption; others stand at what is found. */
const KEYS_OF_REDEMPTION: Partial<Record<ProblemKind, string>> = {
  'redemption-card': 'sends',
  'redemption-unset': 'ships',
  'redemption-order': 'redeemBy',
};

/** Problems that a line has as a whole, and not its amount. */
const OF_WHOLE_LINE: ReadonlySet<ProblemKind> = new Set(['no-cards', 'entered-twice']);

/** Problems of a kind that stand where it is packed. */
const WHERE_PACKED: ReadonlySet<ProblemKind> = new Set(['copies-not-even', 'fixed-over']);

/** Where in its set a problem stands. */
export function packedSpot(set: CardSet, packed: Packed, problem: Problem): Spot {
  const card = packed.cards.get(problem.about.card ?? '');
  const ownCard = problem.about.list === undefined && problem.kind !== 'sheets-short';
  if (card !== undefined && ownCard) return spotOf(card.source, ['run']);
  return spotOf(set.plan.source, pathOf(packed, problem));
}

function pathOf(packed: Packed, problem: Problem): YamlPath {
  const { kind, about } = problem;
  const inList = pathInList(packed, problem);
  if (inList !== null) return inList;
  const path = packed.kinds.get(about.kind ?? '');
  if (path !== undefined) {
    const line = packed.lines.find(({ entry }) => entry.kind === about.kind);
    if (WHERE_PACKED.has(kind) && line !== undefined) return [...line.path, line.key];
    return [...path, KEYS_OF_KIND[kind] ?? 'id'];
  }
  const product = packed.products.get(about.product ?? '');
  if (product !== undefined) return [...product, kind === 'cases-unset' ? 'cases' : 'id'];
  const base = packed.plan.kinds.find((each) => each.base === true);
  return [...(packed.kinds.get(base?.id ?? '') ?? ['products']), 'id'];
}

function pathInList(packed: Packed, { kind, about }: Problem): YamlPath | null {
  const { list, at } = about;
  if (list === undefined || at === undefined) return null;
  switch (list) {
    case 'entries': {
      const line = packed.lines[at];
      const own = packed.kinds.get(about.kind ?? '');
      if (kind === 'too-thick' && own !== undefined) return [...own, 'places'];
      if (line === undefined) return null;
      return [...line.path, OF_WHOLE_LINE.has(kind) ? 'of' : line.key];
    }
    case 'published': {
      return packed.said[at]?.path ?? null;
    }
    case 'guarantees': {
      const guarantee = packed.guarantees[at];
      return guarantee === undefined ? null : [...guarantee.path, 'atLeast'];
    }
    case 'redemptions': {
      const redemption = ['redemptions', packed.redemptions[at] ?? 0];
      return [...redemption, KEYS_OF_REDEMPTION[kind] ?? 'found'];
    }
  }
}
