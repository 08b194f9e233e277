import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import {
  NEVER,
  OPEN,
  holdNamed,
  instantOf,
  join,
  knows,
  liftOf,
  openingsOf,
  opensLater,
  printOf,
  sayHold,
  scheduleOf,
  statedHold,
  type Hold,
} from '../../pipeline/model/index.js';

const at = (day: string) => `${day}T12:00:00+00:00[UTC]`;
const instant = (day: string) => instantOf(at(day));

const SCHEDULE = scheduleOf({
  levels: [
    { id: 'open' },
    { id: 'shops', label: 'First cards', lift: at('2027-04-16') },
    { id: 'spring', print: at('2027-04-20'), lift: at('2027-05-14') },
    { id: 'finale', lift: at('2027-06-04'), held: 'absent' },
    { id: 'after', lift: 'unset' },
  ],
  embargoes: [
    { id: 'fair', lift: at('2027-02-13'), announce: false },
    { id: 'signers', lift: 'unset', print: at('2027-07-01') },
    { id: 'shop-exclusive', lift: at('2027-08-01'), held: 'placeholder' },
  ],
});

const IDS = ['fair', 'shop-exclusive', 'signers', 'unknown'];
const hold: fc.Arbitrary<Hold> = fc.record(
  { level: fc.nat(4), embargoes: fc.subarray(IDS).map((ids) => ids.toSorted()) },
  { noNullPrototype: true },
);

/** Whether `a` holds at most what `b` holds. */
const within = (a: Hold, b: Hold): boolean => !opensLater(a, b);

describe('what lies in another has both holds', () => {
  test('in either order, in any grouping, and once is enough', () => {
    fc.assert(
      fc.property(hold, hold, hold, (a, b, c) => {
        expect(join(a, b)).toStrictEqual(join(b, a));
        expect(join(join(a, b), c)).toStrictEqual(join(a, join(b, c)));
        expect(join(a, a)).toStrictEqual(a);
        expect(join(a, OPEN)).toStrictEqual(a);
        expect(join(OPEN, a)).toStrictEqual(a);
      }),
      { numRuns: 1000 },
    );
  });

  test('never less than either, and no more than both', () => {
    fc.assert(
      fc.property(hold, hold, hold, (a, b, c) => {
        expect(within(a, join(a, b)) && within(b, join(a, b))).toBe(true);
        if (within(a, c) && within(b, c)) expect(within(join(a, b), c)).toBe(true);
        if (within(a, b)) expect(within(join(a, c), join(b, c))).toBe(true);
        expect(join(a, b).embargoes).toStrictEqual(
          [...new Set([...a.embargoes, ...b.embargoes])].sort(),
        );
        expect(join(a, b).level).toBe(Math.max(a.level, b.level));
      }),
      { numRuns: 1000 },
    );
  });

  test('and opens when the last of them has', () => {
    fc.assert(
      fc.property(hold, hold, (a, b) => {
        expect(liftOf(SCHEDULE, join(a, b))).toBe(
          Math.max(liftOf(SCHEDULE, a), liftOf(SCHEDULE, b)),
        );
        expect(printOf(SCHEDULE, join(a, b))).toBe(
          Math.max(printOf(SCHEDULE, a), printOf(SCHEDULE, b)),
        );
      }),
      { numRuns: 500 },
    );
  });
});

describe('opening later', () => {
  test('is by the list: what opens later than itself, or in a ring, is nothing', () => {
    fc.assert(
      fc.property(hold, hold, hold, (a, b, c) => {
        expect(opensLater(a, a)).toBe(false);
        if (within(a, b) && within(b, a)) expect(a).toStrictEqual(b);
        if (within(a, b) && within(b, c)) expect(within(a, c)).toBe(true);
        expect(opensLater(a, OPEN)).toBe(a.level > 0 || a.embargoes.length > 0);
      }),
      { numRuns: 1000 },
    );
  });

  test.each<[Hold, Hold, boolean]>([
    [{ level: 2, embargoes: [] }, { level: 1, embargoes: ['fair'] }, true],
    [{ level: 1, embargoes: ['fair'] }, { level: 2, embargoes: [] }, true],
    [{ level: 1, embargoes: ['fair'] }, { level: 2, embargoes: ['fair'] }, false],
    [{ level: 0, embargoes: ['fair'] }, { level: 0, embargoes: ['signers'] }, true],
  ])('%j later than %j: %s', (a, b, expected) => {
    expect(opensLater(a, b)).toBe(expected);
  });
});

