/** A word, a figure or a sign of a text, as numbers and what they count are read. */
export interface NumberToken {
  /** In small letters, without what does not show; apostrophes straight. */
  readonly word: string;
  readonly kind: 'word' | 'figure' | 'sign';
  /** UTF-16 units from the start of the text. */
  readonly from: number;
  readonly to: number;
  /** Whether nothing stands between it and the token before. */
  readonly glued: boolean;
  /** Whether it starts with a capital. */
  readonly capital: boolean;
}

const SPACES = ' \\u00a0\\u2007\\u2009\\u202f';
/** Thousands are parted by a comma, an apostrophe or a space; a point parts a decimal. */
const FIGURE = `\\d{1,3}(?:[,’'${SPACES}]\\d{3}(?!\\d))+|\\d+(?:\\.\\d+)?`;
const WORD = `[\\p{L}\\p{M}\\u00ad\\u200b]+(?:['’ʼ][\\p{L}\\p{M}]+)*`;
const TOKENS = new RegExp(`${FIGURE}|${WORD}|\\S`, 'gu');

/** The tokens of a text, in order. */
export function numberTokens(text: string): readonly NumberToken[] {
  let end = -1;
  return [...text.matchAll(TOKENS)].map(({ 0: typed, index }): NumberToken => {
    const to = index + typed.length;
    const glued = end === index;
    end = to;
    const kind = /^\d/.test(typed) ? 'figure' : /^[\p{L}\p{M}]/u.test(typed) ? 'word' : 'sign';
    const capital = /^\p{Lu}/u.test(typed);
    return { word: plainWord(typed), kind, from: index, to, glued, capital };
  });
}

function plainWord(typed: string): string {
  if (/^[a-z]+$/.test(typed)) return typed;
  return typed
    .replace(/[\u00ad\u200b]/g, '')
    .replace(/[’ʼ]/g, "'")
    .toLowerCase();
}

/** Hyphens that join words, the one that does not break too. */
export function isHyphen(token: NumberToken | undefined): boolean {
  return token !== undefined && /^[-‐‑]$/.test(token.word);
}

/** A dash or a hyphen, as between the ends of a range. */
export function isDash(token: NumberToken | undefined): boolean {
  return token !== undefined && /^[-‐‑‒–—−]$/.test(token.word);
}
