/** What joins two words of a name: spaces, hyphens and dashes, marks of emphasis, quotes, brackets. */
const JOINING = /^[\s\p{Pd}*_~"'“”‘’«»()[\]\u2212\u2043\u02d7\u00b7\u2022\u2800]*$/u;

/** Whether what stands between two words keeps them from being one name, as a full stop does. */
export function isApart(gap: string): boolean {
  return !JOINING.test(gap) && !isTight(gap);
}

/** Whether words stand together without a space, whatever signs are between them. */
export function isTight(gap: string): boolean {
  return gap.length <= 4 && !/[\s\u2800]/u.test(gap);
}

/** Whether two stretches of letters may be one word: joined by signs, or by a hyphen and a line end. */
export function isInsideWord(gap: string): boolean {
  return isTight(gap) || /^\p{Pd}\s+$/u.test(gap);
}
