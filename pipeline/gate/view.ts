import type { BackFile } from '../../schema/index.js';
import type { Instant } from '../model/index.js';

/**
 * Only the gate makes views: this symbol is not exported from the room, so nobody else can write a
 * value of the type, and a cast is a lint error.
 */
export const seal: unique symbol = Symbol('view');

/** What an audience may see, and nothing else. */
export interface View extends ViewParts {
  readonly [seal]: true;
}

/** Who looks: the house sees all, a person what they are cleared for, the public what is open. */
export type AudienceKind = 'house' | 'person' | 'public';

export interface ViewParts {
  readonly audience: AudienceKind;
  /** Whose view it is, for the foot of each sheet. Null for house and public. */
  readonly person: string | null;
  /** The latest step of time that has passed; null for the house, whose view has no instant. */
  readonly asOf: Instant | null;
  /** The highest level in it, for the mark on each page of the house. Null for others. */
  readonly highest: string | null;
  readonly property: ViewProperty;
  /** The layouts of its cards, by id. */
  readonly layouts: ReadonlyMap<string, BackFile>;
  readonly sets: readonly ViewSet[];
  /** Names that may be told, in their own order. */
  readonly names: readonly ViewName[];
  /** Forms of these names that are no longer used; none for the public. */
  readonly avoided: readonly ViewAvoided[];
}

/** A name with how it is said. */
export interface ViewName {
  readonly name: string;
  /** Other forms that may be told. */
  readonly aliases: readonly string[];
  readonly say: string | null;
}

/** A form of a name that is no longer used. Why stays in the house. */
export interface ViewAvoided {
  readonly name: string;
  readonly form: string;
  /** The form to use, which is among those that are told. */
  readonly use: string;
}

export interface ViewProperty {
  readonly title: string;
  readonly zone: string;
  readonly legal: string | null;
  readonly site: ViewSite;
  /** What the site shows of any card, such as `bio front`. */
  readonly shows: readonly string[];
  /** Labels of the levels that have lifted, in their order: told to the public alone. */
  readonly levels: readonly string[];
}

/** How the publisher wants the site; null for what is not said. */
export interface ViewSite {
  readonly title: string | null;
  readonly address: string | null;
  readonly dataTerms: string | null;
  readonly accent: string | null;
  readonly paper: string | null;
  readonly ink: string | null;
  readonly type: string | null;
}

export interface ViewSet {
  readonly id: string;
  readonly title: string;
  readonly short: string;
  readonly street: readonly { readonly region: string | null; readonly at: Instant }[];
  /** Cards listed; those that are not issued do not count. */
  readonly listed: number;
  readonly products: readonly ViewProduct[];
  readonly subsets: readonly ViewSubset[];
  readonly parallels: readonly ViewParallel[];
  readonly corrections: readonly ViewCorrection[];
  /** Told to reviewers alone. */
  readonly sales: readonly ViewSales[];
  /** How the house wants its merge file; null for others, since a heading could tell something. */
  readonly merge: ViewMerge | null;
}

export interface ViewSubset {
  readonly id: string;
  readonly title: string;
  readonly group: string;
  readonly found: string | null;
  readonly listed: number;
  /**
   * Fewest and most words of a bio, null for what is not said. Null for the public, and for whoever
   * the subset is held from.
   */
  readonly words: ViewWords | null;
  readonly artists: readonly string[];
  readonly cards: readonly ViewCard[];
}

export interface ViewWords {
  readonly min: number | null;
  readonly max: number | null;
}

export interface ViewParallel {
  readonly id: string;
  readonly title: string;
  readonly of: readonly string[];
  readonly run: number | null;
  readonly tell: string | null;
  /** When it was revealed; null for one that was never held. */
  readonly revealed: Instant | null;
}

/** What a shop sells: cards a pack, packs a box. */
export interface ViewProduct {
  readonly id: string;
  readonly title: string;
  readonly pack: number | null;
  readonly box: number | null;
  readonly odds: readonly ViewOdds[];
}

/** One in so many packs, as the plan says it, of a subset or a parallel that is listed. */
export interface ViewOdds {
  /** Id of the subset, or null. */
  readonly subset: string | null;
  /** Id of the parallel, or null. */
  readonly parallel: string | null;
  readonly title: string;
  readonly packs: number;
}

export interface ViewCorrection {
  readonly subset: string;
  readonly number: string | null;
  readonly letter: string | null;
  readonly level: number;
  readonly at: string;
  readonly was: string;
  readonly now: string;
  readonly note: string | null;
}

