import { readFileSync } from 'node:fs';

import distance from 'damerau-levenshtein';
import { describe, expect, test } from 'vitest';
import { fc } from '@fast-check/vitest';

import { NearWords, editDistance, soundOf, soundsOf } from '../../pipeline/text/index.js';

describe('the code of a sound', () => {
  // Codes of the original NYSIIS (Taft 1970), not cut to six letters: worked examples in common use
  // among implementations, from memory. Where they differ in their last step (Bosch) none is taken.
  test.each([
    ['Worthy', 'WARTY'],
    ['Ogata', 'OGAT'],
    ['Montgomery', 'MANTGANARY'],
    ['Costales', 'CASTAL'],
    ['Tu', 'T'],
    ['Martincevic', 'MARTANCAFAC'],
    ['Catherine', 'CATARAN'],
    ['Katherine', 'CATARAN'],
    ['Katerina', 'CATARAN'],
    ['Johnathan', 'JANATAN'],
    ['Jonathan', 'JANATAN'],
    ['Teresa', 'TARAS'],
    ['Theresa', 'TARAS'],
    ['Jessica', 'JASAC'],
    ['Lapher', 'LAFAR'],
    ['MacArthur', 'MCARTAR'],
    ['Pheenard', 'FANAD'],
    ['Schmittie', 'SNATY'],
    ['Knaqze', 'NAGS'],
    ['Knokno', 'NAN'],
    ['Macaan', 'MCAN'],
    ['Bishop', 'BASAP'],
    ['Lawson', 'LASAN'],
    ['Lynch', 'LYNC'],
    ['Mackenzie', 'MCANSY'],
    ['McLaughlin', 'MCLAGLAN'],
    ['Willis', 'WAL'],
    ['Xavier', 'XAVAR'],
  ])('%s is %s', (word, code) => {
    expect(soundOf(word)).toBe(code);
  });

  test.each([
    ['thrane', 'thrain'],
    ['quillon', 'kwillon'],
    ['ysolde', 'isolde'],
    ['emeric', 'emerick'],
    ['tamsin', 'tamzin'],
    ['pike', 'pyke'],
    ['marrack', 'marak'],
    ['philippa', 'filipa'],
  ])('%s sounds like %s', (one, other) => {
    expect(soundsOf(one).some((code) => soundsOf(other).includes(code))).toBe(true);
  });

  test.each([
    ['dorrit', 'dace'],
    ['odalys', 'emeric'],
    ['sill', 'pell'],
  ])('%s does not sound like %s', (one, other) => {
    expect(soundsOf(one).some((code) => soundsOf(other).includes(code))).toBe(false);
  });
});

describe('edit distance', () => {
  // Damerau 1964; Lowrance and Wagner 1975. The first two are Levenshtein's usual examples.
  test.each([
    ['kitten', 'sitting', 3],
    ['saturday', 'sunday', 3],
    ['CA', 'ABC', 2],
    ['', 'lamp', 4],
  ])('%s to %s is %i', (a, b, edits) => {
    expect(editDistance(a, b)).toBe(edits);
  });

  // npm damerau-levenshtein 1.0.8 is the restricted distance: never less than the unrestricted one,
  // and the same where no letters stand between two that change places.
  test('is the restricted one or less', () => {
    expect(distance('CA', 'ABC').steps).toBe(3);
    const letters = fc.string({ unit: fc.constantFrom('a', 'b', 'c'), maxLength: 7 });
    let less = 0;
    fc.assert(
      fc.property(letters, letters, (a, b) => {
        const restricted = distance(a, b).steps;
        const own = editDistance(a, b);
        if (own < restricted) less += 1;
        expect(own).toBeLessThanOrEqual(restricted);
        expect(own).toBe(editDistance(b, a));
        if (restricted < 3) expect(own).toBe(restricted);
      }),
      { seed: 1975, numRuns: 3000 },
    );
    expect(less).toBeGreaterThan(0);
  });
});

describe('near words', () => {
  const names = [
    ...readFileSync(new URL('../../content/names.yaml', import.meta.url), 'utf8').matchAll(
      /name: ([^,\n]+)/g,
    ),
  ];
  const words = [
    ...new Set(names.flatMap((found) => (found[1] ?? '').toLowerCase().match(/[a-z]{3,}/g) ?? [])),
  ];
  const near = new NearWords();
  for (const word of words) near.add(word);

  test('are all that are within two edits, and none twice', () => {
    const letter = fc.constantFrom(...Array.from('abcdeilnorstu'));
    const slipped = fc
      .tuple(fc.constantFrom(...words), fc.nat(8), letter, fc.nat(8), letter)
      .map(([word, at, one, then, other]) => {
        const once = word.slice(0, at) + one + word.slice(at + 1);
        return once.slice(0, then) + other + once.slice(then);
      });
    fc.assert(
      fc.property(slipped, (typed) => {
        const found = near.near(typed).map(({ word }) => word);
        expect(new Set(found).size).toBe(found.length);
        // The oracle asks each word; two edits are looked for in words of five letters and more.
        const least = words.filter(
          (word) =>
            word !== typed &&
            Math.min(word.length, typed.length) >= 6 &&
            editDistance(word, typed) <= 2,
        );
        expect(found).toEqual(expect.arrayContaining(least));
        const once = words.filter((word) => word !== typed && editDistance(word, typed) === 1);
        expect(new Set(near.close(typed).map(({ word }) => word))).toEqual(new Set(once));
      }),
      { seed: 1964, numRuns: 400 },
    );
  });
});
