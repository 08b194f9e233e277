import type { Finding } from '../../schema/index.js';
import type { CardKey, FieldPath, FieldValue, FileDigest, StatusRow, ZoneFit } from './protocol.js';

// A card.

/** Where on the screen a finding belongs. Offsets are UTF-16 units. */
export type FindingPlace =
  | { readonly in: 'copy'; readonly from: number; readonly to: number }
  | { readonly in: 'field'; readonly path: FieldPath }
  | { readonly in: 'file'; readonly line: number; readonly column: number }
  | { readonly in: 'elsewhere'; readonly file: string; readonly line: number };

export interface DeskFinding {
  /** Names it in a `FixRequest`; the same for the same finding in the same words. */
  readonly id: string;
  readonly finding: Finding;
  readonly place: FindingPlace;
  /** Whether it has a fix that the desk can make: it is of this card's file. */
  readonly fixable: boolean;
}

/** A value that may be chosen, with other words for it. */
export interface FieldChoice {
  readonly text: string;
  readonly label: string | null;
  readonly detail: string | null;
}

/** What a value may be; a form is made of it. */
export type FieldShape =
  | {
      readonly type: 'text' | 'number' | 'instant';
      /** Offered; others may be typed. */
      readonly suggestions: readonly FieldChoice[];
    }
  | {
      readonly type: 'choice';
      /** Nothing else is valid. */
      readonly choices: readonly FieldChoice[];
    }
  | { readonly type: 'list'; readonly items: FieldShape; readonly expected: string | null }
  | {
      /** Any keys, each with a value of one shape. */
      readonly type: 'record';
      readonly keys: readonly FieldChoice[];
      readonly values: FieldShape;
    }
  | { readonly type: 'group'; readonly fields: readonly FieldModel[] };

/** A key of a map, and what it may hold. */
export interface FieldModel {
  readonly key: string;
  readonly required: boolean;
  readonly description: string | null;
  /** "the number as it is printed, or none". */
  readonly expected: string | null;
  readonly shape: FieldShape;
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Points from the trimmed top left corner, y downwards. */
export interface Box extends Point {
  readonly width: number;
  readonly height: number;
}

export interface ColourBox extends Box {
  /** `#rrggbb` or what the layout says; use it as a `fill`, never in a style sheet. */
  readonly colour: string;
}

/** What one `<text>` draws: each word at its own x. */
export interface DrawnPiece {
  /** The font by its key: the family is `holdback-` and the key; fetch it at `/api/font`. */
  readonly font: string;
  /** Points after every letter: `letter-spacing`. */
  readonly tracking: number;
  /** False: `font-variant-ligatures: none`. */
  readonly ligatures: boolean;
  readonly words: readonly { readonly text: string; readonly x: number }[];
}

export interface DrawnLine {
  readonly baseline: number;
  readonly overset: boolean;
  readonly pieces: readonly DrawnPiece[];
}

export interface DrawnZone {
  readonly zone: string;
  readonly box: Box;
  readonly colour: string;
  /** Points. */
  readonly size: number;
  readonly fits: boolean;
  readonly lines: readonly DrawnLine[];
}

/** A side as it prints, for an `<svg viewBox="0 0 width height">`. Draw in this order. */
export interface DrawnSide {
  readonly width: number;
  readonly height: number;
  /** The trim with its bleed; outside of the view box, so it is cut off. */
  readonly extent: Box;
  readonly ground: readonly ColourBox[];
  /** The picture of `/api/art` fills the extent, cut to it. Null: none on this side. */
  readonly art: 'picture' | 'missing' | null;
  readonly strips: readonly ColourBox[];
  readonly zones: readonly DrawnZone[];
}

/** The two sides; `why` where nothing is drawn: "Not issued", "No layout". */
export interface CardSides {
  readonly why: string | null;
  readonly front: DrawnSide | null;
  readonly back: DrawnSide | null;
  readonly fits: readonly ZoneFit[];
}

/** A name in the card. */
export interface NameNote {
  readonly name: string;
  readonly kind: string;
  /** How it is said. */
  readonly say: string | null;
  /** The forms in which it stands in this card, as typed. */
  readonly found: readonly string[];
  /** Recognisable in the picture. */
  readonly depicted: boolean;
  readonly also: readonly { readonly form: string; readonly opens: string }[];
  readonly avoid: readonly {
    readonly form: string;
    readonly use: string;
    readonly why: string | null;
  }[];
  /** "open", "held until …". */
  readonly opens: string;
  readonly opensLater: boolean;
  readonly publicName: string | null;
  readonly italic: boolean;
}

/** One thing that happened to the card, the latest last. */
export interface HistoryNote {
  /** In the property's zone: "14 May 2027, 20:00". */
  readonly when: string;
  readonly what: string;
  readonly who: string;
  readonly more: readonly string[];
}

/** A stretch of a text that was changed. */
export interface RedlinePiece {
  readonly is: 'kept' | 'added' | 'removed';
  readonly text: string;
}

/** How the card stood, and how it stands as typed. */
export interface BeforeAfter {
  /** "As approved by Amara Linde", or "As it was when the desk was opened". */
  readonly says: string;
  readonly approved: boolean;
  /** Fields that differ; none if nothing does. */
  readonly fields: readonly {
    readonly field: string;
    readonly before: string;
    readonly after: string;
    readonly pieces: readonly RedlinePiece[];
  }[];
}

/** The words of a card as the page edits them. */
export interface TypedCard {
  /** The whole file, line ends LF. */
  readonly text: string;
  /** The bio as Markdown, line ends LF, without empty lines before and after. */
  readonly copy: string;
  /** Front matter as typed; null where it cannot be read: then only `text` can be edited. */
  readonly fields: { readonly [key: string]: FieldValue } | null;
}

/** A card's words as they print: what is told at once of each draft. */
export interface SetLook {
  readonly sides: CardSides | null;
  readonly names: readonly NameNote[];
}

/** What is known of a card's words. */
export interface CardLook extends SetLook {
  readonly findings: readonly DeskFinding[];
  /** False: only what rules that look at one card say is new; the others come as an event. */
  readonly settled: boolean;
}

export interface CardAnswer {
  readonly card: CardKey;
  readonly file: string;
  /** Of the file as it is on the disk: the `base` of what is typed from now on. */
  readonly digest: FileDigest;
  /** As on the disk. */
  readonly saved: TypedCard;
  /**
   * What was typed and not saved, here or before the desk was closed; null if nothing was. If its
   * `base` is not `digest` the disk has changed since: a save gives a conflict that shows both.
   */
  readonly draft: {
    readonly base: FileDigest;
    readonly typed: TypedCard;
    readonly sequence: number;
  } | null;
  readonly form: readonly FieldModel[];
  /** Of the draft, if there is one. */
  readonly look: CardLook;
  readonly row: StatusRow | null;
  readonly history: readonly HistoryNote[];
  readonly change: BeforeAfter | null;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  /** Why the desk cannot write this file (it is a link); null if it can. */
  readonly readOnly: string | null;
  /** The cards before and after it in the order of the status sheet. */
  readonly previous: CardKey | null;
  readonly next: CardKey | null;
}
