import { describe, expect, test } from 'vitest';

import { DAYS } from '../law/example.js';
import { HOUSE, bioOf, dayAt, publicAt, sayBio } from './support.js';

const read = (body: string, day = 20): string[] => sayBio(bioOf(body, publicAt(day)));

describe('a held span', () => {
  test('is one mark until its level lifts, and its words from then on', () => {
    const body = 'A bell [is heard](held:spring) at noon.';
    expect(read(body, 79)).toEqual(['A bell ▇ at noon.']);
    expect(read(body, 80)).toEqual(['A bell is heard at noon.']);
  });

  test('is the same mark whatever its length and markup', () => {
    const marks = ['[a](held:spring)', '[a *much* longer **part**\\\nof it](held:spring)'];
    const [one, other] = marks.map((span) => bioOf(`A ${span} b.`, publicAt(20)));
    expect(one).toEqual(other);
    expect(one).toEqual([
      [
        { text: 'A ', italic: false, bold: false, hold: null, opens: null, level: 0 },
        { held: true },
        { text: ' b.', italic: false, bold: false, hold: null, opens: null, level: 0 },
      ],
    ]);
  });

  test('beside another is one mark with it, under whatever level', () => {
    expect(read('A [b](held:spring)[c](held:undated) d.')).toEqual(['A ▇ d.']);
    expect(read('A [b](held:spring)[Absent.](held:finale)[c](held:shops) d.')).toEqual(['A ▇ d.']);
  });

  test('of an embargo that is not there leaves no trace', () => {
    expect(read('A bell. [It is heard.](held:nobody-knows)')).toEqual(['A bell.']);
  });
});

describe('an absent span leaves no seam', () => {
  const gone = '[It is gone.](held:finale)';
  const cases: readonly (readonly [string, string, string[]])[] = [
    ['at the end', `A bell. ${gone}`, ['A bell.']],
    ['at the start', `${gone} A bell.`, ['A bell.']],
    ['in the middle', `A bell. ${gone} A lamp.`, ['A bell. A lamp.']],
    ['between line ends', `A bell.\n${gone}\nA lamp.`, ['A bell. A lamp.']],
    ['after a hard break', `A bell.\\\n${gone} A lamp.`, ['A bell./A lamp.']],
    ['before a hard break', `A bell. ${gone}\\\nA lamp.`, ['A bell./A lamp.']],
    ['between hard breaks', `A bell.\\\n${gone}\\\nA lamp.`, ['A bell./A lamp.']],
    ['as a last line', `A bell.\\\n${gone}`, ['A bell.']],
    ['as a whole paragraph', `A bell.\n\n${gone}\n\nA lamp.`, ['A bell.', 'A lamp.']],
    ['as a whole bio', gone, []],
    ['twice', `A bell. ${gone} ${gone} A lamp.`, ['A bell. A lamp.']],
    ['in another face', `A bell. *${gone}* A lamp.`, ['A bell. A lamp.']],
    ['inside a face', `*A bell. ${gone} A lamp.*`, ['_A bell. A lamp._']],
    ['at the end of a face', `*A bell. ${gone}* A lamp.`, ['_A bell._ A lamp.']],
    ['at the start of a face', `A bell. *${gone} A lamp.*`, ['A bell. _A lamp._']],
    ['between faces', `*A bell.* ${gone} **A lamp.**`, ['_A bell._ *A lamp.*']],
    ['in a face before a break', `*A bell. ${gone}*\\\nA lamp.`, ['_A bell._/A lamp.']],
    ['beside a mark', `A [b](held:spring). ${gone} A lamp.`, ['A ▇. A lamp.']],
  ];
  test.each(cases)('%s', (_where, body, words) => {
    expect(read(body)).toEqual(words);
  });

  test('and its words stand there once it has lifted', () => {
    expect(read(`A bell. ${gone} A lamp.`, 120)).toEqual(['A bell. It is gone. A lamp.']);
  });

  test('and the words around it are one run, as if it had never been', () => {
    const [without, cut] = ['A bell. A lamp.', `A bell. ${gone} A lamp.`];
    expect(bioOf(cut, publicAt(20))).toEqual(bioOf(without, publicAt(20)));
  });
});

test('a count is words like any other', () => {
  const [counted, plain] = ['All [sixteen](count:crew) of them.', 'All sixteen of them.'];
  expect(bioOf(counted, publicAt(20))).toEqual(bioOf(plain, publicAt(20)));
});

test('a hard break stands alone, whatever the faces beside it', () => {
  expect(bioOf('*A bell.*\\\n*A lamp.*', publicAt(20))).toEqual([
    [
      { text: 'A bell.', italic: true, bold: false, hold: null, opens: null, level: 0 },
      { text: '\n', italic: false, bold: false, hold: null, opens: null, level: 0 },
      { text: 'A lamp.', italic: true, bold: false, hold: null, opens: null, level: 0 },
    ],
  ]);
});

test('the house reads all of it, and is told what holds what', () => {
  expect(bioOf('A bell. [It is gone.](held:finale)', HOUSE)).toEqual([
    [
      { text: 'A bell. ', italic: false, bold: false, hold: null, opens: null, level: 0 },
      {
        text: 'It is gone.',
        italic: false,
        bold: false,
        hold: 'finale',
        level: 0,
        opens: dayAt(DAYS.finale),
      },
    ],
  ]);
});
