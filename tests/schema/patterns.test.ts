import { describe, expect, test } from 'vitest';

import * as schemas from '../../schema/index.js';
import { schemasIn } from './keywords.js';

/** Every pattern of every schema, of values and of keys. */
const PATTERNS = [
  ...new Set(
    Object.values(schemas)
      .flatMap(schemasIn)
      .flatMap((schema) => [
        ...(typeof schema['pattern'] === 'string' ? [schema['pattern']] : []),
        ...Object.keys(schema['patternProperties'] ?? {}),
      ]),
  ),
];

/** Milliseconds of the quickest of three runs. */
function quickest(run: () => void): number {
  return Math.min(
    ...[1, 2, 3].map(() => {
      const start = performance.now();
      run();
      return performance.now() - start;
    }),
  );
}

/** How many times longer a pattern takes than looking at each character once. */
function slowness(pattern: RegExp, text: string): number {
  const once = quickest(() => /^[^!]+$/u.test(text));
  return quickest(() => pattern.test(text)) / Math.max(once, 0.02);
}

/** Parts that are repeated, and an end that makes the whole fail. */
const PUMPS = ['a', '0', '-', 'a-', 'a-0', '1/1', '1/1-', 'aa-', '/', '#0', ' ', '\n', 'é'];
const ENDS = ['!', '', '-', '/', '\n'];

describe('the patterns', () => {
  test('are found', () => {
    expect(PATTERNS.length).toBeGreaterThanOrEqual(8);
    expect(PATTERNS).toContain('^[a-z0-9]+(-[a-z0-9]+)*$');
  });

  test('are anchored, so that they judge the whole value', () => {
    expect(PATTERNS.filter((pattern) => !/^\^.*\$$/.test(pattern))).toStrictEqual([]);
  });

  // Short strings show exponential work, long ones quadratic; neither is judged in seconds.
  test.each(PATTERNS)('%s does bounded work', (pattern) => {
    const expression = new RegExp(pattern, 'u');
    for (const length of [26, 20_000]) {
      for (const pump of PUMPS) {
        for (const end of ENDS) {
          const text = pump.repeat(Math.ceil(length / pump.length)) + end;
          expect(slowness(expression, text), JSON.stringify([pump, end, length])).toBeLessThan(200);
        }
      }
    }
  });

  test('a pattern with nested repetition would be caught', () => {
    expect(slowness(/^(a+)+$/u, `${'a'.repeat(21)}!`)).toBeGreaterThan(200);
    expect(slowness(/^[a-z]*[a-z]*[a-z]*$/u, `${'a'.repeat(500)}!`)).toBeGreaterThan(200);
  });
});
