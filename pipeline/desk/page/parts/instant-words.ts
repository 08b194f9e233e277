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

const INSTANT = /^(\d{4})-(\d\d)-(\d\d)T(\d\d:\d\d)[^[]*(?:\[([^\]]*)\])?$/;

/**
 * An RFC 9557 instant as it is read: 16 April 2027, 20:00 (Europe/London). Date and hour are those
 * that stand in it; what is no instant stays as it is.
 */
export function instantWords(instant: string): string {
  const [, year, month, day, time, zone] = INSTANT.exec(instant) ?? [];
  const name = MONTHS[Number(month) - 1];
  if (year === undefined || name === undefined) return instant;
  return `${Number(day)} ${name} ${year}, ${time ?? ''}${zone === undefined ? '' : ` (${zone})`}`;
}
