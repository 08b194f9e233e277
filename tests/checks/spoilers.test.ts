import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { sampleWith, type Files } from '../../pipeline/checks/index.js';
import { cardText, changed } from './change.js';
import { lookAt, said } from './look.js';

/** The second card of the sample, which is story card 2 of 2. */
const lamp = (front: string, bio?: string): Files => ({
  'one/cards/base/a2.md': cardText(`number: "2"\nname: The Lamp\nstory: 1/4\n${front}`, bio),
});
const plan = (...changes: readonly (readonly [string, string])[]): Files =>
  changed('one/plan.yaml', changes);

/** The hour before episode 1 is on air, the hour itself, and the first card in hands. */
const BEFORE = '"2027-04-16T19:59:59+01:00[Europe/London]"';
const AT = '"2027-04-16T20:00:00+01:00[Europe/London]"';

describe('early-print', () => {
  test.each([
    ['a card', lamp(`spoiler: later\nships: ${BEFORE}`), 4],
    ['a card under an embargo', lamp('spoiler: open\nembargo: [guest]'), 5],
    ['a field', lamp(`spoiler: open\nships: ${BEFORE}\nholds: { name: later }`), 7],
    ['a span', lamp(`spoiler: open\nships: ${BEFORE}`, 'A [lamp](held:later) burns.'), 8],
    ['a bio held whole', lamp(`spoiler: open\nships: ${BEFORE}\nholds: { bio: later }`), 7],
  ])('is told of %s', (_, files) => {
    const { findings } = lookAt(files);
    expect(findings).toMatchObject([{ rule: 'early-print', card: 'base/a2' }]);
  });

  test.each([
    ['a card in hands at the very second', lamp(`spoiler: later\nships: ${AT}`)],
    ['a card that is in nobody’s hands', lamp('spoiler: last\nembargo: [guest]\nships: unset')],
    [
      'a card that is not issued',
      {
        ...lamp(`spoiler: later\nships: ${BEFORE}\nissued: "no"`),
        ...plan(['base: 2', 'base: 1'], ['is: 3', 'is: 2']),
      },
    ],
    [
      'a set without a street date',
      {
        ...lamp('spoiler: last\nembargo: [guest]'),
        ...plan(['street: "2027-06-05T09:00:00+01:00[Europe/London]"\n', '']),
      },
    ],
  ])('is not told of %s', (_, files) => {
    expect(said(lookAt(files).findings)).toStrictEqual([]);
  });

  test('goes by the earliest street date', () => {
    const street = (day: string): Files =>
      plan([
        'street: "2027-06-05T09:00:00+01:00[Europe/London]"',
        `street: { uk: "2027-06-05T09:00:00+01:00[Europe/London]", au: "${day}T09:00:00+10:00[Australia/Sydney]" }`,
      ]);
    const files = lamp('spoiler: last');
    expect(lookAt({ ...files, ...street('2027-06-06') }).findings).toStrictEqual([]);
    expect(lookAt({ ...files, ...street('2027-06-04') }).findings).toMatchObject([
      { rule: 'early-print', found: 'in hands 4 June 2027, 00:00' },
    ]);
  });

  test('is told of a subset or a set once, and of a card in it that adds to it', () => {
    const set = plan(['spoiler: open', 'spoiler: later'], ['"2027-06-05', '"2027-04-15']);
    expect(lookAt(set).findings).toMatchObject([
      { rule: 'early-print', file: 'one/plan.yaml', line: 3 },
    ]);
    const both = { ...set, ...lamp('spoiler: last') };
    expect(lookAt(both).findings).toMatchObject([
      { rule: 'early-print', card: 'base/a2' },
      { rule: 'early-print', card: null },
    ]);
  });

  test('a card with a day of its own answers for that day', () => {
    const subset = plan(['group: base', `group: base, spoiler: later, ships: ${BEFORE}`]);
    expect(lookAt(subset).findings).toMatchObject([{ rule: 'early-print', card: null }]);
    const sooner = lamp('spoiler: open\nships: "2027-04-01T09:00:00+01:00[Europe/London]"');
    expect(lookAt({ ...subset, ...sooner }).findings).toMatchObject([
      { rule: 'early-print', card: 'base/a2' },
      { rule: 'early-print', card: null },
    ]);
  });

  test('a card that ships before its subset answers for the hold of the subset', () => {
    const files = {
      ...plan(['group: base', 'group: base, spoiler: later']),
      ...lamp(`spoiler: open\nships: ${BEFORE}`),
    };
    expect(lookAt(files).findings).toMatchObject([
      { rule: 'early-print', card: 'base/a2', line: 6 },
    ]);
  });

  const sales = (front: string, words = 'A lamp.'): Files => ({
    'one/sales/s.md': cardText(front, `${words}\n\n© 2027 Lantern & Oar`),
  });

  test.each([
    ['shop', `kind: shop\ngoes: ${BEFORE}\nspoiler: later`],
    ['stage, under an embargo', `kind: stage\ngoes: ${AT}\nspoiler: open\nembargo: [guest]`],
    ['box, whatever day it goes', `kind: box\ngoes: ${BEFORE}\nspoiler: open\nembargo: [guest]`],
  ])('is told of a sales text: %s', (_, front) => {
    expect(lookAt(sales(front)).findings).toMatchObject([
      { rule: 'early-print', file: 'one/sales/s.md', set: 'one', card: null },
    ]);
  });

  test('a shop text waits for the lift, and print does not help it', () => {
    const printed = changed('property.yaml', [
      ['label: Episode 1,', `label: Episode 1, print: "2027-04-16T09:00:00+01:00[Europe/London]",`],
    ]);
    expect(
      lookAt({ ...printed, ...sales(`kind: shop\ngoes: ${BEFORE}\nspoiler: later`) }).findings,
    ).toHaveLength(1);
    expect(
      lookAt({ ...printed, ...sales(`kind: shop\ngoes: ${AT}\nspoiler: later`) }).findings,
    ).toStrictEqual([]);
  });

  test('a span of a sales text is held too', () => {
    expect(
      lookAt(sales(`kind: web\ngoes: ${BEFORE}\nspoiler: open`, 'A [lamp](held:later).')).findings,
    ).toMatchObject([
      { rule: 'early-print', message: 'this held span goes out before it has lifted' },
    ]);
  });
});

