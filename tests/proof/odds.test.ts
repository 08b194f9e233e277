import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';

import { sampleWith } from '../../pipeline/checks/index.js';
import type { View } from '../../pipeline/gate/index.js';
import { barScale, curveScale } from '../../pipeline/out/proof/log-scale.js';
import { proofSheets, type ProofOptions } from '../../pipeline/out/proof/index.js';
import { memoryFolder, readProperty, type PropertyReading } from '../../pipeline/read/index.js';
import { outside, overlaps } from '../print/reading.js';
import { HOUSE, OPTIONS, person, seenBy } from './fixture.js';
import { ODD } from './odd-set.js';
import { ask, pageLines, pageOperators } from './tools.js';

const A4 = { width: 595.28, height: 841.89 };

/** The odds of a product in their plan, one of them of a subset that opens later, one of one that is absent. */
interface Said {
  readonly charts?: number;
  readonly late?: number;
  readonly gone?: number;
}

function planOf({ charts = 4, late = 48, gone = 1000 }: Said): string {
  return `id: one
title: "The Lake: One"
short: One
spoiler: open
stage: locked
street: "2026-09-02T09:00:00+01:00[Europe/London]"
subsets:
  - { id: base, title: Base, group: base, numbers: { from: 1, to: 2 }, bio: none }
  - { id: charts, title: Charts, group: inserts, numbers: { prefix: C-, from: 1, to: 8 }, bio: none, found: pack }
  - { id: late, title: Late Letters, group: inserts, spoiler: later, numbers: { prefix: L-, from: 1, to: 2 }, bio: none, found: pack }
  - { id: gone, title: The Ninth Door, group: inserts, spoiler: last, numbers: { prefix: G-, from: 1, to: 1 }, bio: none, found: pack }
products:
  - id: hobby
    title: Hobby
    pack: 6
    box: 24
    contents:
      - { of: late, odds: ${String(late)} }
      - { of: gone, odds: ${String(gone)} }
      - { of: gilt, odds: 12 }
      - { of: charts, odds: ${String(charts)} }
  - { id: tin, title: Tin, pack: 8 }
parallels:
  - { id: gilt, title: Gilt, of: [base], run: 84, tell: gilt edges }
  - { id: single, title: Single, of: [base, charts], run: 1, tell: a seal }
style: { english: british }
`;
}

function cardOf(number: string, spoiler = 'open'): string {
  return `---\nnumber: "${number}"\nname: Card ${number}\nspoiler: ${spoiler}\nbio: none\n---\n`;
}

const CHARTS = [1, 2, 3, 4, 5, 6, 7, 8];

/** A small property in which little is to be drawn. */
function lake(said: Said = {}, plan: (text: string) => string = (text) => text): PropertyReading {
  const charts = CHARTS.map(
    (at) => [`one/cards/charts/c${String(at)}.md`, cardOf(`C-${String(at)}`)] as const,
  );
  return readProperty(
    memoryFolder(
      sampleWith({
        'people.yaml': `people:
  - { id: jonah, name: Jonah Prewett, role: licensor, clearance: last }
  - { id: wren, name: Wren Tolliver, role: licensor, clearance: open }
`,
        'one/plan.yaml': plan(planOf(said)),
        'one/cards/base/a1.md': cardOf('1'),
        'one/cards/base/a2.md': cardOf('2'),
        'one/cards/extra/b1.md': null,
        ...Object.fromEntries(charts),
        'one/cards/late/l1.md': cardOf('L-1', 'later'),
        'one/cards/late/l2.md': cardOf('L-2', 'later'),
        'one/cards/gone/g1.md': cardOf('G-1', 'last'),
      }),
    ),
  );
}

async function sheets(view: View, more: Partial<ProofOptions> = {}): Promise<Uint8Array> {
  return (await proofSheets(view, { ...OPTIONS, ...more })).pdf;
}

const TITLE = 'Odds and runs';

