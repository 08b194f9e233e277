import { beforeAll, describe, expect, test } from 'vitest';

import { printedSheets, type Paper } from '../../pipeline/out/print/index.js';
import type { PublicData } from '../../schema/index.js';
import { foundWords, pageLines } from '../proof/tools.js';
import {
  card,
  data,
  dataOf,
  faces,
  highWater,
  PREMIERE,
  run,
  setOf,
  SPRING,
  subset,
  toCome,
} from './fixture.js';
import { boxesOn, issuedRows, outside, overlaps, pageCount, readOut, unspaced } from './reading.js';

const SIZES = { a4: { width: 595.28, height: 841.89 }, letter: { width: 612, height: 792 } };
const PAPERS: readonly Paper[] = ['a4', 'letter'];
/** 12 mm in points. */
const MARGIN = 34;

async function checklist(of: PublicData, paper: Paper = 'a4', set = 'high-water') {
  const sheet = (await printedSheets(of, faces)).get(`${set}/checklist-${paper}.pdf`);
  return sheet ?? expect.fail(`no checklist of ${set} for ${paper}`);
}

const base = (count: number): PublicData =>
  dataOf([setOf([subset('crew', 'Crew and Craft', 'base', run(count))])]);

describe('a set with a card of every kind', () => {
  let sheets: ReadonlyMap<string, Uint8Array>;

  beforeAll(async () => {
    sheets = await printedSheets(data, faces);
  });

  test.each(PAPERS)('lists each card once, in order (%s)', (paper) => {
    const pdf = sheets.get(`high-water/checklist-${paper}.pdf`) ?? new Uint8Array();
    const said = unspaced(pdf);
    const rows = highWater.subsets.flatMap(({ cards }) =>
      cards.map((each) => `${each.number ?? ''}${each.letter ?? ''}${each.name}`),
    );
    expect(rows.length).toBeGreaterThan(130);
    let at = 0;
    for (const row of rows) {
      const found = said.indexOf(row.replace(/\s+/g, ''), at);
      expect(found, row).toBeGreaterThanOrEqual(at);
      at = found + 1;
    }
    const artists = highWater.subsets.flatMap((each) => each.artists);
    expect(readOut(pdf).match(/^ +LI$/gm)?.length).toBe(rows.length + artists.length);
  });

  test.each(PAPERS)('has a tick box for all that is issued (%s)', (paper) => {
    const pdf = sheets.get(`high-water/checklist-${paper}.pdf`) ?? new Uint8Array();
    const boxes = boxesOn(pdf).reduce((sum, count) => sum + count, 0);
    expect(boxes).toBe(issuedRows(highWater.subsets));
  });

  test.each(PAPERS)('has its base set on the first page, and all of it (%s)', (paper) => {
    const [first = '', ...others] = pageLines(
      sheets.get(`high-water/checklist-${paper}.pdf`) ?? new Uint8Array(),
    );
    expect(first).toContain(' 84 Checklist ');
    expect(first).not.toContain('Lake Charts');
    expect(others.join(' ')).not.toContain('To be revealed 84');
    expect(others.join(' ')).toContain('Lake Charts 8 cards listed. Inserts, found in packs LC-1 ');
  });

  test('has the rest in type of the same size, which has room on a page of its own', () => {
    const pdf = sheets.get('high-water/checklist-a4.pdf') ?? expect.fail('no sheet');
    const heights = foundWords(pdf).map((page) => {
      const word = page.find(({ text }) => text === 'Pim');
      return word ? word.yMax - word.yMin : 0;
    });
    expect(heights.length).toBe(2);
    expect(heights[0]).toBeGreaterThan(12);
    expect(heights[1]).toBeCloseTo(heights[0] ?? 0, 2);
  });

  test.each(PAPERS)('keeps its words apart and inside the margins (%s)', (paper) => {
    const pdf = sheets.get(`high-water/checklist-${paper}.pdf`) ?? new Uint8Array();
    expect(overlaps(pdf)).toEqual([]);
    expect(outside(pdf, SIZES[paper], MARGIN)).toEqual([]);
  });

  test('says nothing of another set', () => {
    for (const [path, pdf] of sheets) {
      const own = path.startsWith('high-water/');
      const said = unspaced(pdf);
      expect(said.includes('Soundings'), path).toBe(!own);
      expect(said.includes('DepthCharts'), path).toBe(!own);
      expect(said.includes('HighWater'), path).toBe(own);
    }
  });
});

