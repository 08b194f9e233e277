import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import {
  fingerprints,
  rollingHashes,
  RUN,
  searchRuns,
  sharedMarks,
  winnow,
} from '../../pipeline/audit/fingerprint.js';
import { fold, letters } from '../../pipeline/audit/fold.js';

/** Few letters, so that grams come again and hashes are alike by right. */
const dull = (least: number, most: number): fc.Arbitrary<string> =>
  fc.string({ unit: fc.constantFrom('a', 'b', 'c'), minLength: least, maxLength: most });

const LETTERS = fc.constantFrom('a', 'd', 'e', 'h', 'n', 'o', 'r', 's', 't', 'u');

/** Letters without order, the same in every run. */
function noise(length: number): string {
  let state = 1;
  return Array.from({ length }, () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return 'abcdefghijklmnopqrstuvwxyz'.charAt((state >>> 16) % 26);
  }).join('');
}

/** Two different runs of 25 letters that have one hash: among 200 000 there are about five pairs. */
function twins(text: string): readonly [string, string] {
  const seen = new Map<number, number>();
  for (const [at, hash] of rollingHashes(text, 25).entries()) {
    const before = seen.get(hash);
    if (before !== undefined) return [text.slice(before, before + 25), text.slice(at, at + 25)];
    seen.set(hash, at);
  }
  throw new Error('no two hashes are alike');
}

describe('winnowing', () => {
  // Schleimer, Wilkerson and Aiken, "Winnowing", SIGMOD 2003, figure 2: text, letters, the 17 hashes
  // of its 5-grams, and the fingerprints with their places for windows of 4.
  it('takes the fingerprints of the worked example of its paper', () => {
    expect(letters('A do run run run, a do run run')).toBe('adorunrunrunadorunrun');
    expect(rollingHashes('adorunrunrunadorunrun', 5)).toHaveLength(17);
    const hashes = [77, 74, 42, 17, 98, 50, 17, 98, 8, 88, 67, 39, 77, 74, 42, 17, 98];
    expect(winnow(hashes, 4).map(({ hash, at }) => [hash, at])).toEqual([
      [17, 3],
      [17, 6],
      [8, 8],
      [39, 11],
      [17, 15],
    ]);
  });

  it('keeps one of every window, the rightmost of the least', () => {
    const hashes = fc.array(fc.nat(9), { minLength: 1, maxLength: 60 });
    fc.assert(
      fc.property(hashes, fc.integer({ min: 1, max: 9 }), (all, window) => {
        const starts = Math.max(1, all.length - window + 1);
        const places = Array.from({ length: starts }, (_, start) => {
          const seen = all.slice(start, start + window);
          return start + seen.lastIndexOf(Math.min(...seen));
        });
        expect(winnow(all, window).map(({ at }) => at)).toEqual([...new Set(places)]);
      }),
    );
  });

  // The paper, section 3.2: the density on random text is 2 / (w + 1); here w = 16.
  it('keeps as many fingerprints of a long text as theory has it', () => {
    const text = noise(60_000);
    expect(fingerprints(text).length / text.length).toBeCloseTo(2 / 17, 2);
  });

  it('gives a gram the same hash wherever it stands', () => {
    fc.assert(
      fc.property(dull(5, 5), dull(0, 40), dull(0, 40), (gram, before, after) => {
        const [alone] = rollingHashes(gram, 5);
        expect(rollingHashes(before + gram + after, 5)[before.length]).toBe(alone);
      }),
    );
  });
});

describe('a run that two texts share', () => {
  it('of 40 letters always shares a fingerprint, and every shared one is a true gram', () => {
    fc.assert(
      fc.property(
        fc.tuple(dull(0, 60), dull(0, 60), dull(0, 60), dull(0, 60)),
        fc.string({ unit: LETTERS, minLength: 40, maxLength: 40 }),
        ([before, after, ahead, behind], run) => {
          const left = before + run + after;
          const right = ahead + run + behind;
          const shared = sharedMarks(left, right);
          const inside = shared.filter(
            (mark) =>
              mark.left >= before.length &&
              mark.right - mark.left === ahead.length - before.length &&
              mark.left + 25 <= before.length + 40,
          );
          expect(inside).not.toEqual([]);
          for (const mark of shared) {
            expect(left.slice(mark.left, mark.left + 25)).toBe(
              right.slice(mark.right, mark.right + 25),
            );
          }
        },
      ),
    );
  });

  it('is found if and only if it has 40 letters', () => {
    expect(RUN).toBe(40);
    const run = fc.string({ unit: LETTERS, minLength: 30, maxLength: 50 });
    fc.assert(
      fc.property(run, (shared) => {
        const [found] = searchRuns([`x${shared}x`])(fold(`yz${shared}y`));
        expect(found).toEqual(
          shared.length < 40 ? undefined : { text: 0, from: 1, to: 1 + shared.length, at: 2 },
        );
      }),
      { numRuns: 300 },
    );
  });

  it('is none where only the hashes are alike', () => {
    const text = noise(200_000);
    const [one, other] = twins(text);
    expect(one).not.toBe(other);
    expect(fingerprints(one)).toEqual(fingerprints(other));
    expect(sharedMarks(one, other)).toEqual([]);
    // With the same letters after it, chosen so that both texts keep just the hash that is alike.
    const keepsIt = (whole: string): boolean => fingerprints(whole).every(({ at }) => at === 0);
    const tail = Array.from({ length: 9000 }, (_, at) => text.slice(at * 15, at * 15 + 15)).find(
      (after) => keepsIt(one + after) && keepsIt(other + after),
    );
    expect(tail).toHaveLength(15);
    expect(searchRuns([one + String(tail)])(fold(other + String(tail)))).toEqual([]);
  });

  it('is the longest, and names the text it stands in', () => {
    const told = 'thelakecanfallaswellasriseiopenedthegatebyafingeranditdid';
    const search = searchRuns(['qqqqq', `zz${told}`, told.slice(0, 39)]);
    expect(search(fold(`w${told}${told}`))).toEqual([
      { text: 1, from: 2, to: 59, at: 1 },
      { text: 1, from: 2, to: 59, at: 58 },
    ]);
  });
});

describe('the letters of a text', () => {
  it.each([
    ['The Ninth Gate, by a finger!', 'theninthgatebyafinger'],
    ['caf\u00e9 cafe\u0301', 'cafecafe'],
    ['soft\u00adly zero\u200bwidth bi\u202edi\u2066', 'softlyzerowidthbidi'],
    ['\ufb01nger \uff47ate', 'fingergate'],
    ['filler\u3164\u115f', 'filler'],
    ['ΟΔΟΣ. ΟΔΟΣΑ', 'οδοσοδοσα'],
    ['line\r\nend\t1\u00bd', 'lineend112'],
  ])('of %j are %s', (text, expected) => {
    expect(letters(text)).toBe(expected);
  });
});
