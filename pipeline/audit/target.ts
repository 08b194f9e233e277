import type { FieldWords } from './told.js';

/** Words that must not stand in an output, and where they come from. */
export interface Target {
  readonly words: string;
  /** What they are, for the team: a name, a bio, an alt text. */
  readonly from: string;
  /** The card that they are of, `set/subset/id`, or null. */
  readonly card: string | null;
  /** Held names and secrets are looked for even where the same words are open elsewhere. */
  readonly always: boolean;
  /** Capitals count: the words are common ones too. */
  readonly exact: boolean;
  /** Phrases in which the words are innocent. */
  readonly except: readonly string[];
}

export function target(
  words: string,
  from: string,
  more: Partial<Omit<Target, 'words' | 'from'>> = {},
): Target {
  return { words, from, card: null, always: false, exact: false, except: [], ...more };
}

/** Remarks with fewer characters could be of any page. */
const LONG_REMARK = 40;

/** The words of a thing that must not be seen: all while it is held, some of it always. */
export function unseen(
  told: readonly FieldWords[],
  isOpen: (field: string) => boolean,
): readonly FieldWords[] {
  return told.filter(
    ({ when, field, words }) =>
      when === 'never' ||
      (when === 'remark' && words.length >= LONG_REMARK) ||
      (when === 'held' && !isOpen(field)),
  );
}

/** The words of a thing that are open in their own right. */
export function seen(
  told: readonly FieldWords[],
  isOpen: (field: string) => boolean,
): readonly string[] {
  return told.flatMap(({ when, field, words }) => (when === 'held' && isOpen(field) ? words : []));
}
