import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import {
  adjustmentRatio,
  badness,
  lineDemerits,
  optimumBreaks,
  PLAIN_RULES,
  type BreakPoints,
} from '../../pipeline/typeset/optimum.js';
import { breakPointsOf, itemsOf, SETTINGS, type ItemBreaks, type TexSetting } from './items.js';

/** Text of the worked example; `~` marks where it may be divided. The Grimms' tale, public domain. */
const FROG_KING = `In olden times when wishing still helped one, there lived a king whose daugh~ters
were all beau~ti~ful; and the young~est was so beau~ti~ful that the sun it~self, which has seen so
much, was aston~ished when~ever it shone in her face. Close by the king's castle lay a great dark
for~est, and un~der an old lime-tree in the for~est was a well, and when the day was very warm, the
king's child went out into the for~est and sat down by the side of the cool foun~tain; and when she
was bored she took a golden ball, and threw it up on high and caught it; and this ball was her
fa~vorite play~thing.`
  .replace(/\s+/gu, ' ')
  .replaceAll('~', '\u00ad');

/** The paper's own demerits (its alpha and gamma are 3000; from memory), TeX's tolerance. */
const PAPER_RULES = {
  ...PLAIN_RULES,
  linePenalty: 1,
  adjacent: 3_000,
  doubleHyphen: 3_000,
  finalHyphen: 0,
  final: false,
};

/** Demerits of all lines together, worked out anew; Infinity where a line is too long. */
function totalDemerits(points: BreakPoints, breaks: readonly number[], measure: number): number {
  let total = 0;
  let before = -1;
  let fit = 1;
  for (const at of breaks) {
    const line = points.line(before, at);
    const short = measure - line.natural;
    if (-short > line.shrink) return Infinity;
    const give = short < 0 ? line.shrink : line.stretch;
    const bad = give === Infinity ? 0 : badness(Math.abs(short), give);
    const next = bad <= 12 ? 1 : short < 0 ? 0 : bad > 99 ? 3 : 2;
    total += lineDemerits(points, before, at, bad, PLAIN_RULES);
    if (Math.abs(next - fit) > 1) total += PLAIN_RULES.adjacent;
    [before, fit] = [at, next];
  }
  return total;
}

function breaksOf(points: BreakPoints, setting: TexSetting, final = true): readonly number[] {
  const rules = { ...PLAIN_RULES, tolerance: setting.tolerance, final };
  const measures = { uniform: true, measure: () => setting.measure };
  return (optimumBreaks(points, measures, rules) ?? []).map(({ at }) => at);
}

/** TeX's answer names the last box of each line; the break is the next place after it. */
function fromTex(points: ItemBreaks, boxes: readonly number[]): readonly number[] {
  return boxes.map((box) => points.places.findIndex((place) => place > box));
}

interface Recorded {
  readonly text: string;
  readonly lines: readonly (readonly number[])[];
}
const recorded = JSON.parse(
  readFileSync(new URL('../oracles/tex-paragraphs.json', import.meta.url), 'utf8'),
) as readonly Recorded[];

describe('whole paragraph', () => {
  it('finds the adjustment ratios of the worked example of Knuth and Plass (1981)', () => {
    const items = itemsOf(FROG_KING);
    items.unshift({ kind: 'box', width: 18 });
    const points = breakPointsOf(items);
    const measures = { uniform: true, measure: () => 390 };
    const chosen = optimumBreaks(points, measures, PAPER_RULES) ?? [];
    // The first eleven lines, as printed; from memory, reproduced by TeX and a second program.
    expect(chosen.slice(0, 11).map(({ ratio }) => ratio.toFixed(3))).toEqual(
      ['0.857', '0.000', '0.280', '1.000', '0.067', '-0.278'].concat([
        '0.536',
        '-0.167',
        '0.700',
        '-0.176',
        '0.357',
      ]),
    );
  });

  it.each(SETTINGS.map((setting, index) => ({ ...setting, index })))(
    'breaks 300 paragraphs as TeX does: $measure wide, tolerance $tolerance',
    ({ index, ...setting }) => {
      expect(recorded).toHaveLength(300);
      const differing = recorded.filter(({ text, lines }) => {
        const points = breakPointsOf(itemsOf(text, setting.stretch, setting.shrink));
        const ours = breaksOf(points, setting);
        const theirs = fromTex(points, lines[index] ?? []);
        expect(totalDemerits(points, ours, setting.measure)).toBeLessThanOrEqual(
          totalDemerits(points, theirs, setting.measure),
        );
        return ours.join() !== theirs.join();
      });
      expect(differing.length).toBeLessThanOrEqual(6);
    },
  );

  it('has the badness of TeX: The Program, section 108', () => {
    // Worked out by hand: 297^3 + 2^17 over 2^18, rounded down, is 100; 148^3 gives 12, and
    // 1288^3, of 4.34 times the stretch, 8151. Above 1290 TeX calls a line infinitely bad.
    expect([badness(0, 5), badness(5, 5), badness(1, 2), badness(9, 2)]).toEqual([
      0, 100, 12, 10000,
    ]);
    expect([badness(1, 0), badness(4.34, 1), badness(4.35, 1)]).toEqual([10000, 8151, 10000]);
  });

  it('is never beaten by another way to break a short paragraph', () => {
    fc.assert(
      fc.property(
        fc.array(fc.stringMatching(/^[a-z]{1,9}\u00ad?[a-z]{1,4}[,.;]?$/u), {
          minLength: 2,
          maxLength: 9,
        }),
        fc.integer({ min: 90, max: 260 }),
        (words, measure) => {
          const points = breakPointsOf(itemsOf(words.join(' ')));
          const setting = { measure, tolerance: 10_000, stretch: 1, shrink: 1 };
          const ours = totalDemerits(points, breaksOf(points, setting, false), measure);
          const inner = points.count - 1;
          for (let chosen = 0; chosen < 2 ** inner; chosen += 1) {
            const other = Array.from({ length: inner }, (_, at) => at)
              .filter((at) => (chosen >> at) % 2 === 1)
              .concat(inner);
            const total = totalDemerits(points, other, measure);
            if (total < ours) throw new Error(`${other.join()} has ${total}, ours has ${ours}`);
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  it('gives up within the tolerance, and sticks out rather than give up in the last pass', () => {
    const points = breakPointsOf(itemsOf('a wwwwwwwwww a'));
    const setting = { measure: 60, tolerance: 10_000, stretch: 1, shrink: 1 };
    expect(breaksOf(points, setting, false)).toEqual([]);
    expect(breaksOf(points, setting, true)).toEqual([0, 1, 2]);
  });

  it('says how far a line is from its measure', () => {
    const line = { natural: 10, stretch: 4, shrink: 2 };
    expect([8, 9, 10, 12, 14].map((measure) => adjustmentRatio(line, measure))).toEqual([
      -1, -0.5, 0, 0.5, 1,
    ]);
    expect(adjustmentRatio({ ...line, stretch: Infinity }, 12)).toBe(0);
    expect(adjustmentRatio({ ...line, shrink: 0 }, 9)).toBe(-Infinity);
  });
});
