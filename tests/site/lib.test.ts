import { fc, test } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import { contrast, readableOn, rgbOf } from '../../site/_lib/colour.js';
import { day, moment, plainDay } from '../../site/_lib/dates.js';
import { markup } from '../../site/_lib/markup.js';
import { groupName, listed, runWords, series } from '../../site/_lib/words.js';

const colour = fc
  .integer({ min: 0, max: 0xffffff })
  .map((value) => `#${value.toString(16).padStart(6, '0')}`);

describe('contrast', () => {
  // WCAG 2.2, "contrast ratio" and "relative luminance"; the greys are those known to lie just
  // beside the limits of 4.5 and 3.
  it.each([
    ['#000000', '#ffffff', 21],
    ['#777777', '#ffffff', 4.478],
    ['#767676', '#ffffff', 4.542],
    ['#949494', '#ffffff', 3.034],
  ])('of %s and %s is %d', (a, b, ratio) => {
    expect(contrast(rgbOf(a), rgbOf(b))).toBeCloseTo(ratio, 2);
    expect(contrast(rgbOf(b), rgbOf(a))).toBeCloseTo(ratio, 2);
  });

  test.prop([colour, fc.constantFrom('#e9efee', '#182830'), fc.constantFrom(4.6, 7.1)])(
    'of an accent is enough on either ground, and what is enough stays as it is',
    (accent, ground, enough) => {
      const made = readableOn(accent, ground, enough);
      expect(contrast(rgbOf(made), rgbOf(ground))).toBeGreaterThanOrEqual(enough);
      if (contrast(rgbOf(accent), rgbOf(ground)) >= enough) expect(made).toBe(accent);
    },
  );
});

describe('markup', () => {
  const entities: Readonly<Record<string, string>> = {
    '&amp;': '&',
    '&lt;': '<',
    '&gt;': '>',
    '&quot;': '"',
    '&#39;': "'",
  };

  test.prop([fc.string({ unit: fc.constantFrom('<', '>', '&', '"', "'", 'a', ';', '#') })])(
    'escapes whatever is put in, so that it reads as it was',
    (text) => {
      const made = markup`${text}`.text;
      expect(made).not.toMatch(/[<>"']/);
      expect(made.replace(/&[^;]*;/g, (entity) => entities[entity] ?? '?')).toBe(text);
    },
  );

  it('takes markup as it is, joins lists, and leaves out what is not there', () => {
    expect(markup`<p>${[markup`<b>${'&'}</b>`, ' ', 7]}${null}${undefined}${false}</p>`.text).toBe(
      '<p><b>&amp;</b> 7</p>',
    );
  });
});

describe('dates', () => {
  // Offsets of the zones on these days: IANA time zone data.
  it.each([
    ['2027-04-16T23:30:00+01:00[Europe/London]', 'Europe/London', '16 April 2027, 23:30', 'London'],
    [
      '2027-04-16T23:30:00+01:00[Europe/London]',
      'Australia/Sydney',
      '17 April 2027, 08:30',
      'Sydney',
    ],
    [
      '2027-01-01T00:00:00+00:00[Europe/London]',
      'America/New_York',
      '31 December 2026, 19:00',
      'New York',
    ],
    ['2027-04-17T00:00:00+01:00[Europe/London]', 'Europe/London', '17 April 2027, 00:00', 'London'],
  ])('of %s in %s read %s', (instant, zone, words, place) => {
    const attribute = instant.replace(/\[.*/, '');
    expect(moment(instant, zone).text).toBe(
      `<time datetime="${attribute}">${words}</time> (${place} time)`,
    );
    expect(day(instant, zone).text).toContain(`>${words.split(',')[0] ?? ''}<`);
  });

  it('without a time read alike', () => {
    expect(plainDay('2026-11-03').text).toBe('<time datetime="2026-11-03">3 November 2026</time>');
  });
});

describe('words', () => {
  it('count what is listed', () => {
    expect([0, 1, 2, 1234].map(listed)).toEqual([
      '0 cards listed',
      '1 card listed',
      '2 cards listed',
      '1,234 cards listed',
    ]);
    expect([1, 84].map(runWords)).toEqual(['one of one', '84 copies']);
  });

  it('name groups and series', () => {
    expect(['base', 'box-toppers'].map(groupName)).toEqual(['Base set', 'Box toppers']);
    expect([[], ['a'], ['a', 'b'], ['a', 'b', 'c']].map(series)).toEqual([
      '',
      'a',
      'a and b',
      'a, b and c',
    ]);
  });
});
