import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import {
  NEVER,
  instantOf,
  instantOrNever,
  isZone,
  readInstant,
  sayDay,
  sayInstant,
  writeInstant,
} from '../../pipeline/model/index.js';

/** The same instant in UTC, or why it is refused. */
function read(text: string): string {
  const reading = readInstant(text);
  return reading.ok ? new Date(reading.at).toISOString() : reading.why;
}

const NO_FORM = 'it is not a date and time with offset and [zone]';
const NONE = 'there is no such date, time or zone';
const LEAP = 'leap seconds are not understood';
const NOT_UNDERSTOOD = 'it has an annotation that is not understood';

// RFC 3339 section 5.8, each with a zone added, as instants here have one.
describe('the examples of RFC 3339', () => {
  test.each([
    ['1985-04-12T23:20:50.52Z[UTC]', '1985-04-12T23:20:50.520Z'],
    ['1996-12-19T16:39:57-08:00[America/Los_Angeles]', '1996-12-20T00:39:57.000Z'],
    ['1990-12-31T23:59:60Z[UTC]', LEAP],
    ['1990-12-31T15:59:60-08:00[America/Los_Angeles]', LEAP],
    ['1937-01-01T12:00:27.87+00:20[+00:20]', '1937-01-01T11:40:27.870Z'],
  ])('%s', (text, expected) => {
    expect(read(text)).toBe(expected);
  });
});

// RFC 9557, sections 3 and 4 (examples from memory, each run).
describe('the examples of RFC 9557', () => {
  test.each([
    ['1996-12-19T16:39:57-08:00[America/Los_Angeles][u-ca=gregory]', '1996-12-20T00:39:57.000Z'],
    ['2022-07-08T02:14:07+02:00[Europe/Paris]', '2022-07-08T00:14:07.000Z'],
    [
      '2022-07-08T00:14:07+01:00[Europe/Paris]',
      'its offset is +01:00, but Europe/Paris is at +02:00 then',
    ],
    ['2022-07-08T00:14:07Z[Europe/London]', '2022-07-08T00:14:07.000Z'],
    ['2022-07-08T00:14:07Z[Europe/Paris]', '2022-07-08T00:14:07.000Z'],
    [
      '2022-07-08T00:14:07+00:00[!Europe/London]',
      'its offset is +00:00, but Europe/London is at +01:00 then',
    ],
    ['2022-07-08T01:14:07+01:00[!Europe/London]', '2022-07-08T00:14:07.000Z'],
    ['2022-07-08T01:14:07+01:00[Europe/London][knort=blargel]', '2022-07-08T00:14:07.000Z'],
    ['2022-07-08T01:14:07+01:00[Europe/London][!knort=blargel]', NOT_UNDERSTOOD],
    ['2022-07-08T00:14:07Z[Europe/London][!knort=blargel]', NOT_UNDERSTOOD],
    ['2022-07-08T00:14:07Z', NO_FORM],
    ['2022-07-08T00:14:07+01:00', NO_FORM],
    ['2022-07-08T00:14:07[Europe/London]', NO_FORM],
  ])('%s', (text, expected) => {
    expect(read(text)).toBe(expected);
  });
});

