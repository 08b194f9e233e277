/** What the names of the fonts of a page begin with. */
export const FONT_PREFIX = 'holdback-';
