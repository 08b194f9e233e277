import { create, type Font } from 'fontkit';
import { expect, test } from 'vitest';

import { drawingFont } from '../../pipeline/out/proof/drawing-font.js';
import { featureSet } from '../../pipeline/typeset/index.js';
import { CHROME } from './fixture.js';

const { bytes } = CHROME.regular;
const TEXTS = ['Patient Heron', 'AVATAR To. fj', 'the first fly-over', 'fi', 'fi'];

function shaped(font: Font, text: string, ligatures: boolean): unknown {
  const { glyphs, positions, advanceWidth } = font.layout(text, featureSet(ligatures));
  return {
    ids: glyphs.map((glyph) => glyph.id),
    positions: positions.map((position) => ({ ...position })),
    advanceWidth,
  };
}

test('remembered runs are those that the font library makes, with ligatures and without', () => {
  const plain = create(Buffer.from(bytes));
  if (!('layout' in plain)) throw new Error('a collection');
  const font = drawingFont(bytes);
  for (const ligatures of [true, false, true]) {
    for (const text of TEXTS) {
      expect(shaped(font, text, ligatures)).toEqual(shaped(plain, text, ligatures));
    }
  }
  expect(font.layout('fi', featureSet(true)).glyphs.length).toBe(1);
  expect(font.layout('fi', featureSet(false)).glyphs.length).toBe(2);
});

test('a run that its user has scaled is not remembered as scaled', () => {
  const font = drawingFont(bytes);
  const before = shaped(font, 'Heron', true);
  for (const position of font.layout('Heron', featureSet(true)).positions) position.xAdvance *= 2;
  expect(shaped(font, 'Heron', true)).toEqual(before);
});
