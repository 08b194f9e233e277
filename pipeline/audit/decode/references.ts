/** Letters with marks by their names in HTML: the mark is left out, as in every comparison here. */
const MARKED =
  /^([a-z])(?:acute|grave|circ|uml|tilde|cedil|ring|caron|macr|breve|ogon|dot|slash|strok|scr|fr|opf|middot|midot)$/i;
const JOINED = /^(ff|fi|fl|ffi|ffl|fj|ae|oe|ij|sz)lig$/i;
const NAMED = new Map([
  ['amp', '&'],
  ['lt', '<'],
  ['gt', '>'],
  ['quot', '"'],
  ['apos', "'"],
  ['lsquo', "'"],
  ['rsquo', "'"],
  ['sbquo', "'"],
  ['shy', ''],
  ['zwj', ''],
  ['zwnj', ''],
  ['lrm', ''],
  ['rlm', ''],
  ['eth', 'ð'],
  ['thorn', 'þ'],
  ['imath', 'i'],
  ['jmath', 'j'],
  ['num', '#'],
  ['percnt', '%'],
  ['bsol', '\\'],
]);

/** What a character reference of HTML or XML stands for; a space for a name that is not a letter's. */
export function reference(found: string): string {
  const name = found.slice(1).replace(/;$/, '');
  if (/^#x/i.test(name)) return character(Number.parseInt(name.slice(2), 16));
  if (name.startsWith('#')) return character(Number(name.slice(1)));
  const [, letter] = MARKED.exec(name) ?? JOINED.exec(name) ?? [];
  return letter ?? NAMED.get(name.toLowerCase()) ?? ' ';
}

/** A character by its number; a space for a number that is none. */
export function character(code: number): string {
  return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : ' ';
}
