/**
 * What the desk's page and its server say to each other: JSON over loopback. Types alone, so that the
 * page may import them.
 *
 * Every request under `/api/` carries the token in the header `X-Holdback-Token`; a POST is JSON with
 * `Content-Type: application/json`. The page finds the token in the fragment of the address that it
 * was opened at: `/#token=…`. The page itself (`/` and what it loads) holds nothing of the content and
 * needs no token. An answer that is not 200 is a `Trouble`; 409 of a save, undo or redo a `Conflict`,
 * 422 of handing in a `NotHandedIn`.
 *
 * | request | answer |
 * | --- | --- |
 * | `GET /api/status` | `StatusAnswer` |
 * | `GET /api/card?card=KEY` | `CardAnswer` |
 * | `POST /api/draft` `DraftRequest` | `DraftAnswer`: the card set anew; findings come as an event |
 * | `GET /api/findings?card=KEY` | `FindingsAnswer`: what rules that look at one card say at once |
 * | `POST /api/discard` `CardRequest` | `CardAnswer`: as on the disk, what was typed is let go |
 * | `POST /api/save` `SaveRequest` | `SavedAnswer`, or 409 `Conflict` |
 * | `POST /api/undo`, `POST /api/redo` `BaseRequest` | `SavedAnswer`, or 409 `Conflict` or `Trouble` |
 * | `POST /api/hand-in` `SaveRequest` | `SavedAnswer`, 409 `Conflict`, or 422 `NotHandedIn` |
 * | `POST /api/fix` `FixRequest` | `FixAnswer` with `typed`: the words with the fix made, not saved |
 * | `GET /api/reveals` | `RevealsReport` of `schema/` |
 * | `POST /api/proof` `ProofRequest` | `JobAnswer` |
 * | `POST /api/publish-preview` `PreviewRequest` | `JobAnswer` |
 * | `POST /api/cancel` `CancelRequest` | `JobAnswer` |
 * | `GET /api/jobs` | `JobsAnswer` |
 * | `GET /api/font?key=KEY` | a TrueType file, for `new FontFace(…, bytes)` |
 * | `GET /api/art?card=KEY` | a JPEG of the card's picture, or 404 |
 * | `POST /api/ticket` `{}` | `TicketAnswer` |
 * | `GET /api/events` (or `/api/events?ticket=T` without the header, for an `EventSource`) | Server-Sent Events: the name is `type` of a `DeskEvent`, the data all of it |
 * | `GET /made/CAPABILITY/NAME.pdf` | a proof; the address comes with the job, no header is needed |
 */

import type { CardState, StatusSheet } from '../../schema/index.js';
import type {
  BeforeAfter,
  CardAnswer,
  CardLook,
  DeskFinding,
  SetLook,
  TypedCard,
} from './protocol-card.js';
import type { Job } from './protocol-jobs.js';

export type * from './protocol-card.js';
export type * from './protocol-jobs.js';

/** Set, subset and card: `high-water/crew/c017`. */
export type CardKey = string;

/** SHA-256 of the bytes of a file, in hexadecimal. */
export type FileDigest = string;

/** The header that carries the token. */
export type TokenHeader = 'x-holdback-token';

/** Keys and list positions from the top of the front matter. */
export type FieldPath = readonly (string | number)[];

/** A value of front matter, as text as it was typed: `007` stays so. */
export type FieldValue = string | readonly FieldValue[] | { readonly [key: string]: FieldValue };

/** One change of front matter; null takes the key or list item away. */
export interface FieldChange {
  readonly path: FieldPath;
  readonly value: FieldValue | null;
}

/**
 * What somebody typed, always against the file of the digest `base` that goes with it, never against
 * an earlier edit: the whole file, or the copy and fields that differ. Line ends are LF; the file
 * keeps its own. What is not named stays as it is, to the byte.
 */
export type Edit =
  { readonly text: string } | { readonly copy?: string; readonly fields?: readonly FieldChange[] };

/** What is wrong with a request, in a sentence for whoever reads it. */
export interface Trouble {
  readonly error:
    | 'refused'
    | 'unknown'
    | 'bad request'
    | 'conflict'
    | 'unsaved'
    | 'nothing to undo'
    | 'nothing to redo'
    | 'not writable'
    | 'not ready'
    | 'busy'
    | 'too many'
    | 'failed';
  readonly message: string;
}

// The status sheet.

/** How a text fits its zone. */
export interface ZoneFit {
  /** `bio`, `name`, … as the layout calls it. */
  readonly zone: string;
  readonly side: 'front' | 'back';
  /** "overset by 2 lines", "1 line free", "no line free", "one word is too wide". */
  readonly says: string;
  readonly fits: boolean;
  readonly oversetLines: number;
  readonly freeLines: number;
  /** The fewest last words whose loss makes it fit; 0 where it fits. */
  readonly wordsToCut: number;
  /** Points; smaller than the zone asks for where the text was shrunk. */
  readonly size: number;
  readonly shrunk: boolean;
}

