import { latin1, textOf } from './characters.js';
import { closedPiece, filePiece, textPiece, type Format, type Piece, type Purse } from './piece.js';
import { entryOf, nameOf, pdfFile, resolved, type PdfFile, type PdfObject } from './pdf-file.js';
import { decodeStream } from './pdf-filters.js';
import { fontsOf, pdfFont, type PdfFont } from './pdf-font.js';
import { pdfWords, stringsIn } from './pdf-text.js';
import { isPdf, isPdfArray, type PdfValue } from './pdf-values.js';
import { has, joinBytes } from './view.js';

/** How far into a file its first line may stand. */
const HEAD = 1024;
/** Pages in a tree of pages, deeper than any that a program makes. */
const DEEPEST = 32;

/** The words of a PDF file: what its pages show, every string (metadata, bookmarks, notes), and files in it. */
export const pdf: Format = (bytes, purse) => {
  if (!isPdfFile(bytes)) return null;
  const file = pdfFile(bytes, purse);
  if (file.encrypted) return [closedPiece('it is encrypted')];
  const fonts = fontReader(file, purse);
  const { pieces, shown } = pagesOf(file, fonts, purse);
  const others = file.objects.filter((object) => object.stream !== null && !shown.has(object));
  return [
    textPiece('strings', file.objects.flatMap(({ value }) => stringsIn(value)).join('\n')),
    ...file.closed.map(({ number }) => closedPiece(UNKNOWN_FILTER, `object ${String(number)}`)),
    ...pieces,
    ...others.flatMap((object) => streamPieces(object, file, fonts, purse)),
  ];
};

function isPdfFile(bytes: Uint8Array): boolean {
  const head = bytes.subarray(0, HEAD);
  for (let at = head.indexOf(0x25); at >= 0; at = head.indexOf(0x25, at + 1)) {
    if (has(head, at, '%PDF-')) return true;
  }
  return false;
}

type Fonts = (resources: PdfValue | undefined) => ReadonlyMap<string, PdfFont>;

/** Reads the fonts of resources, each once; of all resources together where none are given. */
function fontReader(file: PdfFile, purse: Purse): Fonts {
  const read = new Map<PdfValue, PdfFont>();
  const all = file.objects.flatMap(({ value }) => [
    ...fontsOf(entryOf(value, 'Resources'), file.byNumber),
    ...fontsOf(value, file.byNumber),
  ]);
  const fontOf = (value: PdfValue): PdfFont => {
    const resolvedFont = resolved(value, file.byNumber) ?? null;
    const font = read.get(resolvedFont) ?? pdfFont(resolvedFont, file.byNumber, purse);
    read.set(resolvedFont, font);
    return font;
  };
  return (resources) =>
    new Map(
      (resources === undefined ? all : fontsOf(resources, file.byNumber)).map(([name, value]) => [
        name,
        fontOf(value),
      ]),
    );
}

function pagesOf(
  file: PdfFile,
  fonts: Fonts,
  purse: Purse,
): { pieces: Piece[]; shown: ReadonlySet<PdfObject> } {
  const shown = new Set<PdfObject>();
  const pages = file.objects.filter(({ value }) => nameOf(entryOf(value, 'Type')) === 'Page');
  const pieces = pages.flatMap(({ value }, index) => {
    const contents = entryOf(value, 'Contents');
    const target = resolved(contents, file.byNumber);
    const streams = (isPdfArray(target) ? target : [contents]).flatMap((each) => {
      const object = isPdf(each, 'reference') ? file.byNumber.get(each.number) : undefined;
      return object?.stream ? [object] : [];
    });
    const decoded = streams.map((object) => decodeStream(object, file.byNumber, purse));
    for (const object of streams) shown.add(object);
    const inside = `page ${String(index + 1)}`;
    const lines = decoded.flatMap(({ bytes }) => [bytes, Uint8Array.of(10)]);
    const closed = decoded.every(({ ok }) => ok) ? [] : [closedPiece(UNKNOWN_FILTER, inside)];
    const resources = fonts(inherited(value, 'Resources', file));
    return [...closed, ...wordPieces(latin1(joinBytes(lines)), resources, inside)];
  });
  return { pieces, shown };
}

const UNKNOWN_FILTER = 'it is packed in an unknown way, or damaged';

/** An entry of a page, or of what the page stands in. */
function inherited(page: PdfValue, key: string, file: PdfFile): PdfValue | undefined {
  let at: PdfValue | undefined = page;
  for (let step = 0; step < DEEPEST && at !== undefined; step += 1) {
    const found = entryOf(at, key);
    if (found !== undefined) return found;
    at = resolved(entryOf(at, 'Parent'), file.byNumber);
  }
  return undefined;
}

function wordPieces(stream: string, fonts: ReadonlyMap<string, PdfFont>, inside: string): Piece[] {
  const { apart, joined, said, unknown } = pdfWords(stream, fonts);
  return [
    textPiece(inside, apart),
    textPiece(inside, joined),
    textPiece(inside, said.join('\n')),
    ...(unknown ? [closedPiece('it has a font without letters', inside)] : []),
  ];
}

/** Streams that hold tables of the file or programs of fonts: no words that anyone is shown. */
const SILENT = new Set(['ObjStm', 'XRef', 'Type1C', 'CIDFontType0C', 'OpenType']);

function streamPieces(object: PdfObject, file: PdfFile, fonts: Fonts, purse: Purse): Piece[] {
  const [type, subtype] = ['Type', 'Subtype'].map((key) =>
    nameOf(resolved(entryOf(object.value, key), file.byNumber)),
  );
  if (SILENT.has(type ?? '') || SILENT.has(subtype ?? '')) return [];
  if (entryOf(object.value, 'Length1') !== undefined) return [];
  const inside = `object ${String(object.number)}`;
  const decoded = decodeStream(object, file.byNumber, purse);
  if (subtype === 'Image') {
    const isJpeg = !decoded.ok && /^DCT/.test(decoded.filter);
    return isJpeg ? [filePiece(inside, decoded.bytes)] : [];
  }
  if (!decoded.ok) return [closedPiece(UNKNOWN_FILTER, inside)];
  if (type === 'EmbeddedFile') return [filePiece(inside, decoded.bytes)];
  const text = textOf(decoded.bytes);
  if (type === 'Metadata') return [textPiece(inside, text ?? latin1(decoded.bytes))];
  const words = wordPieces(
    latin1(decoded.bytes),
    fonts(entryOf(object.value, 'Resources')),
    inside,
  );
  return text === null ? words : [...words, textPiece(inside, text)];
}
