import fc from 'fast-check';
import { create } from 'fontkit';
import { Blob, Buffer as ShapeBuffer, Face as HarfBuzzFace, Font, shape } from 'harfbuzzjs';
import { beforeAll, describe, expect, it } from 'vitest';
import { decompress } from 'wawoff2';
import {
  featureSet,
  FontError,
  openFace,
  setText,
  type Face,
  type Faces,
  type SetPiece,
  type TextRun,
} from '../../pipeline/typeset/index.js';
import {
  FAMILIES,
  fontBytes,
  facesOf,
  paragraphs,
  plain,
  zoneWith,
  type Family,
} from './support.js';

/** A zone that any string fits on one line of, in which a unit of the font is a thousandth. */
const ENDLESS = zoneWith({ width: 1e6, height: 1e4, size: 100, leading: 100 });

const sameFaces = (face: Face): Faces => ({
  regular: face,
  italic: face,
  bold: face,
  boldItalic: face,
});

/** Font units of a string as it would be set. */
function unitsOf(text: string, face: Face): number {
  const width = setText([[plain(text)]], ENDLESS, sameFaces(face)).lines[0]?.width ?? 0;
  return (width / ENDLESS.size) * face.unitsPerEm;
}

/** The HarfBuzz of harfbuzzjs 1.6.4 as a second opinion on advances, in font units. */
function harfBuzz(bytes: Uint8Array): (text: string) => number {
  const font = new Font(new HarfBuzzFace(new Blob(bytes)));
  const buffer = new ShapeBuffer();
  return (text) => {
    buffer.clearContents();
    buffer.addText(text);
    buffer.guessSegmentProperties();
    shape(font, buffer);
    // A font that was not read gives glyph 0 and no width, and then everything fits.
    expect(buffer.getGlyphInfos().every(({ codepoint }) => codepoint !== 0)).toBe(true);
    return buffer.getGlyphPositions().reduce((sum, { xAdvance }) => sum + xAdvance, 0);
  };
}

/** Strings of one to six words of running text, and every pair of letters, a space between or none. */
function strings(count: number): readonly string[] {
  const words = paragraphs(200, 600).slice(0, 300).join(' ').split(' ');
  const running = words.map((_, at) => words.slice(at, at + 1 + (at % 6)).join(' '));
  const letters = Array.from('AVTWYLfijrtz.,-"17o');
  const pairs = letters.flatMap((a) => letters.flatMap((b) => [`${a}${b}`, `${a} ${b}`]));
  return [...new Set([...pairs, ...running])].slice(0, count);
}

describe('advance widths', () => {
  it.each([
    ['source-serif-4', 2_500],
    ['source-sans-3', 2_500],
    ['eb-garamond', 2_500],
    ['alegreya', 2_500],
  ] as const)('equal those of HarfBuzz: %s, %d strings', async (family, count) => {
    const unpacked = await decompress(fontBytes(family, '400-normal', 'woff2'));
    const face = openFace(unpacked, family);
    const theirs = harfBuzz(unpacked);
    const tried = strings(count);
    expect(tried).toHaveLength(count);
    const off = tried.filter((text) => {
      const want = theirs(text);
      return want <= 0 || Math.abs(unitsOf(text, face) - want) > 1e-6;
    });
    expect(off).toEqual([]);
  });

  it.each(FAMILIES)('are the same for the .woff and the .woff2 file: %s', async (family) => {
    const unpacked = openFace(await decompress(fontBytes(family, '400-normal', 'woff2')), 'woff2');
    const packed = openFace(fontBytes(family), 'woff');
    for (const text of ['AV Ta fi', 'Wye office, 17', 'No. 4—“oh”']) {
      expect(unitsOf(text, packed)).toBeCloseTo(unitsOf(text, unpacked), 6);
    }
  });
});

/** Words that kern, form ligatures and meet their neighbours over spaces. */
const words = fc.oneof(
  fc.constantFrom('AV', 'Ta', 'office', 'f', 'fi', 'To', 'Y.', '"W', 'L’', '17', '—', 'r,', 'Ō'),
  fc.constantFrom(
    'well-known',
    'fly\u00adwheel',
    'a\u00a0V',
    'half\u2009V',
    'Wye',
    'e\u0301t',
    '½',
  ),
  fc.stringMatching(/^[A-Za-z.,’-]{1,9}$/u),
);
const runs = fc.array(
  fc.record({
    text: fc.array(words, { minLength: 1, maxLength: 8 }).map((list) => `${list.join(' ')} `),
    italic: fc.boolean(),
    bold: fc.boolean(),
  }),
  { minLength: 1, maxLength: 4 },
);

