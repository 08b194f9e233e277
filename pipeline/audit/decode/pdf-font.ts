import { latin1 } from './characters.js';
import type { Purse } from './piece.js';
import { dictionaryOf, entryOf, nameOf, resolved, type PdfObject } from './pdf-file.js';
import { decodeStream } from './pdf-filters.js';
import { isPdf, isPdfArray, PdfReader, type PdfValue } from './pdf-values.js';
import { reference } from './references.js';

/** How the codes of a font become letters. */
export interface PdfFont {
  /** Bytes of a code. */
  readonly size: number;
  /** Letters by code. */
  readonly letters: ReadonlyMap<number, string>;
  /** A code that is not in the map is the character of that number. */
  readonly byNumber: boolean;
}

/** A font as ISO 32000-1, 9.10 has it read: its map to Unicode, else the names of its glyphs. */
export function pdfFont(
  value: PdfValue | undefined,
  byNumber: ReadonlyMap<number, PdfObject>,
  purse: Purse,
): PdfFont {
  const isComposite = nameOf(resolved(entryOf(value, 'Subtype'), byNumber)) === 'Type0';
  const map = unicodeMap(entryOf(value, 'ToUnicode'), byNumber, purse);
  const named = isComposite ? [] : differences(entryOf(value, 'Encoding'), byNumber);
  return {
    size: map?.size ?? (isComposite ? 2 : 1),
    letters: new Map([...named, ...(map?.letters ?? [])]),
    byNumber: !isComposite,
  };
}

/** Letters by the names of glyphs: `/Differences [65 /A /eacute]`. */
function differences(
  encoding: PdfValue | undefined,
  byNumber: ReadonlyMap<number, PdfObject>,
): (readonly [number, string])[] {
  const list = resolved(entryOf(resolved(encoding, byNumber), 'Differences'), byNumber);
  if (!isPdfArray(list)) return [];
  const letters: (readonly [number, string])[] = [];
  let code = 0;
  for (const each of list) {
    if (typeof each === 'number') {
      code = each;
    } else if (isPdf(each, 'name')) {
      letters.push([code, glyphLetters(each.name)]);
      code += 1;
    }
  }
  return letters;
}

const GLYPHS = new Map([
  ['zero', '0'],
  ['one', '1'],
  ['two', '2'],
  ['three', '3'],
  ['four', '4'],
  ['five', '5'],
  ['six', '6'],
  ['seven', '7'],
  ['eight', '8'],
  ['nine', '9'],
  ['fi', 'fi'],
  ['fl', 'fl'],
  ['ff', 'ff'],
  ['ffi', 'ffi'],
  ['ffl', 'ffl'],
  ['germandbls', 'ß'],
  ['ae', 'ae'],
  ['oe', 'oe'],
  ['quotesingle', "'"],
  ['quoteright', "'"],
]);

/** The letters of a glyph by its name (Adobe Glyph List Specification 1.7); a space for a sign. */
function glyphLetters(glyph: string): string {
  const [name = ''] = glyph.split('.');
  const [, hex] = /^u(?:ni)?([0-9A-F]{4,6})$/.exec(name) ?? [];
  if (hex !== undefined) return reference(`&#x${hex};`);
  if (/^[A-Za-z]$/.test(name)) return name;
  const [, letter] =
    /^([A-Za-z])(?:acute|grave|circumflex|dieresis|tilde|cedilla|ring|caron|macron|breve|ogonek|dotaccent|slash)$/.exec(
      name,
    ) ?? [];
  return letter ?? GLYPHS.get(name) ?? GLYPHS.get(name.toLowerCase()) ?? ' ';
}

interface UnicodeMap {
  readonly size: number;
  readonly letters: Map<number, string>;
}

/** A map from codes to Unicode: a CMap (ISO 32000-1, 9.10.3). */
function unicodeMap(
  value: PdfValue | undefined,
  byNumber: ReadonlyMap<number, PdfObject>,
  purse: Purse,
): UnicodeMap | null {
  const object = isPdf(value, 'reference') ? byNumber.get(value.number) : undefined;
  if (!object?.stream) return null;
  const decoded = decodeStream(object, byNumber, purse);
  return decoded.ok ? readMap(latin1(decoded.bytes)) : null;
}

function readMap(text: string): UnicodeMap {
  const reader = new PdfReader(text);
  const letters = new Map<number, string>();
  let size = 1;
  let values: PdfValue[] = [];
  for (let value = reader.next(); value !== undefined; value = reader.next()) {
    if (!isPdf(value, 'operator')) {
      values.push(value);
      continue;
    }
    if (value.word === 'endcodespacerange')
      size = isPdf(values[0], 'string') ? values[0].bytes.length : 1;
    if (value.word === 'endbfchar') addEach(letters, values);
    if (value.word === 'endbfrange') addRanges(letters, values);
    values = [];
  }
  return { size, letters };
}

function addEach(letters: Map<number, string>, values: readonly PdfValue[]): void {
  for (let at = 0; at + 1 < values.length; at += 2) {
    const [code, to] = [values[at], values[at + 1]];
    if (isPdf(code, 'string') && isPdf(to, 'string'))
      letters.set(codeOf(code.bytes), wide(to.bytes));
  }
}

/** The most codes that a range may have: as many as there are codes of two bytes. */
const WIDEST = 0x10000;

function addRanges(letters: Map<number, string>, values: readonly PdfValue[]): void {
  for (let at = 0; at + 2 < values.length; at += 3) {
    const [first, last, to] = [values[at], values[at + 1], values[at + 2]];
    if (!isPdf(first, 'string') || !isPdf(last, 'string')) continue;
    const from = codeOf(first.bytes);
    const end = Math.min(codeOf(last.bytes), from + WIDEST);
    for (let code = from; code <= end; code += 1) {
      const each = isPdfArray(to) ? to[code - from] : to;
      if (!isPdf(each, 'string')) continue;
      letters.set(code, isPdfArray(to) ? wide(each.bytes) : later(wide(each.bytes), code - from));
    }
  }
}

/** The text whose last character has a number that is higher by so much. */
function later(text: string, by: number): string {
  const characters = Array.from(text);
  const last = characters.pop()?.codePointAt(0) ?? 0;
  return characters.join('') + (last + by <= 0x10ffff ? String.fromCodePoint(last + by) : ' ');
}

export function codeOf(bytes: string): number {
  let code = 0;
  for (let at = 0; at < bytes.length; at += 1) code = code * 256 + bytes.charCodeAt(at);
  return code;
}

/** UTF-16 with the high byte first. */
function wide(bytes: string): string {
  let text = '';
  for (let at = 0; at + 1 < bytes.length; at += 2)
    text += String.fromCharCode(codeOf(bytes.slice(at, at + 2)));
  return text;
}

/** The fonts of resources, by the names that content streams use. */
export function fontsOf(
  resources: PdfValue | undefined,
  byNumber: ReadonlyMap<number, PdfObject>,
): readonly (readonly [name: string, font: PdfValue])[] {
  const { entries } = dictionaryOf(entryOf(resolved(resources, byNumber), 'Font'), byNumber);
  return [...entries];
}
