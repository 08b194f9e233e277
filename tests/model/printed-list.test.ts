import { describe, expect, test } from 'vitest';

import { cardHold, printedList, scheduleOf, type CardSet } from '../../pipeline/model/index.js';
import type { Files } from '../../pipeline/checks/index.js';
import { contentWith } from '../checks/look.js';
import { changed, cardText } from '../checks/change.js';

const PLAN = changed('one/plan.yaml', [
  [
    'totals:',
    `  - { id: signs, title: Signatures, group: autographs, numbers: { codes: [SG-1] }, bio: none }
  - { id: hidden, title: The Last Door, group: extras, numbers: { codes: [LD-1] }, spoiler: last }
  - { id: drawn, title: Sketch Cards, group: sketches, numbers: none, roster: rosters/x.yaml }
  - { id: list, title: Checklist, group: base, numbers: { from: 3, to: 3 }, bio: none, list: set }
parallels:
  - { id: tarred, title: Tarred, of: [base] }
  - { id: keel, title: Keel, of: [base], run: 1 }
  - { id: quiet, title: Quiet, of: [base], run: 9, spoiler: later }
totals:`,
  ],
]);

const card = (number: string, more = ''): string =>
  cardText(`number: "${number}"\nname: Somebody\nspoiler: open\n${more}`);

const FILES: Files = {
  ...PLAN,
  'one/rosters/x.yaml': 'artists:\n  - { name: Tove Lindqvist, state: signed }\n',
  'one/cards/signs/s1.md': card('SG-1', 'bio: none\n'),
  'one/cards/hidden/h1.md': card('LD-1'),
  'one/cards/list/l1.md': card('3', 'bio: none\n'),
};

/** The printed list of the sample, as text. */
function listed(files: Files): string[] {
  const content = contentWith(files);
  const set: CardSet | undefined = content.sets[0];
  const own = set?.cards.find(({ subset }) => subset === 'list');
  if (!content.property || !set || !own) throw new Error('the sample can be read');
  const schedule = scheduleOf(content.property.value);
  const lines = printedList(schedule, set, cardHold(schedule, set.plan.value, own));
  return lines.map(({ figures, title }) => `${figures ?? '-'} | ${title}`);
}

describe('a printed checklist', () => {
  test('names subsets with their numbers, then parallels, and nothing that opens later', () => {
    expect(listed(FILES)).toEqual([
      '1 – 2 | Base',
      'X-1 | Extra',
      '- | Signatures',
      '- | Sketch Cards',
      '3 | Checklist',
      '- | Tarred',
      '1 of each | Keel',
    ]);
  });

  test('ends a range before cards that leave no trace', () => {
    const last = { ...FILES, 'one/cards/base/a2.md': card('2').replace('open', 'last') };
    expect(listed(last)).toContain('1 | Base');
  });

  test('has a placeholder’s number, which shows anyhow', () => {
    const later = { ...FILES, 'one/cards/base/a2.md': card('2').replace('open', 'later') };
    expect(listed(later)).toContain('1 – 2 | Base');
  });

  test('leaves out what is not issued', () => {
    const pulled = { ...FILES, 'one/cards/base/a2.md': card('2', 'issued: "no"\n') };
    expect(listed(pulled)).toContain('1 | Base');
  });

  test('does not tell of a pulled card or a number what is held longer', () => {
    const pulled = card('2', 'issued: "no"\nholds: { issued: later }\n');
    expect(listed({ ...FILES, 'one/cards/base/a2.md': pulled })).toContain('1 – 2 | Base');
    const numbered = card('2', 'holds: { number: later }\n');
    expect(listed({ ...FILES, 'one/cards/base/a2.md': numbered })).toContain('1 | Base');
  });

  test('that opens late may name what has opened by then', () => {
    const late = { ...FILES, 'one/cards/list/l1.md': card('3').replace('open', 'later') };
    expect(listed(late)).toContain('9 of each | Quiet');
    expect(listed(late)).not.toContain('- | The Last Door');
  });
});
