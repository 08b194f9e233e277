import { describe, expect, test } from 'vitest';

import { view } from '../../pipeline/gate/index.js';
import { instantOf } from '../../pipeline/model/index.js';
import { printedSheets, type Paper } from '../../pipeline/out/print/index.js';
import { publicData } from '../../pipeline/out/site/index.js';
import { diskFolder, readProperty } from '../../pipeline/read/index.js';
import { select } from '../../pipeline/select/index.js';
import type { PublicData } from '../../schema/index.js';
import { DEMO_NOW, LAST_LIFT } from '../demo/day.js';
import { foundWords, pageLines } from '../proof/tools.js';
import { data, dataOf, faces, highWater, run, setOf, SHOPS, subset } from './fixture.js';
import { boxesOn, outside, overlaps, pageCount, readOut } from './reading.js';

const SIZES = { a4: { width: 595.28, height: 841.89 }, letter: { width: 612, height: 792 } };

const DEMO = select(readProperty(diskFolder('content')).content);

/** Two products in which so many things are found, named by their numbers from 1. */
function sold(count: number, name = ''): PublicData['sets'][number]['products'] {
  const odds = (more: number): PublicData['sets'][number]['products'][number]['odds'] =>
    Array.from({ length: count }, (_, at) => ({
      subset: `s${String(at)}`,
      parallel: null,
      title: `${name.repeat(3)}Found ${String(at + 1)}`,
      packs: at + 1 + more,
    }));
  return [
    { id: 'hobby', title: 'Hobby', pack: 6, box: 24, odds: odds(0) },
    { id: 'retail', title: 'Retail', pack: 6, box: 10, odds: odds(100) },
  ];
}

async function counter(of: PublicData, paper: Paper = 'a4') {
  const sheet = (await printedSheets(of, faces)).get(`high-water/counter-${paper}.pdf`);
  return sheet ?? expect.fail(`no counter sheet for ${paper}`);
}

const TEXT = [
  'Counter sheet The Ferrywrights: High Water 133 cards listed.',
  'In shops Day Where 16 April 2027 UK 17 April 2027 AU',
  'Products Product Cards a pack Packs a box Hobby 6 24 Retail 6 10 Tin',
  'Subsets Title Kind Numbers How found Cards listed',
  'Crew and Craft Base set 1 to 48 49',
  'High Water Base set 49 to 83 35',
  'Checklist Base set 84 1',
  'Lake Charts Inserts LC-1 to LC-8 found in packs 8',
  'Maker’s Benches Inserts MB-1 to MB-12 found in packs 12',
  'Night Signals Inserts NS-1 to NS-16 found in packs 16',
  'Signatures Autographs SG-1 to SG-9 found in boxes 10',
  'Timber relics Relics TR-3 to TR-5 handed out at an event 2',
  'Sketch Cards Sketches found as a redemption card 3 artists',
  'Parallels Name Of Run How to tell',
  'Tarred Crew and Craft and High Water a dark edge',
  'Varnished Crew and Craft 84 copies of each gloss over the art',
  'Keel Crew and Craft, High Water and Lake Charts one of one',
  'Still to come 14 cards to be revealed on 14 May 2027, 20:00 (London time).',
  'Names, numbers and runs may change. What a pack or a box holds is chance; nothing here is a promise of what it will hold.',
  'Page 1 of 1 As of 16 April 2027, 09:00 (London time). The list may change. © 2027 Lantern & Oar',
].join(' ');

