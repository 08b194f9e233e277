import type { Decision } from '../../../schema/index.js';
import type { Instant } from '../../model/index.js';

/** What is sent to a reviewer besides their view: who they are, and what they may decide on. */
export interface Submission {
  /** The packet's id, such as `amara-2`. */
  readonly id: string;
  /** The property's id. */
  readonly property: string;
  /** Counts what was submitted to this person, from 1. */
  readonly round: number;
  readonly person: { readonly id: string; readonly name: string };
  readonly made: Instant;
  readonly expires: Instant;
  /** The Ed25519 key that signs the decision file: PKCS #8 (RFC 8410) in base64url. */
  readonly privateKey: string;
  readonly texts: readonly SubmittedText[];
}

/** A card or a sales text of a submission. */
export interface SubmittedText {
  /** `set/subset/card`, or `set/sales/id`. */
  readonly key: string;
  /** What this person may decide on: only what they are shown whole. */
  readonly parts: readonly SubmittedPart[];
  /**
   * Its fields as they were when this person last decided on them; none if they never did. Fields
   * are `name`, `bio`, `facts.NAME`, `texts.ZONE`, `credits`, `signers`, `publicName` and `alt`,
   * of a sales text `words`; of a bio and a sales text the plain words, paragraphs parted by an empty
   * line; credits as `role: name` and signers as `name (state)`, parted by `; `.
   */
  readonly was: readonly FieldText[];
  /** Remarks and answers of earlier rounds, the oldest first. */
  readonly earlier: readonly EarlierLine[];
  /** What `check` has to say of it, as far as this person may know it. */
  readonly findings: readonly string[];
}

export interface SubmittedPart {
  readonly part: Decision['part'];
  /** The digest of what it covers. */
  readonly digest: string;
  /** What this person last decided on it, and whether it is unchanged since. */
  readonly last: { readonly verdict: Decision['decision']; readonly isCurrent: boolean } | null;
}

export interface FieldText {
  readonly field: string;
  readonly text: string;
}

export interface EarlierLine {
  readonly at: string;
  readonly who: string;
  readonly what: string;
  readonly more: readonly string[];
}
