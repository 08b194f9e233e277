/**
 * Makes `calendar-events.json` again: what icalendar 4.0.3 (Debian 12, python3-icalendar) reads in
 * the calendar of the steps in `tests/status/steps.ts`.
 *
 *     apt-get install python3-icalendar && npx tsx tests/oracles/calendar-events.ts
 */
import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';

import { timelineCalendar } from '../../pipeline/status/timeline-calendar.js';
import { MADE, PROPERTY, STEPS } from '../status/steps.js';

const READER = `
import icalendar, json, sys
calendar = icalendar.Calendar.from_ical(sys.stdin.buffer.read())
print(json.dumps([[str(event[key]) for key in ("UID", "SUMMARY", "DESCRIPTION", "CLASS")]
    + [event[key].dt.isoformat() for key in ("DTSTART", "DTSTAMP")]
    for event in calendar.walk("VEVENT")]))
`;

const { stdout, stderr } = spawnSync('/usr/bin/python3', ['-c', READER], {
  input: timelineCalendar(STEPS, PROPERTY, MADE),
  encoding: 'utf8',
});
if (stdout === '') throw new Error(stderr);
const events: unknown = JSON.parse(stdout);
writeFileSync(
  new URL('calendar-events.json', import.meta.url),
  `${JSON.stringify(events, null, 2)}\n`,
);
