import { describe, expect, test } from 'vitest';

import { difference, view } from '../../pipeline/gate/index.js';
import { cardOf, example, exampleWith, say } from '../law/example.js';
import { instantText } from '../law/generate-words.js';
import { releasedOf, viewText } from '../law/outputs.js';
import type { Plain } from '../law/plain.js';
import { HOUSE, cardsIn, dayAt, personAt, publicAt, seen, shown } from './support.js';

/** The example, with a change made to its plan. */
function planned(change: (plan: Plain['sets'][number]['plan']) => unknown): Plain {
  const plain = example();
  for (const { plan } of plain.sets) change(plan);
  return plain;
}

describe('time', () => {
  test('nothing is public before the first public day', () => {
    expect(view(releasedOf(example()), { kind: 'public', at: dayAt(0) - 1 })).toBeNull();
    expect(seen(example(), publicAt(0)).asOf).toBe(dayAt(0));
  });

  test('the view carries the latest step: a lift, or the earliest street date', () => {
    const steps = [0, 4, 5, 6, 10, 39, 40, 130].map((day) => seen(example(), publicAt(day)).asOf);
    expect(steps).toEqual([0, 0, 5, 5, 10, 10, 40, 120].map(dayAt));
  });

  test('the street date of a set that is held is no step', () => {
    const held = planned((plan) => (plan.spoiler = 'shops'));
    expect(seen(held, publicAt(7)).asOf).toBe(dayAt(0));
  });

  test('between two steps nothing changes', () => {
    const at = (instant: number): string =>
      viewText(seen(example(), { kind: 'public', at: instant }));
    expect(at(dayAt(80) - 1)).toBe(at(dayAt(40)));
    expect(at(dayAt(80))).not.toBe(at(dayAt(40)));
  });
});

describe('a set', () => {
  test('that is absent leaves no trace, and lists are in order of ids', () => {
    const plain = example();
    const [first] = plain.sets;
    if (!first) throw new Error('the example has a set');
    const named = (id: string, spoiler: string) => ({
      ...first,
      id,
      plan: { ...first.plan, id, spoiler },
    });
    plain.sets = [named('zebra', 'open'), named('gone', 'finale'), named('ant', 'open')];
    const ids = seen(plain, publicAt(20)).sets.map(({ id }) => id);
    expect(ids).toEqual(['ant', 'zebra']);
  });

  test('that is a placeholder lists its subsets, with placeholders', () => {
    const [set] = seen(
      planned((plan) => (plan.spoiler = 'spring')),
      publicAt(20),
    ).sets;
    const cards = set?.subsets.flatMap((subset) => subset.cards) ?? [];
    expect(new Set(cards.map(({ state }) => state))).toEqual(new Set(['placeholder']));
    expect([set?.parallels, set?.corrections]).toEqual([[], []]);
    expect(set?.subsets.flatMap(({ artists }) => artists)).toEqual([]);
  });

  test('has its street dates by region, the earliest first; its title stands for a short one', () => {
    const [set] = seen(
      planned((plan) => delete plan.short),
      publicAt(20),
    ).sets;
    expect(set?.short).toBe('The Ferrywrights: High Water');
    expect(set?.street).toEqual([
      { region: 'uk', at: dayAt(5) },
      { region: 'au', at: dayAt(6) },
    ]);
    const [one] = seen(
      planned((plan) => (plan.street = instantText(5))),
      publicAt(20),
    ).sets;
    expect(one?.street).toEqual([{ region: null, at: dayAt(5) }]);
  });

  test('counts what it lists, and says nothing of its totals', () => {
    const counted = planned((plan) => {
      plan.totals = { base: 84 };
    });
    expect(seen(counted, publicAt(20))).toEqual(seen(example(), publicAt(20)));
    expect(seen(example(), publicAt(20)).sets[0]?.listed).toBe(4);
  });
});

