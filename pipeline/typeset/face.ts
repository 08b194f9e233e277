import { create, type Font } from 'fontkit';
import { FontError } from './font-error.js';
import { scriptOf, type Script } from './script.js';
import { plainFile, readFontFile, type FontFile } from './sfnt.js';
import { Shaper } from './shaper.js';

/** A font that text can be set in. It keeps the widths of words, so open each file once. */
export interface Face {
  readonly name: string;
  /** The font as a TrueType or OpenType file without packing: embed this, not the file given. */
  readonly bytes: Uint8Array;
  readonly unitsPerEm: number;
  /** Height above the baseline in ems: `ascender` of the font's `hhea` table. */
  readonly ascent: number;
  /** Depth below the baseline in ems, positive: `descender` of the `hhea` table. */
  readonly descent: number;
  /** Advance of a word space in ems. */
  readonly space: number;
  /** The character that divided words end in: U+2010 where the font has it, else `-`. */
  readonly hyphen: string;
  covers(character: string): boolean;
  /** Widths for the script of this text. */
  shaperFor(text: string, ligatures: boolean): Shaper;
}

const REFUSED: ReadonlyMap<FontFile['kind'], string> = new Map([
  ['woff2', 'woff2 files cannot be embedded in part; use the .woff, .ttf or .otf file'],
  ['collection', 'a collection holds several fonts; use a file with a single one'],
  ['unknown', 'not a TrueType, OpenType or WOFF file'],
]);
const NEEDED = ['cmap', 'head', 'hhea', 'hmtx', 'maxp'] as const;

/**
 * Opens the bytes of a TTF, OTF or WOFF 1 file. `name` is what messages call it.
 *
 * @throws FontError for another kind of file, a variable font, and a file that is damaged.
 */
export function openFace(bytes: Uint8Array, name: string): Face {
  const file = readFontFile(bytes);
  const refusal = REFUSED.get(file.kind);
  if (refusal !== undefined) throw new FontError(name, refusal);
  const tags = new Set([...file.tables.map((table) => table.tag), ...file.damaged]);
  if (tags.has('fvar')) {
    throw new FontError(name, 'a variable font has no fixed widths; use a static one');
  }
  const lacking = NEEDED.filter((table) => !tags.has(table));
  if (lacking.length > 0) {
    throw new FontError(name, `the file is damaged: no table ${lacking.join(', ')}`);
  }
  if (file.damaged.length > 0) {
    throw new FontError(name, `the file is damaged: table ${file.damaged.join(', ')}`);
  }
  const plain = plainFile(file.tables);
  return new FontFace(name, plain, decode(plain, name));
}

function decode(bytes: Uint8Array, name: string): Font {
  try {
    const font = create(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength));
    if (!('layout' in font)) throw new Error('it holds several fonts');
    // Tables are read when first used: use them here, where damage can be reported.
    const run = font.layout('n -', ['kern', 'liga']);
    if (!(font.unitsPerEm > 0 && run.advanceWidth > 0))
      throw new Error('its letters have no width');
    return font;
  } catch (cause) {
    const why = cause instanceof Error ? cause.message : String(cause);
    throw new FontError(name, `the file is damaged: ${why}`, { cause });
  }
}

class FontFace implements Face {
  readonly unitsPerEm: number;
  readonly ascent: number;
  readonly descent: number;
  readonly space: number;
  readonly hyphen: string;
  readonly #font: Font;
  readonly #shapers = new Map<string, Shaper>();

  constructor(
    readonly name: string,
    readonly bytes: Uint8Array,
    font: Font,
  ) {
    this.#font = font;
    this.unitsPerEm = font.unitsPerEm;
    this.ascent = font.ascent / font.unitsPerEm;
    this.descent = -font.descent / font.unitsPerEm;
    this.space = font.glyphForCodePoint(0x20).advanceWidth / font.unitsPerEm;
    this.hyphen = font.hasGlyphForCodePoint(0x2010) ? '\u2010' : '-';
  }

  covers(character: string): boolean {
    const codePoint = character.codePointAt(0);
    return codePoint !== undefined && this.#font.hasGlyphForCodePoint(codePoint);
  }

  shaperFor(text: string, ligatures: boolean): Shaper {
    return this.#shaper(scriptOf(text), ligatures);
  }

  #shaper(script: Script, ligatures: boolean): Shaper {
    const key = `${script ?? 'each'} ${ligatures ? 'liga' : ''}`;
    let shaper = this.#shapers.get(key);
    if (!shaper) {
      shaper = new Shaper(this.#font, script ?? undefined, ligatures);
      this.#shapers.set(key, shaper);
    }
    return shaper;
  }
}
