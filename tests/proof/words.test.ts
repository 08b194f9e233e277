import { beforeAll, describe, expect, test } from 'vitest';

import { proofSheets, type PlacedSide, type Proof } from '../../pipeline/out/proof/index.js';
import { HOUSE, OPTIONS, seenBy } from './fixture.js';
import { astray } from './near.js';
import { ODD } from './odd-set.js';
import { foundWords, type FoundWord } from './tools.js';

describe('every word of odd bios is drawn where it was measured, within 0.05 pt', () => {
  let proof: Proof;
  let pages: readonly (readonly FoundWord[])[];

  beforeAll(async () => {
    proof = await proofSheets(seenBy(HOUSE, ODD), { ...OPTIONS, fonts: ODD.fonts });
    pages = foundWords(proof.pdf);
  });

  const back = (id: string): readonly PlacedSide[] =>
    proof.placed.filter((side) => side.identity === `gates/${id}` && side.side === 'back');

  test('in lines that are over', () => {
    const [long] = back('long');
    expect(long?.bio.length).toBe(90);
    expect(long?.bio.some(({ overset }) => overset)).toBe(true);
    expect(astray(back('long'), pages, ODD.fonts.get('plain')?.get('body')?.regular)).toEqual([]);
  });

  test('in justified and tracked lines, in a font of 2048 units', () => {
    const face = ODD.fonts.get('painted')?.get('other')?.regular;
    expect(face?.unitsPerEm).toBe(2048);
    expect(back('painted')[0]?.bio.length).toBeGreaterThan(50);
    expect(astray(back('painted'), pages, face)).toEqual([]);
  });

  test('on a card that is made smaller', () => {
    const [poster] = back('poster');
    const scale = poster?.scale ?? 1;
    expect(scale).toBeLessThan(0.7);
    expect(poster?.bio.length).toBe(5);
    // 300 x 400 mm.
    expect(poster?.trim.width).toBeCloseTo((300 / 25.4) * 72 * scale, 6);
    expect(poster?.trim.height).toBeCloseTo((400 / 25.4) * 72 * scale, 6);
    expect(astray(back('poster'), pages, ODD.fonts.get('poster')?.get('body')?.regular)).toEqual(
      [],
    );
  });
});
