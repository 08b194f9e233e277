import { describe, expect, test } from 'vitest';

import { whole, workOut, type Entry, type ReleasePlan } from '../../pipeline/packs/index.js';
import { cardsOf, ENTRIES, HOBBY, KINDS, RETAIL, smallPlan } from './small.js';

const { base, charts, relics, varnished, signatures, blanks } = KINDS;
const charge = (kind: keyof typeof ENTRIES, amount: Entry['amount']): Entry => ({
  ...ENTRIES[kind],
  amount,
});
const copies = (kind: keyof typeof ENTRIES, of: number): Entry =>
  charge(kind, { by: 'copies', copies: of });
const inRetail = (kind: string, amount: Entry['amount']): Entry => ({
  product: 'retail',
  kind,
  amount,
});
const withEntries = (...more: readonly Entry[]): ReleasePlan['entries'] => [
  ...Object.values(ENTRIES),
  ...more,
];

test('the plan itself comes out', () => {
  const report = workOut(smallPlan());
  expect(report.problems).toEqual([]);
  expect(report.kinds[0]?.cards.map(({ made }) => made)).toEqual([whole(50)]);
  // Two blanks take four places and are no cards; a relic takes four places and is one card.
  expect(report.totals).toMatchObject({ places: 600, taken: 100, base: 500, cards: 578 });
});

