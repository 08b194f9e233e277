import type { DivideWord } from './break-list.js';
import { HYPHEN_TEX } from './hyphen-tex.js';
import { readPatterns, type Hyphenator } from './liang.js';

/** A word with what may stand around it: quotes, brackets, stops, a possessive. */
const WORD = /^([^\p{L}\p{N}]*)(\p{L}+)((?:['’]\p{L}{0,2})?[^\p{L}\p{N}]*)$/u;
const SOFT_HYPHEN = '\u00ad';

let american: Hyphenator | undefined;

/** Hyphenation by the patterns of plain TeX, which are read when they are first used. */
export function hyphenate(word: string): readonly number[] {
  american ??= readPatterns(HYPHEN_TEX);
  return american(word);
}

/**
 * Where words may be divided. Left whole: names and whatever else `undivided` lists, in any case;
 * words with a hyphen, a digit or an inner sign of their own, addresses among them; and words with
 * soft hyphens, because their writer has said where.
 */
export function divider(undivided: Iterable<string>): DivideWord {
  const whole = new Set<string>();
  for (const name of undivided) {
    for (const word of name.match(/\p{L}+/gu) ?? []) whole.add(word.toLowerCase());
  }
  return (text) => {
    const match = text.includes(SOFT_HYPHEN) ? null : WORD.exec(text);
    const [, before = '', word = ''] = match ?? [];
    const lower = word.toLowerCase();
    if (word === '' || lower.length !== word.length || whole.has(lower)) return [];
    return hyphenate(lower).map((offset) => before.length + offset);
  };
}
