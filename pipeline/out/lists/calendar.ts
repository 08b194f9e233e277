import ICAL from 'ical.js';

import type { PublicData, PublicSet } from '../../../schema/index.js';
import { previewWords, regionName, utc } from '../wording/index.js';
import { addressOf } from './addresses.js';
import { siteUuid } from './identity.js';
import { plain } from './plain.js';

// RFC 5545, 3.1: at most 75 octets a line. The library does not count the space that goes before.
ICAL.foldLength = 74;

interface Happening {
  /** An RFC 9557 instant. */
  readonly at: string;
  /** What tells it from others at the same instant. */
  readonly key: readonly string[];
  readonly summary: string;
  /** The page below the site that will say more. */
  readonly page: string;
}

/**
 * When more is revealed and when sets are in shops, as a calendar (RFC 5545, its name by RFC 7986).
 * It never says what is revealed. An event keeps its UID as long as its instant stands.
 */
export function liftsCalendar(data: PublicData): string {
  const calendar = new ICAL.Component('vcalendar');
  calendar.addPropertyWithValue('prodid', '-//Holdback//Lifts//EN');
  calendar.addPropertyWithValue('version', '2.0');
  calendar.addPropertyWithValue('name', plain(`${data.property.siteTitle}: days to come`));
  const preview = previewWords(data);
  if (preview !== null) calendar.addPropertyWithValue('description', plain(preview));
  const happenings = [...openingsOf(data), ...data.sets.flatMap(streetsOf)];
  for (const happening of happenings) calendar.addSubcomponent(eventOf(data, happening));
  if (happenings.length === 0) calendar.addSubcomponent(zoneUtc());
  return `${calendar.toString().replace(/\r?\n/g, '\r\n')}\r\n`;
}

function openingsOf({ openings, property }: PublicData): Happening[] {
  const summary = `More cards of ${property.siteTitle} are revealed`;
  return openings.map((at) => ({ at, key: ['opening'], summary, page: '' }));
}

function streetsOf({ id, short, street }: PublicSet): Happening[] {
  return street.map(({ region, at }) => ({
    at,
    key: ['street', id, region ?? ''],
    summary: `${short} in shops${region === null ? '' : ` (${regionName(region)})`}`,
    page: `${id}/`,
  }));
}

function eventOf(data: PublicData, { at, key, summary, page }: Happening): ICAL.Component {
  const event = new ICAL.Component('vevent');
  const preview = previewWords(data);
  event.addPropertyWithValue('uid', siteUuid(data, ...key, utc(at)));
  event.addPropertyWithValue('dtstamp', timeOf(data.asOf));
  event.addPropertyWithValue('dtstart', timeOf(at));
  event.addPropertyWithValue('summary', plain(summary));
  if (preview !== null) event.addPropertyWithValue('description', plain(preview));
  if (data.property.address !== null) {
    event.addPropertyWithValue('url', addressOf(data, page));
  }
  event.addPropertyWithValue('transp', 'TRANSPARENT');
  return event;
}

/** RFC 5545, 3.6: a calendar has at least one component, so one without events has its zone. */
function zoneUtc(): ICAL.Component {
  const zone = new ICAL.Component('vtimezone');
  zone.addPropertyWithValue('tzid', 'Etc/UTC');
  const standard = new ICAL.Component('standard');
  standard.addPropertyWithValue('dtstart', ICAL.Time.fromDateTimeString('1970-01-01T00:00:00'));
  const noOffset = ICAL.UtcOffset.fromSeconds(0);
  standard.addPropertyWithValue('tzoffsetfrom', noOffset);
  standard.addPropertyWithValue('tzoffsetto', noOffset);
  zone.addSubcomponent(standard);
  return zone;
}

function timeOf(instant: string): ICAL.Time {
  return ICAL.Time.fromDateTimeString(utc(instant));
}
