import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';

import { packedOf, type Files } from '../../pipeline/checks/index.js';
import {
  askedOf,
  coarserOdds,
  fits,
  type Made,
} from '../../pipeline/checks/packed/odds-tell-fit.js';
import { seenKinds } from '../../pipeline/checks/packed/odds-tell-seen.js';
import { packedWith } from '../../pipeline/checks/packed/sample.js';
import { subjectOf } from '../../pipeline/checks/subject.js';
import { view, type ViewSet } from '../../pipeline/gate/index.js';
import { NEVER, stepsUntil } from '../../pipeline/model/index.js';
import {
  asRead,
  ODDS_STEPS,
  oddsToPublish,
  roundedOdds,
  whole,
} from '../../pipeline/packs/index.js';
import { keptDictionaries } from '../../pipeline/read/index.js';
import { select } from '../../pipeline/select/index.js';
import { changed } from './change.js';
import { contentWith, lookAt } from './look.js';
import { shelfOf } from './shelf.js';

const GOLD = 'parallels: [{ id: gold, title: Gold, of: [base, extra], run: 2 }]\ntotals:';
const LINE = '{ of: extra, odds: 2 }\n';

/** Two cards in the extra subset, of which each has its run, and a parallel of all cards. */
function plan(...changes: readonly [from: string, to: string][]): Files {
  return packedWith(
    ['totals:', GOLD],
    [LINE, `${LINE}      - { of: gold, all: run, odds: 4 }\n`],
    ...changes,
  );
}

function messages(files: Files): readonly string[] {
  return lookAt(files, ['odds-tell']).findings.map(({ message, found = '', expected = '' }) =>
    [message, found, expected].join(' | '),
  );
}

describe('what is told', () => {
  test('a card that leaves no trace among cards of known runs', () => {
    const card = (id: number, run: number, level: string): Files => ({
      [`one/cards/extra/b${String(id)}.md`]: `---\nnumber: X-${String(id)}\nname: Chart ${String(id)}\nspoiler: ${level}\nrun: ${String(run)}\n---\nInk.\n`,
    });
    const files = (level: string): Files => ({
      ...packedWith(
        ['prefix: X-, from: 1, to: 1', 'prefix: X-, from: 1, to: 2'],
        [LINE, '{ of: extra, copies: 10, odds: 2 }\n'],
        ['inserts: 1, all: { title: Everything, of: [base, inserts], is: 3 }', 'inserts: 2'],
      ),
      ...card(1, 4, 'open'),
      ...card(2, 6, level),
    });
    expect(messages(files('open'))).toEqual([]);
    // A placeholder is listed without its run.
    expect(messages(files('later'))).toEqual([]);
    expect(messages(files('last'))).toEqual([
      '`Hobby`: 1:2 packs for Extra tell that something is held: 1 card with 4 copies is listed, and these odds are of 10 to 19 copies | 1:2, while 1 card of Extra is held by last until 4 June 2027, 20:00 | `spoiler: last` on `extra` too',
    ]);
  });

  test('what a placeholder shows, what wears off before the set is open, and what is wrong anyway', () => {
    const shown: [string, string] = ['group: inserts,', 'group: inserts, spoiler: later,'];
    const absent: [string, string] = ['group: inserts,', 'group: inserts, spoiler: last,'];
    expect(messages(plan(shown))).toEqual([]);
    expect(messages(plan(absent))).toHaveLength(1);
    expect(messages(plan(absent, ['spoiler: open', 'spoiler: last']))).toEqual([]);
    expect(messages(plan(absent, ['odds: 4', 'odds: 3']))).toEqual([]);
    expect(messages(plan(absent, ['cases: 5', 'cases: unset']))).toEqual([]);
    expect(
      messages(plan(absent, ['run: 2', 'copies: 2'], ['all: run, odds', 'copies: 6, odds'])),
    ).toEqual([]);
  });
});

describe('two products', () => {
  const both = (parallels: string, lines: string): Files => {
    const files = packedWith(
      ['group: inserts,', 'group: inserts, spoiler: last,'],
      ['totals:', GOLD.replace('run: 2 }', `run: 2 }${parallels}`)],
      ['box: 2', 'box: 1'],
      ['case: 2', 'case: 1'],
      ['cases: 5', 'cases: 20'],
      [LINE, `${LINE}      - { of: gold, copies: 3, odds: 7 }\n${lines}`],
    );
    const retail =
      '  - { id: retail, title: Retail, pack: 2, box: 1, case: 1, cases: 20, contents: [{ of: gold, copies: 3, odds: 7 }] }\n';
    return { 'one/plan.yaml': `${files['one/plan.yaml'] ?? ''}${retail}` };
  };

  test('tell nothing while fewer cases of either would explain the odds', () => {
    expect(messages(both('', ''))).toEqual([]);
  });

  test('tell it once the cases of one are known', () => {
    const tie = ', { id: tie, title: Tie, of: [base], run: 5 }';
    expect(messages(both(tie, '      - { of: tie, all: run, odds: 2 }\n'))).toEqual([
      '`Hobby`: 1:7 packs for Gold tell that something is held: 2 cards are listed, and a run of 2 at these odds is of 3 | 1:7, while Extra is held by last until 4 June 2027, 20:00 | `spoiler: last` on `gold` too, or 1:10 and 1:10 packs',
    ]);
  });
});

