import type { Subset } from '../../schema/index.js';
import { identityOf, isVariation, spotOf, type Card } from '../model/index.js';
import { looseForm } from './numbering.js';
import { numbersKey, sayPlanned } from './planned.js';
import { ofCard, type Remark, type Rule } from './rule.js';
import { edited } from './sample.js';
import type { Subject, SubsetView } from './subject.js';

/** A number that is not written as its subset writes numbers, or not as its parent's is. */
export const numberForm: Rule = {
  id: 'number-form',
  about: 'numbers',
  severity: 'error',
  why: 'X-01 and X-1 are two cards to a checklist, a search and a want list.',
  look: (subject) => [...subject.subsets.flatMap(malformed), ...otherThanParent(subject)],
  examples: {
    passes: [{ says: 'numbers as the plan writes them', files: {} }],
    fails: [
      {
        says: 'a zero in front',
        files: edited('one/cards/extra/b1.md', ['X-1', 'X-01']),
        gives: {
          at: 'one/cards/extra/b1.md:2:9',
          covers: 'X-01',
          message: 'the number X-01 is not written as those of `extra` are',
          found: 'X-01',
          expected: 'X-1',
          fix: 'X-1',
          certain: true,
        },
      },
      {
        says: 'no number where the subset has numbers',
        files: edited('one/cards/extra/b1.md', ['X-1', 'none']),
        gives: {
          at: 'one/cards/extra/b1.md:2:9',
          covers: 'none',
          message: 'this card has no number, and `extra` has numbers',
          found: 'none',
          expected: 'X-1',
        },
      },
      {
        says: 'a number where the subset has none',
        files: edited('one/plan.yaml', [
          'numbers: { prefix: X-, from: 1, to: 1 }',
          'numbers: none',
        ]),
        gives: {
          at: 'one/cards/extra/b1.md:2:9',
          covers: 'X-1',
          message: 'this card has a number, and `extra` has none',
          found: 'X-1',
          expected: 'none',
          fix: 'none',
        },
      },
      {
        says: 'a prefix that no card bears: told once',
        files: edited('one/plan.yaml', ['from: 1, to: 2', 'prefix: B-, from: 1, to: 2']),
        gives: {
          at: 'one/plan.yaml:7:66',
          covers: 'from',
          message: 'no card of `base` has a number as the plan writes them',
          expected: 'B-1 to B-2',
          related: ['one/cards/base/a1.md:2:9 card 1', 'one/cards/base/a2.md:2:9 card 2'],
        },
      },
      {
        says: 'a variation with a number of its own',
        files: {
          'one/cards/base/a1b.md':
            '---\nnumber: "3"\nname: The Quay\nspoiler: open\nvariation: { of: base/a1, letter: b, tell: The tide is out }\n---\nThe quay stands dry.\n',
        },
        gives: {
          at: 'one/cards/base/a1b.md:2:9',
          covers: '"3"',
          message: 'this variation of base/a1 has another number than it',
          found: '3',
          expected: '1',
          fix: '1',
        },
      },
    ],
  },
};

/** Where no card of a subset is numbered as planned, the plan is told of, and not each card. */
function malformed(view: SubsetView): Remark[] {
  const { set, plan, at, cards, numbering } = view;
  const wrong = numbering.malformed;
  if (wrong.length < 2 || wrong.length < cards.filter((card) => !isVariation(card)).length) {
    return wrong.map((card) => malformedOf(card, plan));
  }
  const inPlan = plan.numbers === 'none' ? [] : [numbersKey(plan)];
  return [
    {
      spot: spotOf(set.plan.source, ['subsets', at, 'numbers', ...inPlan], 'key'),
      message: `no card of \`${plan.id}\` has a number as the plan writes them`,
      expected: sayPlanned(plan.numbers),
      related: wrong.map(({ source, front }) => ({
        message: `card ${front.number}`,
        spot: spotOf(source, ['number']),
      })),
    },
  ];
}

function malformedOf(card: Card, plan: Subset): Remark {
  const number = card.front.number;
  const fix = wellFormed(number, plan.numbers);
  return {
    ...ofCard(card),
    spot: spotOf(card.source, ['number']),
    message: wording(number, plan),
    found: number,
    expected: fix ?? sayPlanned(plan.numbers),
    ...(fix === null ? {} : { fix }),
    ...(fix !== null && looseForm(fix) === looseForm(number) ? { certain: true } : {}),
  };
}

function wording(number: string, plan: Subset): string {
  if (plan.numbers === 'none') return `this card has a number, and \`${plan.id}\` has none`;
  if (number === 'none') return `this card has no number, and \`${plan.id}\` has numbers`;
  return `the number ${number} is not written as those of \`${plan.id}\` are`;
}

/** What was meant, if that can be told. */
function wellFormed(number: string, numbers: Subset['numbers']): string | null {
  if (numbers === 'none') return 'none';
  if (number === 'none') return null;
  if ('codes' in numbers) {
    return numbers.codes.find((code) => looseForm(code) === looseForm(number)) ?? null;
  }
  const digits = /(\d{1,9})\s*$/.exec(number)?.[1];
  const running = Number(digits);
  if (digits === undefined || running < numbers.from || running > numbers.to) return null;
  return `${numbers.prefix ?? ''}${running}`;
}

/** Variations bear the number of their parent, unless something is wrong with that one. */
function otherThanParent({ sets, subsets }: Subject): Remark[] {
  return sets.flatMap((set) => {
    const variations = set.cards.filter(isVariation);
    if (variations.length === 0) return [];
    const sure = surelyNumbered(subsets.filter((view) => view.set === set));
    return variations.flatMap((card) => {
      const number = sure.get(card.front.variation?.of ?? '');
      return number === undefined || number === card.front.number
        ? []
        : [unlikeParent(card, number)];
    });
  });
}

/** The numbers of cards that are planned, and borne by one card alone. */
function surelyNumbered(subsets: readonly SubsetView[]): ReadonlyMap<string, string> {
  const bearers = new Map<string, Card[]>();
  for (const { cards, numbering } of subsets) {
    const wrong = new Set([...numbering.malformed, ...numbering.outside]);
    for (const card of cards) {
      if (isVariation(card) || wrong.has(card)) continue;
      bearers.set(card.front.number, [...(bearers.get(card.front.number) ?? []), card]);
    }
  }
  return new Map(
    [...bearers].flatMap(([number, [card, ...others]]) =>
      card && (others.length === 0 || number === 'none') ? [[identityOf(card), number]] : [],
    ),
  );
}

function unlikeParent(card: Card, number: string): Remark {
  return {
    ...ofCard(card),
    spot: spotOf(card.source, ['number']),
    message: `this variation of ${card.front.variation?.of ?? ''} has another number than it`,
    found: card.front.number,
    expected: number,
    fix: number,
  };
}
