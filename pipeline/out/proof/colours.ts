/** The sheets' own colours. */
export const INK = '#1f252b';
export const QUIET = '#66707a';
/** The pale blue of layout pencils: for what is about the card and not on it. */
export const PENCIL = '#3d8fc4';
/** For what must be mended; always beside words or a shape that say the same. */
export const WARNING = '#b3261e';
