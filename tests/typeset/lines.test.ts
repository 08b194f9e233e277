import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { POINTS_PER_MM, setText, TOLERANCE, type SetLine } from '../../pipeline/typeset/index.js';
import type { Zone } from '../../schema/index.js';
import { bold, facesOf, italic, paragraphs, plain, zoneWith } from './support.js';

const faces = facesOf('alegreya');
const bio = paragraphs(200, 600)[5] ?? '';
const linesOf = (text: string, changes: Partial<Zone> = {}): readonly SetLine[] =>
  setText([[plain(text)]], zoneWith(changes), faces).lines;
const shown = (line: SetLine | undefined): string =>
  line?.words.map((word) => word.text).join(' ') ?? '';
const left = 5 * POINTS_PER_MM;
const top = 32 * POINTS_PER_MM;
const width = 53.5 * POINTS_PER_MM;

describe('lines', () => {
  it('hold all words in order, whatever the way to break them', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('left', 'center', 'right', 'justify'),
        fc.constantFrom('line-by-line', 'whole-paragraph'),
        fc.constantFrom('allow', 'avoid'),
        fc.integer({ min: 25, max: 100 }),
        fc.integer({ min: 0, max: 60 }),
        (align, breaks, widows, wide, index) => {
          const text = paragraphs(200, 600)[index] ?? '';
          const lines = linesOf(text, { align, breaks, widows, width: wide });
          const joined = lines
            .map((line) => line.words.map((word) => word.text).join(' '))
            .join(' ');
          expect(joined.replace(/([-—]) /gu, '$1').replace(/ —/gu, '—')).toBe(
            text.replace(/([-—]) /gu, '$1').replace(/ —/gu, '—'),
          );
          for (const line of lines)
            expect(line.width).toBeLessThanOrEqual(line.measure + 2 * TOLERANCE);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('go down by the leading, from the ascender of the face', () => {
    const lines = linesOf(bio);
    lines.forEach((line, index) => {
      expect(line.baseline).toBeCloseTo(top + 1.016 * 6.8 + index * 8.4, 9);
      expect(line.x).toBeCloseTo(left, 9);
    });
  });

  it('stand left, centred, right or on both sides', () => {
    for (const line of linesOf(bio, { align: 'center' })) {
      expect(line.x - left).toBeCloseTo(left + width - line.x - line.width, 9);
    }
    for (const line of linesOf(bio, { align: 'right' })) {
      expect(line.x + line.width).toBeCloseTo(left + width, 9);
    }
    for (const breaks of ['line-by-line', 'whole-paragraph'] as const) {
      const lines = linesOf(bio, { align: 'justify', breaks });
      for (const line of lines.slice(0, -1)) expect(line.width).toBeCloseTo(width, 2);
      expect(lines.at(-1)?.width).toBeLessThan(width * 0.9);
    }
  });

  it('share out what is left over evenly among the spaces of a justified line', () => {
    const [line] = linesOf(bio, { align: 'justify' });
    const [ragged] = linesOf(bio);
    const gained = line?.words.map((word, index) => word.x - (ragged?.words[index]?.x ?? 0)) ?? [];
    const steps = gained.slice(1).map((gain, index) => gain - (gained[index] ?? 0));
    for (const step of steps) expect(step).toBeCloseTo(steps[0] ?? 0, 9);
    expect(steps[0]).toBeGreaterThan(0);
  });

  it('stand at the top, in the middle or at the bottom of the zone', () => {
    const bottomOf = (vertical: 'top' | 'middle' | 'bottom'): [number, number] => {
      const lines = linesOf('One line. Two', { vertical, width: 12 });
      const first = (lines[0]?.baseline ?? 0) - 1.016 * 6.8 - top;
      return [first, top + 24 * POINTS_PER_MM - (lines.at(-1)?.baseline ?? 0) - 0.345 * 6.8];
    };
    expect(bottomOf('top')[0]).toBeCloseTo(0, 9);
    expect(bottomOf('middle')[0]).toBeCloseTo(bottomOf('middle')[1], 9);
    expect(bottomOf('bottom')[1]).toBeCloseTo(0, 9);
  });

  it('part paragraphs by the gap, indent their first lines, and obey hard breaks', () => {
    const text = [[plain('One'), plain('\n'), plain('two'), plain('\n')], [], [plain('Three')]];
    const { lines } = setText(text, zoneWith({ indent: 3, gap: 2.5 }), faces);
    expect(lines.map(shown)).toEqual(['One', 'two', 'Three']);
    expect(lines.map((line) => line.paragraph)).toEqual([0, 0, 1]);
    expect(lines.map((line) => (line.x - left) / POINTS_PER_MM)).toEqual([
      expect.closeTo(3, 9),
      expect.closeTo(0, 9),
      expect.closeTo(3, 9),
    ]);
    expect((lines[2]?.baseline ?? 0) - (lines[1]?.baseline ?? 0)).toBeCloseTo(8.4 + 2.5, 9);
    expect(lines[0]?.measure).toBeCloseTo(width - 3 * POINTS_PER_MM, 9);
  });

  it('collapse white space over the borders of runs', () => {
    const text = [
      [plain('  The\n'), italic(' Patient '), plain(' Heron\t '), bold(' '), plain('')],
    ];
    const { lines } = setText(text, zoneWith(), faces);
    expect(lines[0]?.pieces.map((piece) => piece.text)).toEqual(['The ', 'Patient ', 'Heron']);
  });

  it('take the face of the zone: roman for emphasis in italics, bold for all in a bold one', () => {
    const text = [[plain('a '), italic('b '), bold('c')]];
    const names = (face: NonNullable<Zone['face']>): readonly string[] =>
      setText(text, zoneWith({ face }), faces).lines[0]?.pieces.map((piece) => piece.face.name) ??
      [];
    const [roman, slanted, heavy, both] = [
      '400-normal',
      '400-italic',
      '700-normal',
      '700-italic',
    ].map((cut) => `alegreya ${cut}`);
    expect(names('regular')).toEqual([roman, slanted, heavy]);
    expect(names('italic')).toEqual([slanted, roman, both]);
    expect(names('bold')).toEqual([heavy, both, heavy]);
    expect(names('boldItalic')).toEqual([both, heavy, both]);
  });
});

describe('divided words', () => {
  it('show a hyphen, only where the zone wants them divided', () => {
    const narrow = { width: 12, hyphens: 'auto' } as const;
    const lines = linesOf('Extraordinarily unconcerned', narrow);
    expect(lines.map(shown)).toEqual(['Extraordi-', 'narily un-', 'concerned']);
    expect(lines.map((line) => line.hyphenated)).toEqual([true, true, false]);
    expect(linesOf('Extraordinarily unconcerned', { width: 12 }).map(shown)).toEqual([
      'Extraordinarily',
      'unconcerned',
    ]);
  });

  it('are never names', () => {
    const zone = zoneWith({ width: 12, hyphens: 'auto' });
    const text = [[plain('Extraordinarily unconcerned')]];
    const { lines } = setText(text, zone, faces, { undivided: ['Captain Extraordinarily'] });
    expect(lines.map(shown)[0]).toBe('Extraordinarily');
  });

  it('are divided at soft hyphens in every zone, and the soft hyphen is not drawn', () => {
    const lines = linesOf('Extra\u00adordinarily', { width: 12 });
    expect(lines.map(shown)).toEqual(['Extra-', 'ordinarily']);
    expect(linesOf('Extra\u00adordinarily').map(shown)).toEqual(['Extraordinarily']);
    expect(lines[0]?.pieces.map((piece) => piece.text)).toEqual(['Extra', '-']);
  });
});

describe('widows', () => {
  const last = (text: string, changes: Partial<Zone>): number =>
    linesOf(text, changes).at(-1)?.words.length ?? 0;

  it('are left alone unless the zone avoids them', () => {
    const single = paragraphs(200, 600)
      .slice(0, 400)
      .filter((text) => last(text, {}) === 1);
    expect(single.length).toBeGreaterThan(12);
    for (const text of single.slice(0, 30)) {
      expect(last(text, { widows: 'avoid' })).toBeGreaterThan(1);
      expect(last(text, { widows: 'avoid', breaks: 'whole-paragraph' })).toBeGreaterThan(1);
      expect(last(text, { widows: 'avoid', align: 'justify' })).toBeGreaterThan(1);
    }
  });

  it('stay where two words are wider than the zone', () => {
    const lines = linesOf('One extraordinarily unconcerned', { width: 17, widows: 'avoid' });
    expect(lines.map(shown)).toEqual(['One', 'extraordinarily', 'unconcerned']);
  });
});

describe('what no line may touch', () => {
  /** A cut-out figure at the lower right, a number at the upper left. */
  const avoid = [
    { x: 40, y: 44, width: 30, height: 20 },
    { x: 5, y: 30, width: 8, height: 5 },
  ];

  it.each(['line-by-line', 'whole-paragraph'] as const)('stays clear of lines: %s', (breaks) => {
    for (const align of ['left', 'right', 'justify'] as const) {
      for (const vertical of ['top', 'middle', 'bottom'] as const) {
        const lines = linesOf(bio.slice(0, 200), { avoid, breaks, align, vertical, height: 30 });
        expect(lines.length).toBeGreaterThan(3);
        expect(lines.every((line) => !line.overset)).toBe(true);
        for (const line of lines) {
          const [from, to] = [line.baseline - 1.016 * 6.8, line.baseline + 0.345 * 6.8];
          for (const box of avoid) {
            const clear =
              to <= box.y * POINTS_PER_MM + 1e-9 ||
              from >= (box.y + box.height) * POINTS_PER_MM - 1e-9 ||
              line.x + line.width <= box.x * POINTS_PER_MM + 0.01 ||
              line.x >= (box.x + box.width) * POINTS_PER_MM - 0.01;
            expect(clear).toBe(true);
          }
        }
      }
    }
  });

  it('may take all of a line, which then stays empty and is not counted', () => {
    const band = [{ x: 0, y: 34, width: 70, height: 3 }];
    const whole = setText([[plain(bio)]], zoneWith(), faces);
    const cut = setText([[plain(bio)]], zoneWith({ avoid: band }), faces);
    expect(cut.capacity).toBe(whole.capacity - 2);
    const gap = (cut.lines[1]?.baseline ?? 0) - (cut.lines[0]?.baseline ?? 0);
    expect(gap / 8.4).toBeCloseTo(Math.round(gap / 8.4), 9);
  });

  it('may cover the whole zone: then nothing fits', () => {
    const all = [{ x: 0, y: 0, width: 100, height: 100 }];
    expect(setText([[plain('One')]], zoneWith({ avoid: all }), faces)).toMatchObject({
      capacity: 0,
      overset: 1,
      fits: false,
    });
  });
});

describe('whole paragraph', () => {
  it('evens out ragged lines: the shortest is longer than line by line', () => {
    const shortest = (breaks: 'line-by-line' | 'whole-paragraph'): number =>
      paragraphs(200, 600)
        .slice(0, 40)
        .map((text) =>
          Math.min(
            ...linesOf(text, { breaks })
              .slice(0, -1)
              .map((line) => line.width),
          ),
        )
        .reduce((sum, least) => sum + least, 0);
    expect(shortest('whole-paragraph')).toBeGreaterThan(shortest('line-by-line'));
  });

  it('shrinks spaces by a third at most', () => {
    const natural = faces.regular.space * 6.8;
    const shares = paragraphs(200, 600)
      .slice(0, 40)
      .flatMap((text) => linesOf(text, { breaks: 'whole-paragraph', align: 'justify' }))
      .map((line) => {
        const ragged = linesOf(shown(line), { width: 900 })[0]?.width ?? 0;
        return (ragged - line.width) / natural / Math.max(1, line.words.length - 1);
      });
    expect(Math.max(...shares)).toBeGreaterThan(0.1);
    expect(Math.max(...shares)).toBeLessThan(1 / 3 + 1e-3);
  });

  it('lets a line that is too long stick out rather than lose more of its spaces', () => {
    const long = 'unconcerned\u00a0unconcerned';
    const [line] = linesOf(long, { breaks: 'whole-paragraph', align: 'justify', width: 20 });
    const natural = linesOf(long, { width: 900 })[0]?.width ?? 0;
    expect(natural - (line?.width ?? 0)).toBeCloseTo((faces.regular.space * 6.8) / 3, 9);
  });
});
