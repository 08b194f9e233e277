/** The sheet that says what a workbook is. */
export const ABOUT_SHEET = 'About this file';
/** The sheet of names to use. */
export const NAMES_SHEET = 'Names';

/** UTF-16 units that spreadsheet programs allow in the name of a sheet. */
const LONGEST = 31;

/** A name that such programs keep for themselves, and those of our own sheets. */
const TAKEN = ['History', ABOUT_SHEET, NAMES_SHEET];

/** What may not stand in the name of a sheet (ECMA-376 leaves it open; all programs agree). */

const FORBIDDEN = /[[\]/\\:*?\u0000-\u001f\u007f-\u009f\ufffe\uffff]|\p{Cs}/gu;

/**
 * The names of sheets for things with these titles: nothing in them that is forbidden, no apostrophe
 * at an end, at most 31 units, and none like another but for capitals.
 */
export function sheetNames(titles: readonly string[]): readonly string[] {
  const taken = new Set(TAKEN.map((name) => name.toLowerCase()));
  return titles.map((title) => {
    const name = freeName(title, taken);
    taken.add(name.toLowerCase());
    return name;
  });
}

function freeName(title: string, taken: ReadonlySet<string>): string {
  const plain = tidy(title.replace(FORBIDDEN, ' ').replace(/\s+/g, ' ')) || 'Set';
  for (let number = 1; ; number += 1) {
    const more = number === 1 ? '' : ` (${String(number)})`;
    const name = `${tidy(cutTo(plain, LONGEST - more.length))}${more}`;
    if (!taken.has(name.toLowerCase())) return name;
  }
}

function tidy(name: string): string {
  return name.replace(/^[' ]+|[' ]+$/g, '');
}

/** The first units of a text, without half a character at the end. */
function cutTo(text: string, units: number): string {
  return text.slice(0, units).replace(/[\ud800-\udbff]$/, '');
}
