/** A character of a text, after character references are read. */
export interface Read {
  readonly character: string;
  /** UTF-16 units from the start of the text. */
  readonly from: number;
  readonly to: number;
}

/**
 * References as HTML readers take them (WHATWG HTML, 13.2.5.72 to 80): numbers without their
 * semicolon too. CommonMark leaves such ones as they are typed, and so they reach a page.
 */
const REFERENCE =
  /&#x0*([0-9a-f]{1,6});?|&#0*(\d{1,7});?|&([a-z])(?:acute|grave|circ|uml|tilde|ring|cedil|caron|slash|macr|breve|ogon|dot);?|&([a-z])(?:fr|opf|scr);|&(shy|nbsp|apos|quot);?|&([a-z]+);|[\s\S]/giu;

/** What shows as a space, a hyphen or an apostrophe, or not at all. */
const NAMED: Readonly<Record<string, string>> = {
  shy: '\u00ad',
  nbsp: '\u00a0',
  zwj: '\u200d',
  zwnj: '\u200c',
  ensp: '\u2002',
  emsp: '\u2003',
  thinsp: '\u2009',
  hairsp: '\u200a',
  numsp: '\u2007',
  puncsp: '\u2008',
  tab: '\t',
  newline: '\n',
  zerowidthspace: '\u200b',
  nobreak: '\u2060',
  lrm: '\u200e',
  rlm: '\u200f',
  hyphen: '\u2010',
  dash: '\u2010',
  ndash: '\u2013',
  mdash: '\u2014',
  minus: '\u2212',
  apos: "'",
  lsquo: '‘',
  rsquo: '’',
  quot: '"',
  lowbar: '_',
  period: '.',
  inodot: 'ı',
  imath: 'ı',
};

/** The characters of a text, each where it was typed. */
export function* charactersOf(text: string): Generator<Read> {
  for (const match of text.matchAll(REFERENCE)) {
    const { 0: written, 1: hex, 2: decimal, 3: accented, 4: styled, index } = match;
    const named = match[5] ?? match[6];
    const code = hex === undefined ? Number(decimal ?? NaN) : parseInt(hex, 16);
    const known = accented ?? styled ?? (named && NAMED[named.toLowerCase()]);
    const to = index + written.length;
    if (code > 0 && code <= 0x10ffff) {
      yield { character: String.fromCodePoint(code), from: index, to };
    } else if (known !== undefined && known !== '') yield { character: known, from: index, to };
    else yield* asTyped(written, index);
  }
}

/** Characters that are no reference, or one of a letter that no name has. */
function* asTyped(written: string, start: number): Generator<Read> {
  let from = start;
  for (const character of written) {
    yield { character, from, to: from + character.length };
    from += character.length;
  }
}
