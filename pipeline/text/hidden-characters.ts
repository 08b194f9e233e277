/** A character that does not show, or turns the text around it. */
export interface HiddenCharacter {
  /** UTF-16 units from the start of the text. */
  readonly at: number;
  readonly character: string;
}

/**
 * Controls (Cc) but for tab and line ends, what Unicode calls default ignorable (bidirectional
 * controls, zero widths, tags, fillers), line and paragraph separators, and lone surrogates.
 */
const HIDDEN = /[\p{Cc}\p{Default_Ignorable_Code_Point}\u2028\u2029\p{Cs}]/gu;
const EXPECTED = /[\t\n\r]/;

/** In emoji, joiners and variation selectors make the picture. */
const AFTER_PICTURE = /[\p{Extended_Pictographic}\p{Emoji_Modifier}\ufe0f0-9#*]$/u;
/** In scripts whose letters join, the two joiners change letters that are seen (UAX 31, 2.3). */
const AFTER_JOINING =
  /[\p{Script=Arabic}\p{Script=Syriac}\p{Script=Mongolian}\p{Script=Nko}\p{Script=Devanagari}\p{Script=Bengali}\p{Script=Gurmukhi}\p{Script=Gujarati}\p{Script=Oriya}\p{Script=Tamil}\p{Script=Telugu}\p{Script=Kannada}\p{Script=Malayalam}\p{Script=Sinhala}\p{Script=Khmer}]$/u;

/** Every hidden character of a text, but for those that make a letter or a picture what it is. */
export function hiddenCharacters(text: string): HiddenCharacter[] {
  if (!/[^\t\n\r\x20-\x7e]/.test(text)) return [];
  return [...text.matchAll(HIDDEN)]
    .filter(
      ({ 0: character, index }) => !EXPECTED.test(character) && !isWanted(text, index, character),
    )
    .map(({ 0: character, index }) => ({ at: index, character }));
}

function isWanted(text: string, at: number, character: string): boolean {
  const before = text.slice(Math.max(0, at - 2), at);
  if (character === '\ufe0e' || character === '\ufe0f') return AFTER_PICTURE.test(before);
  if (character === '\u200c') return AFTER_JOINING.test(before);
  if (character === '\u200d') return AFTER_JOINING.test(before) || AFTER_PICTURE.test(before);
  return false;
}

/** "U+202E, right-to-left override": a hidden character in words. */
export function sayCharacter(character: string): string {
  const codePoint = character.codePointAt(0) ?? 0;
  const code = `U+${codePoint.toString(16).toUpperCase().padStart(4, '0')}`;
  const name = NAMES[code] ?? (codePoint < 0x20 || codePoint === 0x7f ? 'control character' : null);
  return name === null ? code : `${code}, ${name}`;
}

const NAMES: Readonly<Record<string, string>> = {
  'U+0009': 'tab',
  'U+00AD': 'soft hyphen',
  'U+200B': 'zero width space',
  'U+200C': 'zero width non-joiner',
  'U+200D': 'zero width joiner',
  'U+200E': 'left-to-right mark',
  'U+200F': 'right-to-left mark',
  'U+2028': 'line separator',
  'U+2029': 'paragraph separator',
  'U+202A': 'left-to-right embedding',
  'U+202B': 'right-to-left embedding',
  'U+202C': 'pop directional formatting',
  'U+202D': 'left-to-right override',
  'U+202E': 'right-to-left override',
  'U+2060': 'word joiner',
  'U+2066': 'left-to-right isolate',
  'U+2067': 'right-to-left isolate',
  'U+2068': 'first strong isolate',
  'U+2069': 'pop directional isolate',
  'U+FEFF': 'byte order mark',
};