/** What these say of facts, words and signers needs sources and statements too. */
const ONLY_HELD = ['held-span'];

describe('held-span', () => {
  test.each([
    ['a field held as long as its card', 'spoiler: later\nholds: { name: later }', undefined],
    ['a field held less', 'spoiler: later\nholds: { name: open }', undefined],
    [
      'a fact held as long as all facts',
      'spoiler: open\nfacts: { A: b }\nholds: { facts: later, facts.A: later }',
      undefined,
    ],
    [
      'one fact less long than all',
      'spoiler: open\nfacts: { A: b }\nholds: { facts.A: later, facts: last }',
      undefined,
    ],
    ['a span inside a held bio', 'spoiler: open\nholds: { bio: later }', 'A [lamp](held:later).'],
    [
      'an embargo that holds the card',
      'spoiler: open\nembargo: [guest]\nships: unset',
      'A [lamp](held:guest).',
    ],
  ])('adds nothing: %s', (_, front, bio) => {
    expect(lookAt(lamp(front, bio), ONLY_HELD).findings).toMatchObject([
      { rule: 'held-span', message: expect.stringContaining('adds nothing') as unknown },
    ]);
  });

  test.each([
    ['a longer level', 'spoiler: later\nholds: { name: last }', undefined],
    [
      'one fact longer than all',
      'spoiler: open\nfacts: { A: b }\nholds: { facts: later, facts.A: last }',
      undefined,
    ],
    [
      'all that can be held',
      'spoiler: open\nimage: { file: art/a.svg }\ntexts: { caption: A }\nsigners: [{ name: A, state: signed }]\ncredits: [{ role: A, name: B }]\nshortPrint: SP\nrun: 5\nholds: { image: later, texts: later, texts.caption: last, signers: later, credits: later, shortPrint: later, run: later }',
      undefined,
    ],
  ])('adds something: %s', (_, front, bio) => {
    const files = { ...lamp(front, bio), 'one/art/a.svg': '<svg/>' };
    expect(said(lookAt(files, ONLY_HELD).findings)).toStrictEqual([]);
  });

  test.each(['image', 'facts', 'signers', 'number', 'publicName', 'spoiler', 'texts.caption'])(
    'there is no field %s to hold',
    (field) => {
      expect(lookAt(lamp(`spoiler: open\nholds: { ${field}: later }`)).findings).toMatchObject([
        { rule: 'held-span', found: field },
      ]);
    },
  );

  test.each([
    ['the first of two sentences', '[A lamp burns.](held:last) Nobody lit it.'],
    ['the second of two', 'Nobody lit it. [A lamp burns.](held:last)'],
    ['one between others', 'It is night. [A lamp burns!](held:last) Nobody lit it.'],
    ['two sentences with emphasis', 'It is night. [A *lamp* burns. Why?](held:last) Nobody asks.'],
    ['a paragraph', 'It is night.\n\n[A lamp burns…](held:last)'],
    ['speech', 'It is night. [“A lamp burns.”](held:last) Nobody asks.'],
    ['after a hard break', 'It is night.\\\n[A lamp burns.](held:last)'],
  ])('whole sentences may leave no trace: %s', (_, bio) => {
    expect(said(lookAt(lamp('spoiler: open', bio), ONLY_HELD).findings)).toStrictEqual([]);
  });

  test.each([
    ['a word', 'A [lamp](held:last) burns.'],
    ['the end of a sentence', 'It is night [and a lamp burns.](held:last)'],
    ['the start of one', '[It is night](held:last) and a lamp burns.'],
    ['after a title', 'They sent for Mr. [Hask. He came.](held:last)'],
    ['after an initial', 'They sent for E. [Hask came.](held:last)'],
    ['without its stop', 'It is night. [A lamp burns](held:last). Nobody lit it.'],
  ])('less may not: %s', (_, bio) => {
    expect(lookAt(lamp('spoiler: open', bio), ONLY_HELD).findings).toMatchObject([
      { rule: 'held-span', message: expect.stringContaining('not whole sentences') as unknown },
    ]);
  });
});

