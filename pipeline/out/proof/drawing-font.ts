import { create, type Font, type Glyph, type GlyphPosition } from 'fontkit';

/** Runs that are kept: enough for the words that come back on page after page. */
const KEPT = 4000;

/** A shaped string, as the PDF library takes it; it scales the positions in place. */
interface Run {
  readonly glyphs: readonly Glyph[];
  readonly positions: readonly GlyphPosition[];
  readonly advanceWidth: number;
}

type Features = Readonly<Record<string, boolean>>;

/**
 * A font for the PDF library to draw with. The library shapes each string three times, to measure
 * it twice and to write it once; here a string is shaped the first time and remembered.
 */
export function drawingFont(bytes: Uint8Array): Font {
  const font = create(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength));
  if (!('layout' in font)) throw new TypeError('a collection of fonts is no font');
  const shape = font.layout.bind(font);
  const kept = new Map<string, Pick<Run, 'glyphs' | 'positions'>>();
  const layout = (text: string, features: Features): Run => {
    const key = `${features['liga'] === true ? 'liga' : 'none'} ${text}`;
    let run = kept.get(key);
    if (!run) {
      const { glyphs, positions } = shape(text, features);
      run = { glyphs, positions };
      if (kept.size >= KEPT) kept.clear();
      kept.set(key, run);
    }
    return new CopiedRun(run.glyphs, run.positions);
  };
  return Object.assign(font, { layout });
}

class CopiedRun implements Run {
  readonly positions: readonly GlyphPosition[];

  constructor(
    readonly glyphs: readonly Glyph[],
    positions: readonly GlyphPosition[],
  ) {
    this.positions = positions.map((position) => ({ ...position }));
  }

  get advanceWidth(): number {
    return this.positions.reduce((sum, { xAdvance }) => sum + xAdvance, 0);
  }
}
