import { describe, expect, test } from 'vitest';

import { listClaims, type Files } from '../../pipeline/checks/index.js';
import { keptDictionaries } from '../../pipeline/read/index.js';
import { changed } from './change.js';
import { sells } from './claim-odds-plan.js';
import { contentWith, lookAt } from './look.js';
import { shelfOf } from './shelf.js';

const RULES = ['odds-stated', 'leak', 'count-claim', 'promise-changed'];
const BEFORE = 'kind: web\ngoes: "2027-03-01T09:00:00+00:00[Europe/London]"\n';
const AFTER = 'kind: web\ngoes: "2027-06-05T09:00:00+01:00[Europe/London]"\n';

function found(files: Files): readonly string[] {
  return lookAt(files, RULES).findings.map(
    ({ rule, severity, message }) => `${severity} ${rule}: ${message}`,
  );
}

/** The set with words of its plan replaced. */
function planned(files: Files, ...swaps: readonly (readonly [string, string])[]): Files {
  return { ...files, ...changed('one/plan.yaml', swaps, files) };
}

describe('which product a text speaks of', () => {
  const WRONG =
    'error odds-stated: this text says better odds than the truth, which in `Retail` is 150 copies of Lake Charts in 1,200 packs';
  const LAKE = 'Lake Charts 1:4 packs.';

  test('is any, where nothing says', () => {
    expect(found(sells(LAKE))).toStrictEqual([]);
  });

  test('is the one that its title names', () => {
    const front = `title: Retail wrapper\n${AFTER}`;
    expect(found(sells(LAKE, undefined, front))).toStrictEqual([WRONG]);
  });

  test('else the one that its file names', () => {
    const files = sells(LAKE);
    const text = files['one/sales/a.md'] ?? '';
    expect(
      found({ ...files, 'one/sales/a.md': null, 'one/sales/wrapper-retail.md': text }),
    ).toStrictEqual([WRONG]);
  });

  test('but a product that the sentence names is meant', () => {
    const front = `title: Retail wrapper\n${AFTER}`;
    expect(found(sells('Lake Charts 1:4 hobby packs.', undefined, front))).toStrictEqual([]);
  });
});

describe('what is not known is held to nothing', () => {
  const WRONG = 'Lake Charts 1:2 Hobby packs. Two signatures in every hobby box.';

  test('where it is known it is wrong twice', () => {
    expect(found(sells(WRONG))).toHaveLength(2);
  });

  test.each([
    ['cases that are unset', [['cases: 20', 'cases: unset']]],
    ['a product without a size', [['    case: 10\n    cases: 20\n', '']]],
  ] as const)('%s', (_, swaps) => {
    expect(found(planned(sells(WRONG), ...swaps))).toStrictEqual([]);
  });

  test('a product whose contents are not said', () => {
    const [, own = ''] = /( {4}contents:\n {6}- \{ of: charts, odds: 8 \}\n.*\n)/.exec(
      sells(WRONG)['one/plan.yaml'] ?? '',
    ) ?? [''];
    const files = planned(sells('Lake Charts 1:2 retail packs.'), [own, '']);
    expect(found(sells('Lake Charts 1:2 retail packs.'))).toHaveLength(1);
    expect(found(files)).toStrictEqual([]);
  });

  test('what is packed, while another rule says that it does not come out', () => {
    const files = planned(sells(WRONG), ['copies: 100, odds: 50', 'copies: 101, odds: 50']);
    expect(found(files)).toStrictEqual([]);
    expect(lookAt(files, ['pack-divides']).findings).not.toStrictEqual([]);
  });

  test('odds that the plan itself says wrongly: they are told once', () => {
    const files = planned(sells('Timber Relics 1:40 packs.'), [
      'copies: 100, odds: 50',
      'copies: 100, odds: 40',
    ]);
    expect(found(files)).toStrictEqual([
      'error odds-stated: `Hobby`: 1:40 packs for Timber Relics is better than the truth, which is 100 copies in 4,800 packs: at best 1:48 may be said',
    ]);
  });
});

