/** A character of a text, after character references are read; or a tag that does not part words. */
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
  /<\/?(?:abbr|b|bdi|bdo|big|del|em|font|i|ins|kbd|mark|small|s|span|strong|sub|sup|tt|u|wbr)\s*\/?>|&#x0*([0-9a-f]{1,6});?|&#0*(\d{1,7});?|&([a-z])(?:acute|grave|circ|uml|tilde|ring|cedil|caron|slash|strok|macr|breve|ogon|dot);?|&([a-z])(?:fr|opf|scr);|&(shy|nbsp|apos|quot);?|&([a-z]+\d*);|[\s\S]/giu;

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
  af: '\u2061',
  applyfunction: '\u2061',
  it: '\u2062',
  invisibletimes: '\u2062',
  ic: '\u2063',
  invisiblecomma: '\u2063',
  negativethinspace: '\u200b',
  negativeverythinspace: '\u200b',
  negativemediumspace: '\u200b',
  negativethickspace: '\u200b',
  mediumspace: '\u205f',
  thickspace: '\u2005',
  thinspace: '\u2009',
  verythinspace: '\u200a',
  nonbreakingspace: '\u00a0',
  horbar: '\u2015',
  underbar: '_',
  middot: '\u00b7',
  emsp13: '\u2004',
  emsp14: '\u2005',
  acy: 'а',
  iecy: 'е',
  iukcy: 'і',
  jsercy: 'ј',
  ocy: 'о',
  rcy: 'р',
  scy: 'с',
  dscy: 'ѕ',
  khcy: 'х',
  ucy: 'у',
  kcy: 'к',
  mcy: 'м',
  tcy: 'т',
  alpha: 'α',
  iota: 'ι',
  kappa: 'κ',
  nu: 'ν',
  omicron: 'ο',
  rho: 'ρ',
  upsilon: 'υ',
  dd: 'd',
  ee: 'e',
  ell: 'l',
  ii: 'i',
  order: 'o',
  eng: 'ŋ',
  hbar: 'h',
  planckh: 'h',
  differentiald: 'd',
  exponentiale: 'e',
  imaginaryi: 'i',
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
    else if (written.length > 1 && written.startsWith('<')) {
      yield { character: written, from: index, to };
    } else yield* asTyped(written, index);
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
