import type {
  BackFile,
  CardFront,
  CorrectionsFile,
  NamesFile,
  PeopleFile,
  PlanFile,
  PropertyFile,
  RosterFile,
  SalesFront,
} from '../../schema/index.js';
import type { Copy } from './copy.js';
import type { SourceFile, Spot } from './source.js';

/** A value and the file that it was read from. */
export interface Sourced<T> {
  readonly source: SourceFile;
  readonly value: T;
}

/** A card. Its identity is `subset/id`, given by its file; its number may change until press. */
export interface Card {
  readonly set: string;
  readonly subset: string;
  readonly id: string;
  readonly source: SourceFile;
  readonly front: CardFront;
  readonly bio: Copy;
}

/** A text that leaves the house on paper or screen besides the cards. */
export interface SalesText {
  readonly set: string;
  readonly id: string;
  readonly source: SourceFile;
  readonly front: SalesFront;
  readonly words: Copy;
}

/** A set with everything in its folder. */
export interface CardSet {
  readonly id: string;
  readonly plan: Sourced<PlanFile>;
  /** Sorted by subset and id. */
  readonly cards: readonly Card[];
  readonly sales: readonly SalesText[];
  /** By path inside the set's folder. */
  readonly rosters: ReadonlyMap<string, Sourced<RosterFile>>;
  readonly corrections: Sourced<CorrectionsFile> | null;
  /** Paths inside the set's folder of art that is there. */
  readonly art: ReadonlySet<string>;
  /** Folders of subsets in which a card could not be read, so that its numbers are not known. */
  readonly unread: ReadonlySet<string>;
}

/** Something wrong that reading itself found. A rule of the same name reports it. */
export interface Fault {
  readonly rule: FaultRule;
  readonly spot: Spot;
  readonly message: string;
  readonly found?: string;
  readonly expected?: string;
  readonly fix?: string;
  /** Nobody would write anything else there. */
  readonly certain?: true;
}

export type FaultRule =
  'schema' | 'unknown-key' | 'front-matter' | 'misplaced-card' | 'path-outside' | 'copy-markup';

/** A content folder: one licensed property. Without a readable property.yaml there is only faults. */
export interface Content {
  readonly property: Sourced<PropertyFile> | null;
  readonly names: Sourced<NamesFile> | null;
  readonly people: Sourced<PeopleFile> | null;
  readonly layouts: ReadonlyMap<string, Sourced<BackFile>>;
  readonly sets: readonly CardSet[];
  readonly faults: readonly Fault[];
  /** Cards found, readable or not. */
  readonly cardFiles: number;
}

/** What a card is called by its file until somebody names it. */
export const NAME_TO_COME = 'To be named';

/** `subset/id`. */
export function identityOf(card: Pick<Card, 'subset' | 'id'>): string {
  return `${card.subset}/${card.id}`;
}

/** Whether the card will be printed. */
export function isIssued(card: Card): boolean {
  return card.front.issued !== 'no';
}

/** Whether the card is a variation of another. */
export function isVariation(card: Card): boolean {
  return card.front.variation !== undefined;
}

/** The number as printed, or null for a card without one. */
export function numberOf(card: Card): string | null {
  return card.front.number === 'none' ? null : card.front.number;
}
