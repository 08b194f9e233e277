/** What the names of the fonts of a page begin with. */
export const FONT_PREFIX = 'holdback-';

/** The place in the page where the font of a key stands packed. */
export function fontPlace(key: string): string {
  return `font-${key}`;
}
