import { codeOf, type PdfFont } from './pdf-font.js';
import { isPdf, isPdfArray, PdfReader, type PdfValue } from './pdf-values.js';

/** What a content stream shows. */
export interface PdfWords {
  /** A space or line end wherever the writer moves on: within a word too, if it was set in pieces. */
  readonly apart: string;
  /** All letters in a row, without the hyphens that part a word where the writer moves on. */
  readonly joined: string;
  /** Words that stand for what is shown: `ActualText` and the like. */
  readonly said: readonly string[];
  /** Whether something is shown in a font of which nobody knows the letters. */
  readonly unknown: boolean;
}

/** In thousandths of the size of type: a step back of this much or more parts two words. */
const WORD_SPACE = 180;

const MOVES = new Set(['Td', 'TD', 'Tm', 'T*', 'BT', 'ET']);

const PLAIN: PdfFont = { size: 1, letters: new Map(), byNumber: true };

/** Reads the text operators of a content stream (ISO 32000-1, 9.4). */
export function pdfWords(stream: string, fonts: ReadonlyMap<string, PdfFont>): PdfWords {
  const reader = new PdfReader(stream);
  const pieces: string[] = [];
  const said: string[] = [];
  let font = PLAIN;
  let unknown = false;
  let values: PdfValue[] = [];
  const show = (value: PdfValue | undefined): void => {
    if (typeof value === 'number' && value <= -WORD_SPACE) pieces.push(' ');
    if (!isPdf(value, 'string')) return;
    if (!font.byNumber && font.letters.size === 0) unknown = true;
    pieces.push(lettersIn(value.bytes, font));
  };
  for (let value = reader.next(); value !== undefined; value = reader.next()) {
    if (!isPdf(value, 'operator')) {
      if (values.length < 64) values.push(value);
      continue;
    }
    const { word } = value;
    if (MOVES.has(word) || word === "'" || word === '"') pieces.push('\n');
    if (word === 'Tf') font = fontNamed(values[0], fonts);
    if (word === 'Tj' || word === "'" || word === '"') show(values.at(-1));
    if (word === 'TJ') for (const each of arrayOf(values.at(-1))) show(each);
    if (word === 'BDC' || word === 'DP') said.push(...stringsIn(values.at(-1)));
    if (word === 'ID') skipPicture(reader, stream);
    values = [];
  }
  const apart = pieces.join('');
  const joined = apart.replace(/[-\u00ad\u2010]*\s+/g, '');
  return { apart, joined, said, unknown };
}

function fontNamed(value: PdfValue | undefined, fonts: ReadonlyMap<string, PdfFont>): PdfFont {
  return (isPdf(value, 'name') ? fonts.get(value.name) : undefined) ?? PLAIN;
}

function arrayOf(value: PdfValue | undefined): readonly PdfValue[] {
  return isPdfArray(value) ? value : [];
}

/** A picture within a stream goes on to `EI` alone. */
function skipPicture(reader: PdfReader, stream: string): void {
  const end = /[\s\0]EI(?=[\s\0]|$)/g;
  end.lastIndex = reader.at;
  const found = end.exec(stream);
  reader.at = found ? end.lastIndex : stream.length;
}

function lettersIn(bytes: string, { size, letters, byNumber }: PdfFont): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += size) {
    const code = codeOf(bytes.slice(at, at + size));
    text += letters.get(code) ?? (byNumber ? String.fromCharCode(code) : ' ');
  }
  return text;
}

/** Every string in a value, read as text (ISO 32000-1, 7.9.2.2). */
export function stringsIn(value: PdfValue | undefined): readonly string[] {
  if (isPdf(value, 'string')) return [textOfString(value.bytes)];
  if (isPdfArray(value)) return value.flatMap(stringsIn);
  if (isPdf(value, 'name')) return [value.name];
  if (!isPdf(value, 'dictionary')) return [];
  return [...value.entries].flatMap(([key, entry]) => [key, ...stringsIn(entry)]);
}

function textOfString(bytes: string): string {
  const raw = Uint8Array.from(bytes, (character) => character.charCodeAt(0));
  if (bytes.startsWith('\xfe\xff')) return new TextDecoder('utf-16be').decode(raw);
  if (bytes.startsWith('\xff\xfe')) return new TextDecoder('utf-16le').decode(raw);
  return bytes.startsWith('\xef\xbb\xbf') ? new TextDecoder().decode(raw) : bytes;
}
