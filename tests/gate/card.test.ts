import { describe, expect, test } from 'vitest';

import { TO_BE_REVEALED } from '../../pipeline/gate/index.js';
import { cardOf, example, exampleWith, say } from '../law/example.js';
import { cardsIn, dayAt, publicAt, seen, shown, shownOne } from './support.js';
import type { CardFront } from '../../schema/index.js';

/** A card of the base set, number 1. */
const card = (front: Partial<CardFront>, words = 'A bell.') =>
  cardOf('crew', 'c001', { number: '1', name: 'Old Pell', ...front }, [say(words)]);

describe('a placeholder', () => {
  test('shows number, public name and announced opening, and nothing else', () => {
    const held = card({
      spoiler: 'spring',
      publicName: 'The lamp tender',
      image: { file: 'art/c001.svg', alt: 'Pell rings the bell' },
      facts: { Berth: 'Bell Sill' },
      texts: { caption: 'He rings it' },
      signers: [{ name: 'Ines Albarran', state: 'signed' }],
      credits: [{ role: 'Model', name: 'Tove Lindqvist' }],
      variation: { of: 'crew/c017', letter: 'b', tell: 'The lamp is lit' },
      shortPrint: 'SP',
      run: 250,
      issued: 'no',
      back: 'hidden-one',
    });
    expect(shownOne(publicAt(20), held)).toEqual({
      state: 'placeholder',
      identity: null,
      number: '1',
      letter: null,
      name: 'The lamp tender',
      level: 0,
      nameLevel: 0,
      opens: dayAt(80),
      revealed: null,
      bio: [],
      bioHeld: false,
      facts: [],
      texts: [],
      image: null,
      signers: [],
      signersLevel: 0,
      credits: [],
      creditsLevel: 0,
      tell: null,
      shortPrint: null,
      run: null,
      layout: null,
      notes: null,
      review: null,
    });
  });

  test('opens at its instant, not a moment before', () => {
    const held = card({ spoiler: 'spring' });
    const [before] = cardsIn(seen(exampleWith(held), { kind: 'public', at: dayAt(80) - 1 }));
    expect(before?.state).toBe('placeholder');
    const after = shownOne(publicAt(80), held);
    expect([after.state, after.name, after.revealed]).toEqual(['shown', 'Old Pell', dayAt(80)]);
  });

  test('without a public name is to be revealed', () => {
    expect(shownOne(publicAt(20), card({ spoiler: 'spring' })).name).toBe(TO_BE_REVEALED);
  });

  const opens = (front: Partial<CardFront>): number | null =>
    shownOne(publicAt(20), card(front)).opens;
  test('under several holds opens with the last of them', () => {
    expect(opens({ spoiler: 'shops', embargo: ['fair'] })).toBe(dayAt(40));
    expect(opens({ spoiler: 'spring', embargo: ['fair'] })).toBe(dayAt(80));
  });
  test('has no opening if one of its holds is not announced or has no date', () => {
    expect(opens({ embargo: ['quiet'] })).toBeNull();
    expect(opens({ spoiler: 'spring', embargo: ['quiet'] })).toBeNull();
    expect(opens({ spoiler: 'spring', embargo: ['undated'] })).toBeNull();
  });
  test('under an embargo without a date never opens', () => {
    expect(shownOne(publicAt(10_000), card({ embargo: ['undated'] })).state).toBe('placeholder');
  });
});

describe('a code', () => {
  const codes = (...held: string[]): (readonly [string | null, string])[] =>
    shown(
      publicAt(20),
      ...['SG-1', 'SG-9', 'SG-12'].map((number, index) =>
        cardOf('signatures', `au0${index}`, {
          number,
          name: `Signed by ${index}`,
          publicName: `${9 - index} to come`,
          spoiler: held.includes(number) ? 'spring' : 'open',
        }),
      ),
    ).map(({ number, name }) => [number, name] as const);

  test('is in the order of its number', () => {
    expect(codes()).toEqual([
      ['SG-1', 'Signed by 0'],
      ['SG-9', 'Signed by 1'],
      ['SG-12', 'Signed by 2'],
    ]);
  });
  test('is held with its card, which comes last, in order of public names', () => {
    expect(codes('SG-1', 'SG-9')).toEqual([
      ['SG-12', 'Signed by 2'],
      [null, '8 to come'],
      [null, '9 to come'],
    ]);
  });
  test('placeholders without a number come after cards without one, whatever their names', () => {
    const names = shown(
      publicAt(20),
      cardOf('sketches', 'a', { number: 'none', publicName: '1 oar', spoiler: 'spring' }),
      cardOf('sketches', 'b', { number: 'none', name: '9 lamps' }),
      cardOf('sketches', 'c', { number: 'none', name: '10 lamps' }),
    ).map(({ name }) => name);
    expect(names).toEqual(['9 lamps', '10 lamps', '1 oar']);
  });
});

