import { expect, it } from 'vitest';

import { earlierLines } from '../../pipeline/out/packet/earlier-lines.js';

const AT = '2026-12-17T09:40:00+00:00[Europe/London]';
const who = 'Amara Linde';

it('says earlier rounds at a time of the clock, with parts decided alike in one line', () => {
  const lines = [
    {
      at: '2026-12-07T10:05:00+00:00[Europe/London]',
      who,
      what: 'submitted copy in a-1',
      more: [],
    },
    { at: AT, who, what: 'copy a5f01b: rejected', more: ['Too: long.'] },
    { at: AT, who, what: 'image 4d1c5b: approved', more: [] },
    { at: AT, who, what: 'layout 67a847: approved', more: [] },
    { at: AT, who, what: 'web 0ee139: approved, entered by jonah', more: [] },
    { at: AT, who: 'Jonah Prewett', what: 'copy a5f01b: approved', more: [] },
    { at: AT, who: 'Jonah Prewett', what: 'read against cut 3', more: [] },
    { at: AT, who: 'Jonah Prewett', what: 'read against cut 3', more: [] },
    { at: 'last week', who, what: 'rejected', more: ['So.'] },
  ];
  const at = '17 December 2026, 09:40';
  expect(earlierLines(lines, 'Europe/London')).toEqual([
    { at: '7 December 2026, 10:05', who, what: 'was sent copy in a-1', more: [] },
    { at, who, what: 'copy: rejected', more: ['Too: long.'] },
    { at, who, what: 'image, layout: approved', more: [] },
    { at, who, what: 'web: approved, entered by jonah', more: [] },
    { at, who: 'Jonah Prewett', what: 'copy: approved', more: [] },
    { at, who: 'Jonah Prewett', what: 'read against cut 3', more: [] },
    { at, who: 'Jonah Prewett', what: 'read against cut 3', more: [] },
    { at: 'last week', who, what: 'rejected', more: ['So.'] },
  ]);
});