export interface StatusRow {
  readonly card: CardKey;
  readonly set: string;
  readonly subset: string;
  readonly subsetTitle: string;
  /** As printed; null for a card without one. */
  readonly number: string | null;
  readonly name: string;
  /** Null while no file can be told apart from others for its faults: then `says` tells what to mend. */
  readonly state: CardState | 'unreadable' | null;
  /** The id of its writer. */
  readonly writer: string | null;
  readonly writerName: string | null;
  /** Names of people with whom it lies to be decided on. */
  readonly waitsFor: readonly string[];
  /** The level of what is shown: its id, and its label. */
  readonly level: string;
  readonly levelLabel: string;
  /** "held until 16 April 2027, 20:00 London time", or "open". */
  readonly opens: string;
  /** Of the bio; null where it has none that is set. */
  readonly fit: ZoneFit | null;
  readonly errors: number;
  readonly warnings: number;
  /** What stands in the way of its release, a few words each. */
  readonly blocks: readonly string[];
  /** What was said with decisions that stand in its way. */
  readonly remarks: readonly string[];
  /** Something typed is not saved yet. */
  readonly unsaved: boolean;
}

export interface StatusAnswer {
  readonly property: string;
  /** The highest level in the content: every screen is marked INTERNAL with it. */
  readonly marked: string;
  readonly zone: string;
  /** In the order of sets, subsets and cards. */
  readonly cards: readonly StatusRow[];
  readonly people: readonly { readonly id: string; readonly name: string; readonly role: string }[];
  readonly levels: readonly { readonly id: string; readonly label: string }[];
  /** Subsets, dates, what opens next; null while files cannot be read, and until `looked`. */
  readonly sheet: StatusSheet | null;
  /** Findings of files that are no card: the plan, the names, the layouts. */
  readonly others: readonly DeskFinding[];
  /**
   * Whether all rules have looked at everything once. Until then every row is there, but how its bio
   * fits, its findings and what blocks it are not known: an event `settled` says when they are.
   */
  readonly looked: boolean;
  /** Whether all rules have looked at the files as they are. */
  readonly settled: boolean;
}

// A card: see `protocol-card.ts`.

export interface CardRequest {
  readonly card: CardKey;
}

export interface BaseRequest extends CardRequest {
  readonly base: FileDigest;
}

export interface DraftRequest extends BaseRequest {
  readonly edit: Edit;
  /** Grows with each request for this card; an answer to an older one can be dropped. */
  readonly sequence: number;
}

/**
 * The card set anew, and nothing that takes longer: what is found in these words comes as an event
 * `findings` of this `sequence`, first what rules that look at one card say, then all.
 */
export interface DraftAnswer {
  readonly card: CardKey;
  readonly sequence: number;
  readonly look: SetLook;
  /** What was typed, as the file would have it; told by `fix` always, by `draft` with fields. */
  readonly typed: TypedCard | null;
  readonly change: BeforeAfter | null;
  /** Whether it differs from the file of `base`. */
  readonly unsaved: boolean;
  /** Why a field could not be written as it was asked; the rest was. */
  readonly unwritten: readonly { readonly path: FieldPath; readonly why: string }[];
}

export interface FixAnswer extends DraftAnswer {
  readonly look: CardLook;
}

export interface FindingsAnswer {
  readonly card: CardKey;
  /** Of the draft that was looked at; null for the file as it is. */
  readonly sequence: number | null;
  readonly settled: boolean;
  readonly findings: readonly DeskFinding[];
}

export interface SaveRequest extends BaseRequest {
  readonly edit: Edit;
}

/** The card as it is now on the disk. `written` is false where nothing had to be. */
export interface SavedAnswer {
  readonly saved: true;
  readonly written: boolean;
  readonly card: CardAnswer;
}

/** The file on the disk is not the one that was edited: nothing was written. */
export interface Conflict extends Trouble {
  readonly error: 'conflict';
  readonly card: CardKey;
  /** What both began with; null if the desk does not know it. */
  readonly base: TypedCard | null;
  readonly yours: TypedCard;
  readonly disk: TypedCard;
  /** The new `base`: a save against it stands. */
  readonly digest: FileDigest;
  /** Both sets of changes together; null where they touch the same words. */
  readonly merged: TypedCard | null;
}

/** Errors stand in the way of handing in: nothing was written. */
export interface NotHandedIn extends Trouble {
  readonly error: 'not ready';
  readonly findings: readonly DeskFinding[];
}

export interface FixRequest extends SaveRequest {
  /** The `id` of a `DeskFinding`. */
  readonly finding: string;
  readonly sequence: number;
}

/** Opens one event stream within half a minute. */
export interface TicketAnswer {
  readonly ticket: string;
}

// Events.

/** After a lost connection ask for the status and the open card again: events are not repeated. */
export type DeskEvent =
  | { readonly type: 'hello'; readonly session: string }
  /** Files changed, by the desk or by others. `cards` have another digest now. */
  | {
      readonly type: 'changed';
      readonly cards: readonly { readonly card: CardKey; readonly digest: FileDigest | null }[];
      readonly others: boolean;
    }
  /**
   * What is found in a card is other than was told before, or was looked for in another draft:
   * `sequence` is of the draft looked at, null for the file as it is.
   */
  | {
      readonly type: 'findings';
      readonly card: CardKey;
      readonly sequence: number | null;
      readonly settled: boolean;
      readonly findings: readonly DeskFinding[];
    }
  /** All rules have looked: the status sheet may be other than before. */
  | { readonly type: 'settled' }
  | { readonly type: 'job'; readonly job: Job }
  | { readonly type: 'trouble'; readonly message: string };

/**
 * The finished page: the files of one folder (`dist/pipeline/desk-page/`), served by name. In
 * `index.html` every `{{nonce}}` is replaced by the nonce of the answer, which scripts and styles in it
 * carry. `/` is `index.html`; `desk.js` is served at `/desk.js`, and so on, without sub-folders.
 */
export type PageFileName = 'index.html' | (string & {});