describe('the schedule', () => {
  const day = (at: number): number | string =>
    Number.isFinite(at) ? new Date(at).toISOString().slice(0, 10) : at;

  test.each([
    ['open', -Infinity, -Infinity, false, true],
    ['shops', '2027-04-16', '2027-04-16', false, true],
    ['spring', '2027-05-14', '2027-04-20', false, true],
    ['finale', '2027-06-04', '2027-06-04', true, false],
    ['after', NEVER, NEVER, false, false],
    ['fair', '2027-02-13', '2027-02-13', false, false],
    ['signers', NEVER, '2027-07-01', false, false],
    ['shop-exclusive', '2027-08-01', '2027-08-01', false, true],
  ])('%s lifts %s, may print %s, absent %s, announced %s', (id, lift, print, absent, announced) => {
    const [opening] = openingsOf(SCHEDULE, holdNamed(SCHEDULE, id)).filter(
      (each) => each.id === id,
    );
    expect(opening).toMatchObject({ absent, announced });
    expect([day(opening?.lift ?? 0), day(opening?.print ?? 0)]).toStrictEqual([lift, print]);
    expect(knows(SCHEDULE, id)).toBe(true);
  });

  test('a level without a lift is never open, unless it is the first', () => {
    const schedule = scheduleOf({ levels: [{ id: 'open' }, { id: 'later' }] });
    expect(schedule.levels.map(({ lift }) => lift)).toStrictEqual([-Infinity, NEVER]);
    expect(schedule.embargoes.size).toBe(0);
  });

  test('the first level has the lift that it states', () => {
    const schedule = scheduleOf({ levels: [{ id: 'open', lift: at('2027-01-01') }] });
    expect(liftOf(schedule, OPEN)).toBe(instant('2027-01-01'));
  });

  test('a label stands for itself where none is given', () => {
    expect(SCHEDULE.levels.map(({ label }) => label)).toStrictEqual([
      'open',
      'First cards',
      'spring',
      'finale',
      'after',
    ]);
  });
});

describe('what nobody knows fails closed', () => {
  test.each<[string, Hold]>([
    ['an id in `holds` or `held:`', holdNamed(SCHEDULE, 'sprung')],
    ['a level', statedHold(SCHEDULE, { spoiler: 'sprung' })],
    ['the level of a name', statedHold(SCHEDULE, { level: 'sprung' })],
    ['an embargo', statedHold(SCHEDULE, { spoiler: 'open', embargo: ['sprung'] })],
    ['a level beyond the list', { level: 5, embargoes: [] }],
    ['a level that is no place in it', { level: NaN, embargoes: [] }],
  ])('%s', (_, unknown) => {
    expect(liftOf(SCHEDULE, unknown)).toBe(NEVER);
    expect(printOf(SCHEDULE, unknown)).toBe(NEVER);
    expect(openingsOf(SCHEDULE, unknown).some(({ absent }) => absent)).toBe(true);
    expect(openingsOf(SCHEDULE, unknown).every(({ announced }) => announced)).toBe(false);
    fc.assert(
      fc.property(hold, (other) => {
        expect(liftOf(SCHEDULE, join(other, unknown))).toBe(NEVER);
      }),
      { numRuns: 20 },
    );
  });

  test('and is not known', () => {
    expect(knows(SCHEDULE, 'sprung')).toBe(false);
    expect(knows(SCHEDULE, 'constructor')).toBe(false);
    expect(liftOf(SCHEDULE, holdNamed(SCHEDULE, 'constructor'))).toBe(NEVER);
  });
});

describe('what a thing states', () => {
  test.each<[Parameters<typeof statedHold>[1], Hold]>([
    [{}, OPEN],
    [{ spoiler: 'open' }, OPEN],
    [{ spoiler: 'spring' }, { level: 2, embargoes: [] }],
    [{ level: 'finale' }, { level: 3, embargoes: [] }],
    [{ embargo: ['signers', 'fair', 'signers'] }, { level: 0, embargoes: ['fair', 'signers'] }],
    [
      { spoiler: 'shops', embargo: ['fair'] },
      { level: 1, embargoes: ['fair'] },
    ],
  ])('%j', (stated, expected) => {
    expect(statedHold(SCHEDULE, stated)).toStrictEqual(expected);
  });

  test('is said in words for the team', () => {
    expect(sayHold(SCHEDULE, { level: 2, embargoes: ['fair', 'x'] })).toBe(
      'spring and embargo fair and embargo x',
    );
  });
});
