import { readFileSync } from 'node:fs';

import fc from 'fast-check';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';

import { sampleWith, type Files } from '../../pipeline/checks/index.js';
import { edited } from '../../pipeline/checks/sample.js';
import { instantOf } from '../../pipeline/model/index.js';
import { memoryFolder, readContent } from '../../pipeline/read/index.js';
import { select, type Released } from '../../pipeline/select/index.js';
import {
  ALWAYS,
  differenceIn,
  differenceText,
  timeline,
  timelineCalendar,
  timelinePicture,
  timelineText,
} from '../../pipeline/status/index.js';
import { MADE, PROPERTY, STEPS } from './steps.js';

const LIFT = instantOf('2027-04-16T20:00:00+01:00[Europe/London]');
const LAST = instantOf('2027-06-04T20:00:00+01:00[Europe/London]');
const STREET = instantOf('2027-06-05T09:00:00+01:00[Europe/London]');

function released(files: Files): Released {
  const found = select(readContent(memoryFolder(sampleWith(files))));
  if (!found) throw new Error('the sample cannot be read');
  return found;
}

/** Card 1 shows a fact more at the lift, card 2 opens then; the insert leaves no trace till the last. */
const HELD = {
  'names.yaml':
    'names: [{ name: The Lamp, kind: thing, level: later, aliases: [{ form: Wick, level: last }] }]',
  ...edited('property.yaml', [
    'approvals: none',
    'approvals: none\nsite: { shows: { facts: full } }',
  ]),
  ...edited('one/cards/base/a1.md', [
    'spoiler: open',
    'spoiler: open\nfacts: { Depth: Nine, Keeper: Pim }\nholds: { facts.Depth: later }',
  ]),
  ...edited('one/cards/base/a2.md', ['spoiler: open', 'spoiler: later\npublicName: A lamp']),
  ...edited('one/cards/extra/b1.md', ['spoiler: open', 'spoiler: last']),
};

describe('the timeline', () => {
  test('tells at each step what lifts, what is in shops and what the public sees otherwise', () => {
    expect(timelineText(timeline(released(HELD)), 'Europe/London')).toBe(`INTERNAL

1 September 2026, 09:00
  new              One
  new              One: Base
  new              One: Extra
  revealed         1      The Quay (one/base)
  listed           2      A lamp (one/base)

16 April 2027, 20:00
  lifts: Episode 1
  may be named     The Lamp
  more shown       1      The Quay: facts (one/base)
  revealed         2      The Lamp (one/base)

4 June 2027, 20:00
  lifts: Episode 2
  may be named     Wick
  revealed         X-1    The Chart (one/extra)

5 June 2027, 09:00
  in shops: One
  nothing changes on the site
`);
  });

  test('counts what is shown and what is to be revealed from each step on', () => {
    const counts = timeline(released(HELD)).map((step) => [step.shown, step.placeholders]);
    expect(counts).toEqual([
      [1, 1],
      [2, 0],
      [3, 0],
      [3, 0],
    ]);
  });

  test('of a stretch has the steps after its beginning, up to and with its end', () => {
    const at = (from: number, to: number) =>
      timeline(released(HELD), { from, to }).map((step) => step.at);
    expect(at(LIFT, LAST)).toEqual([LAST]);
    expect(at(LIFT - 1, LAST - 1)).toEqual([LIFT]);
    expect(at(LAST, ALWAYS.to)).toEqual([STREET]);
    expect(timelineText(timeline(released(HELD), { from: STREET, to: ALWAYS.to }), 'UTC')).toBe(
      'INTERNAL\n\nNothing opens.\n',
    );
  });
});

describe('the difference of two instants', () => {
  test('is the sum of the steps between them', () => {
    const within = { from: LIFT - 1, to: LAST };
    expect(differenceText(differenceIn(released(HELD), within), within, 'Europe/London')).toBe(
      `INTERNAL

From 16 April 2027, 19:59 to 4 June 2027, 20:00
  may be named     The Lamp
  may be named     Wick
  more shown       1      The Quay: facts (one/base)
  revealed         2      The Lamp (one/base)
  revealed         X-1    The Chart (one/extra)
`,
    );
  });

  test('is nothing between two steps, and from before the beginning it is all', () => {
    const between = { from: LIFT, to: LAST - 1 };
    expect(differenceIn(released(HELD), between)).toEqual({ cards: [], titles: [], names: [] });
    const all = differenceIn(released(HELD), { from: 0, to: STREET });
    expect(all.cards.map(({ number, change }) => [number, change])).toEqual([
      ['1', 'revealed'],
      ['2', 'revealed'],
      ['X-1', 'revealed'],
    ]);
  });
});

