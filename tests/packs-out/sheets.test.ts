import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';

import { packsPicture, packsSet } from '../../pipeline/out/packs/index.js';
import { signed } from '../../pipeline/out/packs/say.js';
import { captionOf } from '../../pipeline/out/packs/sheet-caption.js';
import { formsOf, sheetsText } from '../../pipeline/out/packs/sheets-text.js';
import { workOut, type ReleasePlan, type Sheet } from '../../pipeline/packs/index.js';
import { highWater } from '../packs/high-water.js';
import { KINDS, smallPlan } from '../packs/small.js';

/** *High Water* with these sheets, by kind. */
function figuresOf(sheets: Readonly<Record<string, Sheet>>) {
  const plan = highWater();
  const kinds = plan.kinds.map((kind) => {
    const sheet = sheets[kind.id];
    return sheet === undefined ? kind : { ...kind, sheet };
  });
  const withSheets = { ...plan, kinds };
  return madeOf(withSheets);
}

/** What is made, without what becomes of it in products. */
function madeOf(plan: ReleasePlan) {
  const report = { ...workOut(plan), products: [] };
  return packsSet({ id: 'set', title: 'A set', plan, report, said: [], findings: [] });
}

const DOUBLED = ['cards/1', 'cards/3', 'cards/4'];
const figures = figuresOf({
  crew: { columns: 10, rows: 10, doubled: DOUBLED, spare: 60 },
  story: { columns: 6, rows: 3, ordered: 3999 },
  letters: { columns: 5, rows: 4 },
});

describe('the press sheets of a set, as figures', () => {
  it('tell each form, its alike cards, and what comes of them', () => {
    const base = { ...KINDS.base, sheet: { columns: 3, rows: 2, doubled: ['2'], spare: 1 } };
    const set = madeOf(smallPlan({ kinds: { base } }));
    const alike = { times: 1, double: false, copies: 51, over: '1' };
    const single = (label: string) => ({ label, times: 1, double: false });
    expect(set.kinds.map(({ of, sheets }) => [of, sheets])).toEqual([
      [
        'base',
        {
          columns: 3,
          rows: 2,
          up: 6,
          sheets: 102,
          forms: [
            {
              cards: 5,
              blank: 0,
              needed: 50,
              sheets: 51,
              groups: [
                { ...alike, cards: 4, labels: ['1', '3', '4', '5'] },
                { cards: 1, labels: ['2'], times: 2, double: true, copies: 102, over: '52' },
              ],
              printed: [
                single('1'),
                { label: '2', times: 2, double: true },
                single('3'),
                single('4'),
                single('5'),
              ],
            },
            {
              cards: 5,
              blank: 1,
              needed: 50,
              sheets: 51,
              groups: [{ ...alike, cards: 5, labels: ['6', '7', '8', '9', '10'] }],
              printed: ['6', '7', '8', '9', '10'].map(single),
            },
          ],
        },
      ],
      ['charts', null],
      ['relics', null],
      ['varnished', null],
      ['signatures', null],
    ]);
  });
});

describe('the press sheets of a set, as text', () => {
  it('are two tables: the forms, and the copies that come', () => {
    expect(sheetsText(figures).join('\n\n')).toBe(`Press sheets:
  Form                             across and down  cards  blank  sheets needed  printed
  Crew and Craft                           10 × 10     49      0          2,000    2,060
  High Water, form 1 of 2                    6 × 3     18      0          4,000    3,999
  High Water, form 2 of 2                    6 × 3     17      1          4,000    3,999
  Letters from the Drowned Street            5 × 4      6      2             34       34

Copies that come of them, if no sheet is spoilt, beside those that are to be made:
  Form                             cards               each on a sheet  copies of each  over or under
  Crew and Craft                   1, 3 and 4, double                3           6,180         +2,180
                                   44 cards                          2           4,120           +120
                                   17                                2           4,120           +370
                                   17 b                              1           2,060         +1,810
  High Water, form 1 of 2          18 cards                          1           3,999             −1
  High Water, form 2 of 2          17 cards                          1           3,999             −1
  Letters from the Drowned Street  6 cards                           3             102             +2`);
  });

  it('are nothing where no plan tells of a sheet', () => {
    expect(sheetsText(figuresOf({}))).toEqual([]);
    expect(packsPicture(figuresOf({}), 'INTERNAL')).not.toContain('Press sheets');
  });

  it.each([
    ['120', '+120'],
    ['-1', '−1'],
    ['0', '0'],
    ['-7/2', '−3 1/2'],
    ['5000/3', '+1,666 2/3'],
  ])('%s copies too many are said as %s', (exact, said) => {
    expect(signed(exact)).toBe(said);
  });
});

describe('what is said below a sheet', () => {
  it('is how many there are, and the greatest over-run and under-run', () => {
    expect(formsOf(figures).map(({ form }) => captionOf(form))).toEqual([
      ['2,000 sheets needed, 2,060 printed', 'most over: +2,180 of each of cards 1, 3 and 4'],
      ['4,000 sheets needed, 3,999 printed', 'under: −1 of each of 18 cards'],
      ['4,000 sheets needed, 3,999 printed', 'under: −1 of each of 17 cards'],
      ['34 sheets needed, 34 printed', 'over: +2 of each of 6 cards'],
    ]);
  });

  it('is both where some are too many and some too few, and neither where all are right', () => {
    const few = figuresOf({
      crew: { columns: 10, rows: 10, doubled: DOUBLED, ordered: 1999 },
      checklist: { columns: 5, rows: 4 },
      signatures: { columns: 5, rows: 5, ordered: 1 },
    });
    expect(formsOf(few).map(({ form }) => captionOf(form))).toEqual([
      [
        '2,000 sheets needed, 1,999 printed',
        'most over: +1,997 of each of cards 1, 3 and 4',
        'most under: −2 of each of 44 cards',
      ],
      ['200 sheets needed, 200 printed', 'as many of each card as are to be made'],
      ['100 sheets needed, 1 printed', 'under: −198 of each of 12 cards'],
    ]);
    const [card] = formsOf(figuresOf({ checklist: { columns: 5, rows: 4, spare: 10 } }));
    expect(card && captionOf(card.form)).toEqual([
      '200 sheets needed, 210 printed',
      'over: +200 of card 84',
    ]);
  });
});

