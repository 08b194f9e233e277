import type { Finding } from '../../../schema/index.js';
import { placeOf, relatedAt, type Place, type Stretch } from '../stretch.js';

/** Words for words that stand just once in a file. */
export type Swap = readonly [from: string, to: string];

/** A change of one file of the demo: swaps, a whole new text, a new body, or its removal. */
export type FileEdit =
  readonly [Swap, ...Swap[]] | { readonly text: string } | { readonly body: string } | null;

type Told = Omit<Finding, 'rule' | 'related' | keyof Place>;
type Related = Finding['related'][number] | (Stretch & { readonly message: string });

/** A named edit of the demo that breaks one rule, and that rule's finding. */
export interface DemoEdit {
  readonly rule: string;
  readonly says: string;
  readonly files: Readonly<Record<string, FileEdit>>;
  /**
   * The finding, whole: the only one that the edit gives. Its places are numbers in a card's file, and
   * words in a file that grows.
   */
  readonly finding: Told &
    (Place | { readonly at: Stretch }) & { readonly related?: readonly Related[] };
}

/** The finding as `check` gives it of the edited content. */
export function findingOf(
  { rule, finding }: DemoEdit,
  content: ReadonlyMap<string, string | Uint8Array>,
): object {
  const related = (finding.related ?? []).map((one) =>
    'words' in one ? relatedAt(one, content) : one,
  );
  if (!('at' in finding)) return { rule, ...finding, related };
  const { at, ...told } = finding;
  return { rule, ...told, ...placeOf(at, content), related };
}
