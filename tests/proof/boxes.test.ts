import { describe, expect, test } from 'vitest';

import { proofSheets, type ProofOptions } from '../../pipeline/out/proof/index.js';
import { HOUSE, OPTIONS, seenBy } from './fixture.js';
import { ask, pageOperators } from './tools.js';

/** Sizes as poppler prints them: A4 of ISO 216 is 210 x 297 mm, US Letter 8.5 x 11 in. */
const PAPERS = {
  a4: { size: '595.276 x 841.89 pts (A4)', width: 595.276, height: 841.89 },
  letter: { size: '612 x 792 pts (letter)', width: 612, height: 792 },
} as const;
/** The trade's card: 2.5 x 3.5 in. */
const CARD = { width: 180, height: 252 };

const view = seenBy(HOUSE);

async function sheets(more: Partial<ProofOptions>): Promise<{
  readonly info: string;
  readonly pdf: Uint8Array;
  readonly placed: Awaited<ReturnType<typeof proofSheets>>['placed'];
}> {
  const { pdf, placed } = await proofSheets(view, { ...OPTIONS, ...more });
  return { pdf, placed, info: ask('pdfinfo', ['-box', '-f', '1', '-l', '99', 'FILE'], pdf) };
}

function boxes(info: string, page: number, name: string): readonly number[] {
  const [, numbers = ''] = new RegExp(`Page +${String(page)} ${name}:([ \\d.]+)`).exec(info) ?? [];
  return numbers.trim().split(/ +/).map(Number);
}

describe.each(['a4', 'letter'] as const)('boxes on %s', (paper) => {
  test('of annotated sheets are the paper, upright or on its side', async () => {
    const { info } = await sheets({ paper, set: 'high-water', subset: 'promos' });
    expect(info).toContain(`Page    1 size:  ${PAPERS[paper].size}`);
    const { width, height } = PAPERS[paper];
    for (const name of ['MediaBox', 'TrimBox', 'BleedBox']) {
      const [left, bottom, right, top] = boxes(info, 1, name);
      expect([left, bottom]).toEqual([0, 0]);
      expect(Math.abs((right ?? 0) - width)).toBeLessThan(0.01);
      expect(Math.abs((top ?? 0) - height)).toBeLessThan(0.01);
    }
    const landscape = await sheets({ paper, set: 'high-water', subset: 'charts' });
    expect(boxes(landscape.info, 2, 'MediaBox')).toEqual(
      [0, 0, height, width].map((length) => Number(length.toFixed(2))),
    );
  });

  test('of a nine-up page are the block of nine: 190.5 x 266.7 mm in the middle', async () => {
    const { info } = await sheets({ paper, kind: 'nine-up', set: 'high-water', subset: 'story' });
    const { width, height } = PAPERS[paper];
    const [left = 0, bottom = 0, right = 0, top = 0] = boxes(info, 1, 'TrimBox');
    expect(right - left).toBeCloseTo(3 * CARD.width, 1);
    expect(top - bottom).toBeCloseTo(3 * CARD.height, 1);
    expect(Math.abs(left + right - width)).toBeLessThan(0.011);
    expect(Math.abs(bottom + top - height)).toBeLessThan(0.011);
  });

  test('of a card by itself are its trim, 5 x 7 in, and an eighth of an inch of bleed', async () => {
    const { info, placed } = await sheets({ paper, kind: 'nine-up', subset: 'toppers' });
    expect(placed.map(({ page, side }) => [page, side])).toEqual([
      [1, 'front'],
      [2, 'back'],
    ]);
    for (const page of [1, 2]) {
      const trim = boxes(info, page, 'TrimBox');
      const bleed = boxes(info, page, 'BleedBox');
      expect((trim[2] ?? 0) - (trim[0] ?? 0)).toBeCloseTo(360, 1);
      expect((trim[3] ?? 0) - (trim[1] ?? 0)).toBeCloseTo(504, 1);
      expect((trim[0] ?? 0) - (bleed[0] ?? 0)).toBeCloseTo(9, 1);
      expect((bleed[3] ?? 0) - (trim[3] ?? 0)).toBeCloseTo(9, 1);
    }
  });

  test('each page has a bar of 50 mm, from edge to edge, and says so', async () => {
    const { pdf } = await sheets({ paper, set: 'high-water', subset: 'toppers' });
    // 50 mm are 50 / 25.4 x 72 pt.
    const bar = /^0 -0\.75 ([\d.]+) 0\.75 re$/m;
    const [, ...pages] = pageOperators(pdf);
    expect(pages.length).toBe(2);
    for (const page of pages) expect(Number(bar.exec(page)?.[1])).toBeCloseTo(141.732283, 5);
    expect(ask('pdftotext', ['FILE', '-'], pdf).match(/50 mm at 100 %/g)?.length).toBe(2);
  });
});

describe('crop marks', () => {
  test('stand at the corners of the trim that is told, outside of the bleed', async () => {
    const { pdf, placed } = await sheets({ set: 'high-water', subset: 'promos' });
    const [page = ''] = pageOperators(pdf);
    const strokes = [...page.matchAll(/^([\d.]+) ([\d.]+) m\n([\d.]+) ([\d.]+) l$/gm)].map(
      ([, ...numbers]) => numbers.slice(0, 4).map(Number),
    );
    for (const { trim } of placed.filter((side) => side.page === 1)) {
      expect(trim.width).toBeCloseTo(CARD.width, 6);
      expect(trim.height).toBeCloseTo(CARD.height, 6);
      const right = trim.x + trim.width;
      const bottom = trim.y + trim.height;
      for (const x of [trim.x, right]) {
        const marks = strokes.filter(([x1, , x2]) => close(x1, x) && close(x2, x));
        expect(marks.some(([, y1 = 0, , y2 = 0]) => Math.max(y1, y2) < trim.y - 9)).toBe(true);
        expect(marks.some(([, y1 = 0, , y2 = 0]) => Math.min(y1, y2) > bottom + 9)).toBe(true);
      }
      for (const y of [trim.y, bottom]) {
        const marks = strokes.filter(([, y1, , y2]) => close(y1, y) && close(y2, y));
        expect(marks.some(([x1 = 0, , x2 = 0]) => Math.max(x1, x2) < trim.x - 9)).toBe(true);
        expect(marks.some(([x1 = 0, , x2 = 0]) => Math.min(x1, x2) > right + 9)).toBe(true);
      }
    }
  });
});

function close(a: number | undefined, b: number): boolean {
  return a !== undefined && Math.abs(a - b) < 1e-5;
}
