/** Characters that shape or part a text and are never drawn. */
const UNDRAWN = /[\u00ad\u200b\u2060\ufeff]/gu;
/** Characters that need no glyph: joiners, marks of direction, variation selectors. */
const NEEDS_NO_GLYPH = /\p{Default_Ignorable_Code_Point}/u;
/** White space that is one space to a reader, as in HTML; no-break spaces are kept. */
const WHITE = /[\t\n\v\f\r \u0085\u2028\u2029]+/gu;
/** Spaces besides U+0020 that may end a line and then take no room. */
const TRAILING_SPACE = /[\u1680\u2000-\u2006\u2008-\u200a\u205f\u3000]+$/u;

/** What is drawn of a text: no soft hyphens, zero width spaces or word joiners. */
export function drawn(text: string): string {
  return isPlain(text) ? text : text.replace(UNDRAWN, '');
}

/** Whether every character is below U+00AD: then all of a text is drawn as it is. */
export function isPlain(text: string): boolean {
  for (let index = 0; index < text.length; index += 1) {
    if (text.charCodeAt(index) >= 0xad) return false;
  }
  return true;
}

/** What is drawn of the part of a word that ends a line. */
export function drawnAtEnd(text: string): string {
  return isPlain(text) ? text : drawn(text).replace(TRAILING_SPACE, '');
}

/** Runs of white space become one space. */
export function collapseWhite(text: string): string {
  return text.replace(WHITE, ' ');
}

/** Whether a character must have a glyph of its own to be seen. */
export function needsGlyph(character: string): boolean {
  return !NEEDS_NO_GLYPH.test(character);
}
