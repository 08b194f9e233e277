import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';

import { pressSheets, whole, workOut, type Subject } from '../../pipeline/packs/index.js';
import { KINDS, smallPlan } from './small.js';

const subjects = (count: number, copies = 4000): readonly Subject[] =>
  Array.from({ length: count }, (_, at) => ({
    id: String(at + 1),
    weight: 1,
    copies: whole(copies),
  }));

describe('cards on press sheets', () => {
  // Common practice of the trade, without a source: 84 subjects leave 16, 26, 37, 48 places.
  test.each([
    [10, 10, 16],
    [11, 10, 26],
    [11, 11, 37],
    [12, 11, 48],
  ])('84 on %i by %i leave %i places', (columns, rows, blank) => {
    expect(pressSheets({ columns, rows }, subjects(84)).forms).toMatchObject([
      { blank, needed: 4000, sheets: 4000 },
    ]);
  });

  test('66 on 132 up: each twice, so half the sheets', () => {
    const { up, forms, sheets } = pressSheets({ columns: 12, rows: 11 }, subjects(66, 4001));
    expect({ up, sheets }).toEqual({ up: 132, sheets: 2001 });
    const [first] = forms[0]?.subjects ?? [];
    expect(first).toEqual({ id: '1', times: 2, double: false, copies: 4002, over: whole(1) });
  });

  test('a card that is doubled comes twice, and the spare sheets are an over-run', () => {
    const sheet = { columns: 10, rows: 10, doubled: ['2'], spare: 40 };
    const [form] = pressSheets(sheet, subjects(84)).forms;
    expect(form).toMatchObject({ blank: 15, needed: 4000, sheets: 4040 });
    expect(form?.subjects.slice(0, 2)).toEqual([
      { id: '1', times: 1, double: false, copies: 4040, over: whole(40) },
      { id: '2', times: 2, double: true, copies: 8080, over: whole(4080) },
    ]);
  });

  test('short prints stand once where the others stand twice', () => {
    const own = subjects(50).map((each, at) =>
      at < 40 ? { ...each, weight: 2 } : { ...each, copies: whole(2000) },
    );
    const [form] = pressSheets({ columns: 10, rows: 10 }, own).forms;
    expect(form).toMatchObject({ blank: 10, needed: 2000 });
    expect(form?.subjects.map(({ over }) => over).every(({ over }) => over === 0n)).toBe(true);
  });

  test('a card of which few are made takes fewer places, and those that are doubled have them', () => {
    const own = [...subjects(48), { id: '17 b', weight: 1, copies: whole(250) }];
    const [form] = pressSheets({ columns: 10, rows: 10, doubled: ['1', '3', '4'] }, own).forms;
    expect(form).toMatchObject({ blank: 0, needed: 2000 });
    expect(form?.subjects.map(({ times }) => times).sort()).toEqual([
      1,
      ...Array.from({ length: 45 }, () => 2),
      ...[3, 3, 3],
    ]);
    expect(form?.subjects.at(-1)).toEqual({
      id: '17 b',
      times: 1,
      double: false,
      copies: 2000,
      over: whole(1750),
    });
  });

  test('too few sheets are an under-run', () => {
    const [form] = pressSheets({ columns: 10, rows: 10, ordered: 3999 }, subjects(84)).forms;
    expect(form?.subjects[0]?.over).toEqual(whole(-1));
  });

  test('on several forms, as evenly as may be', () => {
    const { forms, sheets } = pressSheets({ columns: 10, rows: 10 }, subjects(201));
    expect(forms.map((form) => form.subjects.length)).toEqual([67, 67, 67]);
    expect(sheets).toBe(12_000);
  });

  property.prop({
    columns: fc.integer({ min: 1, max: 14 }),
    rows: fc.integer({ min: 1, max: 14 }),
    cards: fc.array(
      fc.record({
        weight: fc.integer({ min: 1, max: 3 }),
        copies: fc.integer({ min: 1, max: 9999 }),
      }),
      { minLength: 1, maxLength: 60 },
    ),
  })('no place is used twice, no card is short, and a sheet less is too few', (drawn) => {
    const { columns, rows, cards } = drawn;
    const own = cards.map(({ weight, copies }, at) => ({
      id: String(at),
      weight,
      copies: whole(copies),
    }));
    const sheets = pressSheets({ columns, rows, doubled: ['0'] }, own);
    expect(sheets.forms.flatMap((form) => form.subjects.map(({ id }) => id))).toEqual(
      own.map(({ id }) => id),
    );
    for (const form of sheets.forms) {
      const used = form.subjects.reduce((sum, { times }) => sum + times, 0);
      expect(used + form.blank).toBe(columns * rows);
      expect(form.blank).toBeGreaterThanOrEqual(0);
      expect(form.subjects.every(({ times }) => times > 0)).toBe(true);
      expect(form.subjects.every(({ over }) => over.over >= 0n)).toBe(true);
      expect(form.subjects.some(({ times, over }) => over.over < BigInt(times))).toBe(true);
    }
  });

  property.prop({
    up: fc.integer({ min: 12, max: 100 }),
    counts: fc.array(fc.integer({ min: 1, max: 9999 }), { minLength: 1, maxLength: 12 }),
  })('no more sheets are needed than if all stood there alike', ({ up, counts }) => {
    const own = counts.map((copies, at) => ({ id: String(at), weight: 1, copies: whole(copies) }));
    const [form] = pressSheets({ columns: up, rows: 1 }, own).forms;
    const alike = Math.floor(up / counts.length);
    expect(form?.needed).toBeLessThanOrEqual(Math.ceil(Math.max(...counts) / alike));
    expect(form?.needed).toBeGreaterThanOrEqual(Math.ceil(Math.max(...counts) / up));
  });

  test('a report has those of each kind that says its sheet, the reserve among them', () => {
    const base = { ...KINDS.base, reserve: 2, sheet: { columns: 4, rows: 3 } };
    const report = workOut(smallPlan({ kinds: { base } }));
    expect(report.kinds.map(({ kind, sheets }) => [kind, sheets?.sheets])).toEqual([
      ['base', 52],
      ['charts', undefined],
      ['relics', undefined],
      ['varnished', undefined],
      ['signatures', undefined],
    ]);
  });
});
