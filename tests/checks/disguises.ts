import type { Dice } from './dice.js';
import { SLIPS } from './slips.js';

/** A way in which a name gets into a text without standing there letter by letter, as Markdown. */
export interface Disguise {
  readonly says: string;
  readonly put: (name: string, dice: Dice) => string;
  /** What is found is only a warning: a reader may take it for another word. */
  readonly doubtful?: true;
}

/** Letters of other scripts that look like Latin ones (UTS #39, confusables.txt). */
const CYRILLIC = looks('aceopxyisjBKMHOCTX', 'асеорхуіѕјВКМНОСТХ');
const GREEK = looks('oviuABEZHIKMNOPTYX', 'ονιυΑΒΕΖΗΙΚΜΝΟΡΤΥΧ');
const ARMENIAN = looks('ounhqgLSO', 'օսոհզցԼՏՕ');
const CHEROKEE = looks('DRTiSMJHGZLCPKEWA', 'ᎠᎡᎢᎥᏚᎷᎫᎻᏀᏃᏞᏟᏢᏦᎬᎳᎪ');
const SMALL_CAPITALS = looks('abcdefghijklmnoprstuvwyz', 'ᴀʙᴄᴅᴇꜰɢʜɪᴊᴋʟᴍɴᴏᴘʀꜱᴛᴜᴠᴡʏᴢ');
const STROKES = looks('aegiltuydbnYMO', 'ⱥɇǥɨłŧʉɏđƀŋɎⱮØ');
const LOST = looks('aeoudl', 'áëôüđł');

function looks(latin: string, others: string): ReadonlyMap<string, string> {
  const letters = Array.from(others);
  return new Map(Array.from(latin, (letter, at) => [letter, letters[at] ?? letter]));
}

function swapped(name: string, letters: ReadonlyMap<string, string>): string {
  return Array.from(name, (letter) => letters.get(letter) ?? letter).join('');
}

/** Mathematical letters: the capital A and the small a of an alphabet. */
function mathematical(name: string, capital: number, small: number): string {
  return name
    .replace(/[A-Z]/g, (letter) => String.fromCodePoint(letter.charCodeAt(0) - 65 + capital))
    .replace(/[a-z]/g, (letter) => String.fromCodePoint(letter.charCodeAt(0) - 97 + small));
}

/** Something put after every second letter that another follows. */
function strewn(name: string, sign: string): string {
  return name.replace(/(\p{L}\p{M}*){2}(?=\p{L})/gu, `$&${sign}`);
}

function spaced(says: string, space: string): Disguise {
  return { says, put: (name) => name.replace(/ /g, space) };
}

function invisible(says: string, sign: string): Disguise {
  return { says, put: (name) => strewn(name, sign) };
}

