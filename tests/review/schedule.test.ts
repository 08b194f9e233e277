import { describe, expect, test } from 'vitest';

import { sampleWith, type Files } from '../../pipeline/checks/index.js';
import { edited } from '../../pipeline/checks/sample.js';
import { memoryFolder, readContent } from '../../pipeline/read/index.js';
import { earlierThanSeen, scheduleSeen, type SeenSchedule } from '../../pipeline/review/index.js';

const FRONT = `---
number: "2"
name: The Lamp
spoiler: later
holds: { image: last }
---
A lamp that [nobody lit](held:last) is burning.
`;
const WITH: Files = { 'one/cards/base/a2.md': FRONT };

function seen(files: Files): SeenSchedule {
  const { property, sets } = readContent(memoryFolder(sampleWith({ ...WITH, ...files })));
  const [set] = sets;
  const card = set?.cards.find(({ id }) => id === 'a2');
  if (!property || !set || !card) throw new Error('the sample can be read');
  return scheduleSeen(property.value, set.plan.value, card);
}

const property = (from: string, to: string): Files => edited('property.yaml', [from, to]);
const plan = (from: string, to: string): Files => edited('one/plan.yaml', [from, to]);
const card = (from: string, to: string): Files => ({
  'one/cards/base/a2.md': FRONT.replace(from, () => to),
});

describe('a decision holds only while nothing opens, shows or ships earlier', () => {
  test.each<[string, Files, readonly string[]]>([
    ['nothing', {}, []],
    ['a lift later', property('2027-04-16T20:00:00', '2027-04-17T20:00:00'), []],
    ['a lift earlier', property('2027-04-16T20:00:00', '2027-04-15T20:00:00'), ['card']],
    [
      'the last lift earlier',
      property('2027-06-04T20:00:00', '2027-06-03T20:00:00'),
      ['field image', 'words nobody lit'],
    ],
    [
      'a placeholder where there was no trace',
      property(', held: absent', ''),
      ['field image', 'words nobody lit'],
    ],
    ['the card at a lower level', card('spoiler: later', 'spoiler: open'), ['card']],
    ['the card at a higher level', card('spoiler: later', 'spoiler: last'), []],
    ['a field that is no longer held', card('holds: { image: last }\n', ''), ['field image']],
    ['a field that is held as well', card('image: last', 'image: last, name: last'), []],
    [
      'words that are no longer held',
      card('[nobody lit](held:last)', 'nobody lit'),
      ['words nobody lit'],
    ],
    [
      'fewer words held',
      card('[nobody lit](held:last)', '[nobody](held:last) lit'),
      ['words nobody lit'],
    ],
    ['an embargo more', card('spoiler: later', 'spoiler: later\nembargo: [guest]'), []],
    ['a street date earlier', plan('2027-06-05T09', '2027-06-04T09'), ['in hands']],
    ['a street date later', plan('2027-06-05T09', '2027-06-06T09'), []],
    [
      'its own date in hands, earlier',
      card('---\nA', 'ships: "2027-05-01T09:00:00+01:00[Europe/London]"\n---\nA'),
      ['in hands'],
    ],
    [
      'a site that shows bios',
      property('approvals: none', 'approvals: none\nsite: { shows: { bio: full } }'),
      ['site bio front'],
    ],
  ])('%s', (_, files, earlier) => {
    expect(earlierThanSeen(seen({}), seen(files))).toEqual(earlier);
  });
});
