/**
 * What a key of the content tells in words.
 *
 * - `held`: words that are open once the thing itself is.
 * - `never`: words that no output shows at any time.
 * - `remark`: the same, of the team for itself: looked for where they are long enough to be known by
 *   their letters, since a short remark says what any page could.
 */
export interface Words {
  readonly words: string;
  readonly when: 'held' | 'never' | 'remark';
  /** Which part of the key, where a hold can name it: `Berth` of `facts`. */
  readonly part?: string;
}

/** For every key of a shape what it tells. A key that is added does not compile until it is decided. */
export type Told<T> = {
  readonly [K in keyof T]-?: (value: NonNullable<T[K]>) => readonly Words[];
};

/** Words and the field that tells them, as `holds` names it: `facts.Berth`. */
export interface FieldWords extends Words {
  readonly field: string;
}

/** Everything that a value of a shape tells. */
export function tell<T extends object>(table: Told<T>, value: T): FieldWords[] {
  const told: FieldWords[] = [];
  for (const key in table) {
    const part: T[Extract<keyof T, string>] | undefined = value[key];
    if (part === undefined || part === null) continue;
    for (const words of table[key](part)) {
      told.push({ ...words, field: words.part === undefined ? key : `${key}.${words.part}` });
    }
  }
  return told;
}

/** Words that are open once the thing is. */
export const held = (words: string): Words[] => [{ words, when: 'held' }];
/** Words that are never shown. */
export const never = (words: string): Words[] => [{ words, when: 'never' }];
/** A remark of the team. */
export const remark = (words: string): Words[] => [{ words, when: 'remark' }];
/** Remarks with words of their own in them. */
export const remarks = (all: readonly { readonly why: string }[]): Words[] =>
  all.flatMap(({ why }) => remark(why));

/** It decides what is held. */
export const decides = (): Words[] => [];
/** Numbers, dates, ids, places of files: nothing that could be told from any other page's words. */
export const wordless = (): Words[] => [];
/** It is searched by what it consists of, each with its own hold. */
export const byParts = (): Words[] => [];
/** It is open, or checked before anything goes out. */
export const open = (): Words[] => [];
