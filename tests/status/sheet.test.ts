import { expect, test } from 'vitest';

import { StatusSheet } from '../../schema/index.js';
import { bioFits, check, sampleWith, type Files } from '../../pipeline/checks/index.js';
import { WITH_LAYOUT } from '../../pipeline/checks/fit-sample.js';
import { edited } from '../../pipeline/checks/sample.js';
import { instantOf } from '../../pipeline/model/index.js';
import { memoryFolder, readProperty, keptDictionaries } from '../../pipeline/read/index.js';
import { validate } from '../../pipeline/read/validate.js';
import { select } from '../../pipeline/select/index.js';
import { statusSheet, statusText } from '../../pipeline/status/index.js';

const LONG = 'Ink, and a thumbprint of the lake, kept under glass since the old harbour went down.';
const DAY = instantOf('2026-10-01T12:00:00+01:00[Europe/London]');

function sheetOf(files: Files, now = DAY) {
  const { content, fonts } = readProperty(memoryFolder(sampleWith(files)));
  const released = select(content);
  if (!released) throw new Error('the sample cannot be read');
  return statusSheet({
    released,
    report: check(content, { fonts, dictionaries: keptDictionaries }),
    fits: bioFits(content, fonts),
    rehearsal: null,
    reviewed: null,
    now,
  });
}

const inBrackets = (text: string): string => `<${text}>`;

test('tells stage, copy, fit and what is to come', () => {
  const over = {
    ...WITH_LAYOUT,
    ...edited('one/cards/extra/b1.md', ['Ink, and a thumbprint of the lake.', LONG]),
  };
  expect(statusText(sheetOf(over), 'Europe/London', inBrackets)).toBe(`INTERNAL

One (locked)
Subset  no copy  draft  handed in  not issued  errors  warnings
Base          0      2          0           0       0         0
Extra         0      1          0           0       1         0

How full the zones of the bios are:
       0 %      50 %     100 %
Extra  |                    |  1 bio  <▲ 1 overset>

Still to come:
  16 April 2027, 20:00
    lifts: Episode 1
    on the site: nothing changes
    rehearsed: not yet
  4 June 2027, 20:00
    lifts: Episode 2
    on the site: nothing changes
    rehearsed: not yet
  5 June 2027, 09:00
    in shops: One
    on the site: nothing changes
    rehearsed: not yet
`);
});

test('a bio that fits stands in the plot where it ends; without layouts there is no plot', () => {
  const sheet = sheetOf(WITH_LAYOUT);
  expect(sheet.sets[0]?.subsets.map(({ bios }) => bios?.tight ?? null)).toStrictEqual([null, 1]);
  const text = statusText(sheet, 'Europe/London', inBrackets);
  expect(text).toContain('Extra  |                   █|  1 bio, 1 tight\n');
  expect(text).not.toContain('▲');
  expect(statusText(sheetOf({}), 'Europe/London', inBrackets)).not.toContain('How full');
});

test('what has opened is no longer to come', () => {
  const after = instantOf('2027-04-16T20:00:00+01:00[Europe/London]');
  expect(sheetOf({}, after).ahead.map(({ at }) => at)).toStrictEqual([
    '2027-06-04T20:00:00+01:00[Europe/London]',
    '2027-06-05T09:00:00+01:00[Europe/London]',
  ]);
  expect(sheetOf({}, after - 1).ahead).toHaveLength(3);
  const last = instantOf('2027-06-05T09:00:00+01:00[Europe/London]');
  expect(statusText(sheetOf({}, last), 'Europe/London', inBrackets)).toContain(
    'Still to come:\n  nothing\n',
  );
});

test('counts cards by what the public sees of them at a lift', () => {
  const held = edited('one/cards/base/a2.md', ['spoiler: open', 'spoiler: later']);
  expect(sheetOf(held).ahead[0]).toStrictEqual({
    at: '2027-04-16T20:00:00+01:00[Europe/London]',
    opens: ['Episode 1'],
    inShops: [],
    listed: 0,
    revealed: 1,
    moreShown: 0,
    rehearsed: 'not yet',
    blocks: [],
    unapproved: [],
  });
});

test('is what its schema says', () => {
  const sheet = sheetOf(WITH_LAYOUT);
  expect(validate(StatusSheet, JSON.parse(JSON.stringify(sheet)))).toStrictEqual({
    ok: true,
    value: sheet,
  });
});
