import { beforeAll, describe, expect, test } from 'vitest';

import { proofSheets, type PlacedSide } from '../../pipeline/out/proof/index.js';
import { DEMO, HOUSE, OPTIONS, person, seenBy } from './fixture.js';
import { astray } from './near.js';
import { ODD } from './odd-set.js';
import { foundWords, pageLines, type FoundWord } from './tools.js';

/** The trade's card in points, and where a block of nine starts on US Letter, 612 x 792 pt. */
const CARD = { width: 180, height: 252 };
const LEFT = (612 - 3 * CARD.width) / 2;
const TOP = (792 - 3 * CARD.height) / 2;

describe('nine-up pages', () => {
  let placed: readonly PlacedSide[];
  let pages: readonly string[];
  let words: readonly (readonly FoundWord[])[];

  beforeAll(async () => {
    const options = { ...OPTIONS, kind: 'nine-up', paper: 'letter', set: 'high-water' } as const;
    const proof = await proofSheets(seenBy(HOUSE), options);
    words = foundWords(proof.pdf);
    placed = proof.placed;
    pages = pageLines(proof.pdf);
  });

  const side = (identity: string, which: 'front' | 'back'): PlacedSide => {
    const found = placed.find((each) => each.identity === identity && each.side === which);
    if (!found) throw new Error(`${identity} is not placed`);
    return found;
  };

  test('hold three rows of three cards, trim to trim', () => {
    const cells = placed.filter(({ page }) => page === 1).map(({ trim }) => trim);
    expect(cells.length).toBe(9);
    cells.forEach((trim, index) => {
      expect(trim.x).toBeCloseTo(LEFT + (index % 3) * CARD.width, 6);
      expect(trim.y).toBeCloseTo(TOP + Math.floor(index / 3) * CARD.height, 6);
      expect(trim.width).toBeCloseTo(CARD.width, 6);
      expect(trim.height).toBeCloseTo(CARD.height, 6);
    });
  });

  test('lay each back behind its front: the next page, its columns mirrored', () => {
    const pageWidth = 2 * LEFT + 3 * CARD.width;
    for (const front of placed.filter((each) => each.side === 'front')) {
      const back = side(front.identity ?? '', 'back');
      expect(back.page).toBe(front.page + 1);
      expect(back.trim.x).toBeCloseTo(pageWidth - front.trim.x - front.trim.width, 6);
      expect(back.trim.y).toBe(front.trim.y);
    }
  });

  test('turn landscape cards, so that top lies on top when the sheet is turned over', () => {
    expect(side('charts/ch01', 'front').turn).toBe('clockwise');
    expect(side('charts/ch01', 'back').turn).toBe('counter-clockwise');
    expect(side('crew/c001', 'front').turn).toBe('none');
  });

  test('draw every word of every bio where it was measured, within 0.05 pt', () => {
    const face = DEMO.fonts.get('standard')?.get('body')?.regular;
    const turned = placed.filter(({ turn, bio }) => turn !== 'none' && bio.length > 0);
    expect(turned.length).toBe(5);
    expect(placed.flatMap(({ bio }) => bio).length).toBeGreaterThan(1800);
    expect(astray(placed, words, face)).toEqual([]);
  });

  test('leave out cards that are not issued, and give larger cards pages of their own', () => {
    expect(placed.some(({ identity }) => identity === 'relics/re04')).toBe(false);
    const topper = side('toppers/fp01', 'front');
    expect(placed.filter(({ page }) => page === topper.page)).toEqual([topper]);
    expect(topper.trim.width).toBeCloseTo(360, 6);
    expect(topper.trim.x).toBeCloseTo((2 * LEFT + 3 * CARD.width - 360) / 2, 6);
  });

  test('say whom they are for and how to print them', () => {
    expect(pages.length).toBe(16);
    pages.forEach((page, index) => {
      expect(page).toContain('INTERNAL, up to: Later episodes');
      expect(page).toContain(`Proof of 1 December 2026 · ${String(index + 1)} of 16`);
      expect(page).toContain(index % 2 === 0 ? 'turned on the long edge' : 'from right to left');
    });
  });

  test('say on a cut card that it is not as printed, since nothing beside it can', async () => {
    const view = seenBy(person('tobit', ODD), ODD);
    const { pdf } = await proofSheets(view, { ...OPTIONS, kind: 'nine-up', fonts: ODD.fonts });
    const [front = '', back = ''] = pageLines(pdf);
    for (const page of [front, back]) {
      expect(page.match(/Not as printed/g)?.length).toBe(2);
      expect(page).toContain('9 To be revealed');
    }
  });
});