describe('absent-gap', () => {
  const COUNT = 6;

  /** Cards of one range, each under one of the levels of the sample. */
  function ranged(levels: readonly string[]): Files {
    return {
      ...changed('one/plan.yaml', [
        ['prefix: X-, from: 1, to: 1', `prefix: X-, from: 1, to: ${String(levels.length)}`],
        [
          'inserts: 1, all: { title: Everything, of: [base, inserts], is: 3 }',
          `inserts: ${String(levels.length)}`,
        ],
      ]),
      'one/cards/extra/b1.md': null,
      ...Object.fromEntries(
        levels.map((level, at) => [
          `one/cards/extra/c${String(at)}.md`,
          cardText(`number: X-${String(at + 1)}\nname: C\nspoiler: ${level}`),
        ]),
      ),
    };
  }

  test('is found exactly when some instant shows a number above one that leaves no trace', () => {
    const levels = fc.array(fc.constantFrom('open', 'later', 'last'), {
      minLength: COUNT,
      maxLength: COUNT,
    });
    fc.assert(
      fc.property(levels, (chosen) => {
        const firstAbsent = chosen.indexOf('last');
        const gap = firstAbsent >= 0 && chosen.slice(firstAbsent).some((level) => level !== 'last');
        const { findings } = lookAt(ranged(chosen));
        expect(findings.map(({ rule }) => rule)).toStrictEqual(gap ? ['absent-gap'] : []);
      }),
      { numRuns: 40 },
    );
  });

  test('two levels without a trace must end one after the other', () => {
    const property = changed('property.yaml', [['Episode 1, ', 'Episode 1, held: absent, ']]);
    expect(lookAt({ ...property, ...ranged(['open', 'later', 'last']) }).findings).toStrictEqual(
      [],
    );
    expect(lookAt({ ...property, ...ranged(['open', 'last', 'later']) }).findings).toMatchObject([
      { rule: 'absent-gap', message: 'the number X-2 leaves no trace while X-3 shows' },
    ]);
  });

  test('codes tell nothing by what is missing', () => {
    const files = {
      ...ranged(['last', 'open']),
      ...changed('one/plan.yaml', [
        ['{ prefix: X-, from: 1, to: 1 }', '{ codes: [X-1, X-2] }'],
        ['inserts: 1, all: { title: Everything, of: [base, inserts], is: 3 }', 'inserts: 2'],
      ]),
    };
    expect(said(lookAt(files).findings)).toStrictEqual([]);
  });
});

describe('story-order', () => {
  /** The base set with a card for each scene, in the order of the numbers. */
  function told(scenes: readonly number[]): Files {
    return {
      ...plan(
        ['to: 2', `to: ${String(scenes.length)}`],
        ['to: 1/9', 'to: 1/999'],
        [
          'totals: { base: 2, inserts: 1, all: { title: Everything, of: [base, inserts], is: 3 } }',
          '',
        ],
      ),
      ...changed('property.yaml', [
        ['beats:\n  - { at: 1/1, says: The water rises, level: open }\n', ''],
      ]),
      ...Object.fromEntries(
        [...sampleWith({}).keys()]
          .filter((file) => file.includes('/base/'))
          .map((file) => [file, null]),
      ),
      ...Object.fromEntries(
        scenes.map((scene, at) => [
          `one/cards/base/c${String(at)}.md`,
          cardText(
            `number: "${String(at + 1)}"\nname: C\nspoiler: open\nstory: 1/${String(scene)}`,
          ),
        ]),
      ),
    };
  }
  const scenes = fc
    .array(fc.integer({ min: 1, max: 400 }), { minLength: 4, maxLength: 14 })
    .map((list) => [...new Set(list)].sort((a, b) => a - b))
    .filter((list) => list.length >= 4);

  test('finds the one card that was moved away', () => {
    fc.assert(
      fc.property(scenes, fc.nat(), fc.nat(), (sorted, from, to) => {
        const moved = [...sorted];
        const [scene = 0] = moved.splice(from % sorted.length, 1);
        moved.splice(to % sorted.length, 0, scene);
        const { findings } = lookAt(told(moved));
        const distance = Math.abs(moved.indexOf(scene) - sorted.indexOf(scene));
        expect(findings).toHaveLength(distance === 0 ? 0 : 1);
        // Of two neighbours that changed places, either may be said to be out of place.
        if (distance > 1) expect(findings).toMatchObject([{ found: `1/${String(scene)}` }]);
      }),
      { numRuns: 40 },
    );
  });

  test('goes by numbers, not by file names', () => {
    const {
      'one/cards/base/c1.md': second,
      'one/cards/base/c10.md': eleventh,
      ...rest
    } = told([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11]);
    const files = {
      ...rest,
      'one/cards/base/zz.md': second ?? '',
      'one/cards/base/aa.md': eleventh ?? '',
    };
    expect(said(lookAt(files).findings)).toStrictEqual([]);
  });
});
