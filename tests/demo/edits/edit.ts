import type { Finding } from '../../../schema/index.js';

/** Words for words that stand just once in a file. */
export type Swap = readonly [from: string, to: string];

/** A change of one file of the demo: swaps, a whole new text, a new body, or its removal. */
export type FileEdit =
  readonly [Swap, ...Swap[]] | { readonly text: string } | { readonly body: string } | null;

/** A named edit of the demo that breaks one rule, and that rule's finding. */
export interface DemoEdit {
  readonly rule: string;
  readonly says: string;
  readonly files: Readonly<Record<string, FileEdit>>;
  /** The finding, whole: the only one that the edit gives. */
  readonly finding: Omit<Finding, 'rule' | 'related'> & { readonly related?: Finding['related'] };
}
