import { instantOf } from '../../pipeline/model/index.js';
import type { TimelineStep } from '../../pipeline/status/index.js';

export const PROPERTY = { id: 'lake', title: 'The Lake & the “Locks”', zone: 'Europe/London' };
export const MADE = instantOf('2026-10-01T12:00:00+01:00[Europe/London]');

const card = (number: string, change: TimelineStep['cards'][number]['change']) => ({
  set: 'one',
  subset: 'base',
  number,
  name: 'The Quay',
  change,
  fields: [],
});

/** Steps whose words try what a calendar and a picture must escape, fold and shorten. */
export const STEPS: readonly TimelineStep[] = [
  {
    at: instantOf('2026-09-01T09:00:00+01:00[Europe/London]'),
    opens: [],
    inShops: [],
    titles: ['One'],
    names: [],
    cards: [card('1', 'revealed'), card('2', 'listed'), card('3', 'listed')],
    shown: 1,
    placeholders: 2,
  },
  {
    at: instantOf('2027-03-28T02:30:00+01:00[Europe/London]'),
    opens: [
      'Commas, semicolons; back\\slashes, “quotes” & <signs>, and so long a label: Überfähre',
    ],
    inShops: ['One, with a comma'],
    titles: [],
    names: [],
    cards: [card('2', 'revealed'), card('1', 'more shown'), card('3', 'gone')],
    shown: 2,
    placeholders: 0,
  },
  {
    at: instantOf('2027-04-16T20:00:00+01:00[Europe/London]'),
    opens: ['Nothing'],
    inShops: [],
    titles: [],
    names: [],
    cards: [],
    shown: 2,
    placeholders: 0,
  },
];
