import { describe, expect, test } from 'vitest';

import { check, packedOf } from '../../pipeline/checks/index.js';
import { spotOf, type Content, type YamlPath } from '../../pipeline/model/index.js';
import {
  KeptReadings,
  keptDictionaries,
  memoryFolder,
  readContent,
  readFonts,
} from '../../pipeline/read/index.js';
import { whatPublicTells, whole } from '../../pipeline/packs/index.js';
import type { Finding } from '../../schema/index.js';
import { demoFiles } from '../demo/copy.js';

const PLAN = 'high-water/plan.yaml';
const RULES = ['pack-places', 'pack-divides', 'pack-guarantee', 'odds-stated', 'redemption-terms'];
const files = demoFiles({ art: false });
const plan = String(files.get(PLAN));
const readings = new KeptReadings();
const bytes = new Map(
  [...files].map(([path, file]) => [path, new TextEncoder().encode(String(file))] as const),
);
const { fonts } = readFonts(contentOf({}).layouts, memoryFolder(bytes));

/** The demo with these files in the place of its own; null takes one away. */
function contentOf(over: Readonly<Record<string, string | null>>): Content {
  const all = new Map(bytes);
  for (const [path, text] of Object.entries(over)) {
    if (text === null) all.delete(path);
    else all.set(path, new TextEncoder().encode(text));
  }
  return readContent(memoryFolder(all), readings);
}

/** What is found by the rules about packs, and by whichever others are asked. */
function found(
  over: Readonly<Record<string, string | null>>,
  more: readonly string[] = [],
): readonly Finding[] {
  const only = [...RULES, ...more];
  return check(contentOf(over), { fonts, dictionaries: keptDictionaries, only }).findings;
}

type Swaps = readonly (readonly [from: string, to: string])[];

/** The odds that are rounded, as they are exactly. */
const EXACT: Swaps = [
  ['perCase: 1, odds: 300', 'perCase: 1, odds: 288'],
  ['odds: 60', 'odds: 58'],
  ['odds: 720', 'odds: 686'],
  ['odds: 180', 'odds: 172'],
];

/** The plan with words replaced, each of which stands once. */
function planWith(...swaps: Swaps): string {
  return swaps.reduce((text, [from, to]) => {
    if (text.split(from).length !== 2) throw new Error(`the plan does not have "${from}" once`);
    return text.replace(from, () => to);
  }, plan);
}

function shown(findings: readonly Finding[]): readonly string[] {
  return findings.map(({ rule, severity, message }) => `${severity} ${rule}: ${message}`);
}

function highWater(content: Content) {
  const set = content.sets.find(({ id }) => id === 'high-water');
  if (set === undefined) throw new Error('the demo has no high-water');
  return set;
}

describe('what the demo packs', () => {
  const packed = packedOf(highWater(contentOf({})));

  test('adds up, without a finding', () => {
    expect(packed?.report.problems).toEqual([]);
    expect(found({})).toEqual([]);
  });

  test('is what is planned', () => {
    expect(
      packed?.report.products.map(({ id, packs, places, taken, base }) => [
        id,
        packs,
        places,
        taken,
        base,
      ]),
    ).toEqual([
      ['hobby', 57_600, 345_600, 77_000, 268_600],
      ['retail', 14_400, 86_400, 19_000, 67_400],
    ]);
  });

  test('is 4,000 of each base card, of which 250 of number 17 are lit', () => {
    const made = packed?.report.kinds
      .filter(({ base }) => base)
      .flatMap(({ cards }) => cards.map((group) => [group.cards.length, group.made]));
    expect(made).toEqual([
      [47, whole(4000)],
      [1, whole(3750)],
      [1, whole(250)],
      [35, whole(4000)],
      [1, whole(4000)],
    ]);
  });

  test('is said in odds that leave more than ten numbers of cases possible', () => {
    if (packed === null) throw new Error('the demo packs nothing');
    const { plan: planned, report, odds } = packed;
    const told = whatPublicTells(planned, report, odds, { from: 1, to: 100_000 });
    const possible = told.get('hobby')?.map(({ step, possible: cases }) => [step, cases]);
    expect(possible?.slice(0, 2)).toEqual([
      ['stated', { from: 197, to: 210, count: 14 }],
      ['whole', { from: 200, to: 200, count: 1 }],
    ]);
  });

  test('is printed on sheets, those of Crew and Craft full by double prints', () => {
    const sheets = packed?.report.kinds.flatMap((kind) => {
      const forms = kind.sheets?.forms ?? [];
      return forms.map(({ blank, needed, sheets: printed }) => [kind.kind, blank, needed, printed]);
    });
    expect(sheets).toEqual([
      ['crew', 0, 2000, 2060],
      ['story', 0, 2000, 2060],
      ['checklist', 0, 200, 210],
      ['charts', 0, 405, 420],
      ['benches', 0, 300, 312],
      ['signals', 0, 184, 194],
      ['letters', 2, 35, 39],
    ]);
  });

  test('is worked out once for a set', () => {
    const set = highWater(contentOf({}));
    expect(packedOf(set)).toBe(packedOf(set));
  });
});