export interface ViewMerge {
  readonly columns: readonly { readonly column: string; readonly from: string }[];
  /** What stands between two paragraphs of a cell. */
  readonly paragraph: string;
}

/** Words of a bio, a hard break (`"\n"` alone), or the one mark that stands for held words. */
export type ViewRun =
  | {
      readonly text: string;
      readonly italic: boolean;
      readonly bold: boolean;
      /** What holds the words; told to nobody but the house. */
      readonly hold: string | null;
      /**
       * When held words open; told to reviewers alone, who must leave them as they are. Null for
       * words that are not held apart.
       */
      readonly opens: Instant | null;
      readonly level: number;
    }
  | { readonly held: true };

/**
 * Of a card and its parts, `level` is an index into `levels` of the property: how much of the story
 * it tells, for readers who want to be told less. 0 for everybody but the public.
 */
export interface ViewCard {
  readonly state: 'shown' | 'placeholder' | 'not issued';
  /** `subset/id`; told to nobody but house and reviewers. */
  readonly identity: string | null;
  readonly number: string | null;
  readonly letter: string | null;
  readonly name: string;
  readonly level: number;
  readonly nameLevel: number;
  /** The announced opening of a placeholder. */
  readonly opens: Instant | null;
  /** When a shown card was revealed; null for one that was never held. */
  readonly revealed: Instant | null;
  readonly bio: readonly (readonly ViewRun[])[];
  readonly bioHeld: boolean;
  readonly facts: readonly ViewFact[];
  readonly texts: readonly ViewText[];
  readonly image: ViewImage | null;
  readonly signers: readonly ViewSigner[];
  readonly signersLevel: number;
  readonly credits: readonly { readonly role: string; readonly name: string }[];
  readonly creditsLevel: number;
  readonly tell: string | null;
  readonly shortPrint: 'SP' | 'SSP' | null;
  readonly run: number | null;
  /** The id of its layout; null for the public. */
  readonly layout: string | null;
  readonly notes: HouseNotes | null;
  readonly review: ReviewNotes | null;
}

export interface ViewFact {
  readonly name: string;
  readonly value: string;
  readonly level: number;
}

export interface ViewText {
  readonly zone: string;
  readonly value: string;
  readonly level: number;
}

export interface ViewImage {
  /** Path of the art in the content folder: for whoever fetches the bytes, never for a page. */
  readonly source: string;
  readonly alt: string;
  readonly level: number;
}

export interface ViewSigner {
  readonly name: string;
  readonly as: string | null;
  readonly redemption: boolean;
}

/**
 * What a reviewer is told of a card besides what shows on it; null for the public. Which parts they
 * are shown whole stands in no view, since it tells that something is held: see `shownWhole`.
 */
export interface ReviewNotes {
  /** When it and its parts open, as far as they are shown: the card itself first. */
  readonly openings: readonly ViewOpening[];
  /** When the card is in hands: Infinity for never. */
  readonly inHands: Instant;
  readonly publicName: string | null;
  /** Whoever is recognisable in the picture. */
  readonly depicts: readonly string[];
  /** What the picture was drawn after. */
  readonly ref: string | null;
  /** The lines that it owes to whoever is shown. */
  readonly owed: readonly string[];
  /** What its subset says of what its cards carry: it prints on each of them. */
  readonly statement: string | null;
  /** Everybody who is to sign, however far it is. */
  readonly signers: readonly { readonly name: string; readonly state: string }[];
  readonly sources: readonly ViewSource[];
}

/** When something opens: `card`, `field facts.Berth` or `words …`. Infinity for never. */
export interface ViewOpening {
  readonly what: string;
  readonly label: string;
  readonly at: Instant;
}

/** Where a fact comes from. */
export interface ViewSource {
  readonly title: string;
  readonly ref: string | null;
  readonly for: string | null;
}

/** A text that goes out besides the cards, for reviewers. */
export interface ViewSales {
  readonly id: string;
  readonly kind: string;
  readonly title: string | null;
  readonly words: readonly (readonly ViewRun[])[];
}

/** What only the house is told about a card. */
export interface HouseNotes {
  readonly hold: string;
  readonly level: string;
  readonly lift: Instant;
  readonly inHands: Instant;
  /** Whoever is recognisable in the picture: lines may be owed to them. */
  readonly depicts: readonly string[];
  readonly state: 'draft' | 'ready';
  readonly writer: string | null;
  readonly remark: string | null;
  readonly why: string | null;
}
