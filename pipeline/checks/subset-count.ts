import { amount } from './amount.js';
import { countSubset, spotOf, type SourceFile } from '../model/index.js';
import { sayPlanned } from './planned.js';
import type { Remark, Rule } from './rule.js';
import { edited } from './sample.js';
import type { SubsetView } from './subject.js';

const ROSTER =
  'artists:\n  - { name: Tove Lindqvist, state: signed }\n  - { name: Anselm Birk, state: withdrawn }\n';
const EXTRA =
  'numbers: { prefix: X-, from: 1, to: 1 }, bio: { words: { min: 3, max: 20 }, characters: { max: 90 } }';

/** A subset whose cards are not as many as planned, for a reason that no gap explains. */
export const subsetCount: Rule = {
  id: 'subset-count',
  about: 'counts',
  severity: 'error',
  lenientIn: ['planning'],
  why: 'What the sell sheet announces is the plan; what is printed is the cards.',
  look: ({ subsets }) => subsets.flatMap(miscountOf),
  examples: {
    passes: [
      { says: 'as many cards as planned', files: {} },
      {
        says: 'a subset without numbers that artists draw',
        files: {
          ...edited('one/plan.yaml', [
            EXTRA,
            'numbers: none, bio: none, roster: rosters/a.yaml, carries: sketch, statement: Drawn by hand.',
          ]),
          'one/cards/extra/b1.md': null,
          'one/rosters/a.yaml': ROSTER,
        },
      },
    ],
    fails: [
      {
        says: 'a subset without any card',
        files: { 'one/cards/extra/b1.md': null },
        gives: {
          at: 'one/plan.yaml:8:11',
          covers: 'extra',
          message: '`extra` has no cards at all',
          found: 'extra: 0 cards',
          expected: '1 card: X-1',
        },
      },
      {
        says: 'more artists than numbers',
        files: {
          ...edited('one/plan.yaml', [
            EXTRA,
            'numbers: { prefix: X-, from: 1, to: 1 }, bio: none, roster: rosters/a.yaml, carries: sketch, statement: Drawn by hand.',
          ]),
          'one/cards/extra/b1.md': null,
          'one/rosters/a.yaml': ROSTER.replace('withdrawn', 'asked'),
        },
        gives: {
          at: 'one/plan.yaml:8:11',
          covers: 'extra',
          message: 'the roster of `extra` has another count than its numbers',
          found: 'extra: 2 artists',
          expected: '1 card: X-1',
        },
      },
      {
        says: 'a roster and cards',
        files: {
          ...edited('one/plan.yaml', [
            EXTRA,
            'numbers: none, bio: none, roster: rosters/a.yaml, carries: sketch, statement: Drawn by hand.',
          ]),
          ...edited(
            'one/cards/extra/b1.md',
            ['X-1', 'none'],
            ['Ink, and a thumbprint of the lake.\n', ''],
          ),
          'one/rosters/a.yaml': ROSTER,
        },
        gives: {
          at: 'one/plan.yaml:8:11',
          covers: 'extra',
          message: '`extra` has both a roster and cards',
          found: 'extra: 1 artist and 1 card',
          expected: 'a roster, for cards that are drawn one by one, or a file for each card',
        },
      },
    ],
  },
};

function miscountOf(view: SubsetView): Remark[] {
  const { set, plan, at, cards, numbering } = view;
  if (numbering.unread) return [];
  const place = (): Pick<Remark, 'spot'> => ({ spot: idSpot(set.plan.source, at) });
  const planned = numbering.planned && {
    count: numbering.planned.length,
    words: `${amount(numbering.planned.length, 'card')}: ${sayPlanned(plan.numbers)}`,
  };
  if (plan.roster === undefined) {
    if (cards.length > 0 || planned?.count === 0) return [];
    if (plan.numbers !== 'none' && !planned) return [];
    return [
      {
        ...place(),
        message: `\`${plan.id}\` has no cards at all`,
        found: `${plan.id}: 0 cards`,
        expected: planned?.words ?? 'a file for each card, or a roster',
      },
    ];
  }
  if (!set.rosters.has(plan.roster)) return [];
  const artists = countSubset(set, plan.id);
  const drawn = amount(artists, 'artist');
  if (cards.length > 0) {
    return [
      {
        ...place(),
        message: `\`${plan.id}\` has both a roster and cards`,
        found: `${plan.id}: ${drawn} and ${amount(cards.length, 'card')}`,
        expected: 'a roster, for cards that are drawn one by one, or a file for each card',
      },
    ];
  }
  if (!planned || planned.count === artists) return [];
  return [
    {
      ...place(),
      message: `the roster of \`${plan.id}\` has another count than its numbers`,
      found: `${plan.id}: ${drawn}`,
      expected: planned.words,
    },
  ];
}

function idSpot(source: SourceFile, at: number): Remark['spot'] {
  return spotOf(source, ['subsets', at, 'id']);
}