async function oddsOf(view: View, more: Partial<ProofOptions> = {}): Promise<readonly string[]> {
  const pages = pageLines(await sheets(view, more)).map((page) => page.trim());
  return pages.filter((page) => page.includes(` · ${TITLE} `));
}

/**
 * Packs until so many of a hundred have all of some cards, by inclusion and exclusion: a pack brings
 * each card with the chance 1 in `odds` times `cards`.
 */
function packsFor(share: number, cards: number, odds: number): string {
  const chanceAfter = (packs: number): number => {
    let [sum, ways] = [0, 1];
    for (let missing = 0; missing <= cards; missing += 1) {
      sum += (missing % 2 === 0 ? ways : -ways) * (1 - missing / (cards * odds)) ** packs;
      ways = (ways * (cards - missing)) / (missing + 1);
    }
    return sum;
  };
  let packs = 0;
  while (chanceAfter(packs) < share) packs += 1;
  return String(packs);
}

const COMPLETED = (cards: number, odds: number): string => {
  const mean = CHARTS.slice(0, cards).reduce((sum, each) => sum + (cards * odds) / each, 0);
  const parts = [0.5, 0.9, 0.99].map((share) => packsFor(share, cards, odds));
  return [String(Math.ceil(mean)), ...parts].join(' ');
};

const LEAD =
  'What collectors will be told of odds and runs These lines go on the site, on the sheet for shops and on wrappers. Hold each against what was agreed: what is printed cannot be taken back.';
const CAUTIONS =
  'Beside the odds is always said: “Odds are averages over all the packs that are made, rounded up. A pack, a box or a case may hold more of something, fewer, or none.” Before this is printed: whether “no purchase necessary” has to be said, and which rules for prizes apply, is for counsel and local law. Nothing here says so.';
const BARS =
  'Bars are on a logarithmic scale: each line is ten times the one before it. Of odds the longer bar is the rarer, of runs the one with more copies.';
const MODEL =
  'How many packs it takes a collector who does not trade to have all cards of a subset is worked out from the odds, and not promised: if each of its cards is as common as the others, and packs are filled by chance.';
const HEADS = 'Packs to have all cards of On average 50 of 100 90 of 100 99 of 100';
const AXES = '0 50 100 10 100 1,000 of 100 who do not trade, by packs opened';
const RUNS = 'Runs Run Copies of each Cards 1 10 100 Gilt 84 2 Single 1 10';

describe('the page of odds and runs', () => {
  test('tells a reviewer all that collectors will be told, and nothing that is held from them', async () => {
    const page = await oddsOf(seenBy(person('wren', lake()), lake()));
    expect(page).toEqual([
      [
        'One · Odds and runs For Wren Tolliver',
        'Cut to this reader: what is held from them is not among these. Proof of 1 December 2026 · 7 of 7',
        LEAD,
        CAUTIONS,
        BARS,
        MODEL,
        'Hobby: 6 cards a pack, 24 packs a box Found Odds 1 10 100 Charts 1:4 Gilt 1:12',
        `${HEADS} 1 Charts, 8 cards ${COMPLETED(8, 4)}`,
        `${AXES} 1`,
        RUNS,
      ].join(' '),
    ]);
  });

  test('is the same to the byte whatever is held from its reader', async () => {
    const other = lake({ late: 9, gone: 2 });
    const [one, two] = await Promise.all(
      [lake(), other].map((each) => sheets(seenBy(person('wren', each), each))),
    );
    expect(Buffer.compare(one ?? Buffer.from('1'), two ?? Buffer.from('2'))).toBe(0);
    const open = lake({ charts: 5 });
    const three = await sheets(seenBy(person('wren', open), open));
    expect(Buffer.compare(one ?? Buffer.from('1'), three)).not.toBe(0);
  });

  test.each([
    ['whoever knows of it', person('jonah', lake()), 'For Jonah Prewett', 'Cut to this reader'],
    ['the house', HOUSE, 'INTERNAL, up to: Episode 2', 'What is held is among these.'],
  ] as const)('tells %s what is held', async (_who, audience, tag, note) => {
    const [page = '', ...more] = await oddsOf(seenBy(audience, lake()));
    expect(more).toEqual([]);
    expect(page).toContain('Charts 1:4 Gilt 1:12 Late Letters 1:48 The Ninth Door 1:1,000');
    expect(page).toContain(
      `${HEADS} 1 Charts, 8 cards ${COMPLETED(8, 4)} 2 Late Letters, 2 cards ${COMPLETED(2, 48)}`,
    );
    expect(page).toContain(`One · Odds and runs ${tag} `);
    expect(page).toContain(note);
  });

  test('of the demo leaves out what a person may not know, before it is in shops', async () => {
    const [house = ''] = await oddsOf(seenBy(HOUSE), { set: 'high-water' });
    const [tobit = ''] = await oddsOf(seenBy(person('tobit')), { set: 'high-water' });
    const [amara = ''] = await oddsOf(seenBy(person('amara')), { set: 'high-water' });
    for (const held of ['Letters from the Drowned Street 1:96', 'Lamplit 1:1']) {
      expect(house).toContain(held);
      expect(amara).toContain(held);
    }
    for (const held of ['Letters', 'Lamplit', '1:96']) expect(tobit).not.toContain(held);
    for (const open of ['Lake Charts 1:4', 'Signatures 1:24', 'Lake Charts 1:8']) {
      expect(tobit).toContain(open);
    }
  });
});

