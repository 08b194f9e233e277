import { countWords } from '../model/index.js';

/** Words in quotation marks, with the marks: from and to in UTF-16 units. */
export interface Quotation {
  readonly from: number;
  readonly to: number;
}

/** Whether a text has a sign that may open a quotation: for almost every text no, and quickly. */
export function mayQuote(text: string): boolean {
  return /["“„«‘']/.test(text);
}

/**
 * The words of others in a text: what stands in quotation marks, curly or straight, double or single,
 * and reads as said or written by somebody. That are three words or more, or fewer with the end of a
 * sentence or a pause within the marks ("Never!", "Mind,"). Not one or two words without it, which
 * are a nickname or meant otherwise; nor words with capitals, which are a title or a name. A
 * quotation without its closing mark goes to the end of its paragraph, as one that goes on in the
 * next does.
 */
export function quotationsIn(text: string): readonly Quotation[] {
  if (!mayQuote(text)) return [];
  const found: Quotation[] = [];
  /** Marks that close nowhere in the rest of the text. */
  const open = new Set<string>();
  for (let at = 0; at < text.length; at += 1) {
    const mark = text.charAt(at);
    if (!MARKS.has(mark) || open.has(mark) || !opens(text, at)) continue;
    const to = closingOf(text, at);
    if (to?.closed !== true) open.add(mark);
    if (to === null) continue;
    if (isSaid(text.slice(at + 1, to.closed ? to.at : to.at + 1))) {
      found.push({ from: at, to: to.at + 1 });
      at = to.at;
    } else if (to.closed) at = to.at;
  }
  return found;
}

interface Closing {
  readonly at: number;
  /** False where the text ends before the mark. */
  readonly closed: boolean;
}

const MARKS: ReadonlySet<string> = new Set('“„«"‘\'');
const CLOSES: Readonly<Record<string, string>> = { '“': '”', '„': '“”', '«': '»', '"': '"' };

/** Where the quotation ends that opens here; null if it ends nowhere and marks nothing. */
function closingOf(text: string, at: number): Closing | null {
  const mark = text.charAt(at);
  if (mark === '‘' || mark === "'") return closingSingle(text, at, mark);
  const closes = CLOSES[mark] ?? mark;
  for (let end = at + 1; end < text.length; end += 1) {
    if (closes.includes(text.charAt(end)) && (mark !== '"' || closesHere(text, end))) {
      return { at: end, closed: true };
    }
  }
  return mark === '"' ? null : { at: text.length - 1, closed: false };
}

/** A mark opens where no word goes before it and one comes after it that is not cut short. */
function opens(text: string, at: number): boolean {
  const [before, after] = [text.charAt(at - 1), text.charAt(at + 1)];
  if (/[\p{L}\p{M}\p{N}.,!?…]/u.test(before) || !/[^\s\p{Pe}]/u.test(after)) return false;
  const isSingle = /['‘]/.test(text.charAt(at));
  return !isSingle || (!/\d/.test(after) && !CUT_SHORT.test(text.slice(at + 1, at + 9)));
}

/** A straight mark closes after a word or its stop; after a figure before more words it is inches. */
function closesHere(text: string, at: number): boolean {
  const [before, after] = [text.charAt(at - 1), text.charAt(at + 1)];
  if (/[\s([]/.test(before) || /[\p{L}\p{N}]/u.test(after)) return false;
  return !/\d/.test(before) || !text.slice(at + 1).includes('"');
}

/** Letters that are left out at the start of a word, for which an apostrophe stands. */
const CUT_SHORT = /^(?:tis|twas|twere|twill|em|til|till|cause|round|bout|n|neath|gainst)\b/iu;

/**
 * Where single marks close, which look like apostrophes: at the first that comes after a stop, else
 * at the last that comes after a word.
 */
function closingSingle(text: string, at: number, mark: string): Closing | null {
  const close = mark === '‘' ? '’' : "'";
  let last: number | null = null;
  for (let end = at + 2; end < text.length; end += 1) {
    if (last !== null && text.charAt(end) === mark && opens(text, end)) break;
    if (text.charAt(end) !== close || /[\p{L}\p{N}]/u.test(text.charAt(end + 1))) continue;
    if (/[.,!?…—–-]/.test(text.charAt(end - 1))) return { at: end, closed: true };
    if (/[\p{L}\p{M}\p{N}]/u.test(text.charAt(end - 1))) last ??= mayBelong(text, end) ? null : end;
  }
  return last === null ? lastClose(text, at, close) : { at: last, closed: true };
}

/** Whether a mark after an s may be that of a plural owner: "the boats' wood". */
function mayBelong(text: string, at: number): boolean {
  return /s/i.test(text.charAt(at - 1)) && /^\s\p{Ll}/u.test(text.slice(at + 1, at + 3));
}

function lastClose(text: string, at: number, close: string): Closing | null {
  const end = text.lastIndexOf(close);
  return end > at + 1 && /[\p{L}\p{M}\p{N}]/u.test(text.charAt(end - 1))
    ? { at: end, closed: true }
    : null;
}

/** The least words that are a quotation without a stop in them. */
const LEAST_WORDS = 3;

function isSaid(words: string): boolean {
  if (!/\p{L}/u.test(words)) return false;
  if (/[.,!?…—–]\s*$/u.test(words)) return true;
  return countWords(words) >= LEAST_WORDS && !isTitle(words);
}

/** Whether every word that is no small one begins with a capital, as in titles and names. */
function isTitle(words: string): boolean {
  const own = [...words.matchAll(/[\p{L}\p{M}\p{N}’']+/gu)].map(([word]) => word);
  const big = own.filter((word) => !SMALL.has(word));
  return big.length > 0 && big.every((word) => /^[\p{Lu}\p{N}]/u.test(word));
}

const SMALL: ReadonlySet<string> = new Set(
  'a an the and or nor but of in on at to by for from with as into over'.split(' '),
);
