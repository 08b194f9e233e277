import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import {
  workingDaysAfter,
  workingDaysBefore,
  workingDaysBetween,
} from '../../pipeline/review/index.js';

const EASTER = ['2027-03-26', '2027-03-29'];
const CHRISTMAS = ['2026-12-25', '2026-12-28'];

describe('working days', () => {
  // Computed by hand from a calendar; the holidays are those of England and Wales.
  test.each([
    ['2027-03-15', 10, EASTER, '2027-03-31'],
    ['2026-12-11', 10, CHRISTMAS, '2026-12-29'],
    ['2027-03-19', 1, [], '2027-03-22'],
    ['2027-03-20', 1, [], '2027-03-22'],
    ['2027-03-15', 0, [], '2027-03-15'],
  ])('%s and %i more with %j off: %s', (day, count, holidays, end) => {
    expect(workingDaysAfter(day, count, holidays)).toBe(end);
    expect(workingDaysBetween(day, end, holidays)).toBe(count);
  });

  test('backwards', () => {
    expect(workingDaysBefore('2027-03-31', 10, EASTER)).toBe('2027-03-15');
    expect(workingDaysBefore('2027-03-22', 1, [])).toBe('2027-03-19');
    expect(workingDaysBetween('2027-03-31', '2027-03-15', EASTER)).toBe(-10);
  });

  test('there and back is the same day, from a working day', () => {
    const day = fc.date({
      min: new Date('2026-01-01'),
      max: new Date('2029-01-01'),
      noInvalidDate: true,
    });
    fc.assert(
      fc.property(day, fc.nat(40), (date, count) => {
        const start = workingDaysAfter(date.toISOString().slice(0, 10), 1, EASTER);
        const end = workingDaysAfter(start, count, EASTER);
        expect(workingDaysBefore(end, count, EASTER)).toBe(start);
        expect(workingDaysBetween(start, end, EASTER)).toBe(count);
      }),
    );
  });

  test.each([-1, 0.5])('%d is no count', (count) => {
    expect(() => workingDaysAfter('2027-03-15', count, [])).toThrow(RangeError);
  });
});