// The changes of each zone as `zdump -v -c 2027,2028` (tzdata 2025b) prints them.
describe('the hours that a zone skips or has twice', () => {
  test.each([
    // New York: on 14 March at 07:00:00Z from -05:00 to -04:00; on 7 November at 06:00:00Z back.
    ['2027-03-14T01:59:59-05:00[America/New_York]', '2027-03-14T06:59:59.000Z'],
    ['2027-03-14T03:00:00-04:00[America/New_York]', '2027-03-14T07:00:00.000Z'],
    ['2027-03-14T02:30:00-05:00[America/New_York]', 'America/New_York skips that time'],
    ['2027-03-14T02:30:00-04:00[America/New_York]', 'America/New_York skips that time'],
    ['2027-11-07T01:30:00-04:00[America/New_York]', '2027-11-07T05:30:00.000Z'],
    ['2027-11-07T01:30:00-05:00[America/New_York]', '2027-11-07T06:30:00.000Z'],
    [
      '2027-11-07T01:30:00-06:00[America/New_York]',
      'its offset is -06:00, but America/New_York is at -04:00 then',
    ],
    // London: on 28 March at 01:00:00Z, and on 31 October at 01:00:00Z.
    ['2027-03-28T01:30:00+00:00[Europe/London]', 'Europe/London skips that time'],
    ['2027-10-31T01:30:00+01:00[Europe/London]', '2027-10-31T00:30:00.000Z'],
    ['2027-10-31T01:30:00+00:00[Europe/London]', '2027-10-31T01:30:00.000Z'],
    // Lord Howe moves by half an hour: on 2 October 2027 at 15:30:00Z from +10:30 to +11:00.
    ['2027-10-03T01:59:59+10:30[Australia/Lord_Howe]', '2027-10-02T15:29:59.000Z'],
    ['2027-10-03T02:30:00+11:00[Australia/Lord_Howe]', '2027-10-02T15:30:00.000Z'],
    ['2027-10-03T02:15:00+10:30[Australia/Lord_Howe]', 'Australia/Lord_Howe skips that time'],
    ['2027-10-03T02:45:00+11:00[Australia/Lord_Howe]', '2027-10-02T15:45:00.000Z'],
    // Apia left out the whole of 30 December 2011.
    ['2011-12-29T23:59:59-10:00[Pacific/Apia]', '2011-12-30T09:59:59.000Z'],
    ['2011-12-31T00:00:00+14:00[Pacific/Apia]', '2011-12-30T10:00:00.000Z'],
    ['2011-12-30T12:00:00+14:00[Pacific/Apia]', 'Pacific/Apia skips that time'],
    ['2011-12-30T12:00:00-10:00[Pacific/Apia]', 'Pacific/Apia skips that time'],
  ])('%s', (text, expected) => {
    expect(read(text)).toBe(expected);
  });

  test('an hour that stands twice needs its offset, which tells the two apart by an hour', () => {
    const first = instantOf('2027-11-07T01:30:00-04:00[America/New_York]');
    expect(instantOf('2027-11-07T01:30:00-05:00[America/New_York]') - first).toBe(3_600_000);
  });
});

describe('what is no instant', () => {
  test.each([
    ['2026-02-30T09:00:00+00:00[Europe/London]', NONE],
    ['2027-02-29T09:00:00+00:00[Europe/London]', NONE],
    ['2027-13-01T09:00:00+00:00[Europe/London]', NONE],
    ['2027-00-01T09:00:00+00:00[Europe/London]', NONE],
    ['2027-04-16T24:00:00+01:00[Europe/London]', NONE],
    ['2027-04-16T09:60:00+01:00[Europe/London]', NONE],
    ['2027-04-16T09:00:61+01:00[Europe/London]', NONE],
    [
      '2027-04-16T09:00:00+25:00[Europe/London]',
      'its offset is +25:00, but Europe/London is at +01:00 then',
    ],
    ['2027-04-16T09:00:00+01:00[Europe/Overmere]', NONE],
    ['2027-04-16T09:00:00+01:00[u-ca=gregory]', NONE],
    ['2027-04-16T09:00:00+01:00[Europe/London][Europe/Paris]', NOT_UNDERSTOOD],
    ['2027-04-16T09:00:00+01:00[]', NO_FORM],
    ['2027-04-16T09:00:00+01:00[[]', NONE],
    ['2027-04-16T09:00:00+0100[Europe/London]', NO_FORM],
    ['2027-04-16 09:00:00+01:00[Europe/London]', NO_FORM],
    ['2027-04-16t09:00:00+01:00[Europe/London]', NO_FORM],
    ['2027-4-16T09:00:00+01:00[Europe/London]', NO_FORM],
    ['2027-04-16T09:00:00,5+01:00[Europe/London]', NO_FORM],
    ['2027-04-16T09+01:00[Europe/London]', NO_FORM],
    [' 2027-04-16T09:00:00+01:00[Europe/London]', NO_FORM],
    ['2027-04-16T09:00:00+01:00[Europe/London]\n', NO_FORM],
    ['10000-01-01T00:00:00+00:00[UTC]', NO_FORM],
    ['+010000-01-01T00:00:00+00:00[UTC]', NO_FORM],
    ['-000001-01-01T00:00:00+00:00[UTC]', NO_FORM],
    ['unset', NO_FORM],
    ['', NO_FORM],
  ])('%j says why', (text, why) => {
    expect(readInstant(text)).toStrictEqual({ ok: false, why });
    expect(() => instantOf(text)).toThrow(RangeError);
  });
});

