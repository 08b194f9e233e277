import { identityOf, type Card, type CardSet, type YamlPath } from '../../model/index.js';
import {
  workOut,
  type Kind,
  type PackReport,
  type Product,
  type PublishedOdds,
  type Redemption,
  type ReleasePlan,
} from '../../packs/index.js';
import { isPackedKnown, packedGaps, saysWhatIsPacked, type Gap } from './gaps.js';
import { packedKinds } from './kinds.js';
import {
  decoyKinds,
  packedGuarantees,
  packedLines,
  type PackedGuarantee,
  type PackedLine,
} from './lines.js';

/** Odds that are said of a line, and where they stand. */
export interface PackedSaid {
  readonly product: string;
  readonly kind: string;
  /** The title of what is packed. */
  readonly title: string;
  readonly packs: number;
  readonly path: YamlPath;
}

/** What a set packs, what it comes to, and where each figure of it stands. */
export interface Packed {
  readonly plan: ReleasePlan;
  readonly report: PackReport;
  /** What is not said: then the report is of nothing. */
  readonly gaps: readonly Gap[];
  /** In the order of the plan's entries. */
  readonly lines: readonly PackedLine[];
  /** All odds that the plan says, those that say how much goes in too. */
  readonly odds: readonly PublishedOdds[];
  /** In the order of the plan's published odds. */
  readonly said: readonly PackedSaid[];
  /** In the order of the plan's guarantees. */
  readonly guarantees: readonly PackedGuarantee[];
  /** Of each redemption of the release plan, its place in the list of the file. */
  readonly redemptions: readonly number[];
  readonly products: ReadonlyMap<string, YamlPath>;
  /** Where subsets and parallels stand. */
  readonly kinds: ReadonlyMap<string, YamlPath>;
  /** Cards by their identity. */
  readonly cards: ReadonlyMap<string, Card>;
  /** Subsets that artists draw, each as many cards as it comes to. */
  readonly drawn: ReadonlySet<string>;
}

const kept = new WeakMap<CardSet, Packed | null>();

/**
 * The packs of a set, worked out once. Null if its plan does not say what is in packs, and while some
 * of that cannot be read or names nothing, which other rules tell.
 */
export function packedOf(set: CardSet): Packed | null {
  const before = kept.get(set);
  if (before !== undefined) return before;
  const packed = saysWhatIsPacked(set) && isPackedKnown(set) ? workedOut(set) : null;
  kept.set(set, packed);
  return packed;
}

function workedOut(set: CardSet): Packed {
  const { products = [], subsets, parallels = [] } = set.plan.value;
  const gaps = packedGaps(set);
  const lines = packedLines(set);
  const guarantees = packedGuarantees(set);
  const kinds = [...packedKinds(set), ...decoyKinds(set)];
  const redemptions = knownRedemptions(set, kinds);
  const said = saidOf(lines, kinds);
  const plan: ReleasePlan = {
    products: products.map(productOf),
    kinds,
    entries: lines.map(({ entry }) => entry),
    guarantees: guarantees.map(({ guarantee }) => guarantee),
    redemptions: redemptions.map(({ redemption }) => redemption),
    published: said.map(({ product, kind, packs }) => ({ product, kind, packs })),
  };
  return {
    plan,
    report: workOut(gaps.length === 0 ? plan : NOTHING),
    gaps,
    lines,
    odds: oddsIn(products),
    said,
    guarantees,
    redemptions: redemptions.map(({ at }) => at),
    products: pathsOf('products', products),
    kinds: new Map([...pathsOf('parallels', parallels), ...pathsOf('subsets', subsets)]),
    cards: new Map(set.cards.map((card) => [identityOf(card), card])),
    drawn: new Set(subsets.flatMap(({ id, roster }) => (roster === undefined ? [] : [id]))),
  };
}

const NOTHING: ReleasePlan = { products: [], kinds: [], entries: [] };

function pathsOf(
  list: string,
  things: readonly { readonly id: string }[],
): ReadonlyMap<string, YamlPath> {
  return new Map(things.map(({ id }, at) => [id, [list, at]] as const).toReversed());
}

type Planned = NonNullable<CardSet['plan']['value']['products']>[number];

/** A product; one whose size is not known has no known number of cases either. */
function productOf({ id, title, pack, box, cases, collation, case: boxes }: Planned): Product {
  const isSized = pack !== undefined && box !== undefined && boxes !== undefined;
  return {
    id,
    title,
    cardsAPack: pack ?? 1,
    packsABox: box ?? 1,
    boxesACase: boxes ?? 1,
    cases: isSized ? (cases ?? 'unset') : 'unset',
    collation: collation ?? 'random',
  };
}

function oddsIn(products: readonly Planned[]): readonly PublishedOdds[] {
  return products.flatMap(({ id: product, contents = [] }) =>
    contents.flatMap(({ of: kind, odds }) =>
      odds === undefined ? [] : [{ product, kind, packs: odds }],
    ),
  );
}

function saidOf(lines: readonly PackedLine[], kinds: readonly Kind[]): readonly PackedSaid[] {
  const titles = new Map(kinds.map(({ id, title }) => [id, title]));
  return lines.flatMap(({ entry: { product, kind }, path, said }) =>
    said === null
      ? []
      : [{ product, kind, title: titles.get(kind) ?? kind, packs: said, path: [...path, 'odds'] }],
  );
}

interface KnownRedemption {
  readonly redemption: Redemption;
  readonly at: number;
}

/** Redemptions whose ids all name something. */
function knownRedemptions(set: CardSet, kinds: readonly Kind[]): readonly KnownRedemption[] {
  const ids = new Set([...kinds.map(({ id }) => id), ...set.cards.map(identityOf)]);
  return (set.plan.value.redemptions ?? []).flatMap((stated, at) => {
    const { found, sends, ships, redeemBy } = stated;
    if (![found, ...sends].every((id) => ids.has(id))) return [];
    const redemption = {
      found,
      standsFor: sends,
      ships: ships ?? null,
      expires: redeemBy ?? null,
    };
    return [{ redemption, at }];
  });
}
