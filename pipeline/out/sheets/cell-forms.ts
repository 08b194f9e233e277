/** What a cell of a card holds: a text, a number, or several texts, by themselves or by name. */
export type CellValue =
  | string
  | number
  | readonly string[]
  | Readonly<Record<string, string>>
  | readonly Readonly<Record<string, string>>[];

/**
 * How a value is written in one cell.
 *
 * - `text`: as it is.
 * - `whole`: a whole number in digits.
 * - `list`: `one; two`.
 * - `map`: `key: value; key: value`.
 * - `records`: one map a line.
 *
 * In the last three a backslash takes the meaning from the character after it (`\;` is a semicolon,
 * `\:` a colon in a key, `\\` a backslash), `\n` is a line end and `\r` a carriage return. Spaces
 * around an item do not count, unless a backslash stands before them. `(none)` is an empty list,
 * which is not the same as an empty cell: that is a key which is not there.
 */
export type CellForm = 'text' | 'whole' | 'list' | 'map' | 'records';

/** A value, or why there is none in a cell, in words that follow a colon. */
export type CellReading =
  { readonly ok: true; readonly value: CellValue } | { readonly ok: false; readonly why: string };

/** An empty list or map. */
const NONE = '(none)';

/** A value in the text of one cell. The reverse of `readCell`. */
export function writeCell(value: CellValue): string {
  if (typeof value === 'string') return value;
  if (typeof value === 'number') return String(value);
  if (!isList(value)) return writeMap(value);
  if (value.length === 0) return NONE;
  const texts = value.filter((item) => typeof item === 'string');
  const records = value.filter((item) => typeof item !== 'string');
  if (records.length > 0) return records.map(writeMap).join('\n');
  const text = texts.map((item) => escaped(item, /[\\;]/g)).join('; ');
  return text === NONE ? `\\${NONE}` : text;
}

/** The value that a cell of this form holds. The text is not empty: that is no value. */
export function readCell(text: string, form: CellForm): CellReading {
  if (form === 'text') return { ok: true, value: text };
  if (form === 'whole') return readWhole(text);
  if (text.trim() === NONE) return { ok: true, value: form === 'map' ? {} : [] };
  if (form === 'map') return readMap(signsOf(text));
  const items = parted(signsOf(text), form === 'list' ? ';' : '\n').filter(
    (item) => item.length > 0,
  );
  if (form === 'list') return { ok: true, value: items.map(textOf) };
  return readRecords(items);
}

function isList(
  value: Exclude<CellValue, string | number>,
): value is readonly string[] | readonly Readonly<Record<string, string>>[] {
  return Array.isArray(value);
}

function writeMap(map: Readonly<Record<string, string>>): string {
  const pairs = Object.entries(map).map(
    ([key, value]) => `${escaped(key, /[\\;:]/g)}: ${escaped(value, /[\\;]/g)}`,
  );
  return pairs.length === 0 ? NONE : pairs.join('; ');
}

/** A text with a backslash before each sign that would mean something, and before outer spaces. */
function escaped(text: string, special: RegExp): string {
  return text
    .replace(special, '\\$&')
    .replace(/^\s|\s$/gu, (space) => (isLineEnd(space) ? space : `\\${space}`))
    .replace(/\n/g, '\\n')
    .replace(/\r/g, '\\r');
}

function isLineEnd(sign: string): boolean {
  return sign === '\n' || sign === '\r';
}

/** A character of a cell, and whether a backslash took its meaning. */
interface Sign {
  readonly text: string;
  readonly bare: boolean;
}

const LINE_ENDS: Readonly<Record<string, string>> = { n: '\n', r: '\r' };

function signsOf(text: string): readonly Sign[] {
  const signs: Sign[] = [];
  for (let at = 0; at < text.length; at += 1) {
    const character = text.charAt(at);
    if (character === '\\' && at + 1 < text.length) {
      at += 1;
      const next = text.charAt(at);
      signs.push({ text: LINE_ENDS[next] ?? next, bare: false });
    } else if (character !== '\r' || text.charAt(at + 1) !== '\n') {
      signs.push({ text: character, bare: true });
    }
  }
  return signs;
}

/** The parts between separators, without the spaces around each. */
function parted(signs: readonly Sign[], separator: string): readonly (readonly Sign[])[] {
  const parts: Sign[][] = [[]];
  for (const sign of signs) {
    if (sign.bare && sign.text === separator) parts.push([]);
    else parts.at(-1)?.push(sign);
  }
  return parts.map(trimmed);
}

function trimmed(signs: readonly Sign[]): readonly Sign[] {
  const counts = ({ text, bare }: Sign): boolean => !bare || text.trim() !== '';
  return signs.slice(signs.findIndex(counts) >>> 0, signs.findLastIndex(counts) + 1);
}

function textOf(signs: readonly Sign[]): string {
  return signs.map(({ text }) => text).join('');
}

function readWhole(text: string): CellReading {
  const digits = text.trim();
  if (/^\d{1,10}$/.test(digits)) return { ok: true, value: Number(digits) };
  return { ok: false, why: `“${digits}” is no whole number` };
}

type MapReading =
  | { readonly ok: true; readonly value: Readonly<Record<string, string>> }
  | { readonly ok: false; readonly why: string };

function readMap(signs: readonly Sign[]): MapReading {
  const pairs = new Map<string, string>();
  for (const pair of parted(signs, ';').filter((part) => part.length > 0)) {
    const colon = pair.findIndex(({ text, bare }) => bare && text === ':');
    const key = textOf(trimmed(pair.slice(0, Math.max(0, colon))));
    const value = textOf(trimmed(pair.slice(colon + 1)));
    if (colon < 0 || key === '' || value === '') {
      return { ok: false, why: `“${textOf(pair)}” is not written as “key: value”` };
    }
    if (pairs.has(key)) return { ok: false, why: `“${key}” stands there twice` };
    pairs.set(key, value);
  }
  return { ok: true, value: Object.fromEntries(pairs) };
}

function readRecords(lines: readonly (readonly Sign[])[]): CellReading {
  const records: Readonly<Record<string, string>>[] = [];
  for (const line of lines) {
    const reading = readMap(line);
    if (!reading.ok) return reading;
    records.push(reading.value);
  }
  return { ok: true, value: records };
}
