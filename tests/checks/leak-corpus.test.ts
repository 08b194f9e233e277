import { describe, expect, test } from 'vitest';

import { check } from '../../pipeline/checks/index.js';
import { memoryFolder, readContent } from '../../pipeline/read/index.js';
import { castSpeaking, Dice, DISGUISES, novelSentences, slipIn } from './planted-names.js';

/** Names and forms of the demo's cast that open later than `open`. */
const HELD = [
  'Ysolde Marrack',
  'Ysolde',
  'Magistrate Tern',
  'Osk Ferrant',
  'Marget Lull',
  'Pellam Strood',
  'Barnaby Quent',
  'Widow’s Kettle',
  'Seven Doors',
  'the Eighth Gate',
  'the Ninth Gate',
];
/** Names of the cast that are open. */
const OPEN = ['Odalys', 'Emeric Hask', 'Old Pell', 'Sister Quillon Ash', 'Dorrit', 'Thimble Quay'];

/** Findings of a rule by card: a plain number, "1" being the first text. */
function findingsOn(
  rule: 'leak' | 'secret',
  bios: readonly string[],
): ReadonlyMap<number, readonly string[]> {
  const content = readContent(memoryFolder(castSpeaking(bios)));
  expect(content.cardFiles).toBe(bios.length);
  const unread = content.faults.filter(({ rule }) => rule !== 'copy-markup');
  expect(unread).toStrictEqual([]);
  const { findings } = check(content, { fonts: new Map(), only: [rule] });
  const found = new Map<number, string[]>();
  for (const { card, severity } of findings) {
    const number = Number(/\d+$/.exec(card ?? '')?.[0]);
    found.set(number, [...(found.get(number) ?? []), severity]);
  }
  return found;
}

/** A sentence with names put between its words, none inside another. */
function planted(sentence: string, names: readonly string[], dice: Dice): string {
  const words = sentence.split(' ');
  for (const name of names) words.splice(1 + dice.below(words.length - 1), 0, name);
  return words.join(' ');
}

const SENTENCES = novelSentences(5000);
const PLAIN = 'Nobody who was there that evening said much about it to anyone afterwards.';

describe('names that are planted in sentences', () => {
  const dice = new Dice(1851);
  const plants = Object.entries(DISGUISES).flatMap(([disguise, put]) =>
    HELD.flatMap((name) =>
      [1, 2, 3].map(() => ({
        disguise,
        bio: planted(dice.pick(SENTENCES), [put(name, dice)], dice),
      })),
    ),
  );
  const found = findingsOn(
    'leak',
    plants.map(({ bio }) => bio),
  );

  const table = Object.keys(DISGUISES).map((disguise) => {
    const own = plants.flatMap((plant, at) =>
      plant.disguise === disguise ? [{ bio: plant.bio, hit: found.has(at + 1) }] : [],
    );
    const missed = own.filter(({ hit }) => !hit).map(({ bio }) => bio);
    return { disguise, of: own.length, found: own.length - missed.length, missed };
  });

  test.each(table)('$disguise: $found of $of found', ({ of, found: hits, missed }) => {
    expect(of).toBe(3 * HELD.length);
    expect(hits / of, missed.join('\n')).toBeGreaterThanOrEqual(0.99);
  });
});

test('one letter wrong in a long word of a name: 99 of 100 are found, as errors or warnings', () => {
  const dice = new Dice(1923);
  const slips = HELD.flatMap((name) =>
    Array.from({ length: 12 }, () => slipIn(name, dice)).flatMap((slip) => slip ?? []),
  );
  const found = findingsOn(
    'leak',
    slips.map((slip) => planted(dice.pick(SENTENCES), [slip], dice)),
  );
  const missed = slips.filter((_, at) => !found.has(at + 1));
  expect(slips.length).toBeGreaterThan(80);
  expect(missed.length / slips.length, missed.join(', ')).toBeLessThanOrEqual(0.01);
});

describe('secrets that are planted in sentences', () => {
  const dice = new Dice(1791);
  const content = readContent(memoryFolder(castSpeaking(['Nothing.'])));
  const secrets = content.names?.value.secrets ?? [];
  const plants = Object.entries(DISGUISES).flatMap(([disguise, put]) =>
    secrets.flatMap(({ allOf }) =>
      [1, 2, 3].map(() => {
        const words = allOf.map((group) => dice.pick(group));
        const at = dice.below(words.length);
        const told = words.map((word, index) => (index === at ? put(word, dice) : word));
        return { disguise, bio: planted(PLAIN, told, dice) };
      }),
    ),
  );
  const found = findingsOn(
    'secret',
    plants.map(({ bio }) => bio),
  );
  const missed = plants.filter((_, at) => !found.has(at + 1));

  test(`${String(plants.length - missed.length)} of ${String(plants.length)} are found`, () => {
    expect(plants.length).toBe(Object.keys(DISGUISES).length * secrets.length * 3);
    const told = missed.map(({ disguise, bio }) => `${disguise}: ${bio}`).join('\n');
    expect(missed.length / plants.length, told).toBeLessThanOrEqual(0.01);
  });
});

test('5,000 innocent sentences with open names put in: at most 1 in 100 is suspected', () => {
  const dice = new Dice(7);
  const innocents = SENTENCES.map((sentence) => planted(sentence, [dice.pick(OPEN)], dice));
  for (const rule of ['leak', 'secret'] as const) {
    const found = findingsOn(rule, innocents);
    const suspected = [...found.keys()].map((number) => innocents[number - 1]);
    const share = found.size / innocents.length;
    expect(share, suspected.slice(0, 20).join('\n')).toBeLessThanOrEqual(0.01);
  }
});
