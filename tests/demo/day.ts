/** The demo's day: 30 March 2027, noon in London. Every picture and test of the demo has this clock. */
export const DEMO_NOW = Date.parse('2027-03-30T12:00:00+01:00');

/** One second after the last lift: all that the demo's season tells is open. */
export const LAST_LIFT = '2027-06-04T20:00:00+01:00[Europe/London]';