describe('what is one', () => {
  test.each([
    ['0000-01-01T00:00:00+00:00[UTC]', '0000-01-01T00:00:00.000Z'],
    ['9999-12-31T23:59:59+00:00[UTC]', '9999-12-31T23:59:59.000Z'],
    ['2024-02-29T09:00:00+00:00[Europe/London]', '2024-02-29T09:00:00.000Z'],
    ['2027-04-16T09:00+01:00[Europe/London]', '2027-04-16T08:00:00.000Z'],
    ['2027-04-16T09:00:00.123456789+01:00[Europe/London]', '2027-04-16T08:00:00.123Z'],
    ['2027-04-16T13:45:00+05:45[Asia/Kathmandu]', '2027-04-16T08:00:00.000Z'],
    ['2027-01-16T09:00:00-00:00[Europe/London]', '2027-01-16T09:00:00.000Z'],
  ])('%s', (text, expected) => {
    expect(read(text)).toBe(expected);
  });

  test('is `unset` for the one that never comes', () => {
    expect(instantOrNever('unset')).toBe(NEVER);
    expect(instantOrNever('2027-04-16T09:00:00+01:00[Europe/London]')).toBe(
      Date.parse('2027-04-16T08:00:00Z'),
    );
    expect(NEVER > Date.parse('9999-12-31T23:59:59Z')).toBe(true);
  });

  test('comes back with the zone as it is known', () => {
    expect(readInstant('2027-04-16T09:00:00+01:00[europe/LONDON]')).toMatchObject({
      zone: 'Europe/London',
    });
  });
});

describe('writing and reading', () => {
  // From 1973 on every offset is of whole minutes, which is what can be written.
  const at = fc
    .integer({ min: Date.parse('1973-01-01') / 1000, max: Date.parse('2100-01-01') / 1000 })
    .map((seconds) => seconds * 1000);
  const zone = fc.constantFrom(...Intl.supportedValuesOf('timeZone'));

  test('every second in every zone is read as it was written', () => {
    fc.assert(
      fc.property(at, zone, (instant, name) => {
        const written = writeInstant(instant, name);
        expect(readInstant(written)).toMatchObject({ ok: true, at: instant });
        expect(written.endsWith(`[${name}]`)).toBe(true);
      }),
      { numRuns: 300 },
    );
  });

  test('another offset is refused, and both are shown', () => {
    fc.assert(
      fc.property(at, zone, fc.integer({ min: 1, max: 600 }), (instant, name, minutes) => {
        const [, wall = '', offset = ''] = /^(.{19})(.{6})/.exec(writeInstant(instant, name)) ?? [];
        const signed = Number(`${offset[0] ?? ''}1`);
        const there = signed * (Number(offset.slice(1, 3)) * 60 + Number(offset.slice(4)));
        const other = there > 0 ? there - minutes - 120 : there + minutes + 120;
        const two = (part: number) => String(part).padStart(2, '0');
        const stated = `${other < 0 ? '-' : '+'}${two(Math.floor(Math.abs(other) / 60))}:${two(Math.abs(other) % 60)}`;
        const reading = readInstant(`${wall}${stated}[${name}]`);
        // In an hour that stands twice the other offset may be the one that is shown.
        expect(reading).toMatchObject({
          ok: false,
          why: expect.stringMatching(
            /^its offset is [+-]\d\d:\d\d, but [\w/+-]+ is at [+-]\d\d:\d\d then$/,
          ),
        });
        expect(JSON.stringify(reading)).toContain(stated);
      }),
      { numRuns: 200 },
    );
  });

  test('says instant and day in the zone of the reader', () => {
    const instant = Date.parse('2027-05-14T23:05:00Z');
    expect(sayInstant(instant, 'Europe/London')).toBe('15 May 2027, 00:05');
    expect(sayInstant(instant, 'America/New_York')).toBe('14 May 2027, 19:05');
    expect(sayDay(instant, 'Europe/London')).toBe('15 May 2027');
    expect(sayDay(Date.parse('2027-12-01T12:00:00Z'), 'UTC')).toBe('1 December 2027');
  });
});

test.each([
  ['Europe/London', true],
  ['UTC', true],
  ['Etc/GMT+12', true],
  ['europe/london', true],
  ['Europe/Overmere', false],
  ['+01:00', false],
  ['', false],
  ['Europe/London[', false],
])('%j is a zone: %s', (name, known) => {
  expect(isZone(name)).toBe(known);
});
