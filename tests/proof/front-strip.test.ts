import { describe, expect, test } from 'vitest';

import { proofSheets, type ProofOptions } from '../../pipeline/out/proof/index.js';
import { HOUSE, OPTIONS, seenBy } from './fixture.js';
import { ODD } from './odd-set.js';
import { pageOperators } from './tools.js';

type Box = readonly number[];

const FILL = /^([\d. -]+) re\n\/DeviceRGB cs\n([\d. ]+) scn\nf$/gm;

/** The rectangles of a page that are filled with a colour: left, top, width and height in mm. */
function filledWith(colour: string, operators = ''): readonly Box[] {
  const ink = [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16) / 255).join(' ');
  return [...operators.matchAll(FILL)].flatMap(([, box = '', filled]) =>
    filled === ink
      ? [box.split(' ').map((length) => toThousandth((Number(length) * 25.4) / 72))]
      : [],
  );
}

function toThousandth(length: number): number {
  return Math.round(length * 1000) / 1000;
}

async function firstPage(
  view: ReturnType<typeof seenBy>,
  more: Partial<ProofOptions>,
): Promise<string> {
  const { pdf } = await proofSheets(view, { ...OPTIONS, kind: 'nine-up', ...more });
  return pageOperators(pdf)[0] ?? '';
}

describe('the strip under a text of the front', () => {
  test('is the front’s paper, 1.5 mm more than the zone on every side', async () => {
    const page = await firstPage(seenBy(HOUSE, ODD), { fonts: ODD.fonts });
    const [paper, ...strips] = filledWith('#654321', page);
    expect(paper).toEqual([0, 0, 63.5, 88.9]);
    expect(strips).toEqual([[3.5, 76.5, 56.5, 9]]);
  });

  test('runs on into the bleed where it comes to the safe margin', async () => {
    const page = await firstPage(seenBy(HOUSE), { subset: 'toppers' });
    const [, number, name] = filledWith('#eef3f1', page);
    expect(number).toEqual([-3.175, 162.9, 29.275, 18.075]);
    expect(name).toEqual([24.5, 162.9, 105.675, 18.075]);
  });
});
