/** Signs without a width that may stray around words: they say nothing at an end. */
const INVISIBLE = /[\u00ad\u200b-\u200f\u2060\ufeff]/;

/** The words of a cell without the spaces and invisible signs around them; line ends are LF. */
export function tidy(text: string): string {
  const words = text.includes('\r') ? text.replace(/\r\n?/g, '\n') : text;
  let from = 0;
  let to = words.length;
  while (from < to && isNothing(words.charAt(from))) from += 1;
  while (to > from && isNothing(words.charAt(to - 1))) to -= 1;
  return words.slice(from, to);
}

function isNothing(sign: string): boolean {
  return sign.trim() === '' || INVISIBLE.test(sign);
}

/** Words that stand on one line, where a wide or non-breaking space is a space. */
export function tidyLine(text: string): string {
  return tidy(text).replace(/[^\S\n]/gu, ' ');
}

/** Words as they are compared where capitals, spaces and a last stop do not count. */
export function folded(text: string): string {
  return tidyLine(text)
    .replace(/\s+/gu, ' ')
    .toLowerCase()
    .normalize('NFC')
    .replace(/[.:?*]$/, '')
    .trim();
}
