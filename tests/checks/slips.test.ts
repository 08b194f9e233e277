import { describe, expect, test } from 'vitest';

import { findingsOn, HELD } from './planted-names.js';
import { slipsOf } from './slips.js';

/** Without its article: a slip in that leaves the name as it is. */
const NAMES = HELD.map((name) => name.replace(/^the /, ''));
const WAYS: readonly (readonly [says: string, bio: (name: string) => string])[] = [
  ['inside a sentence', (name) => `In the evening ${name} went home.`],
  ['in capitals', (name) => `In the evening ${name.toUpperCase()} went home.`],
  ['in small letters at the start of a sentence', (name) => `So. ${name.toLowerCase()} went.`],
  ['at the start, as it is', (name) => `So it went. ${name} did not.`],
];

describe('one letter wrong, at every place of every name, in each of the four kinds', () => {
  test.each(WAYS)('%s', (_, bio) => {
    const slips = NAMES.flatMap(slipsOf);
    expect(slips.length).toBeGreaterThan(600);
    const findings = findingsOn(
      ['leak'],
      slips.map((slip) => ({ bio: bio(slip) })),
    );
    const missed = slips.filter((_slip, at) => (findings[at] ?? []).length === 0);
    expect(missed).toStrictEqual([]);
  });

  test('is a warning, where no other word of the name tells it by itself', () => {
    const slips = ['Ysolde', 'Seven Doors', 'Ninth Gate', 'Pellam Strood']
      .flatMap(slipsOf)
      // A plural or a possessive is the name itself.
      .filter((slip) => !/^(Ninth|Pellam) /.test(slip) || !/ (Gate|Strood)$/.test(slip));
    const findings = findingsOn(
      ['leak'],
      slips.map((slip) => ({ bio: `In the evening ${slip} went home.` })),
    );
    const sure = slips.filter((_, at) => (findings[at] ?? []).includes('error'));
    expect(sure).toStrictEqual([]);
  });

  test('of an open name does not hide a held one that begins in it', () => {
    // "in Magistrate" is one letter away from "Tin Magistrate".
    const bios = ['He met in Magistrate Tern a friend.', 'In Magistrate Tern he met a friend.'];
    expect(
      findingsOn(
        ['leak'],
        bios.map((bio) => ({ bio })),
      ),
    ).toStrictEqual([['error'], ['error']]);
  });
});