describe('what is measured is what is drawn', () => {
  const fonts = new Map<Face, ReturnType<typeof create>>();
  const drawnWidth = (piece: SetPiece, size: number): number => {
    let font = fonts.get(piece.face);
    if (!font) fonts.set(piece.face, (font = create(Buffer.from(piece.face.bytes))));
    if (!('layout' in font)) throw new Error('a collection');
    const run = font.layout(piece.text, featureSet(piece.ligatures));
    const tracked = Math.max(0, run.glyphs.length - 1) * piece.tracking;
    return (run.advanceWidth / font.unitsPerEm) * size + tracked;
  };

  it.each<Family>(['source-serif-4', 'eb-garamond', 'alegreya'])(
    'every piece is as wide as the font library lays it out whole: %s',
    (family) => {
      fc.assert(
        fc.property(
          fc.array(runs, { minLength: 1, maxLength: 2 }),
          fc.constantFrom('left', 'right', 'center', 'justify'),
          fc.constantFrom('line-by-line', 'whole-paragraph'),
          fc.constantFrom('none', 'auto'),
          fc.constantFrom(0, 0, 20, -15),
          fc.integer({ min: 20, max: 90 }),
          (paragraph, align, breaks, hyphens, tracking, width) => {
            const zone = zoneWith({ align, breaks, hyphens, tracking, width });
            const setting = setText(paragraph, zone, facesOf(family));
            for (const line of setting.lines) {
              for (const piece of line.pieces) {
                expect(piece.width).toBeCloseTo(drawnWidth(piece, setting.size), 9);
                expect(piece.ligatures).toBe(tracking === 0);
              }
            }
          },
        ),
        { numRuns: 70 },
      );
    },
  );

  it('kerns over a space, forms ligatures, and lets tracking part them', () => {
    const face = facesOf('source-serif-4').regular;
    const apart = unitsOf('A', face) + face.space * face.unitsPerEm + unitsOf('V', face);
    expect(unitsOf('A V', face)).toBeLessThan(apart);
    const tracked = setText([[plain('fi')]], { ...ENDLESS, tracking: 50 }, sameFaces(face));
    const [piece] = tracked.lines[0]?.pieces ?? [];
    expect(piece?.tracking).toBeCloseTo(5, 9);
    const font = create(Buffer.from(face.bytes));
    if (!('layout' in font)) throw new Error('a collection');
    const apartToo = font.layout('fi', featureSet(false));
    expect([font.layout('fi').glyphs.length, apartToo.glyphs.length]).toEqual([1, 2]);
    const width = (apartToo.advanceWidth / face.unitsPerEm) * 100 + 5;
    expect(tracked.lines[0]?.width).toBeCloseTo(width, 6);
  });

  it('adds up words to pieces and pieces to lines, none over another', () => {
    const run = (text: string, italic = false): TextRun => ({ text, italic, bold: false });
    const text = [
      [
        run('The '),
        run('Patient Heron', true),
        run(', a ferry; “so '),
        run('he', true),
        run('” said.'),
      ],
    ];
    const { lines } = setText(text, zoneWith({ width: 200 }), facesOf('alegreya'));
    const [line] = lines;
    expect(line?.pieces.map((piece) => piece.text)).toEqual([
      'The ',
      'Patient Heron',
      ', a ferry; “so ',
      'he',
      '” said.',
    ]);
    expect(line?.words.map((word) => word.text)).toEqual(
      'The Patient Heron, a ferry; “so he” said.'.split(' '),
    );
    line?.pieces.slice(1).forEach((piece, index) => {
      const before = line.pieces[index];
      expect(piece.x).toBeCloseTo((before?.x ?? 0) + (before?.width ?? 0), 9);
    });
    const last = line?.words.at(-1);
    expect((last?.x ?? 0) + (last?.width ?? 0)).toBeCloseTo(line?.width ?? 0, 9);
  });
});

describe('fonts that cannot be set with', () => {
  let truetype: Uint8Array;
  beforeAll(async () => {
    truetype = await decompress(fontBytes('alegreya', '400-normal', 'woff2'));
  });

  const refusal = (bytes: Uint8Array): string => {
    try {
      openFace(bytes, 'Body');
    } catch (error) {
      if (error instanceof FontError) return error.message;
      throw error;
    }
    return 'opened';
  };

  it('opens TrueType and WOFF 1', () => {
    expect([refusal(truetype), refusal(fontBytes('alegreya'))]).toEqual(['opened', 'opened']);
  });

  it('refuses woff2, collections and other files, and says what to use', () => {
    expect(refusal(fontBytes('alegreya', '400-normal', 'woff2'))).toBe(
      'font Body: woff2 files cannot be embedded in part; use the .woff, .ttf or .otf file',
    );
    expect(refusal(Buffer.from('ttcf\u0000\u0001\u0000\u0000'))).toMatch(
      /a collection holds several/u,
    );
    expect(refusal(Buffer.from('%PDF-1.7'))).toMatch(/not a TrueType, OpenType or WOFF file/u);
    expect(refusal(new Uint8Array(0))).toMatch(/not a TrueType/u);
  });

  it('refuses variable fonts, by their fvar table', () => {
    const variable = Buffer.from(truetype);
    variable.write('fvar', variable.indexOf('gasp', 0, 'latin1'), 'latin1');
    expect(refusal(variable)).toMatch(/a variable font has no fixed widths/u);
  });

  it('refuses a damaged file', () => {
    const without = Buffer.from(truetype);
    without.write('hmtY', without.indexOf('hmtx', 0, 'latin1'), 'latin1');
    expect(refusal(without)).toBe('font Body: the file is damaged: no table hmtx');
    expect(refusal(truetype.subarray(0, 2_000))).toMatch(/the file is damaged/u);
    expect(refusal(fontBytes('alegreya').subarray(0, 5_000))).toMatch(
      /the file is damaged: table/u,
    );
    expect(refusal(fontBytes('alegreya').subarray(0, 60))).toMatch(/not a TrueType/u);
    const spoilt = Buffer.from(fontBytes('alegreya'));
    spoilt.fill(0xa5, 9_000, 9_100);
    expect(refusal(spoilt)).toMatch(/the file is damaged: table/u);
  });
});