describe('promises', () => {
  const TWO = 'Two hits in every hobby box.';

  test('are kept by what the plan guarantees', () => {
    const files = planned(sells('One relic in every hobby case.'), [
      '{ of: [signatures], atLeast: 1, per: box }',
      '{ of: [relics], atLeast: 1, per: case }',
    ]);
    expect(found(sells('One relic in every hobby case.'))).toStrictEqual([
      'error odds-stated: this text promises for each case what comes by chance: `Hobby` has 100 of Timber Relics in 20 cases, and nothing says that each holds so many',
    ]);
    expect(found(files)).toStrictEqual([]);
  });

  test('and by an even number for each box, several kinds together', () => {
    const files = planned(sells(TWO), ['copies: 100, odds: 50', 'perBox: 1, odds: 24']);
    expect(found(sells(TWO))).toHaveLength(1);
    expect(found(files)).toStrictEqual([]);
  });

  test('and where cards run in their order, by enough of them', () => {
    const files = planned(sells('Six Lake Charts in every hobby box.'), [
      'cases: 20',
      'cases: 20\n    collation: sequenced',
    ]);
    expect(found(sells('Six Lake Charts in every hobby box.'))).toHaveLength(1);
    expect(found(files)).toStrictEqual([]);
  });
});

describe('a text that may change, or that has gone', () => {
  const WRONG = 'Lake Charts 1:3 Hobby packs.';

  test('is warned, if it says so', () => {
    expect(found(sells(`${WRONG} Subject to change.`))).toStrictEqual([
      'warning odds-stated: this text says better odds than the truth, which in `Hobby` is 1,200 copies of Lake Charts in 4,800 packs',
    ]);
  });

  test('is a promise from then on, without a fix', () => {
    const files = sells(WRONG, undefined, `${BEFORE}sent: "2027-03-01"\n`);
    const { findings } = lookAt(files, RULES);
    expect(findings.map(({ rule, message, fix }) => [rule, message, fix])).toStrictEqual([
      [
        'odds-stated',
        'this text says better odds than the truth, which in `Hobby` is 1,200 copies of Lake Charts in 4,800 packs, and is a promise since 1 March 2027',
        undefined,
      ],
    ]);
  });
});

describe('a fix', () => {
  test.each([
    ['Lake Charts 1:3 Hobby packs.', '4'],
    ['One in three hobby packs holds a Lake Chart.', 'four'],
    ['Timber Relics 1:48 packs.', '50'],
    ['Sketch Cards 1:500 packs.', '240'],
    ['Every third hobby pack holds a Lake Chart.', undefined],
    // Of two products either may be meant.
    ['Lake Charts 1:3.', undefined],
    ['Two autographs in every box.', undefined],
  ])('%s', (text, fix) => {
    const { findings } = lookAt(sells(text), RULES);
    expect(findings.map((each) => each.fix)).toStrictEqual([fix]);
  });
});

/** Letters in every second pack: with Charts and Signals seven inserts in eight packs. */
const MANY: readonly [string, string] = ['{ of: letters, odds: 96 }', '{ of: letters, odds: 2 }'];
const SUM = 'Three in every four hobby packs hold an insert.';
const TOLD = 'error leak: this text says odds from which those of something held can be subtracted';

