import { editDistance } from '../text/index.js';

/** Where words stand in a text, in UTF-16 units. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** A mark of copyright, in whatever way it is typed. */
const MARK = /©|\(\s?c\s?\)|\bcopyright\b|\bcopr\.?(?=\s)/giu;
const YEAR = /\b(?:19|20)\d\d\b/g;

/** Whether a text may have a legal line: for almost every text no, and quickly. */
export function hasMark(text: string): boolean {
  return text.search(MARK) >= 0;
}

/** How far the words of a line may be from those of the licence: of each hundred letters. */
const FARTHEST = 0.25;

/**
 * Stretches of a text that are nearly a legal line, and not it: with another mark, year or order,
 * other spaces, signs or dashes, or a few other letters. Such a stretch has a mark of copyright, or
 * is a line of its own. Other people's lines, whose words differ, are none.
 */
export function nearLines(text: string, line: string): readonly Stretch[] {
  const wanted = letters(line);
  if (wanted === '') return [];
  const right = exactIn(text, line);
  const words = wordsOf(text);
  const sought = { line, wanted, size: wordsOf(line).length };
  const near = startsIn(text, words, line)
    .flatMap((start) => nearestFrom(text, start, words, sought) ?? [])
    .filter((one) => !right.some((other) => overlap(one.stretch, other)))
    .sort(byNearness);
  const best: Stretch[] = [];
  for (const { stretch } of near) {
    if (!best.some((other) => overlap(stretch, other))) best.push(stretch);
  }
  return best.sort((a, b) => a.from - b.from);
}

/** A line that is looked for: as it is, by its letters, and how many words it has. */
interface Wanted {
  readonly line: string;
  readonly wanted: string;
  readonly size: number;
}

function overlap(one: Stretch, other: Stretch): boolean {
  return one.from < other.to && one.to > other.from;
}

/** Where the line stands as it should: whole, and not as the start of longer words. */
export function exactIn(text: string, line: string): readonly Stretch[] {
  const found: Stretch[] = [];
  for (let at = text.indexOf(line); at >= 0; at = text.indexOf(line, at + 1)) {
    const to = at + line.length;
    const isWhole = !joins(text, at) && !joins(text, to);
    if (isWhole) found.push({ from: at, to });
  }
  return found;
}

/** Whether a word goes on over a place of a text. */
function joins(text: string, at: number): boolean {
  return /[\p{L}\p{N}]/u.test(text.charAt(at - 1)) && /[\p{L}\p{N}]/u.test(text.charAt(at));
}

/** Words of a text, each up to the next space. */
function wordsOf(text: string): readonly Stretch[] {
  return [...text.matchAll(/\S+/gu)].map(({ 0: word, index }) => ({
    from: index,
    to: index + word.length,
  }));
}

/** Where a line may begin, and the first word that ends after it. */
interface Start {
  readonly from: number;
  readonly word: number;
}

/** At a mark, or a word or two before it; and at the start of each line of about its length. */
function startsIn(text: string, words: readonly Stretch[], line: string): readonly Start[] {
  const starts = new Map<number, Start>();
  let word = 0;
  for (const { index } of text.matchAll(MARK)) {
    while (word < words.length && (words[word]?.to ?? 0) <= index) word += 1;
    starts.set(index, { from: index, word });
    for (let at = Math.max(0, word - BEFORE_MARK); at <= word; at += 1) {
      const from = words[at]?.from;
      if (from !== undefined) starts.set(from, { from, word: at });
    }
  }
  for (const [at, { from }] of words.entries()) {
    const before = at === 0 ? '\n' : text.slice(words[at - 1]?.to, from);
    if (!before.includes('\n')) continue;
    const end = text.indexOf('\n', from);
    if ((end < 0 ? text.length : end) - from <= line.length * 1.4 + 4) {
      starts.set(from, { from, word: at });
    }
  }
  return [...starts.values()].sort((a, b) => a.from - b.from);
}

/** Words that may stand before the mark in a line that is out of order: "2027 ©". */
const BEFORE_MARK = 2;

/** Words that a line may have more or fewer than the licence's. */
const MORE_WORDS = 3;

/** A stretch that is near, by how much its words, its years and its letters differ from the line. */
interface Near {
  readonly stretch: Stretch;
  readonly apart: number;
  readonly years: number;
  readonly raw: number;
}

