import { earlyThings } from './early.js';
import type { Rule } from './rule.js';
import { edited } from './sample.js';

const EARLY: [string, string] = [
  'spoiler: open',
  'spoiler: later\nships: "2027-04-16T09:00:00+01:00[Europe/London]"',
];

/** Something in hands before a product in shops may tell it. */
export const earlyPrint: Rule = {
  id: 'early-print',
  about: 'spoilers',
  severity: 'error',
  why: 'Ink cannot be held back: who opens a pack that morning knows by noon.',
  acceptable: false,
  look: earlyThings,
  examples: {
    passes: [
      {
        says: 'in hands at the hour from which it may be printed',
        files: {
          ...edited('one/cards/base/a2.md', EARLY),
          ...edited('property.yaml', [
            'label: Episode 1,',
            'label: Episode 1, print: "2027-04-16T09:00:00+01:00[Europe/London]",',
          ]),
        },
      },
      {
        says: 'a card that is in nobody’s hands yet',
        files: edited('one/cards/base/a2.md', [
          'spoiler: open',
          'spoiler: open\nembargo: [guest]\nships: unset',
        ]),
      },
    ],
    fails: [
      {
        says: 'a card eleven hours before its level',
        files: edited('one/cards/base/a2.md', EARLY),
        gives: {
          at: 'one/cards/base/a2.md:4:10',
          covers: 'later',
          message: 'this card is in hands before what it tells may be in shops',
          found: 'in hands 16 April 2027, 09:00',
          expected: 'not before 16 April 2027, 20:00, for later',
        },
      },
      {
        says: 'a held span under an embargo without a date',
        files: edited('one/cards/base/a2.md', ['that nobody lit', '[that nobody lit](held:guest)']),
        gives: {
          at: 'one/cards/base/a2.md:7:9',
          covers: 'that nobody lit',
          message: 'this held span is in hands before it may be in shops',
          found: 'in hands 5 June 2027, 09:00',
          expected: 'not while guest has no date',
        },
      },
      {
        says: 'a subset that ships before its own level: told once, not for each card',
        files: edited('one/plan.yaml', [
          'group: inserts,',
          'group: inserts, spoiler: later, ships: "2027-04-16T09:00:00+01:00[Europe/London]",',
        ]),
        gives: {
          at: 'one/plan.yaml:8:57',
          covers: 'later',
          message: '`extra` is in hands before what it tells may be in shops',
          found: 'in hands 16 April 2027, 09:00',
          expected: 'not before 16 April 2027, 20:00, for later',
        },
      },
      {
        says: 'a wrapper on the street before its level may be',
        files: {
          ...edited('one/plan.yaml', ['street: "2027-06-05', 'street: "2027-06-04']),
          'one/sales/wrapper.md':
            '---\nkind: wrapper\ngoes: unset\nspoiler: last\n---\nA lake, and a lamp.\n\n© 2027 Lantern & Oar\n',
        },
        gives: {
          at: 'one/sales/wrapper.md:4:10',
          covers: 'last',
          message: 'this text is on the street before what it tells may be in shops',
          found: 'on the street 4 June 2027, 09:00',
          expected: 'not before 4 June 2027, 20:00, for last',
        },
      },
      {
        says: 'a sell sheet that goes out before the lift',
        files: {
          'one/sales/sheet.md':
            '---\nkind: sell-sheet\ngoes: "2026-12-01T10:00:00+00:00[Europe/London]"\nspoiler: later\n---\nA lake, and a lamp.\n\n© 2027 Lantern & Oar\n',
        },
        gives: {
          at: 'one/sales/sheet.md:4:10',
          covers: 'later',
          message: 'this text goes out before what it tells has lifted',
          found: 'going out 1 December 2026, 10:00',
          expected: 'not before 16 April 2027, 20:00, for later',
        },
      },
    ],
  },
};
