import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import {
  NEVER,
  asOf,
  cardHold,
  cardsOf,
  fieldHold,
  identityOf,
  inHands,
  instantOf,
  isIssued,
  isVariation,
  numberOf,
  scheduleOf,
  stepsUntil,
  streetOf,
  subsetHold,
  subsetOf,
  type Card,
  type CardSet,
} from '../../pipeline/model/index.js';
import type { PlanFile, PropertyFile } from '../../schema/index.js';

const LONDON = '+01:00[Europe/London]';
const instant = (text: string) => instantOf(text);

const PROPERTY: PropertyFile = {
  id: 'lake',
  title: 'The Lake',
  zone: 'Europe/London',
  since: `2026-09-01T09:00:00${LONDON}`,
  levels: [
    { id: 'open' },
    { id: 'shops', lift: `2027-04-16T09:00:00${LONDON}` },
    { id: 'spring', lift: `2027-05-14T20:00:00${LONDON}` },
    { id: 'last', lift: 'unset' },
  ],
  embargoes: [
    { id: 'fair', lift: '2027-02-13T10:00:00+00:00[Europe/London]' },
    { id: 'old', lift: `2026-08-01T09:00:00${LONDON}` },
    { id: 'signers', lift: 'unset' },
  ],
  approvals: 'none',
};
const SCHEDULE = scheduleOf(PROPERTY);

const PLAN: PlanFile = {
  id: 'quay',
  title: 'The Quay',
  spoiler: 'open',
  stage: 'writing',
  subsets: [
    { id: 'base', title: 'Base', group: 'base', numbers: { from: 1, to: 3 } },
    {
      id: 'letters',
      title: 'Letters',
      group: 'inserts',
      numbers: 'none',
      spoiler: 'shops',
      embargo: ['fair'],
      ships: `2027-06-05T09:00:00${LONDON}`,
    },
  ],
};

function cardOf(front: Partial<Card['front']>, subset = 'base', id = 'b001'): Card {
  const source = { file: `quay/cards/${subset}/${id}.md`, text: '' };
  return {
    set: 'quay',
    subset,
    id,
    source,
    front: { number: '1', name: 'Pim', spoiler: 'open', ...front },
    bio: [],
  };
}

function setOf(plan: PlanFile, cards: readonly Card[] = []): CardSet {
  return {
    id: plan.id,
    plan: { source: { file: 'quay/plan.yaml', text: '' }, value: plan },
    cards,
    sales: [],
    rosters: new Map(),
    corrections: null,
    art: new Set(),
    unread: new Set(),
  };
}

describe('the hold of a card', () => {
  test('is its own, its subset’s and its set’s', () => {
    expect(cardHold(SCHEDULE, PLAN, cardOf({}))).toStrictEqual({ level: 0, embargoes: [] });
    expect(subsetHold(SCHEDULE, PLAN, 'letters')).toStrictEqual({ level: 1, embargoes: ['fair'] });
    const letter = cardOf({ spoiler: 'spring', embargo: ['signers'] }, 'letters');
    expect(cardHold(SCHEDULE, PLAN, letter)).toStrictEqual({
      level: 2,
      embargoes: ['fair', 'signers'],
    });
    expect(cardHold(SCHEDULE, PLAN, cardOf({ spoiler: 'open' }, 'letters')).level).toBe(1);
    const held: PlanFile = { ...PLAN, spoiler: 'last', embargo: ['old'] };
    expect(cardHold(SCHEDULE, held, letter)).toStrictEqual({
      level: 3,
      embargoes: ['fair', 'old', 'signers'],
    });
  });

  test('of a subset that the plan does not know is that of its set', () => {
    expect(subsetHold(SCHEDULE, { ...PLAN, spoiler: 'spring' }, 'sketches').level).toBe(2);
    expect(subsetOf(PLAN, 'sketches')).toBeUndefined();
  });

  const holds = { image: 'shops', facts: 'spring', 'facts.Berth': 'fair', 'texts.caption': 'last' };

  test.each([
    ['image', 1, []],
    ['name', 0, []],
    ['facts', 2, ['fair']],
    ['facts.Berth', 2, ['fair']],
    ['facts.Depth', 2, []],
    ['texts', 3, []],
    ['texts.caption', 3, []],
    ['texts.motto', 0, []],
    ['constructor', 0, []],
  ])('with `holds`, of %s is level %d and %j', (field, level, embargoes) => {
    const card = cardOf({ holds });
    const hold = cardHold(SCHEDULE, PLAN, card);
    expect(fieldHold(SCHEDULE, hold, card, field)).toStrictEqual({ level, embargoes });
  });

  test('and of a field is never less than the card’s', () => {
    const card = cardOf({ spoiler: 'spring', holds: { image: 'shops' } });
    const hold = cardHold(SCHEDULE, PLAN, card);
    expect(fieldHold(SCHEDULE, hold, card, 'image')).toStrictEqual(hold);
  });
});