describe('there is no such page', () => {
  test('where the view has no odds and no runs', async () => {
    expect(await oddsOf(seenBy(HOUSE, ODD), { fonts: ODD.fonts })).toEqual([]);
    const bare = lake({}, (text) =>
      text.replace(/^products:[^]*?^style/m, 'style').replace(/, run: \d+/g, ''),
    );
    expect(await oddsOf(seenBy(HOUSE, bare))).toEqual([]);
  });

  test('on sheets of one subset, of another set, or without notes', async () => {
    const view = seenBy(HOUSE, lake());
    expect(await oddsOf(view, { subset: 'charts' })).toEqual([]);
    expect(await oddsOf(view, { set: 'two' })).toEqual([]);
    expect(await oddsOf(view, { kind: 'deck' })).toEqual([]);
    expect(await oddsOf(view, { kind: 'nine-up' })).toEqual([]);
    expect(await oddsOf(view, { set: 'one' })).toHaveLength(1);
  });

  test('but there is one where there are runs alone, which says nothing of odds', async () => {
    const runs = lake({}, (text) => text.replace(/^products:[^]*?^parallels/m, 'parallels'));
    const [page = ''] = await oddsOf(seenBy(HOUSE, runs));
    expect(page.endsWith(`${LEAD} ${BARS} ${RUNS}`)).toBe(true);
  });

  test('and odds alone have no runs beside them', async () => {
    const odds = lake({}, (text) => text.replace(/, run: \d+/g, ''));
    const [page = ''] = await oddsOf(seenBy(HOUSE, odds));
    expect(page).toContain('Gilt 1:12');
    expect(page).not.toContain('Copies of each');
  });
});