describe('a subset', () => {
  const ids = (plain: Plain, day: number): string[] =>
    seen(plain, publicAt(day)).sets.flatMap(({ subsets }) => subsets.map(({ id }) => id));

  test('that is absent leaves no trace, in parallels neither', () => {
    const plain = planned((plan) => {
      for (const subset of plan.subsets) if (subset.id === 'crew') subset.spoiler = 'finale';
      plan.parallels?.push({ id: 'plates', title: 'Plates', of: ['crew', 'signatures'] });
    });
    expect(ids(plain, 20)).toEqual(['signatures', 'sketches']);
    const [set] = seen(plain, publicAt(20)).sets;
    expect(set?.parallels.map(({ id, of }) => [id, of])).toEqual([['plates', ['signatures']]]);
    expect(set?.corrections).toEqual([]);
  });

  test('names the artists of its roster who have signed, while it is open', () => {
    const artists = (plain: Plain, day: number): readonly string[] =>
      seen(plain, publicAt(day)).sets.flatMap(({ subsets }) =>
        subsets.flatMap((own) => own.artists),
      );
    expect(artists(example(), 20)).toEqual(['Tove Lindqvist']);
    const held = planned((plan) => {
      for (const subset of plan.subsets) if (subset.roster !== undefined) subset.spoiler = 'spring';
    });
    expect([artists(held, 20), artists(held, 80)]).toEqual([[], ['Tove Lindqvist']]);
  });
});

test('a held parallel is left out, and its copies are never told', () => {
  const held = planned((plan) => {
    plan.parallels = [
      { id: 'lamplit', title: 'Lamplit', of: ['crew'], copies: 300, embargo: ['fair'] },
    ];
  });
  expect(seen(held, publicAt(9)).sets[0]?.parallels).toEqual([]);
  expect(seen(held, publicAt(10)).sets[0]?.parallels).toEqual([
    { id: 'lamplit', title: 'Lamplit', of: ['crew'], run: null, tell: null, revealed: dayAt(10) },
  ]);
});

test('a correction shows with its card, and not before', () => {
  const told = (day: number): readonly (string | null)[] =>
    seen(example(), publicAt(day)).sets.flatMap((set) =>
      set.corrections.map(({ number }) => number),
    );
  expect(told(20)).toEqual(['1']);
  expect(told(120)).toEqual(['48', '1']);
});

test('cards are in the order of their numbers, a variation after its parent', () => {
  const letter = (of: string) => ({ of, letter: 'b', tell: 'Lit' });
  const numbers = shown(
    publicAt(20),
    cardOf('crew', 'a', { number: '10' }),
    cardOf('crew', 'b', { number: '9', variation: letter('crew/c') }),
    cardOf('crew', 'c', { number: '9' }),
    cardOf('crew', 'd', { number: '9', spoiler: 'spring' }),
  ).map(({ number, letter: own, state }) => `${number ?? ''}${own ?? ''} ${state}`);
  expect(numbers).toEqual(['9 shown', '9b shown', '9 placeholder', '10 shown']);
});

describe('a person', () => {
  const states = (plain: Plain, id: string, day = 20): string[] =>
    cardsIn(seen(plain, personAt(plain, id, day))).map(
      ({ identity, state }) => `${identity ?? ''} ${state}`,
    );

  test('sees what they are cleared for, with its identity, and no more', () => {
    expect(states(example(), 'amara')).toEqual([
      'crew/c001 shown',
      'crew/c002 shown',
      'crew/c003 not issued',
      'crew/c004 shown',
      'signatures/au01 shown',
    ]);
    const made = seen(example(), personAt(example(), 'amara', 20));
    expect(made.person).toBe('Amara Linde');
    expect(cardsIn(made).flatMap(({ notes }) => notes ?? [])).toEqual([]);
  });

  test('knows the embargoes they know, and no level by that', () => {
    const plain = exampleWith(
      cardOf('crew', 'c001', { number: '1', embargo: ['undated'] }),
      cardOf('crew', 'c002', { number: '2', spoiler: 'spring' }),
    );
    for (const person of plain.people.people) delete person.sees;
    for (const person of plain.people.people) person.knows = ['undated', 'spring'];
    expect(states(plain, 'orrin')).toEqual(['crew/c001 shown', 'crew/c002 placeholder']);
  });

  test('who sees whom a card depicts is sent those cards alone', () => {
    expect(states(example(), 'orrin')).toEqual(['crew/c001 shown']);
  });

  test('is not sent a card whose picture is held: that it is sent would tell whom it depicts', () => {
    const image = { file: 'art/c001.svg', depicts: ['Ines Albarran'] };
    const plain = exampleWith(
      cardOf('crew', 'c001', { number: '1', image, spoiler: 'spring' }),
      cardOf('crew', 'c002', { number: '2', image, holds: { image: 'spring' } }),
      cardOf('crew', 'c003', { number: '3', image }),
    );
    expect(states(plain, 'orrin')).toEqual(['crew/c003 shown']);
  });

  test('gets the layouts of the cards they see, and no others', () => {
    const plain = exampleWith(
      cardOf('crew', 'c001', { number: '1' }),
      cardOf('crew', 'c002', { number: '2', spoiler: 'finale', back: 'hidden-one' }),
      cardOf('crew', 'c003', { number: '3', embargo: ['fair'], back: 'hidden-one' }),
    );
    const layouts = (id: string, day: number): string[] => [
      ...seen(plain, personAt(plain, id, day)).layouts.keys(),
    ];
    expect(layouts('amara', 5)).toEqual(['standard']);
    expect(layouts('amara', 10)).toEqual(['hidden-one', 'standard']);
    expect([...seen(plain, publicAt(10)).layouts.keys()]).toEqual([]);
  });
});