/** Each plan with everything that is said against it. */
const IMPOSSIBLE: readonly (readonly [string, ReleasePlan, readonly string[]])[] = [
  [
    'more places taken than there are',
    smallPlan({ entries: { relics: copies('relics', 120), blanks: copies('blanks', 32) } }),
    [
      'Hobby: 32 copies of blanks take 64 places, but 48 are left; all lines together take 16 too many.',
    ],
  ],
  [
    'a line for which nothing is left',
    smallPlan({ entries: { relics: copies('relics', 150) } }),
    [
      'Hobby: 150 copies of Timber Relics take 600 places, but 570 are left; all lines together take 76 too many.',
      'Hobby: a pack holds 1 of the cards that take 4 places or more, 120 in all, but there are 150.',
    ],
  ],
  [
    'places that nothing fills',
    smallPlan({ plan: { products: [{ ...HOBBY, rest: 'none' }] } }),
    [
      'Hobby: 500 of 600 places stay empty, and no base cards go in them.',
      'No place in any pack is left for base cards.',
    ],
  ],
  [
    'a card that is thicker than a pack',
    smallPlan({
      kinds: { relics: { ...relics, places: 6 } },
      entries: { blanks: copies('blanks', 4), relics: copies('relics', 6) },
    }),
    [
      'Hobby: one card of Timber Relics takes 6 places, but a pack has 5.',
      '484 copies of base cards do not divide among 10 cards: 48 of each leave 4 over, and 6 more would divide.',
    ],
  ],
  [
    'odds that give parts of a copy',
    smallPlan({ entries: { charts: charge('charts', { by: 'odds', packs: 7 }) } }),
    [
      'Hobby: 1:7 of 120 packs is 17 1/7 copies of Lake Charts, which is no whole number; 1:6 and 1:8 would be.',
      '17 copies of Lake Charts do not divide among 6 cards: 2 of each leave 5 over, and 1 more would divide.',
      '513 copies of base cards do not divide among 10 cards: 51 of each leave 3 over, and 7 more would divide.',
    ],
  ],
  [
    'copies that do not divide among the cards',
    smallPlan({ entries: { signatures: copies('signatures', 2) } }),
    [
      '2 copies of Signatures do not divide among 4 cards: 0 of each leave 2 over, and 2 more would divide.',
    ],
  ],
  [
    'what is left that does not divide among base cards',
    smallPlan({ entries: { blanks: copies('blanks', 1) } }),
    [
      '502 copies of base cards do not divide among 10 cards: 50 of each leave 2 over, and 8 more would divide.',
    ],
  ],
  [
    'base cards by weight that do not divide',
    smallPlan({
      kinds: {
        base: {
          ...base,
          cards: base.cards.map((card, at) => ({ ...card, weight: at < 2 ? 2 : 1 })),
        },
      },
    }),
    [
      '500 copies of base cards do not divide among 12 shares: 41 of each leave 8 over, and 4 more would divide.',
    ],
  ],
  [
    'copies that should be the same in each case',
    smallPlan({
      entries: { charts: { ...charge('charts', { by: 'copies', copies: 30 }), even: 'box' } },
    }),
    ['Hobby: 30 copies of Lake Charts do not divide among 12 boxes: 2 in each leave 6 over.'],
  ],
  [
    'short prints with more copies than there are',
    smallPlan({
      kinds: {
        charts: {
          ...charts,
          cards: charts.cards.map((card, at) =>
            at === 0 ? { ...card, copies: 31, shortPrint: 'SSP' } : card,
          ),
        },
      },
    }),
    ['The cards of Lake Charts with copies of their own come to 31, but 30 are packed.'],
  ],
  [
    'a variation that takes more than its parent has',
    smallPlan({
      kinds: {
        base: {
          ...base,
          cards: [...base.cards, { id: '1b', label: '1 b', variationOf: '1', copies: 51 }],
        },
      },
    }),
    ['Ferries: the variations of 1 take 1 copy more than it has.'],
  ],
  [
    'copies that are stated and do not come out',
    smallPlan({ kinds: { base: { ...base, stated: 49 }, charts: { ...charts, stated: 6 } } }),
    [
      'Ferries: the plan states 49 copies of each card, but what is packed and kept comes to 50 of each.',
      'Lake Charts: the plan states 6 copies of each card, but what is packed and kept comes to 5 of each.',
    ],
  ],
  [
    'copies of one card that are stated and do not come out',
    smallPlan({
      kinds: {
        base: {
          ...base,
          cards: base.cards.map((card, at) => (at === 6 ? { ...card, stated: 51 } : card)),
        },
      },
    }),
    ['Ferries: the plan states 51 copies of 7, but what is packed and kept comes to 50.'],
  ],
  [
    'a promised run that is not all packed',
    smallPlan({ entries: { varnished: copies('varnished', 20) } }),
    [
      'Varnished: 3 of each of 10 cards are promised, 30 in all, but 20 are packed and 0 kept in reserve: 10 go nowhere.',
    ],
  ],
  [
    'more packed than the run that is promised',
    smallPlan({ entries: { varnished: copies('varnished', 40) } }),
    [
      'Varnished: 3 of each of 10 cards are promised, 30 in all, but 40 are packed and 0 kept in reserve: that is 10 too many.',
    ],
  ],
  [
    'a run that does not divide between products by their packs',
    smallPlan({
      kinds: { varnished: { ...varnished, cards: varnished.cards.slice(0, 9) } },
      plan: {
        products: [HOBBY, RETAIL],
        entries: withEntries(inRetail('varnished', { by: 'run' })),
      },
    }),
    [
      'Hobby: its part of the run of Varnished, by packs, is 16 1/5 copies, which is no whole number; say how many go in it.',
      'Retail: its part of the run of Varnished, by packs, is 10 4/5 copies, which is no whole number; say how many go in it.',
      '26 copies of Varnished do not divide among 9 cards: 2 of each leave 8 over, and 1 more would divide.',
      '904 copies of base cards do not divide among 10 cards: 90 of each leave 4 over, and 6 more would divide.',
      'Varnished: 3 of each of 9 cards are promised, 27 in all, but 26 are packed and 0 kept in reserve: 1 goes nowhere.',
    ],
  ],
  [
    'a reserve beyond the run',
    smallPlan({
      kinds: { varnished: { ...varnished, reserve: 4 } },
      entries: { varnished: copies('varnished', 30) },
    }),
    [
      'Varnished: 4 of each are kept in reserve, but the run is 3 of each.',
      'Varnished: keeping 4 of 7 copies of each card in reserve is more than 5 %.',
    ],
  ],
  [
    'a guarantee without the copies for it',
    smallPlan({
      plan: {
        guarantees: [
          { product: 'hobby', kinds: ['signatures', 'relics', 'blanks'], atLeast: 2, per: 'box' },
        ],
      },
    }),
    [
      'Hobby promises at least 2 of Signatures or Timber Relics or blanks a box, 24 in all, but 18 are packed.',
    ],
  ],
  [
    'published odds that are better than the truth',
    smallPlan({ plan: { published: [{ product: 'hobby', kind: 'relics', packs: 19 }] } }),
    [
      'Hobby: 1:19 packs for Timber Relics is better than the truth, which is 6 copies in 120 packs: at best 1:20 may be said.',
    ],
  ],
  [
    'published odds of what is in no pack',
    smallPlan({
      plan: {
        entries: Object.values(ENTRIES).filter(({ kind }) => kind !== 'blanks'),
        kinds: Object.values({ ...KINDS, base: { ...base, cards: cardsOf('', 8) } }),
        published: [{ product: 'hobby', kind: 'blanks', packs: 19 }],
      },
    }),
    ['Hobby: 1:19 packs for blanks is said, but it has none.'],
  ],
  [
    'a redemption without its card, dates or pack',
    smallPlan({
      plan: {
        redemptions: [
          { found: 'SG-4', standsFor: [], ships: null, expires: null },
          { found: 'LD-1', standsFor: ['LD-9'], ships: '2027-06-05', expires: '2027-06-31' },
          { found: 'charts', standsFor: ['SG-1'], ships: '2027-06-05', expires: '2027-06-04' },
          { found: 'charts', standsFor: ['SG-1'], ships: '2028-02-29', expires: '2100-02-29' },
          { found: 'charts', standsFor: ['SG-1'], ships: '2027-00-10', expires: '5 June 2027' },
        ],
      },
    }),
    [
      'Signatures, SG-4: nothing says which card is sent for a redemption.',
      'Signatures, SG-4: a redemption must say when the card is sent.',
      'Signatures, SG-4: a redemption must say until when it is taken, or that it never ends.',
      'The redemption “LD-1” is in no pack: nothing of that name is packed.',
      'LD-1: a redemption stands for “LD-9”, and no such card is issued.',
      'LD-1: “2027-06-31” is no day; it is written as 2027-06-05.',
      'Lake Charts: a redemption ends on 2027-06-04, before the card is sent on 2027-06-05.',
      'Lake Charts: “2100-02-29” is no day; it is written as 2027-06-05.',
      'Lake Charts: “2027-00-10” is no day; it is written as 2027-06-05.',
      'Lake Charts: “5 June 2027” is no day; it is written as 2027-06-05.',
    ],
  ],
  [
    'fewer sheets ordered than the copies need',
    smallPlan({ kinds: { base: { ...base, sheet: { columns: 4, rows: 3, ordered: 49 } } } }),
    [
      'Ferries: the sheets that are ordered give 49 copies of 1, 1 too few; 50 sheets of a form are needed.',
    ],
  ],
  [
    'figures that are no counts',
    smallPlan({
      kinds: { relics: { ...relics, places: 0 }, varnished: { ...varnished, run: 2.5 } },
      entries: {
        charts: charge('charts', { by: 'odds', packs: 0 }),
        relics: copies('relics', -6),
        signatures: charge('signatures', { by: 'box', copies: NaN }),
      },
      plan: { products: [{ ...HOBBY, cases: 1e13 }] },
    }),
    [
      'Hobby: cases must be at most 1,000,000,000,000, and is 10000000000000.',
      'Timber Relics: places that a card takes must be a whole number from 1 on, and is 0.',
      'Varnished: the run of each card must be a whole number from 1 on, and is 2.5.',
      'Hobby: the N of 1:N packs for Lake Charts must be a whole number from 1 on, and is 0.',
      'Hobby: copies of Timber Relics must be a whole number from 1 on, and is -6.',
      'Hobby: copies a box of Signatures must be a whole number from 1 on, and is NaN.',
    ],
  ],
  [
    'more than can be counted',
    smallPlan({
      entries: { signatures: charge('signatures', { by: 'box', copies: 1e12 }) },
      plan: { products: [{ ...HOBBY, packsABox: 1e9, boxesACase: 1e9 }] },
    }),
    [
      'Hobby has more than 1,000,000,000,000 places.',
      'Hobby: Signatures take more than 1,000,000,000,000 places.',
    ],
  ],
  [
    'names that are not known, and what is said twice',
    smallPlan({
      kinds: { blanks: { ...blanks, id: 'relics' } },
      plan: {
        entries: [
          ENTRIES.charts,
          ENTRIES.charts,
          { product: 'hobby', kind: 'base', amount: { by: 'copies', copies: 2 } },
          { product: 'shop', kind: 'bells', amount: { by: 'copies', copies: 2 } },
          { product: 'hobby', kind: 'signatures', amount: { by: 'run' } },
        ],
      },
    }),
    [
      'There are two kinds of cards “relics”.',
      'Lake Charts are entered twice for Hobby.',
      'Ferries are base cards, which are the rest of each pack: Hobby cannot say how many.',
      'Signatures go in Hobby by their run, but none is stated.',
      'There is no product “shop”.',
      'There is no kind of cards “bells”.',
    ],
  ],
  [
    'cards that cannot be',
    smallPlan({
      kinds: {
        charts: { ...charts, cards: [] },
        signatures: {
          ...signatures,
          sheet: { columns: 2, rows: 2, doubled: ['SG-9'] },
          cards: [
            ...cardsOf('SG-', 1),
            ...cardsOf('SG-', 1),
            { id: 'b', label: 'b', variationOf: 'a' },
          ],
        },
        varnished: { ...varnished, cards: [{ id: 'v', label: 'v 1', weight: 2 }] },
      },
    }),
    [
      'Varnished, v 1: a run is the same for each card, so that no card of it has copies or a weight of its own.',
      'Signatures have “SG-1” twice.',
      'Signatures, b shares the copies of “a”, which is no card of Signatures.',
      'Signatures, b is a variation, and nothing says how many of its parent’s copies it takes.',
      'Signatures: “SG-9” stands twice on the sheet, and there is no such card.',
      'Lake Charts go in Hobby, but none is issued.',
    ],
  ],
];