describe('in hands', () => {
  const street = {
    uk: `2027-04-16T09:00:00${LONDON}`,
    au: '2027-04-16T09:00:00+10:00[Australia/Sydney]',
  };

  test('is the earliest street date of any region', () => {
    expect(streetOf({ ...PLAN, street })).toBe(instant(street.au));
    expect(streetOf({ ...PLAN, street: street.uk })).toBe(instant(street.uk));
    expect(streetOf(PLAN)).toBe(NEVER);
  });

  test('goes by the card, else its subset, else the set', () => {
    const plan = { ...PLAN, street };
    const own = `2027-07-01T09:00:00${LONDON}`;
    expect(inHands(plan, cardOf({}))).toBe(instant(street.au));
    expect(inHands(plan, cardOf({}, 'letters'))).toBe(instant(`2027-06-05T09:00:00${LONDON}`));
    expect(inHands(plan, cardOf({ ships: own }, 'letters'))).toBe(instant(own));
    expect(inHands(plan, cardOf({ ships: 'unset' }))).toBe(NEVER);
    expect(inHands(PLAN, cardOf({}))).toBe(NEVER);
  });
});

test('a card says what it is', () => {
  expect(identityOf(cardOf({}))).toBe('base/b001');
  expect([isIssued(cardOf({})), isIssued(cardOf({ issued: 'no' }))]).toStrictEqual([true, false]);
  const variation = { of: 'base/b001', letter: 'b', tell: 'The lamp is lit' };
  expect([isVariation(cardOf({})), isVariation(cardOf({ variation }))]).toStrictEqual([
    false,
    true,
  ]);
  expect([numberOf(cardOf({})), numberOf(cardOf({ number: 'none' }))]).toStrictEqual(['1', null]);
  const set = setOf(PLAN, [cardOf({}), cardOf({}, 'letters'), cardOf({}, 'base', 'b002')]);
  expect(cardsOf(set, 'base').map(({ id }) => id)).toStrictEqual(['b001', 'b002']);
});

describe('the steps of time', () => {
  const since = instant(PROPERTY.since);
  const street = `2027-03-01T09:00:00+00:00[Europe/London]`;
  const openSet = setOf({ ...PLAN, street });
  const heldSet = setOf({
    ...PLAN,
    id: 'later',
    spoiler: 'spring',
    street: `2027-05-01T09:00:00${LONDON}`,
  });
  const FAIR = instant('2027-02-13T10:00:00+00:00[Europe/London]');
  const SHOPS = instant(`2027-04-16T09:00:00${LONDON}`);
  const SPRING = instant(`2027-05-14T20:00:00${LONDON}`);
  const MAY = instant(`2027-05-01T09:00:00${LONDON}`);

  test('are since, each lift and the street date of each open set, in order', () => {
    const steps = (at: number) => stepsUntil(PROPERTY, [openSet, heldSet], at);
    expect(steps(since - 1)).toStrictEqual([]);
    expect(steps(since)).toStrictEqual([since]);
    expect(steps(SHOPS - 1)).toStrictEqual([since, FAIR, instant(street)]);
    expect(steps(SHOPS)).toStrictEqual([since, FAIR, instant(street), SHOPS]);
    // While a set is held, that it is in shops is nothing that anybody may see.
    expect(steps(SPRING - 1)).toStrictEqual([since, FAIR, instant(street), SHOPS]);
    expect(steps(SPRING)).toStrictEqual([since, FAIR, instant(street), SHOPS, MAY, SPRING]);
  });

  test('stand once, even where two fall together', () => {
    const same = setOf({ ...PLAN, street: `2027-04-16T09:00:00${LONDON}` });
    const steps = stepsUntil(PROPERTY, [same], SHOPS);
    expect(steps).toStrictEqual([since, FAIR, SHOPS]);
  });

  test('the one at or before an instant is what a view carries', () => {
    const at = fc.integer({ min: since - 1000, max: SPRING + 90_000_000 });
    fc.assert(
      fc.property(at, at, (a, b) => {
        const step = asOf(PROPERTY, [openSet, heldSet], a);
        expect(step === null).toBe(a < since);
        if (step === null) return;
        expect(step).toBeLessThanOrEqual(a);
        expect(asOf(PROPERTY, [openSet, heldSet], step)).toBe(step);
        const steps = stepsUntil(PROPERTY, [openSet, heldSet], a);
        expect(steps).toStrictEqual([...new Set(steps)].sort((x, y) => x - y));
        expect(steps.at(-1)).toBe(step);
        const later = asOf(PROPERTY, [openSet, heldSet], Math.max(a, b));
        expect(later).toBeGreaterThanOrEqual(step);
      }),
      { numRuns: 500 },
    );
  });

  test('of a set that never opens are none', () => {
    const never = setOf({ ...PLAN, spoiler: 'last', street });
    const unknown = setOf({ ...PLAN, spoiler: 'sprung', street });
    const steps = stepsUntil(PROPERTY, [never, unknown], SPRING);
    expect(steps).not.toContain(instant(street));
  });
});
