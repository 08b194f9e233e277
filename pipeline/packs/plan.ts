/**
 * A release plan as this room takes it in: what is packed, in which product, and how much of it.
 * All figures are whole numbers; none below 0 is valid, and `checkPlan` says which are not.
 */
export interface ReleasePlan {
  /** In the order in which they are shown. */
  readonly products: readonly Product[];
  /** Everything that takes a place in a pack: subsets, parallels and fillers, base cards too. */
  readonly kinds: readonly Kind[];
  /** What goes where, besides base cards: those are the rest of each pack. In order of precedence. */
  readonly entries: readonly Entry[];
  readonly guarantees?: readonly Guarantee[];
  readonly redemptions?: readonly Redemption[];
  /** Odds that are said to the public. */
  readonly published?: readonly PublishedOdds[];
}

export interface Product {
  readonly id: string;
  readonly title: string;
  /** Places in a pack: how many cards of ordinary thickness it holds. */
  readonly cardsAPack: number;
  readonly packsABox: number;
  readonly boxesACase: number;
  /** Cases made; `unset` while nobody has decided. */
  readonly cases: number | 'unset';
  /** Whether cards run in their order from pack to pack, or come by chance. */
  readonly collation: 'sequenced' | 'random';
  /** What fills the places that no entry takes: base cards, if it is not said, or nothing. */
  readonly rest?: 'base' | 'none';
}

/** Cards that are packed alike: a subset, a parallel, or blank fillers. */
export interface Kind {
  readonly id: string;
  readonly title: string;
  /** A `decoy` is a blank filler: it takes places and counts as no card. */
  readonly what: 'subset' | 'parallel' | 'decoy';
  /** Whether it is what is left of each pack. All base kinds share that by the weights of their cards. */
  readonly base?: boolean;
  /** Its issued cards; of a parallel those that it is of; none of a decoy. */
  readonly cards: readonly PlannedCard[];
  /** Places in a pack that one card takes: 1, if it is not said; several for a thick card. */
  readonly places?: number;
  /** Copies of each card that are promised: all of them are packed or kept in reserve. */
  readonly run?: number;
  /** Copies of each card of weight 1 that the plan says are made, the reserve among them. */
  readonly stated?: number;
  /** Copies of each card that are kept for replacements and not packed. */
  readonly reserve?: number;
  /** The sheet that it is printed on. */
  readonly sheet?: Sheet;
}

export interface PlannedCard {
  /** Its identity, `crew/c017`. */
  readonly id: string;
  /** What it is called in a sentence: its printed number, or its name where it has none. */
  readonly label: string;
  /** Its share beside the others of its kind: 1, if it is not said; 2 for a card printed twice a sheet. */
  readonly weight?: number;
  /** Copies of this card that are packed, apart from the shares: a short print, or a variation. */
  readonly copies?: number;
  /** The card whose copies it shares; it needs `copies`. */
  readonly variationOf?: string;
  /** Copies of this card that the plan says are made, the reserve among them. */
  readonly stated?: number;
  readonly shortPrint?: 'SP' | 'SSP';
}

/** How much of a kind goes in a product. At most one entry for each pair. */
export interface Entry {
  readonly product: string;
  readonly kind: string;
  readonly amount: Amount;
  /** If it is said, every box or every case gets the same number of copies. */
  readonly even?: 'box' | 'case';
}

/** One of the ways in which an amount is said. */
export type Amount =
  /** One in so many packs. */
  | { readonly by: 'odds'; readonly packs: number }
  /** Copies in all. */
  | { readonly by: 'copies'; readonly copies: number }
  /**
   * Copies of each card; a card of weight 2 gets twice that. Cards with copies of their own come with
   * the first entry of their kind that says so.
   */
  | { readonly by: 'each'; readonly copies: number }
  | { readonly by: 'box'; readonly copies: number }
  | { readonly by: 'case'; readonly copies: number }
  /**
   * All of the run but the reserve and what other entries take; entries that all say so share it in
   * proportion to the packs of their products.
   */
  | { readonly by: 'run' };

/** At least so many, of all these kinds together, in every box or case. */
export interface Guarantee {
  readonly product: string;
  readonly kinds: readonly string[];
  readonly atLeast: number;
  readonly per: 'box' | 'case';
}

/** A card in packs that is sent in for others. */
export interface Redemption {
  /** The kind that is found in packs, or a single card of one. */
  readonly found: string;
  /** Identities of the cards that are sent for it. */
  readonly standsFor: readonly string[];
  /** The day on which they are sent, as YYYY-MM-DD; `unset` if that is said openly; null if nothing is said. */
  readonly ships: string | null;
  /** The last day on which it is taken, as YYYY-MM-DD; `never`; null if nothing is said. */
  readonly expires: string | null;
}

/** "1:N packs" as it is, or is to be, said. */
export interface PublishedOdds {
  readonly product: string;
  readonly kind: string;
  readonly packs: number;
}

/** A press sheet, and how a kind is laid out on it. */
export interface Sheet {
  readonly columns: number;
  readonly rows: number;
  /** Identities of cards that stand once more on each sheet than the others. */
  readonly doubled?: readonly string[];
  /** Sheets that are ordered: worked out, if it is not said. */
  readonly ordered?: number;
  /** Sheets more than needed, for what is spoilt in press: 0, if it is not said. */
  readonly spare?: number;
}
