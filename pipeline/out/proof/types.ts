import type { Instant } from '../../model/index.js';
import type { Faces, FontShelf } from '../../typeset/index.js';
import type { Rect } from '../card/index.js';
import type { Paper, Turn } from './geometry.js';

/**
 * Each card, front beside back with what a reader needs to know; nine to a page, to cut out; the
 * words alone, in running order; the texts alone that do not fit; or each card with boxes in which
 * a reviewer decides on it, sealed with a password.
 */
export type ProofKind = 'annotated' | 'nine-up' | 'deck' | 'overset' | 'submission';

/** What a reviewer is sent to decide on. */
export interface SubmissionSheets {
  /** Counts what was submitted to this person, from 1. */
  readonly round: number;
  /** The person's name: it must be the one whose view it is. */
  readonly person: string;
  /**
   * What they may decide on: the parts of each card, by `set/subset/id`. A card that is not among
   * them has no boxes.
   */
  readonly decides: ReadonlyMap<string, readonly string[]>;
}

/** What a sealed PDF opens with. */
export interface PdfPasswords {
  /** For whoever it is sent to: at least 16 letters, made by chance. */
  readonly open: string;
  /** For nobody: octets of chance, written down as text and thrown away. */
  readonly owner: string;
}

export interface ProofOptions {
  readonly kind: ProofKind;
  readonly paper: Paper;
  /** The id of the one set to show. */
  readonly set?: string;
  /** The id of the one subset to show. */
  readonly subset?: string;
  /** The fonts of the layouts. */
  readonly fonts: FontShelf;
  /** Names that are never divided at the end of a line; for the house, whose view has all names. */
  readonly undivided?: readonly string[];
  /** The faces in which the sheets themselves speak. */
  readonly chrome: Faces;
  /** PNG or JPEG bytes of a card's art, bleed included; null where there is none yet. */
  readonly art: (source: string) => Uint8Array | null;
  /**
   * The version of each card's copy, by `set/subset/id`: a few letters that a person can read out.
   * Shown to the house alone.
   */
  readonly versions?: ReadonlyMap<string, string>;
  /** How far the approval of each card is, in a few words, by `set/subset/id`: for the house alone. */
  readonly approved?: ReadonlyMap<string, string>;
  /** The day and time of the proof, stated in it. The same value gives the same bytes. */
  readonly made: Instant;
  /** For `submission`, which cannot be made without the two. */
  readonly submission?: SubmissionSheets;
  readonly password?: PdfPasswords;
}

/** A PDF, and where in it everything stands. */
export interface Proof {
  readonly pdf: Uint8Array;
  readonly placed: readonly PlacedSide[];
}

/** A side of a card on a page. Lengths are points; y runs down from the top left of the page. */
export interface PlacedSide {
  readonly set: string;
  readonly subset: string;
  /** `subset/id`, where the view tells it. */
  readonly identity: string | null;
  readonly number: string | null;
  readonly side: 'front' | 'back';
  /** From 1. */
  readonly page: number;
  /** The trimmed card as it lies on the page. */
  readonly trim: Rect;
  readonly turn: Turn;
  /** 1, but for a card that is larger than the paper. */
  readonly scale: number;
  readonly bio: readonly PlacedWord[];
}

/** A word of a bio: where its baseline starts, and how far it runs along it. */
export interface PlacedWord {
  readonly text: string;
  readonly x: number;
  readonly baseline: number;
  readonly width: number;
  readonly overset: boolean;
}

/** Art that cannot be placed. */
export class ProofError extends Error {
  override readonly name = 'ProofError';
}