interface Cell {
  readonly label: string | null;
  readonly double: boolean;
  readonly blank: boolean;
}

/** The places of each sheet in a picture, as they are drawn. */
function sheetsIn(picture: string): readonly (readonly Cell[])[] {
  return picture
    .split('<g transform="translate(0 12)">')
    .slice(1)
    .map((sheet) => {
      const lines = sheet.split('\n');
      const cells = lines.filter((line) => line.startsWith('<g transform'));
      const own = cells.filter((line) => line.endsWith('</g>'));
      return own.map((line) => ({
        label: />([^<>]+)<\/text>/.exec(line)?.[1] ?? null,
        double: line.split('<rect').length === 4,
        blank: line.includes('<path'),
      }));
    });
}

describe('the press sheets of a set, as a picture', () => {
  it('show each place: what stands there, double prints, and those that are blank', () => {
    const picture = packsPicture(figures, 'INTERNAL');
    const [crew, first, second, letters, ...others] = sheetsIn(picture);
    expect(others).toEqual([]);
    const numbers = Array.from({ length: 48 }, (_, at) => String(at + 1));
    const all = [...numbers, '17 b', ...numbers, '1', '3', '4'];
    expect(crew).toEqual(
      all.map((label) => ({ label, double: ['1', '3', '4'].includes(label), blank: false })),
    );
    expect([first?.length, second?.length]).toEqual([18, 18]);
    expect(second?.at(-1)).toEqual({ label: null, double: false, blank: true });
    expect(letters?.map(({ label }) => label)).toEqual([
      ...['LD-1', 'LD-2', 'LD-3', 'LD-4', 'LD-5', 'LD-6'],
      ...['LD-1', 'LD-2', 'LD-3', 'LD-4', 'LD-5', 'LD-6'],
      ...['LD-1', 'LD-2', 'LD-3', 'LD-4', 'LD-5', 'LD-6'],
      ...[null, null],
    ]);
    for (const { title, form } of formsOf(figures)) {
      for (const words of [title, ...captionOf(form)])
        expect(picture).toContain(`>${words}</text>`);
    }
  });

  it('have plain places where words are too small, and none where those are', () => {
    const drawn = (sheet: Sheet) => packsPicture(figuresOf({ crew: sheet }), 'INTERNAL');
    const [plain] = sheetsIn(drawn({ columns: 30, rows: 30, doubled: DOUBLED }));
    expect(plain?.length).toBe(900);
    expect(plain?.filter(({ label }) => label !== null)).toEqual([]);
    expect(plain?.some(({ double }) => double)).toBe(true);
    const many = drawn({ columns: 100_000, rows: 1000, doubled: DOUBLED });
    expect(sheetsIn(many)).toEqual([[]]);
    expect(many).toContain('>100,000 × 1,000 places</text>');
  });

  it('stand side by side, inside the edges, none on another', () => {
    const sheet = { columns: 10, rows: 10 };
    const kinds = ['crew', 'story', 'checklist', 'charts', 'benches'];
    const five = figuresOf(Object.fromEntries(kinds.map((kind) => [kind, sheet])));
    const picture = packsPicture(five, 'INTERNAL');
    const panel = picture.split('>Press sheets<')[1] ?? '';
    const at = [...panel.matchAll(/^<g transform="translate\(([\d.]+) ([\d.]+)\)">$/gm)]
      .map(([, x, y]) => [Number(x), Number(y)] as const)
      .filter(([x]) => x > 0);
    expect(at).toEqual([
      [32, 70],
      [342, 70],
      [652, 70],
      [32, 488],
      [342, 488],
    ]);
  });

  property.prop({
    columns: fc.integer({ min: 1, max: 34 }),
    rows: fc.integer({ min: 1, max: 40 }),
    doubled: fc.uniqueArray(fc.constantFrom('1', '2', '3', '4', '5', '6', '7', '8', '9', '10')),
  })('have as many of each card as the figures say, on whatever sheet', (drawn) => {
    const base = { ...KINDS.base, sheet: drawn };
    const set = madeOf(smallPlan({ kinds: { base } }));
    const forms = formsOf(set);
    const sheets = sheetsIn(packsPicture(set, 'INTERNAL'));
    expect(sheets.length).toBe(forms.length);
    for (const [at, { form }] of forms.entries()) {
      const cells = sheets[at] ?? [];
      const doubles = form.groups.filter(({ double }) => double);
      expect(cells.length).toBe(drawn.columns * drawn.rows);
      expect(cells.filter(({ blank }) => blank).length).toBe(form.blank);
      expect(cells.filter(({ double }) => double).length).toBe(
        doubles.reduce((sum, { cards, times }) => sum + cards * times, 0),
      );
      if (cells.every(({ label }) => label === null)) continue;
      for (const { label, times } of form.printed) {
        expect(cells.filter((cell) => cell.label === label).length).toBe(times);
      }
    }
  });
});
