/** A word of a text as names are compared: its letters, its ending, and how it is joined. */
export interface NameToken {
  /** As it is typed, without a possessive or contracted ending. */
  readonly base: string;
  /** "’s", "’", "’ll", as it is typed; mostly empty. */
  readonly ending: string;
  /** `base` in small letters without marks. */
  readonly key: string;
  /** As `key`, with its ending. */
  readonly whole: string;
  /** UTF-16 units from the start of the text. */
  readonly from: number;
  readonly to: number;
  /** What parts it from the word before: a space for any white space, a hyphen for any. */
  readonly gap: string;
  /** Whether a sentence, a line of speech or a value may begin with it, so that a capital is due. */
  readonly start: boolean;
}

const WORD =
  /[\p{L}\p{M}\p{N}]+(?:['’ʼ‘][\p{L}\p{M}\p{N}]+)*['’](?!\p{L})|[\p{L}\p{M}\p{N}]+(?:['’ʼ‘][\p{L}\p{M}\p{N}]+)*|&/gu;
const PLAIN_TEXT = /^[\x20-\x7e\n‘’“”–—…]*$/;
const PLAIN_WORD = /[A-Za-z0-9]+(?:['’‘][A-Za-z0-9]+)*['’]?|&/g;
const ENDING = /['’ʼ‘](?:s|d|ll|ve|re)?$/iu;
const APOSTROPHE = /['’ʼ‘]/u;
const APOSTROPHE_LAST = /['’]$/;
const STARTS = /[.!?…:;|/•—–"“‘«([{*_]|(?:^|\s)'/u;

/** The words of a text, for names to be looked for in them. */
export function nameTokens(text: string): readonly NameToken[] {
  const tokens: NameToken[] = [];
  let end = 0;
  for (const { 0: found, index } of text.matchAll(PLAIN_TEXT.test(text) ? PLAIN_WORD : WORD)) {
    const between = text.slice(end, index);
    const typed = APOSTROPHE_LAST.test(found) ? withoutQuote(found, text.slice(0, index)) : found;
    end = index + typed.length;
    const token = tokenOf(typed, index, between, tokens.length === 0);
    const short = token.start && isShort(tokens.at(-1), between);
    tokens.push(short ? { ...token, start: false } : token);
  }
  return tokens;
}

const SHORT = new Set(
  'st dr mr mrs ms mx prof capt cpt sgt lt col gen rev hon fr sr no'.split(' '),
);

/** Whether a full stop is that of a title cut short or of an initial, and ends no sentence. */
function isShort(before: NameToken | undefined, between: string): boolean {
  if (before === undefined || !/^\.\s$/u.test(between) || !isCapital(before.base)) return false;
  return SHORT.has(before.key) || (before.key.length === 1 && before.key !== 'i');
}

/** An apostrophe behind a word is a possessive only after an s, and where it closes no quotation. */
function withoutQuote(word: string, before: string): string {
  return /[sxz]['’]$/i.test(word) && !isQuoted(before) ? word : word.slice(0, -1);
}

/** Whether a single quotation mark that opened in a text is still open at its end. */
function isQuoted(before: string): boolean {
  const opened = Math.max(
    before.lastIndexOf('‘'),
    before.lastIndexOf(" '"),
    before.startsWith("'") ? 0 : -1,
  );
  return opened >= 0 && !/\p{L}[.,!?]?['’](?=[\s.,;:!?)])/u.test(before.slice(opened + 1));
}

function tokenOf(typed: string, from: number, between: string, first: boolean): NameToken {
  const { base, ending, key, whole } = wordOf(typed);
  return {
    base,
    ending,
    key,
    whole,
    from,
    to: from + typed.length,
    gap: first ? '' : gapOf(between),
    start: first || (between !== ' ' && STARTS.test(between)),
  };
}

type Word = Pick<NameToken, 'base' | 'ending' | 'key' | 'whole'>;

/** Most words of which it is kept how they are compared: a text says most of them again and again. */
const MOST_KEPT = 20_000;
const words = new Map<string, Word>();

function wordOf(typed: string): Word {
  const before = words.get(typed);
  if (before) return before;
  const end = APOSTROPHE.test(typed) ? (ENDING.exec(typed)?.[0] ?? '') : '';
  const base = end === '' || end === typed ? typed : typed.slice(0, -end.length);
  const ending = base === typed ? '' : end;
  const key = lettersOnly(base);
  const word = { base, ending, key, whole: ending === '' ? key : key + lettersOnly(ending) };
  if (words.size >= MOST_KEPT) words.clear();
  words.set(typed, word);
  return word;
}

/** A gap as it is compared: one space, one hyphen, or the signs that stand there. */
function gapOf(between: string): string {
  if (between === ' ' || /^\s+$/u.test(between)) return ' ';
  return between.trim().length === 1 && /^\p{Pd}$/u.test(between.trim()) && between.length === 1
    ? '-'
    : between.replace(/\s+/gu, ' ');
}

const SPECIAL: Readonly<Record<string, string>> = {
  ø: 'o',
  ł: 'l',
  đ: 'd',
  ð: 'd',
  þ: 'th',
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  ı: 'i',
  '’': "'",
  ʼ: "'",
  '‘': "'",
};
const PLAIN = /^[a-z0-9']*$/;

/** A word in small Latin letters without marks; an apostrophe is the straight one. */
export function lettersOnly(word: string): string {
  const small = word.toLowerCase();
  if (PLAIN.test(small)) return small;
  return small
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[øłđðþßæœı’ʼ‘]/gu, (sign) => SPECIAL[sign] ?? sign);
}

/** Whether a word begins with a capital. */
export function isCapital(word: string): boolean {
  const code = word.charCodeAt(0);
  return code < 128 ? code >= 65 && code <= 90 : /^\p{Lu}/u.test(word);
}

/** Whether a word has a capital, at its beginning or behind a particle: "d’Arnaud". */
export function hasCapital(word: string): boolean {
  return isCapital(word) || (/['’-]/u.test(word) && /['’-]\p{Lu}/u.test(word));
}

/** A word as its marks and capitals are compared: composed, with straight apostrophes. */
export function composed(word: string): string {
  return word.normalize('NFC').replace(/[’ʼ‘]/gu, "'");
}
