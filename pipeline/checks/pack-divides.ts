import { isIssued, spotOf, type CardSet } from '../model/index.js';
import { packedOf } from './packed/plan.js';
import { packedRemarks } from './packed/remarks.js';
import { packedWith } from './packed/sample.js';
import { ofCard, type Remark, type Rule } from './rule.js';
import type { Subject } from './subject.js';

const VARIED =
  '---\nnumber: "1"\nname: The Quay\nspoiler: open\nvariation: { of: base/a1, letter: b, tell: The tide is out }\n---\nThe quay stands dry.\n';

/** Copies that come out in parts, or are not as many as the plan says. */
export const packDivides: Rule = {
  id: 'pack-divides',
  about: 'packs',
  severity: 'error',
  why: 'Half a card is never printed: where copies do not come out, some card is rarer than it is said to be.',
  look: (subject) => [...packedRemarks(subject, 'pack-divides'), ...uncounted(subject)],
  examples: {
    passes: [
      {
        says: 'as many copies as the plan states',
        files: packedWith(['group: base, numbers', 'group: base, copies: 15, numbers']),
      },
      {
        says: 'a variation that takes some of its parent’s copies',
        files: {
          ...packedWith(),
          'one/cards/base/a1b.md': VARIED.replace('---\nThe', 'run: 5\n---\nThe'),
        },
      },
    ],
    fails: [
      {
        says: 'base cards that do not come out even',
        files: packedWith(['{ of: extra, odds: 2 }', '{ of: extra, copies: 11, odds: 2 }']),
        gives: {
          at: 'one/plan.yaml:7:11',
          covers: 'base',
          message:
            '29 copies of base cards do not divide among 2 cards: 14 of each leave 1 over, and 1 more would divide',
          found: 'base',
          expected: '1 fewer or 1 more',
        },
      },
      {
        says: 'other copies than the plan states',
        files: packedWith(['group: base, numbers', 'group: base, copies: 14, numbers']),
        gives: {
          at: 'one/plan.yaml:7:51',
          covers: '14',
          message:
            'the packs leave 30 places for base cards, but 14 of each of 2 cards are 28: 2 too many',
          found: '14',
          expected: '15',
        },
      },
      {
        says: 'odds that give parts of a card',
        files: packedWith(['odds: 2', 'odds: 3']),
        gives: {
          at: 'one/plan.yaml:19:28',
          covers: '3',
          message:
            '`Hobby`: 1:3 of 20 packs is 6 2/3 copies of Extra, which is no whole number; 1:2 and 1:4 would be',
          found: '3',
          expected: 'odds that divide the packs, or copies',
        },
      },
      {
        says: 'a variation that does not say how many there are',
        files: { ...packedWith(), 'one/cards/base/a1b.md': VARIED },
        gives: {
          at: 'one/cards/base/a1b.md:5:18',
          covers: 'base/a1',
          message: 'nothing says how many copies of its parent’s this variation takes',
          found: 'no `run`',
          expected: '`run`: copies of this card',
          severity: 'warning',
        },
      },
    ],
  },
};

function uncounted({ sets }: Subject): readonly Remark[] {
  return sets.flatMap((set) => (packedOf(set) === null ? [] : uncountedIn(set)));
}

/** Variations of cards that are packed and have no number of their own. */
function uncountedIn(set: CardSet): readonly Remark[] {
  const packed = packedOf(set);
  const inPacks = new Set([
    ...(packed?.plan.entries ?? []).map(({ kind }) => kind),
    ...(packed?.plan.kinds ?? []).filter(({ base }) => base === true).map(({ id }) => id),
  ]);
  return set.cards.flatMap((card): readonly Remark[] => {
    const { variation, run } = card.front;
    if (variation === undefined || run !== undefined) return [];
    if (!isIssued(card) || !inPacks.has(card.subset)) return [];
    return [
      {
        spot: spotOf(card.source, ['variation', 'of']),
        message: 'nothing says how many copies of its parent’s this variation takes',
        found: 'no `run`',
        expected: '`run`: copies of this card',
        severity: 'warning',
        ...ofCard(card),
      },
    ];
  });
}