test('every kind of row, the parallels and the foot, as they are read out', async () => {
  const small = setOf(
    [
      subset('crew', 'Crew and Craft', 'base', [
        card('1', 'Emeric Hask'),
        card('17', 'Odalys Thrane'),
        card('17', 'Odalys Thrane', { letter: 'b', tell: 'the lamp is lit', run: 250 }),
        toCome('18', 'The voice in the lock', SPRING),
        toCome('19', 'The magistrate', null),
        toCome('20', 'To be revealed', PREMIERE),
      ]),
      subset(
        'relics',
        'Timber relics',
        'relics',
        [
          card('TR-3', 'A rib of Seven Doors', { shortPrint: 'SSP', run: 1 }),
          card('TR-4', 'A plank', { state: 'not issued' }),
          card(null, 'Unnumbered', {
            signers: [{ name: 'Mirela Voss', as: 'Dorrit Sill', redemption: true }],
          }),
        ],
        { found: 'box' },
      ),
      subset('sketches', 'Sketch Cards', 'sketches', [], { artists: ['Tove Lindqvist'] }),
    ],
    {
      street: [{ region: 'uk', at: PREMIERE }],
      parallels: [
        { id: 'keel', title: 'Keel', of: ['crew', 'relics'], run: 1, tell: null, revealed: null },
        { id: 'tarred', title: 'Tarred', of: ['crew'], run: 84, tell: 'dark', revealed: null },
      ],
    },
  );
  const property = { ...data.property, dataTerms: 'CC0, without the pictures' };
  const pdf = await checklist(dataOf([small], { property }));
  expect(readOut(pdf)).toBe(`Document "The Ferrywrights: High Water: checklist"
  P
    "Checklist"
  H1
    "The Ferrywrights: High Water"
  P
    "8 cards listed. In shops 16 April 2027 (UK)."
  H2
    "Crew and Craft"
  P
    "6 cards listed"
  L
    LI
      Lbl
        "1"
      LBody
        "Emeric Hask"
    LI
      Lbl
        "17"
      LBody
        "Odalys Thrane"
    LI
      Lbl
        "17b"
      LBody
        "Odalys Thrane variation: the lamp is lit; 250 copies"
    LI
      Lbl
        "18"
      LBody
        "The voice in the lock to be revealed on 14 May 2027"
    LI
      Lbl
        "19"
      LBody
        "The magistrate to be revealed"
    LI
      Lbl
        "20"
      LBody
        "To be revealed on 16 April 2027"
  H2
    "Timber relics"
  P
    "2 cards listed. Relics, found in boxes"
  L
    LI
      Lbl
        "TR-3"
      LBody
        "A rib of Seven Doors super short print (SSP); one of one"
    LI
      Lbl
        "TR-4"
      LBody
        "A plank not issued"
    LI
      LBody
        "Unnumbered signed by Mirela Voss as Dorrit Sill (redemption)"
  H2
    "Sketch Cards"
  P
    "1 artist. Sketches"
  P
    "Artists"
  L
    LI
      LBody
        "Tove Lindqvist"
  H2
    "Parallels"
  Table
    TR
      TH
         /Scope /Column
        "Name"
      TH
         /Scope /Column
        "Of"
      TH
         /Scope /Column
        "Run"
      TH
         /Scope /Column
        "How to tell"
    TR
      TH
         /Scope /Row
        "Keel"
      TD
        "Crew and Craft and Timber relics"
      TD
        "one of one"
      TD
    TR
      TH
         /Scope /Row
        "Tarred"
      TD
        "Crew and Craft"
      TD
        "84 copies of each"
      TD
        "dark"
  P
    "As of 16 April 2027, 09:00 (London time). The list may change."
  P
    "© 2027 Lantern & Oar"
  P
    "CC0, without the pictures"
`);
  expect(boxesOn(pdf)).toEqual([9]);
});