describe('odds of several kinds, one of which is held', () => {
  test('tell it before the set is in shops', () => {
    const { findings } = lookAt(planned(sells(SUM, undefined, BEFORE), MANY), RULES);
    expect(findings).toMatchObject([
      {
        rule: 'leak',
        severity: 'error',
        message: 'this text says odds from which those of something held can be subtracted',
        found: 'Three in every four hobby packs hold an insert: `letters` is held by later',
        expected: 'odds of what may be told alone, or a text that is held as long',
        line: 6,
        column: 16,
      },
    ]);
    expect(findings).toHaveLength(1);
  });

  test('also where they are of it alone', () => {
    expect(found(sells('Redemption cards 1:96 packs.', undefined, BEFORE))).toStrictEqual([TOLD]);
  });

  test('whatever is wrong with them besides', () => {
    const files = sells('Nine in every ten hobby packs hold an insert.', undefined, BEFORE);
    expect(found(planned(files, MANY))).toStrictEqual([TOLD]);
  });

  test('also where no product is named and neither can hold so many', () => {
    const files = sells('Three in every four packs hold an insert.', undefined, BEFORE);
    expect(found(planned(files, MANY))).toStrictEqual([TOLD]);
  });

  test('and in a text of which nobody knows when it goes', () => {
    const files = sells(SUM, undefined, 'kind: web\ngoes: unset\n');
    expect(found(planned(files, MANY))).toStrictEqual([TOLD]);
  });

  test.each([
    ['once it is in shops', sells(SUM, undefined, AFTER)],
    ['on a wrapper', sells(SUM, undefined, BEFORE.replace('web', 'wrapper'))],
    [
      'in a text that is held as long',
      changedSpoiler(sells(SUM, undefined, BEFORE.replace('03-01', '05-01'))),
    ],
  ])('not %s', (_, files) => {
    expect(found(planned(files, MANY))).toStrictEqual([]);
  });

  test('not where the others may make as many', () => {
    const text = 'One in three hobby packs holds an insert.';
    expect(found(planned(sells(text, undefined, BEFORE), MANY))).toStrictEqual([]);
  });

  test('not of the kinds that are open', () => {
    const text = 'Three in eight hobby packs hold a Lake Chart or a Night Signal.';
    expect(found(planned(sells(text, undefined, BEFORE), MANY))).toStrictEqual([]);
  });

  test('in shops too, if it leaves no trace', () => {
    const files = planned(sells(SUM, undefined, AFTER), MANY, [
      'found: redemption, spoiler: later',
      'found: redemption, spoiler: last',
    ]);
    const late = changed(
      'property.yaml',
      [['2027-06-04T20:00:00+01:00', '2027-07-04T20:00:00+01:00']],
      files,
    );
    expect(found({ ...files, ...late })).toStrictEqual([TOLD]);
  });

  test('and a card tells it as a text does', () => {
    const files = sells('Nothing is said here.', SUM.replace('insert', 'insert card'));
    const held = planned(files, MANY, [
      'found: redemption, spoiler: later',
      'found: redemption, spoiler: last',
    ]);
    expect(found(held)).toStrictEqual([TOLD.replace('this text', 'the bio')]);
  });
});

function changedSpoiler(files: Files): Files {
  return {
    ...files,
    ...changed('one/sales/a.md', [['spoiler: open', 'spoiler: later']], files),
  };
}

describe('the list of claims', () => {
  test('has odds with what they were held to', () => {
    const content = contentWith(
      sells('Lake Charts 1:3 Hobby packs. One autograph in every box. Panoramas 1:9 boxes.'),
    );
    const all = listClaims(content, {
      fonts: shelfOf(content),
      dictionaries: keptDictionaries,
    }).filter(({ file }) => file === 'one/sales/a.md');
    expect(all).toStrictEqual([
      {
        set: 'one',
        card: null,
        file: 'one/sales/a.md',
        line: 6,
        column: 15,
        endLine: 6,
        endColumn: 16,
        text: 'this text',
        words: 'Lake Charts 1:3 Hobby packs',
        number: 3,
        taken: 'claim',
        stands: 'wrong',
        real: [{ count: 4, of: 'packs of `Hobby` for one of Lake Charts' }],
      },
      {
        set: 'one',
        card: null,
        file: 'one/sales/a.md',
        line: 6,
        column: 30,
        endLine: 6,
        endColumn: 33,
        text: 'this text',
        words: 'One autograph in every box',
        number: 1,
        taken: 'claim',
        stands: 'holds',
        real: [{ count: 1, of: 'Signatures, sure in each box of `Hobby`' }],
      },
      // Toppers lie beside the packs: nothing in the plan says how many.
      ...[
        [1, 68, 69],
        [9, 70, 71],
      ].map(([number, column, endColumn]) => ({
        set: 'one',
        card: null,
        file: 'one/sales/a.md',
        line: 6,
        column,
        endLine: 6,
        endColumn,
        text: 'this text',
        words: String(number),
        number,
        taken: 'odds',
      })),
    ]);
  });
});