test('the house sees all of it, with what the team needs to know', () => {
  const made = seen(example(), HOUSE);
  expect(made.asOf).toBeNull();
  expect(made.highest).toBe('Later episodes');
  expect(cardsIn(made).map(({ state }) => state)).not.toContain('placeholder');
  expect(cardsIn(made).find(({ number }) => number === '48')?.notes).toEqual({
    hold: 'finale',
    level: 'Later episodes',
    lift: dayAt(120),
    inHands: dayAt(5),
    depicts: [],
    state: 'draft',
    writer: null,
    remark: null,
    why: null,
  });
});

test('the highest level counts subsets, parallels, fields and spans too', () => {
  const open = (change: (plain: Plain) => unknown): string | null => {
    const plain = exampleWith(cardOf('crew', 'c001', { number: '1' }, [say('A bell.')]));
    change(plain);
    return seen(plain, HOUSE).highest;
  };
  const [set] = [(plain: Plain) => plain.sets[0]];
  expect(open(() => null)).toBe('Known from the trailers');
  expect(open((plain) => set(plain)?.plan.subsets.map((own) => (own.spoiler = 'shops')))).toBe(
    'First cards',
  );
  expect(open((plain) => set(plain)?.plan.parallels?.map((own) => (own.spoiler = 'spring')))).toBe(
    'Episodes 4 to 7',
  );
  expect(
    open((plain) => set(plain)?.cards.map((own) => (own.front.holds = { bio: 'finale' }))),
  ).toBe('Later episodes');
  expect(
    open((plain) => set(plain)?.cards.map((own) => own.bio[0]?.push(say('Gone.', 'finale')))),
  ).toBe('Later episodes');
});

describe('the difference of two views', () => {
  test('is the cards that changed, and new titles', () => {
    const plain = planned((plan) => {
      for (const subset of plan.subsets) if (subset.id === 'sketches') subset.spoiler = 'finale';
    });
    const { cards, titles } = difference(seen(plain, publicAt(79)), seen(plain, publicAt(120)));
    expect(
      cards.map(({ subset, before, after }) => [
        subset,
        before?.state,
        after?.state,
        after?.number,
      ]),
    ).toEqual([
      ['crew', 'shown', 'shown', '1'],
      ['crew', 'placeholder', 'shown', '2'],
      ['crew', 'shown', 'shown', '4'],
      ['crew', undefined, 'shown', '48'],
    ]);
    expect(titles).toEqual(['The Ferrywrights: High Water: Sketch Cards']);
  });

  test('is nothing between a view and itself', () => {
    const made = seen(example(), publicAt(20));
    expect(difference(made, made)).toEqual({ cards: [], titles: [], names: [] });
  });

  test('does not take a card for changed because another came before it', () => {
    const twins = ['x', 'y'].map((id) =>
      cardOf('sketches', id, { number: 'none', publicName: 'A sketch', spoiler: 'spring' }),
    );
    const early = cardOf('crew', 'c001', { number: '1', spoiler: 'finale' });
    const before = seen(exampleWith(...twins), publicAt(20));
    const after = seen(
      exampleWith(...twins, { ...early, front: { ...early.front, spoiler: 'open' } }),
      publicAt(20),
    );
    expect(difference(before, after).cards.map(({ subset }) => subset)).toEqual(['crew']);
  });
});
