import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';

import type { PublicData } from '../../schema/index.js';
import { data as siteData } from '../site/fixture.js';
import { data, empty, hostile, SPRING, troubled, withoutAddress } from './fixture.js';
import { textAt } from './support.js';

function calendarOf(some: PublicData): ICAL.Component {
  return ICAL.Component.fromString(textAt(some, 'lifts.ics'));
}

function eventsOf(some: PublicData): ICAL.Event[] {
  return calendarOf(some)
    .getAllSubcomponents('vevent')
    .map((event) => new ICAL.Event(event));
}

function uidsOf(some: PublicData): string[] {
  return eventsOf(some).map(({ uid }) => uid);
}

describe('the calendar', () => {
  test('says when, and never what', () => {
    const events = eventsOf(data).map((event) => [
      event.startDate.toString(),
      event.summary,
      event.component.getFirstPropertyValue('url'),
      String(event.component.getFirstPropertyValue('dtstamp')),
    ]);
    const site = 'https://cards.example/ferrywrights/';
    const made = '2027-04-16T08:00:00Z';
    const more = 'More cards of The Ferrywrights: the cards are revealed';
    expect(events).toEqual([
      ['2027-04-16T19:00:00Z', more, site, made],
      ['2027-05-14T19:00:00Z', more, site, made],
      ['2027-04-16T08:00:00Z', 'High Water in shops (UK)', `${site}high-water/`, made],
      ['2027-04-16T23:00:00Z', 'High Water in shops (AU)', `${site}high-water/`, made],
    ]);
    expect(textAt(data, 'lifts.ics')).not.toMatch(/Thrane|Tern|voice|Crew/);
    expect(textAt(withoutAddress, 'lifts.ics')).not.toContain('URL');
  });

  test.each([
    ['two sets', siteData],
    ['nothing to come', empty],
    ['hostile texts', hostile(siteData)],
  ])('has what RFC 5545 asks for (3.6, 3.6.1) with %s', (_, some) => {
    const calendar = calendarOf(some);
    expect(calendar.getFirstPropertyValue('version')).toBe('2.0');
    expect(calendar.getFirstPropertyValue('prodid')).toBe('-//Holdback//Lifts//EN');
    expect(calendar.getAllSubcomponents().length).toBeGreaterThan(0);
    for (const event of calendar.getAllSubcomponents('vevent')) {
      for (const name of ['uid', 'dtstamp', 'dtstart', 'summary']) {
        expect(event.getAllProperties(name), name).toHaveLength(1);
      }
    }
    const streets = some.sets.reduce((sum, { street }) => sum + street.length, 0);
    const uids = uidsOf(some);
    expect(uids).toHaveLength(some.openings.length + streets);
    expect(new Set(uids).size).toBe(uids.length);
  });

  test('keeps the UID of an event as long as its instant stands', () => {
    const later = { ...data, asOf: SPRING, openings: data.openings.slice(1), news: [] };
    expect(uidsOf(later)).toEqual(uidsOf(data).slice(1));
    const moved = { ...data, openings: ['2027-04-16T21:00:00+01:00[Europe/London]', SPRING] };
    expect(uidsOf(moved)[0]).not.toBe(uidsOf(data)[0]);
    expect(uidsOf(moved).slice(1)).toEqual(uidsOf(data).slice(1));
    const elsewhere = { ...data, property: { ...data.property, address: 'https://b.example/' } };
    expect(uidsOf(elsewhere).filter((uid) => uidsOf(data).includes(uid))).toEqual([]);
  });

  test('tells apart what happens at one instant', () => {
    const [set] = data.sets;
    if (!set) throw new Error('the fixture has a set');
    const street = ['uk', 'au', null].map((region) => ({ region, at: SPRING }));
    const some = { ...data, sets: ['one', 'two'].map((id) => ({ ...set, id, street })) };
    expect(new Set(uidsOf(some)).size).toBe(2 + 6);
  });

  test('has lines of at most 75 octets that end in CRLF, and no controls (3.1, 3.3.11)', () => {
    fc.assert(
      fc.property(troubled, (some) => {
        const text = textAt(some, 'lifts.ics');
        expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
        expect(text.replaceAll('\r\n', '')).not.toMatch(/\p{Cc}/u);
        const octets = text.split('\r\n').map((line) => Buffer.byteLength(line));
        expect(Math.max(...octets)).toBeLessThanOrEqual(75);
        expect(eventsOf(some)).toHaveLength(5);
      }),
      { numRuns: 40 },
    );
  });
});