describe('an absent card', () => {
  test('leaves no trace, in counts neither', () => {
    const open = cardOf('crew', 'c001', { number: '1' });
    const absent = cardOf('crew', 'c002', { number: '2', spoiler: 'finale' });
    const [without, having] = [exampleWith(open), exampleWith(open, absent)];
    expect(seen(having, publicAt(20))).toEqual(seen(without, publicAt(20)));
    expect(seen(having, publicAt(120)).sets[0]?.listed).toBe(2);
  });
  test('is one under an embargo that nobody knows, at every instant', () => {
    expect(shown(publicAt(10_000), card({ embargo: ['nobody-knows'] }))).toEqual([]);
    expect(shown(publicAt(10_000), card({ spoiler: 'nobody-knows' }))).toEqual([]);
  });
  test('is one whatever else holds it', () => {
    expect(shown(publicAt(20), card({ spoiler: 'finale', embargo: ['undated'] }))).toEqual([]);
  });
});

describe('a field that is held longer than its card', () => {
  const fields: readonly (readonly [string, Partial<CardFront>])[] = [
    ['image', { image: { file: 'art/c001.svg', alt: 'A bell' } }],
    ['facts.Berth', { facts: { Berth: 'Bell Sill' } }],
    ['facts.No. of oars', { facts: { 'No. of oars': 'two' } }],
    ['facts', { facts: { Berth: 'Bell Sill' } }],
    ['texts.caption', { texts: { caption: 'He rings it' } }],
    ['signers', { signers: [{ name: 'Ines Albarran', state: 'signed' }] }],
    ['signers.Ines Albarran', { signers: [{ name: 'Ines Albarran', state: 'signed' }] }],
    ['credits', { credits: [{ role: 'Model', name: 'Tove Lindqvist' }] }],
    ['variation', { variation: { of: 'crew/c017', letter: 'b', tell: 'Lit' } }],
    ['shortPrint', { shortPrint: 'SP' }],
    ['run', { run: 250 }],
    ['issued', { issued: 'no' }],
  ];
  test.each(fields)('%s is left out as if it were not there', (field, front) => {
    for (const hold of ['spring', 'finale', 'undated']) {
      const held = card({ ...front, holds: { [field]: hold } });
      expect(shownOne(publicAt(20), held)).toEqual(shownOne(publicAt(20), card({})));
    }
    const lifted = card({ ...front, holds: { [field]: 'spring' } });
    const [told, open] = [lifted, card(front)].map((each) => shownOne(publicAt(80), each));
    expect(withoutLevels(told)).toEqual(withoutLevels(open));
  });

  /** How much a field tells is another matter than whether it is told. */
  const withoutLevels = (value: unknown): unknown =>
    JSON.parse(JSON.stringify(value), (key, part: unknown) =>
      /level$/i.test(key) ? undefined : part,
    );

  test.each(fields.slice(0, 8))('%s tells as much of the story as what held it', (field, front) => {
    const levels = (front: Partial<CardFront>): string[] =>
      JSON.stringify(shownOne(publicAt(80), card(front))).match(/level":2/gi) ?? [];
    expect(levels({ ...front, holds: { [field]: 'spring' } })).toHaveLength(1);
    expect(levels(front)).toHaveLength(0);
  });

  test('a public name tells as much as a name would that stood there', () => {
    const held = card({ spoiler: 'shops', publicName: 'The tender', holds: { name: 'finale' } });
    const named = card({ spoiler: 'shops', name: 'The tender' });
    expect(shownOne(publicAt(40), named).nameLevel).toBe(1);
    expect(shownOne(publicAt(40), held)).toEqual(shownOne(publicAt(40), named));
  });

  test('for others than the public nothing tells more', () => {
    const lifted = card({ facts: { Berth: 'Bell Sill' }, holds: { facts: 'spring' } });
    expect(shownOne({ kind: 'house' }, lifted).facts).toMatchObject([{ level: 0 }]);
  });

  test('one fact of two leaves the other', () => {
    const held = card({
      facts: { Berth: 'Bell Sill', Depth: 'nine' },
      holds: { 'facts.Berth': 'spring' },
    });
    expect(shownOne(publicAt(20), held).facts).toEqual([
      { name: 'Depth', value: 'nine', level: 0 },
    ]);
  });
  test('the alt text alone leaves the picture without one', () => {
    const image = { file: 'art/c001.svg', alt: 'Pell rings the bell' };
    const held = card({ image, holds: { 'image.alt': 'spring' } });
    const source = 'high-water/art/c001.svg';
    expect(shownOne(publicAt(20), held).image).toEqual({ source, alt: '', level: 0 });
    expect(shownOne(publicAt(80), held).image).toEqual({ source, alt: image.alt, level: 2 });
  });
  test('the name shows the public name instead', () => {
    const held = card({ publicName: 'The lamp tender', holds: { name: 'finale' } });
    expect(shownOne(publicAt(20), held).name).toBe('The lamp tender');
    expect(shownOne(publicAt(120), held).name).toBe('Old Pell');
    expect(shownOne(publicAt(20), card({ holds: { name: 'finale' } })).name).toBe(TO_BE_REVEALED);
  });
  test('number and public name too, if somebody holds them', () => {
    const held = card({
      spoiler: 'spring',
      publicName: 'Tender',
      holds: { number: 'undated', publicName: 'undated' },
    });
    const { number, name } = shownOne(publicAt(20), held);
    expect([number, name]).toEqual([null, TO_BE_REVEALED]);
  });
  test('a bio has one mark, whatever is written', () => {
    const held = shownOne(publicAt(20), card({ holds: { bio: 'spring' } }));
    expect([held.bio, held.bioHeld]).toEqual([[], true]);
    const unwritten = cardOf('crew', 'c001', {
      number: '1',
      name: 'Old Pell',
      holds: { bio: 'spring' },
    });
    expect(shownOne(publicAt(20), unwritten)).toEqual(held);
  });
  test('a bio with an absent hold leaves no trace', () => {
    const held = card({ holds: { bio: 'finale' } });
    const none = cardOf('crew', 'c001', { number: '1', name: 'Old Pell' });
    expect(shownOne(publicAt(20), held)).toEqual(shownOne(publicAt(20), none));
  });
});

describe('what the licence lets the site show', () => {
  const full = card({
    image: { file: 'art/c001.svg', alt: 'A bell' },
    facts: { Berth: 'Bell Sill' },
    texts: { caption: 'A caption' },
    credits: [{ role: 'Model', name: 'Tove Lindqvist' }],
    signers: [{ name: 'Ines Albarran', state: 'signed' }],
    holds: {},
  });
  const under = (shows: NonNullable<ReturnType<typeof example>['property']['site']>['shows']) => {
    const plain = exampleWith(full);
    plain.property.site = shows === undefined ? {} : { shows };
    const [only] = cardsIn(seen(plain, publicAt(20)));
    return only;
  };
  test('is nothing by default', () => {
    for (const shows of [undefined, 'none', {}] as const) {
      expect(under(shows)).toMatchObject({
        bio: [],
        facts: [],
        texts: [],
        image: null,
        credits: [],
      });
    }
  });
  test('texts go with the bio, and signers show whatever it says', () => {
    const only = under({ bio: 'full' });
    expect(only).toMatchObject({ facts: [], image: null, credits: [] });
    expect(only?.texts).toHaveLength(1);
    expect(only?.bio).toHaveLength(1);
    expect(only?.signers).toHaveLength(1);
  });
  test('a held bio has no mark where bios do not show', () => {
    const plain = exampleWith(card({ holds: { bio: 'spring' } }));
    plain.property.site = { shows: { bio: 'none' } };
    expect(cardsIn(seen(plain, publicAt(20)))[0]?.bioHeld).toBe(false);
  });
});

test('signers show when they have signed, or will by redemption', () => {
  const states = ['asked', 'contracted', 'signed', 'redemption', 'withdrawn'] as const;
  const signers = states.map((state) => ({ name: state, state }));
  expect(shownOne(publicAt(20), card({ signers })).signers).toEqual([
    { name: 'signed', as: null, redemption: false },
    { name: 'redemption', as: null, redemption: true },
  ]);
});

test('a card that is not issued keeps number and name, and does not count', () => {
  const plain = exampleWith(card({ issued: 'no', facts: { Berth: 'Bell Sill' }, run: 3 }));
  const made = seen(plain, publicAt(20));
  expect(cardsIn(made)[0]).toMatchObject({
    state: 'not issued',
    number: '1',
    name: 'Old Pell',
    bio: [],
    facts: [],
    run: null,
  });
  expect(made.sets[0]?.listed).toBe(0);
});