describe('the counter sheet', () => {
  test.each(['a4', 'letter'] as const)(
    'says all that a shop is asked, on one page (%s)',
    async (paper) => {
      const pdf = await counter(data, paper);
      expect(pageLines(pdf).map((line) => line.trim())).toEqual([TEXT]);
      expect(boxesOn(pdf)).toEqual([0]);
      expect(overlaps(pdf)).toEqual([]);
      expect(outside(pdf, SIZES[paper], 34)).toEqual([]);
    },
  );

  test('says how often something is found, a column for each product', async () => {
    const found = (
      subset: string | null,
      parallel: string | null,
      title: string,
      packs: number,
    ) => ({
      subset,
      parallel,
      title,
      packs,
    });
    const charts = found('charts', null, 'Lake Charts', 4);
    const hobby = [charts, found(null, 'keel', 'Keel', 1686)];
    const products = [
      { id: 'hobby', title: 'Hobby', pack: 6, box: 24, odds: hobby },
      { id: 'tin', title: 'Tin', pack: 8, box: null, odds: [] },
      { id: 'retail', title: 'Retail', pack: 6, box: 10, odds: [{ ...charts, packs: 8 }] },
    ];
    const told = dataOf([setOf([subset('a', 'Loose', 'promos', [])], { street: [], products })]);
    const pdf = await counter(told);
    expect(pageLines(pdf).map((line) => line.trim())).toEqual([
      [
        'Counter sheet The Ferrywrights: High Water 0 cards listed.',
        'Products Product Cards a pack Packs a box Hobby 6 24 Tin 8 Retail 6 10',
        'Odds One in so many packs Hobby Retail Lake Charts 1:4 1:8 Keel 1:1,686',
        'Odds are averages over all the packs that are made, rounded up. A pack, a box or a case may hold more of something, fewer, or none.',
        'Subsets Title Kind Cards listed Loose Promos 0',
        'Names, numbers and runs may change. What a pack or a box holds is chance; nothing here is a promise of what it will hold.',
        'Page 1 of 1 As of 16 April 2027, 09:00 (London time). The list may change. © 2027 Lantern & Oar',
      ].join(' '),
    ]);
    expect(overlaps(pdf)).toEqual([]);
  });

  test('has long odds in two halves side by side, each with its heads', async () => {
    const pdf = await counter(dataOf([{ ...highWater, products: sold(12) }]));
    const [page = '', ...more] = pageLines(pdf);
    expect(more).toEqual([]);
    const row = (at: number): string => `Found ${String(at)} 1:${String(at)} 1:${String(at + 100)}`;
    const half = (from: number): string =>
      `One in so many packs Hobby Retail ${[0, 1, 2, 3, 4, 5].map((at) => row(from + at)).join(' ')}`;
    expect(page).toContain(` Odds ${half(1)} ${half(7)} Odds are averages over all the packs `);
    const words = foundWords(pdf)[0] ?? [];
    const [left, right] = ['1', '7'].map((at) => {
      const after = words.findIndex(
        ({ text }, index) => text === at && words[index - 1]?.text === 'Found',
      );
      return words[after - 1] ?? expect.fail(`no row ${at}`);
    });
    // The first rows of the halves stand on one line, the second beyond the middle.
    expect(right?.yMin).toBeCloseTo(left?.yMin ?? 0, 2);
    expect(right?.xMin).toBeGreaterThan(SIZES.a4.width / 2);
    expect(readOut(pdf).match(/^ +Table$/gm)?.length).toBe(6);
    expect(overlaps(pdf)).toEqual([]);
    expect(outside(pdf, SIZES.a4, 34)).toEqual([]);
  });

  test('keeps odds below one another that are too wide for half of the page', async () => {
    const pdf = await counter(dataOf([{ ...highWater, products: sold(12, 'Of the long water ') }]));
    expect(pageLines(pdf).join(' ').split('One in so many packs')).toHaveLength(2);
    expect(overlaps(pdf)).toEqual([]);
    expect(outside(pdf, SIZES.a4, 34)).toEqual([]);
  });

  test('of few odds has one table', async () => {
    const pdf = await counter(dataOf([{ ...highWater, products: sold(5) }]));
    expect(pageLines(pdf)[0]?.split('One in so many packs')).toHaveLength(2);
  });

  test('has more odds than a page holds on the next, each once', async () => {
    const pdf = await counter(dataOf([{ ...highWater, products: sold(200) }]));
    const said = pageLines(pdf).join(' ');
    for (let at = 1; at <= 200; at += 1) {
      expect(said.match(new RegExp(` Found ${String(at)} 1:`, 'g'))).toHaveLength(1);
    }
    expect(pageCount(pdf)).toBeGreaterThan(1);
    expect(overlaps(pdf)).toEqual([]);
    expect(outside(pdf, SIZES.a4, 34)).toEqual([]);
  });

  test.each([
    ['on the demo’s day', DEMO_NOW],
    ['when it comes to shops', instantOf(SHOPS)],
    ['when all is told', instantOf(LAST_LIFT) + 1],
  ])('of the demo stands on one page, %s', async (_when, at) => {
    const seen = DEMO && view(DEMO, { kind: 'public', at });
    if (!seen) return expect.fail('nothing is public');
    const sheets = await printedSheets(publicData(seen, [], new Map(), false), faces);
    const counters = [...sheets].filter(([path]) => path.includes('counter'));
    expect(counters.map(([path, pdf]) => [path, pageCount(pdf)])).toEqual([
      ['depth-charts/counter-a4.pdf', 1],
      ['depth-charts/counter-letter.pdf', 1],
      ['high-water/counter-a4.pdf', 1],
      ['high-water/counter-letter.pdf', 1],
    ]);
  });

  test('leaves out what there is nothing of', async () => {
    const bare = dataOf([setOf([subset('a', 'Loose', 'promos', [])], { street: [] })]);
    expect(pageLines(await counter(bare)).map((line) => line.trim())).toEqual([
      [
        'Counter sheet The Ferrywrights: High Water 0 cards listed.',
        'Subsets Title Kind Cards listed Loose Promos 0',
        'Names, numbers and runs may change. What a pack or a box holds is chance; nothing here is a promise of what it will hold.',
        'Page 1 of 1 As of 16 April 2027, 09:00 (London time). The list may change. © 2027 Lantern & Oar',
      ].join(' '),
    ]);
  });

  test('tells a day on which cards of this set open, in its order, and no other', async () => {
    const none = dataOf([setOf([subset('a', 'Base', 'base', run(2))])]);
    expect(pageLines(await counter(none))[0]).not.toContain('to be revealed');
    expect(pageLines(await counter({ ...data, openings: [] }))[0]).not.toContain('Still to come');
  });

  test('has tables with heads that say what they head', async () => {
    const read = readOut(await counter(data));
    expect(read.match(/^ +Table$/gm)?.length).toBe(4);
    expect(read).toContain(`    TR
      TH
         /Scope /Row
        "Sketch Cards"
      TD
        "Sketches"
      TD
      TD
        "found as a redemption card"
      TD
        "3 artists"
`);
  });

  test('takes more pages rather than small type', async () => {
    const many = Array.from({ length: 60 }, (_, at) =>
      subset(
        `s${String(at)}`,
        `Subset ${String(at)}`,
        'inserts',
        run(2, { prefix: `S${String(at)}-` }),
      ),
    );
    const pdf = await counter(dataOf([{ ...highWater, subsets: many, parallels: [] }]));
    expect(pageCount(pdf)).toBe(2);
    const pages = pageLines(pdf).join(' ');
    for (const { title } of many) expect(pages).toContain(` ${title} Inserts `);
    expect(overlaps(pdf)).toEqual([]);
  });

  test('of a preview says so', async () => {
    expect(pageLines(await counter({ ...data, preview: true }))[0]).toMatch(
      /^Preview: not to be passed on before 16 April 2027, 09:00 \(London time\) Counter sheet /,
    );
  });
});