function byNearness(a: Near, b: Near): number {
  return a.apart - b.apart || a.years - b.years || a.raw - b.raw || a.stretch.from - b.stretch.from;
}

function nearestFrom(
  text: string,
  { from, word }: Start,
  words: readonly Stretch[],
  { line, wanted, size }: Wanted,
): Near | null {
  const ends = words.slice(word + Math.max(0, size - MORE_WORDS - 1), word + size + MORE_WORDS);
  const most = wanted.length * FARTHEST;
  let best: Near | null = null;
  for (const { to: end } of ends) {
    const stretch = { from, to: from + withoutStop(text.slice(from, end), line) };
    const typed = text.slice(stretch.from, stretch.to);
    const own = letters(typed);
    if (Math.abs(own.length - wanted.length) > most) continue;
    const apart = sorted(own) === sorted(wanted) ? 0 : editDistance(own, wanted);
    if (apart > most || (hasMark(line) && !mayBeLine(typed, line))) continue;
    const years = Math.abs(yearsIn(typed) - yearsIn(line));
    const near: Near = { stretch, apart, years, raw: editDistance(typed, line) };
    if (!best || byNearness(near, best) < 0) best = near;
  }
  return best;
}

function yearsIn(text: string): number {
  return text.match(YEAR)?.length ?? 0;
}

/** With a mark, or with a year where the mark was forgotten: a name alone is no legal line. */
function mayBeLine(words: string, line: string): boolean {
  return hasMark(words) || (line.search(YEAR) >= 0 && words.search(YEAR) >= 0);
}

/** The length of words without the stop of a sentence that they end, unless the line ends so too. */
function withoutStop(words: string, line: string): number {
  return /[.,;:!)\]]$/.test(line) ? words.length : words.replace(/[.,;:!)\]]+$/, '').length;
}

/** What a line says of whom: without mark and years, and however its words are joined. */
function letters(text: string): string {
  return text
    .replace(MARK, ' ')
    .replace(YEAR, ' ')
    .normalize('NFKD')
    .toLowerCase()
    .replace(/&|\+/g, ' and ')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

function sorted(text: string): string {
  return text.split(' ').sort().join(' ');
}

/**
 * Where two lines differ, in words: "`2026` for `2027`". Of signs that look alike it says which they
 * are.
 */
export function sayDifference(found: string, line: string): string {
  let from = 0;
  while (from < Math.min(found.length, line.length) && found[from] === line[from]) from += 1;
  let end = 0;
  const most = Math.min(found.length, line.length) - from;
  while (end < most && found.at(-1 - end) === line.at(-1 - end)) end += 1;
  const least = [
    found.slice(from, found.length - end),
    line.slice(from, line.length - end),
  ] as const;
  if (!/[\p{L}\p{N}]/u.test(least.join('')) && least.some((part) => part.trim() === '')) {
    return sayGap(...least);
  }
  // Back to the edges of words, so that whole words are shown.
  while (from > 0 && /[\p{L}\p{N}]/u.test(found.charAt(from - 1))) from -= 1;
  while (end > 0 && /[\p{L}\p{N}]/u.test(found.charAt(found.length - end))) end -= 1;
  const [had, wants] = [found.slice(from, found.length - end), line.slice(from, line.length - end)];
  return `\`${shown(had)}\` for \`${shown(wants)}\``;
}

function sayGap(had: string, wants: string): string {
  if (wants === '')
    return had.trim() === '' ? `${named(had)} too many` : `\`${had.trim()}\` too many`;
  if (had === '')
    return wants.trim() === '' ? 'a space is missing' : `\`${wants.trim()}\` is missing`;
  if (had.trim() === '' && wants.trim() === '') return `${named(had)} for ${named(wants)}`;
  return `${named(had)} for ${named(wants)}`;
}

/** "a space", "U+00A0", or the words themselves. */
function named(text: string): string {
  if (text.trim() !== '') return `\`${shown(text.trim())}\``;
  if (/^ +$/.test(text)) return text.length === 1 ? 'a space' : `${String(text.length)} spaces`;
  return shown(text);
}

/** A text with spaces that are no plain space by their code. */
function shown(text: string): string {
  return text.replace(/[^\S ]/gu, (sign) => {
    const code = (sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
    return `U+${code}`;
  });
}
