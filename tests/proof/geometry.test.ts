import { describe, expect, test } from 'vitest';

import { apply, lying, placing, type Turn } from '../../pipeline/out/proof/geometry.js';

/** A card of 4 x 3 with its top left corner as it lies at (10, 20). */
const SIDE = { width: 4, height: 3 };
const CORNER = { x: 10, y: 20 };

describe.each([
  { turn: 'none', topLeft: [10, 20], topRight: [18, 20], bottomRight: [18, 26] },
  { turn: 'clockwise', topLeft: [16, 20], topRight: [16, 28], bottomRight: [10, 28] },
  { turn: 'counter-clockwise', topLeft: [10, 28], topRight: [10, 20], bottomRight: [16, 20] },
] as const)('a card that lies $turn, at twice its size', ({ turn, ...corners }) => {
  const matrix = placing(SIDE, CORNER, turn, 2);
  const at = (x: number, y: number): readonly number[] => {
    const point = apply(matrix, { x, y });
    return [point.x, point.y];
  };

  test('has its corners where they belong', () => {
    expect(at(0, 0)).toEqual(corners.topLeft);
    expect(at(4, 0)).toEqual(corners.topRight);
    expect(at(4, 3)).toEqual(corners.bottomRight);
  });

  test('fills what it takes of the page', () => {
    const { width, height } = lying(SIDE, turn satisfies Turn);
    const points = [at(0, 0), at(4, 0), at(4, 3), at(0, 3)];
    const xs = points.map(([x = 0]) => x);
    const ys = points.map(([, y = 0]) => y);
    expect([Math.min(...xs), Math.max(...xs)]).toEqual([10, 10 + 2 * width]);
    expect([Math.min(...ys), Math.max(...ys)]).toEqual([20, 20 + 2 * height]);
  });
});