describe('the calendar', () => {
  const text = timelineCalendar(STEPS, PROPERTY, MADE);

  test('is read by another program as it was meant (icalendar 4.0.3, recorded)', () => {
    const events: unknown = JSON.parse(
      readFileSync(new URL('../oracles/calendar-events.json', import.meta.url), 'utf8'),
    );
    const at = '2026-10-01T11:00:00+00:00';
    expect(events).toEqual([
      [
        '20260901T080000Z.lake@reveals.holdback',
        'The first of it is public',
        'INTERNAL\n1 September 2026, 09:00\ncards revealed: 1, listed: 2',
        'CONFIDENTIAL',
        '2026-09-01T08:00:00+00:00',
        at,
      ],
      [
        '20270328T013000Z.lake@reveals.holdback',
        `One, with a comma in shops; ${STEPS[1]?.opens[0] ?? ''} lifts`,
        `INTERNAL\n28 March 2027, 02:30\nin shops: One, with a comma\nlifts: ${STEPS[1]?.opens[0] ?? ''}\ncards revealed: 1, more shown: 1, gone: 1`,
        'CONFIDENTIAL',
        '2027-03-28T01:30:00+00:00',
        at,
      ],
      [
        '20270416T190000Z.lake@reveals.holdback',
        'Nothing lifts',
        'INTERNAL\n16 April 2027, 20:00\nlifts: Nothing\nnothing changes on the site',
        'CONFIDENTIAL',
        '2027-04-16T19:00:00+00:00',
        at,
      ],
    ]);
  });

  test('has lines of at most 75 octets that end as they must (RFC 5545, 3.1)', () => {
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
    const octets = text.split('\r\n').map((line) => Buffer.byteLength(line));
    expect(Math.max(...octets)).toBeLessThanOrEqual(75);
  });

  test('has such lines whatever the words are', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', minLength: 40, maxLength: 300 }), (label) => {
        const [step] = STEPS;
        const calendar = timelineCalendar(
          step ? [{ ...step, opens: [label] }] : [],
          PROPERTY,
          MADE,
        );
        const octets = calendar.split('\r\n').map((line) => Buffer.byteLength(line));
        expect(Math.max(...octets)).toBeLessThanOrEqual(75);
      }),
    );
  });

  test('names no card: calendars are copied to other machines', () => {
    expect(text.replaceAll('\r\n ', '')).not.toContain('The Quay');
  });
});

describe('the picture', () => {
  test('is whole, and tells the counts in words as well', async () => {
    const picture = timelinePicture(STEPS, PROPERTY);
    const { width, height } = await sharp(Buffer.from(picture)).metadata();
    expect([width, height]).toEqual([960, 96 + 3 * 76 + 32]);
    const words = [...picture.matchAll(/<text [^>]*>([^<]*)<\/text>/g)].map(([, word]) => word);
    expect(words).toEqual([
      'The Lake &amp; the “Locks”: what opens when',
      'INTERNAL · filled: cards shown · outlined: cards to be revealed',
      '1 September 2026, 09:00',
      'The first of it is public',
      '1 shown, 2 to be revealed',
      '28 March 2027, 02:30',
      'In shops: One, with a comma · Commas, semicolons; back\\slashes, “quotes” &amp; &lt;s…',
      '2 shown, 0 to be revealed',
      '16 April 2027, 20:00',
      'Nothing',
      '2 shown, 0 to be revealed',
    ]);
  });

  test('of nothing is still a picture', async () => {
    const { height } = await sharp(Buffer.from(timelinePicture([], PROPERTY))).metadata();
    expect(height).toBe(96 + 76 + 32);
  });
});
