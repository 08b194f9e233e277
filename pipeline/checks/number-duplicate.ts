import { numberOf, spotOf, type Card, type CardSet } from '../model/index.js';
import { standingIn } from './numbering.js';
import { ofCard, type Remark, type Rule } from './rule.js';

/** Two cards of one set under one number, of those whose number their plan knows. */
export const numberDuplicate: Rule = {
  id: 'number-duplicate',
  about: 'numbers',
  severity: 'error',
  why: 'A number that two cards bear makes the checklist wrong and cannot be mended after press.',
  look: (subject) => subject.sets.flatMap(duplicatesOf),
  examples: {
    passes: [
      { says: 'each number once', files: {} },
      {
        says: 'a variation, told apart by its letter',
        files: {
          'one/cards/base/a1b.md':
            '---\nnumber: "1"\nname: The Quay\nspoiler: open\nvariation: { of: base/a1, letter: b, tell: The tide is out }\n---\nThe quay stands dry.\n',
        },
      },
    ],
    fails: [
      {
        says: 'a second card 1',
        files: {
          'one/cards/base/a2.md':
            '---\nnumber: "1"\nname: The Lamp\nspoiler: open\nstory: 1/4\n---\nA lamp.\n',
        },
        gives: {
          at: 'one/cards/base/a2.md:2:9',
          covers: '"1"',
          message: 'card base/a1 has the number 1 too',
          found: '1',
          expected: 'a number of its own, or `variation` if it is the same card told apart',
          related: ['one/cards/base/a1.md:2:9 the first card of that number'],
        },
      },
    ],
  },
};

function duplicatesOf(set: CardSet): Remark[] {
  const standings = new Map(
    set.plan.value.subsets.map((subset) => [subset.id, standingIn(subset.numbers)]),
  );
  const first = new Map<string, Card>();
  return set.cards.flatMap((card) => {
    const number = numberOf(card);
    if (number === null || standings.get(card.subset)?.(card) !== 'planned') return [];
    const key = `${number}/${card.front.variation?.letter ?? ''}`;
    const earlier = first.get(key);
    if (!earlier) {
      first.set(key, card);
      return [];
    }
    return [
      {
        ...ofCard(card),
        spot: spotOf(card.source, ['number']),
        message: `card ${earlier.subset}/${earlier.id} has the number ${number} too`,
        found: number,
        expected: 'a number of its own, or `variation` if it is the same card told apart',
        related: [
          { message: 'the first card of that number', spot: spotOf(earlier.source, ['number']) },
        ],
      },
    ];
  });
}