describe('what the public is taken to see', () => {
  const hold = fc.constantFrom('', ', spoiler: later', ', spoiler: last', ', embargo: [guest]');
  const level = fc.constantFrom('open', 'later', 'last');

  property.prop({
    holds: fc.tuple(hold, hold, hold, hold),
    levels: fc.tuple(level, level),
    run: fc.constantFrom('', '\nrun: 10'),
    street: fc.constantFrom('2026-12-05T09:00:00+00:00', '2027-06-05T09:00:00+01:00'),
  })('is what the gate shows, at every step', ({ holds, levels, run, street }) => {
    const [ofExtra, ofGold, ofHobby, ofRetail] = holds;
    const retail = `  - { id: retail, title: Retail, pack: 2, box: 2, case: 2, cases: 5, contents: [{ of: extra, copies: 2, odds: 10 }]${ofRetail} }\n`;
    const start = plan(
      ['group: inserts,', `group: inserts${ofExtra},`],
      ['run: 2 }', `run: 2${ofGold} }`],
      ['    title: Hobby\n', `    title: Hobby\n${ofHobby.replace(', ', '    ')}\n`],
      ['2027-06-05T09:00:00+01:00', street],
    );
    const files = {
      'one/plan.yaml': `${start['one/plan.yaml'] ?? ''}${retail}`,
      ...changed('one/cards/base/a2.md', [['spoiler: open', `spoiler: ${levels[0]}`]]),
      ...changed('one/cards/extra/b1.md', [['spoiler: open', `spoiler: ${levels[1]}${run}`]]),
    };
    const content = contentWith(files);
    const released = select(content);
    const subject = subjectOf(content, { fonts: shelfOf(content), dictionaries: keptDictionaries });
    const [set] = content.sets;
    const packed = set && packedOf(set);
    if (!released || !subject || !packed) throw new Error('the sample is not read');
    const seenAt = seenKinds(set, packed, subject);
    const steps = stepsUntil(released.property, [set], Number.MAX_SAFE_INTEGER);
    expect(steps.length).toBeGreaterThan(2);
    for (const at of steps) {
      const [shown] = view(released, { kind: 'public', at })?.sets ?? [];
      const seen = seenAt(at).map(({ id, title, cards, run, copies, odds }) => {
        return { id, title, cards, run, copies, odds };
      });
      expect(seen).toEqual(shown === undefined ? [] : shownKinds(shown));
    }
    expect(seenAt(NEVER).map(({ id }) => id)).toEqual(['extra', 'gold']);
  });
});

/** The kinds of a view of which odds are shown. */
function shownKinds({ products, subsets, parallels }: ViewSet) {
  const oddsOf = (id: string) =>
    products.flatMap(({ id: product, odds }) =>
      odds
        .filter(({ subset, parallel }) => (subset ?? parallel) === id)
        .map(({ packs }) => ({ product, ...asRead(packs) })),
    );
  const ofSubsets = subsets.map(({ id, title, cards }) => {
    const runs = cards.flatMap(({ run }) => run ?? []);
    const copies = runs.length === cards.length && runs.length > 0 ? sumOf(runs) : null;
    return { id, title, cards: cards.length, run: null, copies, odds: oddsOf(id) };
  });
  const ofParallels = parallels.map(({ id, title, of, run }) => {
    const cards = sumOf(
      subsets.filter((subset) => of.includes(subset.id)).map(({ listed }) => listed),
    );
    return { id, title, cards, run, copies: run === null ? null : run * cards, odds: oddsOf(id) };
  });
  const kinds = [...ofSubsets, ...ofParallels.filter(({ cards }) => cards > 0)];
  return kinds.filter(({ odds }) => odds.length > 0);
}

function sumOf(counts: readonly number[]): number {
  return counts.reduce((sum, each) => sum + each, 0);
}

describe('whether copies fit odds', () => {
  const made = (id: string, packs: number): Made => ({
    id,
    title: id,
    cardsAPack: 1,
    packsABox: packs,
    boxesACase: 1,
    cases: 1,
    collation: 'random',
  });

  property.prop({
    packs: fc.tuple(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 60 })),
    said: fc.tuple(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 1, max: 30 })),
    copies: fc.integer({ min: 1, max: 60 }),
    elsewhere: fc.boolean(),
  })('as by trying every way to share them', ({ packs, said, copies, elsewhere }) => {
    const products = [made('a', packs[0]), made('b', packs[1])];
    const odds = products.map(({ id }, at) => ({ product: id, ...asRead(said[at] ?? 1) }));
    const kind = { copies, odds, elsewhere };
    const [inA = [], inB = []] = said.map((oneIn, at) =>
      copiesSaidAs(oneIn, packs[at] ?? 1, copies),
    );
    const isShared = inA.some((a) =>
      inB.some((b) => (elsewhere ? a + b <= copies : a + b === copies)),
    );
    expect(fits(kind, products)).toBe(isShared);
  });

  test('coarser odds are the finest of a list that do', () => {
    const products = [made('a', 57_600)];
    const kind = { copies: 224, odds: [{ product: 'a', ...asRead(229) }], elsewhere: false };
    expect(askedOf(kind, products)).toEqual({ least: 252, most: 252 });
    expect(coarserOdds(kind, products)).toEqual([500]);
    expect(coarserOdds({ ...kind, copies: 100 }, products)).toBeNull();
  });
});

/** Copies up to `most` in so many packs whose odds would be said so. */
function copiesSaidAs(oneIn: number, packs: number, most: number): readonly number[] {
  const step = ODDS_STEPS.findLast((each) => roundedOdds(oneIn, each) === oneIn) ?? 'whole';
  return Array.from({ length: most }, (_, at) => at + 1).filter(
    (copies) => roundedOdds(oddsToPublish(whole(copies), packs)?.whole ?? 0, step) === oneIn,
  );
}