/** Every whole number below a value, with the path to it. */
function numbersIn(value: unknown, path: YamlPath): readonly (readonly [YamlPath, number])[] {
  if (typeof value === 'number') return [[path, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, each]) =>
    numbersIn(each, [...path, Array.isArray(value) ? Number(key) : key]),
  );
}

const { source, value } = highWater(contentOf({})).plan;
const figures = [
  ...numbersIn(value.products, ['products']),
  ...numbersIn(value.parallels, ['parallels']),
  ...value.subsets.flatMap(({ copies, places }, at) => [
    ...numbersIn(copies, ['subsets', at, 'copies']),
    ...numbersIn(places, ['subsets', at, 'places']),
  ]),
];
/** One more and one less of each; of 1 there is no less. */
const changes = figures.flatMap(([path, figure]) =>
  [figure + 1, figure - 1]
    .filter((other) => other > 0)
    .map((other) => [path, figure, other] as const),
);

describe('each figure of the demo, changed by one', () => {
  test('there are as many as the plan has', () => {
    expect(figures.length).toBe(40);
  });

  test.each(changes.map((each) => [each[0].join('.'), each[1], each[2], each[0]] as const))(
    '%s: %i to %i is found',
    (_, __, other, path) => {
      const { from, to } = spotOf(source, path);
      const text = `${plan.slice(0, from)}${String(other)}${plan.slice(to)}`;
      const findings = found({ [PLAN]: text }, ['schema']);
      expect(findings.length).toBeGreaterThan(0);
      expect(findings.every(({ set, file }) => set === 'high-water' && file === PLAN)).toBe(true);
      expect(findings.filter(({ rule }) => rule === 'schema')).toEqual([]);
    },
  );
});

describe('odds that are said', () => {
  const ROUND: Swaps = [
    ['all: run, odds: 9 ', 'all: run, odds: 10 '],
    ['odds: 720', 'odds: 800'],
    ['odds: 180', 'odds: 200'],
    ['copies: 1200, odds: 48', 'copies: 1200, odds: 50'],
  ];

  test('may all be exact, or rounder than they are', () => {
    expect(shown(found({ [PLAN]: planWith(...EXACT) }))).toEqual([]);
    expect(shown(found({ [PLAN]: planWith(...ROUND) }))).toEqual([]);
  });

  test('may not be rounded in one line alone', () => {
    const text = planWith(['all: run, odds: 9 ', 'all: run, odds: 10 ']);
    expect(shown(found({ [PLAN]: text }))).toEqual([
      'warning odds-stated: `Hobby`: 1:10 packs for Varnished is worse than the truth, 1:9, and not rounded as the other odds are',
    ]);
  });

  test('are asked for each line; while it is being written, mildly', () => {
    const text = planWith(['all: run, odds: 720', 'all: run']);
    const [finding, ...others] = found({ [PLAN]: text });
    expect(others).toEqual([]);
    expect(finding).toMatchObject({
      rule: 'odds-stated',
      severity: 'error',
      message: '`Hobby`: nothing says the odds of `keel`',
      expected: '`odds: 686`',
    });
    const writing = text.replace('stage: locked', 'stage: writing');
    expect(shown(found({ [PLAN]: writing }))).toEqual([
      'warning odds-stated: `Hobby`: nothing says the odds of `keel`',
    ]);
  });
});

