/**
 * Writes beside an instant in the zone of the site the same in the reader's own, where they differ.
 */
export function writeOwnTimes() {
  const clock = new Intl.DateTimeFormat('en-GB', {
    weekday: 'long',
    day: 'numeric',
    month: 'long',
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  });
  for (const room of document.querySelectorAll('.own-time')) {
    if (!(room instanceof HTMLElement)) continue;
    const at = room.dataset['at'] ?? '';
    const instant = new Date(at);
    if (Number.isNaN(instant.getTime()) || isOwnOffset(at, instant)) continue;
    room.textContent = `${clock.format(instant)} where you are`;
  }
}

/**
 * Whether the clock of the site and that of the reader show the same.
 *
 * @param {string} at RFC 3339
 * @param {Date} instant
 */
function isOwnOffset(at, instant) {
  const [, sign = '+', hours = '0', minutes = '0'] = /([+-])(\d\d):(\d\d)$/.exec(at) ?? [];
  const offset = Number(hours) * 60 + Number(minutes);
  return -instant.getTimezoneOffset() === (sign === '-' ? -offset : offset);
}