describe('the base set on one side', () => {
  test.each(PAPERS.flatMap((paper) => [84, 200].map((count) => [count, paper] as const)))(
    '%i cards on %s',
    async (count, paper) => {
      const pdf = await checklist(base(count), paper);
      expect(boxesOn(pdf)).toEqual([count]);
      expect(overlaps(pdf)).toEqual([]);
      expect(outside(pdf, SIZES[paper], MARGIN)).toEqual([]);
    },
  );

  test('stands there with the rest behind it, though all could not', async () => {
    const inserts = subset('charts', 'Lake Charts', 'inserts', run(30, { prefix: 'LC-' }));
    const all = setOf([inserts, subset('crew', 'Crew and Craft', 'base', run(200))]);
    const pdf = await checklist(dataOf([all]), 'letter');
    expect(boxesOn(pdf)).toEqual([200, 30]);
  });

  test('flows on where it is too long, each card once', async () => {
    const pdf = await checklist(base(500));
    const boxes = boxesOn(pdf);
    expect(boxes.length).toBeGreaterThan(2);
    expect(boxes.reduce((sum, count) => sum + count, 0)).toBe(500);
    expect(overlaps(pdf)).toEqual([]);
    expect(pageLines(pdf).at(-1)).toContain('Page 4 of 4');
  });

  test('one card is a heading and a row below it', async () => {
    const pdf = await checklist(base(1));
    expect(pageLines(pdf).map((line) => line.trim())).toEqual([
      'Checklist The Ferrywrights: High Water 1 card listed. In shops 16 April 2027. Crew and Craft 1 card listed 1 Emeric Hask one Page 1 of 1 As of 16 April 2027, 09:00 (London time). The list may change. © 2027 Lantern & Oar',
    ]);
    expect(boxesOn(pdf)).toEqual([1]);
  });

  test('no card is a page that says so', async () => {
    const pdf = await checklist(dataOf([setOf([], { street: [] })]));
    expect(boxesOn(pdf)).toEqual([0]);
    expect(pageLines(pdf)[0]).toContain('High Water 0 cards listed. Page 1 of 1');
  });
});

test('a heading stands with its first two rows', async () => {
  const charts = Array.from({ length: 60 }, (_, at) =>
    subset(
      `s${String(at)}`,
      `Subset ${String(at)}`,
      'inserts',
      run(3, { prefix: `S${String(at)}-` }),
    ),
  );
  const pdf = await checklist(dataOf([setOf(charts)]));
  const words = foundWords(pdf);
  for (const at of charts.keys()) {
    const page = words.find((all) => all.some(({ text }) => text === `S${String(at)}-1`)) ?? [];
    const first = page.find(({ text }) => text === `S${String(at)}-1`);
    const second = page.find(({ text }) => text === `S${String(at)}-2`);
    const headings = page.filter(
      ({ text }, index) => text === 'Subset' && page[index + 1]?.text === String(at),
    );
    expect(first, `S${String(at)}-1`).toBeDefined();
    expect(second?.xMin).toBeCloseTo(first?.xMin ?? 0, 1);
    expect(headings.map(({ yMin }) => yMin < (first?.yMin ?? 0))).toEqual([true]);
  }
  expect(pageCount(pdf)).toBeGreaterThan(1);
});

describe('a preview', () => {
  test('says on every page before when it is not to be passed on', async () => {
    const preview = { ...base(500), preview: true };
    const pages = pageLines(await checklist(preview));
    const open = pageLines(await checklist(base(500)));
    expect(pages.length).toBeGreaterThan(2);
    for (const page of pages) {
      expect(page).toContain(
        'Preview: not to be passed on before 16 April 2027, 09:00 (London time)',
      );
    }
    expect(open.join(' ')).not.toContain('Preview');
  });

  test('is read out once, and so is the foot', async () => {
    const read = readOut(await checklist({ ...base(220), preview: true }));
    expect(read.split('Preview: not to be passed on').length - 1).toBe(1);
    expect(read.split('The list may change').length - 1).toBe(1);
    expect(read).not.toContain('Page 1');
  });
});

test('the small words say what the data say, and are left out where they say nothing', async () => {
  const [legal, terms] = ['© 2027 Lantern & Oar', 'CC0, without the pictures'];
  const with_ = { ...base(2), property: { ...data.property, dataTerms: terms } };
  const without = { ...base(2), property: { ...data.property, legal: null } };
  expect(pageLines(await checklist(with_))[0]).toMatch(new RegExp(`${legal} ${terms} *$`));
  expect(pageLines(await checklist(without))[0]).toMatch(/The list may change\. *$/);
});
