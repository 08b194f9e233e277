import {
  isVariation,
  openingsOf,
  runningNumber,
  spotOf,
  type Card,
  type Instant,
} from '../model/index.js';
import { foldNumbers } from './fold-numbers.js';
import { ofCard, type Remark, type Rule } from './rule.js';
import { edited } from './sample.js';
import type { Subject, SubsetView } from './subject.js';

/** Cards without a trace whose numbers are missed, because a number above them shows. */
export const absentGap: Rule = {
  id: 'absent-gap',
  about: 'spoilers',
  severity: 'error',
  acceptable: false,
  why: 'A number that the list skips tells that something is held, and how much.',
  look: (subject) => subject.subsets.flatMap((view) => gapIn(view, subject)),
  examples: {
    passes: [
      {
        says: 'the last number leaves no trace',
        files: edited('one/cards/base/a2.md', ['spoiler: open', 'spoiler: last']),
      },
      {
        says: 'a whole subset leaves none',
        files: edited('one/plan.yaml', ['group: inserts,', 'group: inserts, spoiler: last,']),
      },
    ],
    fails: [
      {
        says: 'a first number that leaves none',
        files: edited('one/cards/base/a1.md', ['spoiler: open', 'spoiler: last']),
        gives: {
          at: 'one/cards/base/a1.md:4:10',
          covers: 'last',
          message: 'the number 1 leaves no trace while 2 shows',
          expected: 'the last numbers of the range, or all of `base`',
          related: ['one/cards/base/a2.md:2:9 this number shows before'],
        },
      },
    ],
  },
};

interface Numbered {
  readonly card: Card;
  readonly running: number;
  /** When it last leaves no trace; before all time for a card that always leaves one. */
  readonly until: Instant;
}

/** Until when a card is absent must not fall from one number to the next: then no gap ever shows. */
function gapIn({ plan, cards }: SubsetView, subject: Subject): Remark[] {
  const { numbers } = plan;
  if (numbers === 'none' || 'codes' in numbers) return [];
  const numbered = numberedCards(cards, numbers.prefix ?? '', subject);
  let shown: Numbered | undefined;
  const gaps: Numbered[] = [];
  for (const candidate of numbered.toReversed()) {
    if (shown && candidate.until > shown.until) gaps.unshift(candidate);
    else shown = candidate;
  }
  const [first] = gaps;
  const shows = numbered.find(
    ({ until, running }) => first && until < first.until && running > first.running,
  );
  if (!first || !shows) return [];
  const absent = gaps.map(({ card }) => card.front.number);
  const known = cards.map(({ front }) => front.number);
  return [
    {
      ...ofCard(first.card),
      spot: spotOf(first.card.source, ['spoiler']),
      message: `the number${gaps.length > 1 ? 's' : ''} ${foldNumbers(absent, known)} leave${gaps.length > 1 ? '' : 's'} no trace while ${shows.card.front.number} shows`,
      expected: `the last numbers of the range, or all of \`${plan.id}\``,
      related: [
        { message: 'this number shows before', spot: spotOf(shows.card.source, ['number']) },
      ],
    },
  ];
}

function numberedCards(cards: readonly Card[], prefix: string, subject: Subject): Numbered[] {
  return cards
    .flatMap((card) => {
      const running = runningNumber(card.front.number, prefix);
      const until = absentUntil(card, subject);
      return running === null || until === null || isVariation(card)
        ? []
        : [{ card, running, until }];
    })
    .sort((a, b) => a.running - b.running);
}

/** Null if the card names a level or an embargo that is not there. */
function absentUntil(card: Card, { holds, schedule }: Subject): Instant | null {
  const hold = holds.get(card);
  if (!hold) return null;
  const absent = openingsOf(schedule, hold).filter((opening) => opening.absent);
  return Math.max(-Infinity, ...absent.map((opening) => opening.lift));
}