describe('the pictures', () => {
  let pdf: Uint8Array;
  let page: string;

  beforeAll(async () => {
    const open = lake();
    pdf = await sheets(seenBy(person('wren', open), open));
    page = pageOperators(pdf).at(-1) ?? '';
  });

  /** Widths of what is filled in the colour of the bars, in the order in which they are drawn. */
  const bars = (): readonly number[] =>
    [
      ...page.matchAll(
        /^[\d.]+ [\d.]+ ([\d.]+) 6 re\n(?:.*\n)?0\.23921\d* 0\.56078\d* 0\.76862\d* scn\nf$/gm,
      ),
    ].map(([, width]) => Number(width));

  test('have bars on a logarithmic scale, one for odds and one for runs', () => {
    const [charts = 0, gilt = 0, run = 0, single = 0, ...more] = bars();
    expect(more).toEqual([]);
    // Odds of 4 and 12, and runs of 84 and 1: both scales begin half a decade before 1 and end at 100.
    const parts = (value: number): number => (Math.log10(value) + 0.5) / 2.5;
    expect(charts / gilt).toBeCloseTo(parts(4) / parts(12), 4);
    expect(single / run).toBeCloseTo(parts(1) / parts(84), 4);
    // The column of cards is taken from the room of the bars.
    expect(charts / parts(4)).toBeGreaterThan(run / parts(84));
  });

  test('tell curves apart by dashes and by numbers, in ink', async () => {
    const five = lake({}, (text) => {
      const ids = ['a', 'b', 'c', 'd', 'e', 'f'];
      const subsets = ids.map(
        (id) =>
          `  - { id: ${id}, title: Sort ${id}, group: inserts, numbers: { prefix: ${id}-, from: 1, to: 8 }, bio: none, found: pack }\n`,
      );
      const contents = ids.map((id, at) => `      - { of: ${id}, odds: ${String(at + 10)} }\n`);
      return text
        .replace('products:\n', `${subsets.join('')}products:\n`)
        .replace('    contents:\n', `    contents:\n${contents.join('')}`);
    });
    // The cards of the new subsets are those of charts, moved.
    const cards = five.content.sets.map((set) => ({
      ...set,
      cards: ['a', 'b', 'c', 'd', 'e', 'f'].reduce(
        (all, id) => [
          ...all,
          ...set.cards
            .filter(({ subset }) => subset === 'charts')
            .map((card) => ({ ...card, subset: id })),
        ],
        set.cards,
      ),
    }));
    const view = seenBy(person('wren', five), {
      ...five,
      content: { ...five.content, sets: cards },
    });
    const drawn = await sheets(view);
    const lines = pageLines(drawn);
    const odds = pageOperators(drawn).filter((_, at) => lines[at]?.includes(TITLE) === true);
    const dashes = [...odds.join('').matchAll(/^(\[[\d. ]+\]) 0 d$/gm)].map(([, dash]) => dash);
    expect(new Set(dashes).size).toBe(4);
    const said = (await oddsOf(view)).join(' ');
    // Seven subsets: five in one picture, two in the next.
    expect(said).toContain(`5 Sort d, 8 cards ${COMPLETED(8, 13)} `);
    expect(said).toContain(`1 Sort e, 8 cards ${COMPLETED(8, 14)} 2 Sort f, 8 cards `);
    expect(said.split(HEADS)).toHaveLength(3);
  });

  test('are told in words, and stand beside tables with heads', () => {
    const alts = [...ask('qpdf', ['--json=2', 'FILE'], pdf).matchAll(/"\/Alt": "u:(.*?)"/g)].map(
      ([, alt]) => alt,
    );
    expect(alts.slice(-3)).toEqual([
      'Bars of the odds in Hobby, on a logarithmic scale of packs: from Charts, 1:4, to Gilt, 1:12.',
      `Curves of how many of 100 collectors have all cards. Charts: half by ${packsFor(0.5, 8, 4)} packs, 90 of 100 by ${packsFor(0.9, 8, 4)}, 99 by ${packsFor(0.99, 8, 4)}.`,
      'Bars of the runs, on a logarithmic scale of copies: from Gilt, 84, to Single, 1.',
    ]);
    const tree = ask('pdfinfo', ['-struct-text', 'FILE'], pdf);
    const page = tree.slice(tree.indexOf('"What collectors'));
    expect(page.match(/^ +(H1|H2|Table|TR|Figure)\b/gm)?.map((line) => line.trim())).toEqual(
      'H2 Table TR TR TR Figure Table TR TR Figure H2 Table TR TR TR Figure'.split(' '),
    );
    expect(page.match(/^ +TH\b/gm)).toHaveLength(2 + 2 + 5 + 1 + 3 + 2);
    expect(page.match(/\/Scope \/Row/g)).toHaveLength(2 + 1 + 2);
  });

  test('stand after the cards, with a bookmark and a label', () => {
    const json: unknown = JSON.parse(ask('qpdf', ['--json=2', 'FILE'], pdf));
    expect(json).toMatchObject({
      outlines: [
        { title: 'The Lake: One', destpageposfrom1: 1 },
        { title: 'One: odds and runs', destpageposfrom1: 7 },
      ],
    });
    expect(JSON.stringify(json)).toContain(
      '{"index":6,"label":{"/P":"u:Odds ","/S":"/D","/St":1}}',
    );
    expect(ask('qpdf', ['--check', 'FILE'], pdf)).toContain('No syntax');
  });
});

