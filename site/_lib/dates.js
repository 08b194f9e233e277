import { markup } from './markup.js';

/** @typedef {import('./markup.js').Markup} Markup */

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

/** @type {Map<string, Intl.DateTimeFormat>} */
const clocks = new Map();

/**
 * @param {string} zone
 * @returns {Intl.DateTimeFormat}
 */
function clockOf(zone) {
  const known = clocks.get(zone);
  if (known) return known;
  const clock = new Intl.DateTimeFormat('en-GB', {
    timeZone: zone,
    calendar: 'gregory',
    numberingSystem: 'latn',
    hourCycle: 'h23',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: '2-digit',
    minute: '2-digit',
  });
  clocks.set(zone, clock);
  return clock;
}

/**
 * The instant without the name of its zone, as HTML and JavaScript read it.
 *
 * @param {string} instant RFC 9557
 * @returns {string} RFC 3339
 */
function plainInstant(instant) {
  return instant.replace(/\[.*$/, '');
}

/**
 * @param {string} instant
 * @param {string} zone
 */
function partsOf(instant, zone) {
  const parts = clockOf(zone).formatToParts(new Date(plainInstant(instant)));
  /** @param {Intl.DateTimeFormatPartTypes} type */
  const of = (type) => parts.find((part) => part.type === type)?.value ?? '';
  const month = MONTHS[Number(of('month')) - 1] ?? '';
  return {
    day: `${String(Number(of('day')))} ${month} ${of('year')}`,
    time: `${of('hour')}:${of('minute')}`,
  };
}

/**
 * "14 May 2027", the day on which the instant falls in the zone.
 *
 * @param {string} instant
 * @param {string} zone
 * @returns {Markup}
 */
export function day(instant, zone) {
  return markup`<time datetime="${plainInstant(instant)}">${partsOf(instant, zone).day}</time>`;
}

/**
 * "14 May 2027, 20:00 (London time)".
 *
 * @param {string} instant
 * @param {string} zone
 * @returns {Markup}
 */
export function moment(instant, zone) {
  const parts = partsOf(instant, zone);
  const words = `${parts.day}, ${parts.time}`;
  return markup`<time datetime="${plainInstant(instant)}">${words}</time> (${zoneName(zone)})`;
}

/**
 * "20:00 (London time)".
 *
 * @param {string} instant
 * @param {string} zone
 */
export function hour(instant, zone) {
  return `${partsOf(instant, zone).time} (${zoneName(zone)})`;
}

/**
 * "On 14 May 2027 at 20:00 (London time).", with room for the same in the reader's own time, which
 * the script of the page writes.
 *
 * @param {string} instant
 * @param {string} zone
 * @returns {Markup}
 */
export function awaited(instant, zone) {
  const parts = partsOf(instant, zone);
  const at = plainInstant(instant);
  const when = markup`<time datetime="${at}">${parts.day} at ${parts.time}</time>`;
  return markup`On ${when} (${zoneName(zone)})<span class="own-time" data-at="${at}"></span>`;
}

/**
 * "3 November 2026" for a date without a time, such as 2026-11-03.
 *
 * @param {string} date
 * @returns {Markup}
 */
export function plainDay(date) {
  const [year, month, dayOfMonth] = date.split('-').map(Number);
  const words = `${String(dayOfMonth)} ${MONTHS[(month ?? 0) - 1] ?? ''} ${String(year)}`;
  return markup`<time datetime="${date}">${words}</time>`;
}

/**
 * "London time" for Europe/London.
 *
 * @param {string} zone
 * @returns {string}
 */
function zoneName(zone) {
  const place = zone.split('/').at(-1)?.replaceAll('_', ' ') ?? zone;
  return zone.includes('/') ? `${place} time` : place;
}