describe('one cause is told once', () => {
  test('a card that is not there yet is packed all the same', () => {
    expect(shown(found({ 'high-water/cards/crew/c020.md': null }, ['number-gap']))).toEqual([
      'error number-gap: no card of `crew` has the number 20',
    ]);
  });

  test('a card that is pulled is not', () => {
    const path = 'high-water/cards/story/s050.md';
    const text = String(files.get(path)).replace('\nspoiler:', '\nissued: "no"\nspoiler:');
    expect(text).toContain('issued');
    expect(shown(found({ [path]: text, [PLAN]: planWith(...EXACT) }))).toEqual([
      'error pack-divides: 29,316 copies of Tarred do not divide among 83 cards: 353 of each leave 17 over, and 66 more would divide',
      'error odds-stated: `Hobby`: 1:686 packs for Keel is better than the truth, which is 83 copies in 57,600 packs: at best 1:694 may be said',
      'error odds-stated: `Hobby`: 1:172 packs for Printing Plates is better than the truth, which is 332 copies in 57,600 packs: at best 1:174 may be said',
    ]);
  });

  test.each([
    ['a subset', 'of: benches, odds: 6 ', 'of: benchs, odds: 6 '],
    ['a promise', 'of: [sketches], atLeast', 'of: [skeches], atLeast'],
  ])('%s that there is not is told, and nothing of what follows', (_, from, to) => {
    const rules = found({ [PLAN]: planWith([from, to]) }, ['id-unknown']);
    expect(rules.map(({ rule }) => rule)).toEqual(['id-unknown']);
  });

  test('an artist who is out leaves the others to draw more', () => {
    const path = 'high-water/rosters/sketches.yaml';
    const text = String(files.get(path)).replace('Wray, state: signed', 'Wray, state: withdrawn');
    expect(text).toContain('Wray, state: withdrawn');
    expect(shown(found({ [path]: text }))).toEqual([]);
  });

  test('a card of a redemption that there is not is told once', () => {
    const text = planWith(['letters/le06, loose/ng01', 'letters/le07, loose/ng01']);
    expect(shown(found({ [PLAN]: text }, ['id-unknown']))).toEqual([
      'error id-unknown: there is no card `letters/le07` that this can name',
    ]);
  });
});

describe('cases that nobody has decided', () => {
  const unset = planWith(['cases: 90', 'cases: unset']);

  test('are a warning once the set is locked', () => {
    expect(shown(found({ [PLAN]: unset }))).toEqual([
      'warning pack-places: `Retail`: how many cases are made is not decided, so that what it shares with other products is not worked out',
    ]);
  });

  test('are nothing to say before', () => {
    expect(found({ [PLAN]: unset.replace('stage: locked', 'stage: planning') })).toEqual([]);
  });
});

describe('press sheets', () => {
  test('that are too few are told where they are ordered', () => {
    const text = planWith([
      'doubled: [crew/c001, crew/c003, crew/c004], spare: 60',
      'ordered: 1999',
    ]);
    expect(shown(found({ [PLAN]: text }))).toEqual([
      'error pack-divides: `Crew and Craft`: the sheets that are ordered give 3,998 copies of 1, 2 too few; 2,000 sheets of a form are needed',
    ]);
  });
});

describe('copies of a card of its own', () => {
  const lit = 'high-water/cards/crew/c017b.md';
  const text = String(files.get(lit));

  test('of a variation come out of its parent’s', () => {
    const over = { [lit]: text.replace('run: 250', 'run: 4001') };
    expect(shown(found(over))).toEqual([
      'error pack-divides: `Crew and Craft`: the variations of 17 take 1 copy more than it has',
    ]);
  });

  test('are asked for of a variation', () => {
    const [finding, ...others] = found({ [lit]: text.replace('run: 250\n', '') });
    expect(others).toEqual([]);
    expect(finding).toMatchObject({
      rule: 'pack-divides',
      severity: 'warning',
      message: 'nothing says how many copies of its parent’s this variation takes',
      card: 'crew/c017b',
    });
  });

  test('of a short print are its own, and the others share the rest', () => {
    const path = 'high-water/cards/story/s050.md';
    const short = String(files.get(path)).replace('\nspoiler:', '\nrun: 3917\nspoiler:');
    const packed = packedOf(highWater(contentOf({ [path]: short })));
    const made = packed?.report.kinds
      .filter(({ kind }) => kind === 'story')
      .flatMap(({ cards }) => cards.map((group) => [group.cards.length, group.made]));
    expect(made).toEqual([
      [34, whole(4001)],
      [1, whole(3917)],
    ]);
  });
});