describe('long ones', () => {
  const many = lake({}, (text) => {
    const parallels = Array.from({ length: 90 }, (_, at) => {
      const title = `Parallel ${String(at)} ${'of the long water '.repeat(at % 5)}`.trim();
      return `  - { id: p${String(at)}, title: ${title}, of: [base], run: ${String(at * 37 + 1)} }\n`;
    });
    const contents = parallels.map(
      (_, at) => `      - { of: p${String(at)}, odds: ${String(at * at + 1)} }\n`,
    );
    return text
      .replace('parallels:\n', `parallels:\n${parallels.join('')}`)
      .replace('    contents:\n', `    contents:\n${contents.join('')}`);
  });

  test.each(['a4', 'letter'] as const)('go on over pages, each row once (%s)', async (paper) => {
    const view = seenBy(HOUSE, many);
    const pages = await oddsOf(view, { paper });
    expect(pages.length).toBeGreaterThan(3);
    const said = pages.join(' ');
    for (let at = 0; at < 90; at += 1) {
      expect(said.match(new RegExp(`Parallel ${String(at)}\\b`, 'g'))).toHaveLength(2);
    }
    const pdf = await sheets(view, { paper });
    const last = overlaps(pdf).filter((words) => /Parallel|1:|water/.test(words));
    expect(last).toEqual([]);
    if (paper === 'a4') expect(outside(pdf, A4, 15)).toEqual([]);
  });
});

describe('a logarithmic scale', () => {
  const length = 200;
  const most = fc.integer({ min: 1, max: 10_000_000 });

  test('has all values within its length, in their order', () => {
    fc.assert(
      fc.property(most, fc.double({ min: 0, max: 1, noNaN: true }), (top, part) => {
        const { along, ticks } = barScale(top, length);
        const value = 1 + part * (top - 1);
        expect(along(value)).toBeGreaterThan(0);
        expect(along(value)).toBeLessThanOrEqual(along(top));
        expect(along(top)).toBeLessThanOrEqual(length + 1e-9);
        expect(along(ticks.at(-1) ?? 0)).toBeCloseTo(length, 9);
        expect(ticks[0]).toBe(1);
      }),
    );
  });

  test('of curves begins and ends at powers of ten', () => {
    fc.assert(
      fc.property(most, most, (one, two) => {
        const [least, top] = [Math.min(one, two), Math.max(one, two)];
        const { along, ticks } = curveScale(least, top, length);
        expect(along(ticks[0] ?? 0)).toBeCloseTo(0, 9);
        expect(along(ticks.at(-1) ?? 0)).toBeCloseTo(length, 9);
        expect(along(least)).toBeGreaterThanOrEqual(-1e-9);
        expect(along(top)).toBeLessThanOrEqual(length + 1e-9);
        expect(ticks.length).toBeGreaterThan(1);
      }),
    );
  });

  test('has a step of one length for each ten times', () => {
    const { along, ticks } = barScale(700, length);
    expect(ticks).toEqual([1, 10, 100, 1000]);
    expect(ticks.map(along)).toEqual([1, 3, 5, 7].map((half) => (half / 7) * length));
    expect(barScale(1, length).ticks).toEqual([1, 10]);
    expect(curveScale(5, 40, length).ticks).toEqual([1, 10, 100]);
    expect(curveScale(10, 10, length).ticks).toEqual([10, 100]);
  });
});
