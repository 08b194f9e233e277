import { create, type Font, type Glyph, type GlyphPosition } from 'fontkit';

/** Runs that are kept: all the words of a large set and its sheets. */
const KEPT = 20_000;

/** A shaped string, as the PDF library takes it; it scales the positions in place. */
interface Run {
  readonly glyphs: readonly Glyph[];
  readonly positions: readonly GlyphPosition[];
  readonly advanceWidth: number;
}

type Features = Readonly<Record<string, boolean>>;

/** Kerning and ligatures; `figures` adds figures of one height and one width. */
export function featuresOf(figures: boolean): Features {
  return figures ? FIGURES : WORDS;
}

const WORDS: Features = { kern: true, liga: true };
const FIGURES: Features = { ...WORDS, lnum: true, tnum: true };

/**
 * A font that measures and that the PDF library draws with. A string is shaped the first time and
 * remembered: the library would shape it again at each use, and measuring once more.
 */
export class PrintFont {
  /** What the PDF library is given. */
  readonly drawn: Font;
  readonly #covered: ReadonlySet<number>;
  readonly #shape: Font['layout'];
  readonly #unitsPerEm: number;
  readonly #kept = new Map<string, Pick<Run, 'glyphs' | 'positions'>>();

  /** @param bytes of a TrueType or OpenType file that is not packed. */
  constructor(bytes: Uint8Array) {
    const font = create(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength));
    if (!('layout' in font)) throw new TypeError('a collection of fonts is no font');
    this.#covered = new Set(font.characterSet);
    // Characters may share a glyph, which keeps the one that it was first made for, and that is what
    // the document says. Made here, it does not depend on which text comes first.
    const characters = [...this.#covered].sort((a, b) => rank(a) - rank(b) || a - b);
    for (const character of characters) font.glyphForCodePoint(character);
    this.#shape = font.layout.bind(font);
    this.#unitsPerEm = font.unitsPerEm;
    this.drawn = Object.assign(font, {
      layout: (text: string, features: Features): Run => this.#run(text, features['lnum'] === true),
    });
  }

  /** Whether the font has a glyph for the character. */
  covers(codePoint: number): boolean {
    return this.#covered.has(codePoint);
  }

  /** The width of a string in ems, as it is drawn. */
  ems(text: string, figures: boolean): number {
    const { positions } = this.#shaped(text, figures);
    return widthOf(positions) / this.#unitsPerEm;
  }

  #run(text: string, figures: boolean): Run {
    const { glyphs, positions } = this.#shaped(text, figures);
    return {
      glyphs,
      positions: positions.map((position) => ({ ...position })),
      advanceWidth: widthOf(positions),
    };
  }

  #shaped(text: string, figures: boolean): Pick<Run, 'glyphs' | 'positions'> {
    const key = `${figures ? 'figures' : 'words'} ${text}`;
    const known = this.#kept.get(key);
    if (known) return known;
    const { glyphs, positions } = this.#shape(text, { ...featuresOf(figures) });
    if (this.#kept.size >= KEPT) this.#kept.clear();
    this.#kept.set(key, { glyphs, positions });
    return { glyphs, positions };
  }
}

/** The usual one first of the characters that share a glyph: an apostrophe before a modifier letter. */
function rank(codePoint: number): number {
  if (codePoint < 0x80) return 0;
  return codePoint >= 0x2000 && codePoint < 0x2070 ? 1 : 2;
}

function widthOf(positions: readonly GlyphPosition[]): number {
  return positions.reduce((sum, { xAdvance }) => sum + xAdvance, 0);
}