/** Somewhere inside a plain word of a name, past its first letter. */
function insideWord(
  name: string,
  dice: Dice,
  change: (word: string, at: number) => string,
): string {
  const long = [...name.matchAll(/(?<![&#\w])[A-Za-z]{3,}(?![\w;])/g)];
  if (long.length === 0) return name;
  const { 0: word, index } = dice.pick(long);
  const changed = change(word, 1 + dice.below(word.length - 2));
  return name.slice(0, index) + changed + name.slice(index + word.length);
}

function referenced(name: string, write: (code: number) => string): string {
  return name.replace(/[aeiou]/g, (letter) => write(letter.charCodeAt(0)));
}

/** What is done to the words. */
const WORDS: readonly Disguise[] = [
  { says: 'as it is', put: (name) => name },
  { says: 'in small letters', put: (name) => name.toLowerCase() },
  { says: 'in capitals', put: (name) => name.toUpperCase() },
  { says: 'possessive', put: (name) => `${name}’s` },
  { says: 'possessive, straight', put: (name) => `${name}'s` },
  { says: 'plural', put: (name) => `${name}s` },
  { says: 'with a verb', put: (name) => `${name}’ll` },
  { says: 'with a sign of rights', put: (name) => `${name}™` },
  { says: 'with the figure of a note', put: (name) => `${name}¹` },
  { says: 'with figures', put: (name) => `${name}2027` },
  { says: 'surname first', put: surnameFirst },
];

/** What stands between words, or parts their letters. */
const SPACES: readonly Disguise[] = [
  spaced('over a line end', '\n'),
  spaced('over a hard line end', '\\\n'),
  spaced('over a hard line end of two spaces', '  \n'),
  spaced('no-break spaces', '\u00a0'),
  spaced('thin spaces', '\u2009'),
  spaced('narrow spaces', '\u202f'),
  spaced('ideographic spaces', '\u3000'),
  spaced('blank patterns', '\u2800'),
  spaced('double spaces', '  '),
  spaced('hyphens', '-'),
  spaced('true hyphens', '\u2010'),
  spaced('no-break hyphens', '\u2011'),
  spaced('figure dashes', '\u2012'),
  spaced('en dashes', '\u2013'),
  spaced('em dashes', '\u2014'),
  spaced('bars', '\u2015'),
  spaced('minus signs', '\u2212'),
  spaced('underscores', '_'),
  spaced('dots', '.'),
  spaced('middle dots', '·'),
  spaced('slashes', '/'),
  spaced('commas', ','),
  spaced('joined as one word', ''),
  { says: 'joined, in small letters', put: (name) => name.toLowerCase().replace(/ /g, '') },
  { says: 'spaced letters', put: (name) => name.replace(/ /g, '').split('').join(' ') },
  { says: 'letters with hyphens', put: (name) => name.replace(/\p{L}(?=\p{L})/gu, '$&-') },
  { says: 'letters with dots', put: (name) => name.replace(/ /g, '').split('').join('.') },
  { says: 'letters with hard spaces', put: (name) => name.split('').join('\u00a0') },
  {
    says: 'a word divided at a line end',
    put: (name) => name.replace(/(\p{Lu}..)(\p{L}{3})/u, '$1-\n$2'),
  },
  { says: 'backslashes before hyphens', put: (name) => name.replace(/ /g, '\\-') },
  { says: 'a word in quotes', put: (name) => name.replace(/ ([^ ]+)$/, ' ‘$1’') },
  { says: 'a word in brackets', put: (name) => name.replace(/ ([^ ]+)$/, ' ($1)') },
];

/** Letters that look like others. */
const LETTERS: readonly Disguise[] = [
  { says: 'NFD', put: (name) => swapped(name, LOST).normalize('NFD') },
  { says: 'accents it has not', put: (name) => swapped(name, LOST) },
  {
    says: 'full width',
    put: (name) =>
      name.replace(/[!-~]/g, (sign) => String.fromCharCode(sign.charCodeAt(0) + 0xfee0)),
  },
  { says: 'Cyrillic letters', put: (name) => swapped(name, CYRILLIC) },
  { says: 'Greek letters', put: (name) => swapped(name, GREEK) },
  { says: 'Armenian letters', put: (name) => swapped(name, ARMENIAN) },
  { says: 'Cherokee letters', put: (name) => swapped(name, CHEROKEE) },
  { says: 'small capitals', put: (name) => swapped(name, SMALL_CAPITALS) },
  { says: 'mathematical, bold', put: (name) => mathematical(name, 0x1d400, 0x1d41a) },
  { says: 'mathematical, sans italic', put: (name) => mathematical(name, 0x1d608, 0x1d622) },
  { says: 'letters in circles', put: (name) => mathematical(name, 0x24b6, 0x24d0) },
  { says: 'letters in squares', put: (name) => mathematical(name.toUpperCase(), 0x1f170, 0) },
  { says: 'letters in brackets', put: (name) => mathematical(name.toLowerCase(), 0, 0x249c) },
  { says: 'letters with strokes', put: (name) => swapped(name, STROKES) },
  { says: 'rn for m', put: (name) => name.replace(/m/g, 'rn') },
  { says: 'vv for w', put: (name) => name.replace(/w/g, 'vv').replace(/W/g, 'VV') },
  { says: '0 for o and 1 for l', put: (name) => name.replace(/o/gi, '0').replace(/l/g, '1') },
  { says: 'a bar for l', put: (name) => name.replace(/l/g, '\\|') },
  { says: 'a capital I for l', put: (name) => name.replace(/l/g, 'I') },
  { says: '1 for i', put: (name) => name.replace(/i/g, '1') },
  {
    says: '3 for e, 4 for a and 5 for s',
    put: (name) => name.replace(/e/g, '3').replace(/a/g, '4').replace(/s/g, '5'),
  },
  { says: '@ for a', put: (name) => name.replace(/(?<=[a-z])a(?=[a-z])/g, '@') },
];

/** What is put between letters and does not part them. */
const STREWN: readonly Disguise[] = [
  { says: 'marks inside words', put: (name) => strewn(name, '\u0323\u0301') },
  { says: 'strokes over letters', put: (name) => strewn(name, '\u0336') },
  invisible('soft hyphens', '\u00ad'),
  invisible('zero-width spaces', '\u200b'),
  invisible('zero-width joiners', '\u200d\u200c'),
  invisible('word joiners', '\u2060'),
  invisible('byte order marks', '\ufeff'),
  invisible('variation selectors', '\ufe0f'),
  invisible('tags', '\u{e0061}'),
  invisible('direction marks', '\u200e'),
  invisible('direction overrides', '\u202d\u202c'),
  invisible('grapheme joiners', '\u034f'),
];

/** Letters written as references. */
const REFERENCES: readonly Disguise[] = [
  spaced('no-break spaces by name', '&nbsp;'),
  invisible('soft hyphens by name', '&shy;'),
  invisible('soft hyphens by name without semicolon', '&shy'),
  invisible('zero-width spaces by name', '&ZeroWidthSpace;'),
  { says: 'decimal references', put: (name) => referenced(name, (code) => `&#${String(code)};`) },
  { says: 'hex references', put: (name) => referenced(name, (code) => `&#x${code.toString(16)};`) },
  {
    says: 'big hex references with zeros',
    put: (name) => referenced(name, (code) => `&#X00${code.toString(16).toUpperCase()};`),
  },
  // CommonMark leaves these as they are typed; a reader of HTML does not.
  {
    says: 'decimal references without semicolon',
    put: (name) => name.replace(/[aeiou](?!\d)/g, (letter) => `&#${String(letter.charCodeAt(0))}`),
  },
  {
    says: 'named references',
    put: (name) => name.replace(/[ea]/g, (letter) => (letter === 'e' ? '&eacute;' : '&aring;')),
  },
  {
    says: 'references of references',
    put: (name) => referenced(name, (code) => `&amp;#${String(code)};`),
  },
];

/** Markup, and signs of it. */
const MARKUP: readonly Disguise[] = [
  { says: 'emphasis on a word', put: (name) => name.replace(/[^ ]+$/, '*$&*') },
  {
    says: 'emphasis inside a word',
    put: (name, dice) =>
      insideWord(
        name,
        dice,
        (word, at) => `${word.slice(0, at)}*${word.slice(at, at + 1)}*${word.slice(at + 1)}`,
      ),
  },
  {
    says: 'strong inside a word',
    put: (name, dice) =>
      insideWord(name, dice, (word, at) => `${word.slice(0, at)}**${word.slice(at)}**`),
  },
  { says: 'in a link', put: (name) => `[${name}](count:none)` },
  { says: 'half in a link', put: (name) => name.replace(/^[^ ]+/, '[$&](count:none)') },
  {
    says: 'half of a word in a span',
    put: (name, dice) =>
      insideWord(name, dice, (word) => `${word.slice(0, -1)}[${word.slice(-1)}](held:finale)`),
  },
  {
    says: 'around a span',
    put: (name, dice) =>
      insideWord(
        name,
        dice,
        (word, at) => `${word.slice(0, at)}[zu](held:finale)${word.slice(at)}`,
      ),
  },
  {
    says: 'backslashes inside words',
    put: (name, dice) =>
      insideWord(name, dice, (word, at) => `${word.slice(0, at)}\\${word.slice(at)}`),
  },
  {
    says: 'stars that are typed',
    put: (name, dice) =>
      insideWord(name, dice, (word, at) => `${word.slice(0, at)}\\*${word.slice(at)}\\*`),
  },
  { says: 'in quotes', put: (name) => `“${name}”` },
];

/** A person's surname first; of anything else, the name as it is. */
function surnameFirst(name: string): string {
  const [, first, last] =
    /^(Ysolde|Magistrate|Osk|Marget|Pellam|Barnaby) (\p{L}+)$/u.exec(name) ?? [];
  return first === undefined || last === undefined ? name : `${last}, ${first}`;
}

/** In the order in which one may be laid over another: markup last, or it would be no markup. */
const LAYERS = [WORDS, SLIPS, SPACES, LETTERS, STREWN, REFERENCES, MARKUP] as const;

export const DISGUISES: readonly Disguise[] = LAYERS.flat();

/** Two disguises, one laid over the other. */
export const PAIRS: readonly (readonly [first: Disguise, second: Disguise])[] = LAYERS.flatMap(
  (layer, at) =>
    layer.flatMap((first) =>
      LAYERS.slice(at + 1)
        .flat()
        .map((second) => [first, second] as const),
    ),
);