describe('what is impossible', () => {
  test.each(IMPOSSIBLE)('%s', (_, plan, messages) => {
    const { problems } = workOut(plan);
    expect(problems.map(({ message }) => message)).toEqual(messages);
    expect(problems.some(({ severity }) => severity === 'error')).toBe(true);
  });

  test('figures go with the words', () => {
    const { problems } = workOut(smallPlan({ entries: { relics: copies('relics', 150) } }));
    expect(problems[0]).toEqual({
      kind: 'places-over',
      severity: 'error',
      concerns: 'places',
      about: { product: 'hobby', kind: 'relics', list: 'entries', at: 1 },
      figures: { copies: 150, places: 600, left: 570, over: 76 },
      message: expect.any(String),
    });
  });
});

describe('what is unlikely', () => {
  const UNLIKELY: typeof IMPOSSIBLE = [
    [
      'odds beyond a case',
      smallPlan({
        kinds: {
          charts: { ...charts, cards: cardsOf('LC-', 2) },
          base: { ...base, cards: cardsOf('', 8) },
        },
        entries: { charts: charge('charts', { by: 'odds', packs: 60 }) },
      }),
      [
        'Hobby: Lake Charts come once in 60 packs, and a case has 40, so that many cases have none.',
      ],
    ],
    [
      'a large reserve',
      smallPlan({ kinds: { charts: { ...charts, reserve: 1 } } }),
      ['Lake Charts: keeping 1 of 6 copies of each card in reserve is more than 5 %.'],
    ],
    [
      'published odds far from the truth',
      smallPlan({ plan: { published: [{ product: 'hobby', kind: 'charts', packs: 6 }] } }),
      [
        'Hobby: 1:6 packs for Lake Charts is far worse than the truth, which is 30 copies in 120 packs: 1:4, or 1:5 in round numbers, may be said.',
      ],
    ],
    [
      'a guarantee that is left to chance',
      smallPlan({
        plan: { guarantees: [{ product: 'hobby', kinds: ['charts'], atLeast: 2, per: 'box' }] },
      }),
      [
        'Hobby promises at least 2 of Lake Charts a box, but they come by chance, so that some boxes would hold fewer; enter them by the box, or have them placed.',
      ],
    ],
    [
      'a guarantee of two kinds, each in an order of its own',
      smallPlan({
        plan: {
          products: [{ ...HOBBY, collation: 'sequenced' }],
          guarantees: [
            // 36 copies in twelve boxes, six and 30: none of the six in each is sure.
            { product: 'hobby', kinds: ['relics', 'charts'], atLeast: 3, per: 'box' },
            { product: 'hobby', kinds: ['relics', 'charts'], atLeast: 12, per: 'case' },
            // Of 41 base cards four are of each, whatever the box; of 42 nothing more.
            { product: 'hobby', kinds: ['base', 'signatures'], atLeast: 41, per: 'box' },
            { product: 'hobby', kinds: ['base', 'signatures'], atLeast: 42, per: 'box' },
          ],
        },
      }),
      [
        'Hobby promises at least 3 of Timber Relics or Lake Charts a box, but each of them runs in its own order, so that some boxes would hold fewer; enter them by the box, or have them placed.',
        'Hobby promises at least 42 of Ferries or Signatures a box, but each of them runs in its own order, so that some boxes would hold fewer; enter them by the box, or have them placed.',
      ],
    ],
    [
      'a card of which there are more than packs',
      smallPlan({
        kinds: {
          signatures: {
            ...signatures,
            cards: cardsOf('SG-', 4).map((card, at) => (at === 0 ? { ...card, weight: 17 } : card)),
          },
        },
        entries: { signatures: copies('signatures', 160), blanks: copies('blanks', 3) },
        plan: {},
      }),
      [
        'Hobby: some packs hold the same card twice, since there are 136 copies of Signatures, SG-1, in 120 packs.',
      ],
    ],
    [
      'packs that must hold two alike',
      smallPlan({ kinds: { base: { ...base, cards: cardsOf('', 4) } } }),
      [
        'Hobby: some packs hold the same card twice, since there are 500 copies of base cards for 4 cards.',
      ],
    ],
    [
      'cases that nobody has decided, and a redemption without a day',
      smallPlan({
        plan: {
          products: [{ ...HOBBY, cases: 'unset' }],
          redemptions: [{ found: 'charts', standsFor: ['1'], ships: 'unset', expires: 'never' }],
        },
      }),
      [
        'Hobby: how many cases are made is not decided, so that what it shares with other products is not worked out.',
        'Lake Charts: collectors are promised a card, and no day is set on which it is sent.',
      ],
    ],
  ];

  test.each(UNLIKELY)('%s', (_, plan, messages) => {
    const { problems } = workOut(plan);
    expect(problems.map(({ message }) => message)).toEqual(messages);
    expect(problems.every(({ severity }) => severity === 'warning')).toBe(true);
  });
});
