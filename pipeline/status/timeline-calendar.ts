import ICAL from 'ical.js';

import { sayInstant, type Instant } from '../model/index.js';
import type { CardChange } from './changes.js';
import { openingLines } from './timeline-text.js';
import type { TimelineStep } from './timeline.js';

// RFC 5545, 3.1: at most 75 octets a line. The library does not count the space that goes before.
ICAL.foldLength = 74;

/**
 * The timeline as a calendar for the team (RFC 5545, its name by RFC 7986), an event for each step. An event keeps its
 * UID as long as its instant stands, so that a calendar which reads the file again has it once.
 * @param now when it is made: its DTSTAMP.
 */
export function timelineCalendar(
  steps: readonly TimelineStep[],
  property: { readonly id: string; readonly title: string; readonly zone: string },
  now: Instant,
): string {
  const calendar = new ICAL.Component('vcalendar');
  calendar.addPropertyWithValue('prodid', '-//Holdback//Reveals//EN');
  calendar.addPropertyWithValue('version', '2.0');
  calendar.addPropertyWithValue('name', `${property.title}: what opens when`);
  for (const step of steps) calendar.addSubcomponent(eventOf(step, property, now));
  return `${calendar.toString().replace(/\r?\n/g, '\r\n')}\r\n`;
}

function eventOf(
  step: TimelineStep,
  { id, zone }: { readonly id: string; readonly zone: string },
  now: Instant,
): ICAL.Component {
  const event = new ICAL.Component('vevent');
  const begins = utc(step.at);
  event.addPropertyWithValue('uid', `${begins.toICALString()}.${id}@reveals.holdback`);
  event.addPropertyWithValue('dtstamp', utc(now));
  event.addPropertyWithValue('dtstart', begins);
  event.addPropertyWithValue('summary', summaryOf(step));
  event.addPropertyWithValue('description', descriptionOf(step, zone));
  event.addPropertyWithValue('class', 'CONFIDENTIAL');
  event.addPropertyWithValue('transp', 'TRANSPARENT');
  return event;
}

function summaryOf({ opens, inShops }: TimelineStep): string {
  const parts = [
    ...inShops.map((title) => `${title} in shops`),
    ...opens.map((label) => `${label} lifts`),
  ];
  return parts.length > 0 ? parts.join('; ') : 'The first of it is public';
}

/** Calendars are copied to other machines: it counts what opens and names no card. */
function descriptionOf(step: TimelineStep, zone: string): string {
  const lines = openingLines(step).map((line) => line.trim());
  return ['INTERNAL', sayInstant(step.at, zone), ...lines, countsOf(step)].join('\n');
}

function countsOf({ cards }: TimelineStep): string {
  const counts = KINDS.flatMap((kind) => {
    const count = cards.filter(({ change }) => change === kind).length;
    return count === 0 ? [] : [`${kind}: ${String(count)}`];
  });
  return counts.length === 0 ? 'nothing changes on the site' : `cards ${counts.join(', ')}`;
}

const KINDS = [
  'revealed',
  'more shown',
  'listed',
  'otherwise shown',
  'gone',
] as const satisfies readonly CardChange[];

function utc(at: Instant): ICAL.Time {
  return ICAL.Time.fromJSDate(new Date(at), true);
}
