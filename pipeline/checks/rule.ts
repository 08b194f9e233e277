import type { Card, CardSet, Content, Spot } from '../model/index.js';
import type { Subject } from './subject.js';

export type Severity = 'error' | 'warning';
export type Stage = CardSet['plan']['value']['stage'];

/** What rules are grouped under in lists and documents. */
export type About =
  | 'files'
  | 'levels'
  | 'numbers'
  | 'counts'
  | 'copy'
  | 'fit'
  | 'spoilers'
  | 'names'
  | 'truth'
  | 'language'
  | 'legal'
  | 'packs'
  | 'approval';

/** What a rule has to say about one place. The runner adds rule, severity, line and column. */
export interface Remark {
  readonly spot: Spot;
  readonly message: string;
  readonly found?: string;
  readonly expected?: string;
  readonly related?: readonly { readonly message: string; readonly spot: Spot }[];
  /** The exact words to put in place of the spot; empty to take it out. */
  readonly fix?: string;
  /** Nobody would write anything else there, so that `check --fix` may write the fix. */
  readonly certain?: true;
  /** If it is milder than the rule. */
  readonly severity?: 'warning';
  readonly set?: string;
  /** `subset/id`. */
  readonly card?: string;
}

/** A small content for an example: files laid over the sample property; null takes one away. */
export type Files = Readonly<Record<string, string | null>>;

export interface Passing {
  readonly says: string;
  readonly files: Files;
}

/** An example that fails, with the finding that it gives: the only one. */
export interface Failing extends Passing {
  readonly gives: {
    readonly at: `${string}:${number}:${number}`;
    /** The text that the finding underlines. */
    readonly covers: string;
    readonly message: string;
    readonly found?: string;
    readonly expected?: string;
    readonly fix?: string;
    readonly certain?: true;
    /** If it is not the rule's own. */
    readonly severity?: Severity;
    /** Other places: `file:line:column message`. */
    readonly related?: readonly string[];
  };
}

/** One rule. Its examples are its tests and its page in `explain`. */
export interface Rule {
  readonly id: string;
  readonly about: About;
  readonly severity: Severity;
  /** Stages in which a finding of it is only a warning. */
  readonly lenientIn?: readonly Stage[];
  /** One line: why anybody should care. */
  readonly why: string;
  /** False for what nobody may accept. */
  readonly acceptable?: false;
  /** Looks at readable content. */
  readonly look?: (subject: Subject) => Iterable<Remark>;
  /** Looks at what reading found; works without a readable property.yaml. */
  readonly lookRaw?: (content: Content) => Iterable<Remark>;
  /**
   * For rules that look at single texts: whether a text breaks the rule. A discreet report asks it
   * of what the public sees.
   */
  readonly offends?: (text: string) => boolean;
  readonly examples: {
    readonly passes: readonly [Passing, ...Passing[]];
    readonly fails: readonly [Failing, ...Failing[]];
  };
}

/** Where a finding about a card belongs. */
export function ofCard(card: Card): { set: string; card: string } {
  return { set: card.set, card: `${card.subset}/${card.id}` };
}
