import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { view } from '../../pipeline/gate/index.js';
import { diceOf, draftOf, inSomeOrder } from './edit.js';
import type { Eye } from './held.js';
import { editsFor } from './hidden-edits.js';
import { releasedOf, viewText } from './outputs.js';
import type { Plain } from './plain.js';
import { followed, stepsOf } from './followed.js';
import { looking } from './property.js';
import { apart } from './sites.js';

/** The content after one edit of every kind that is hidden from whoever has seen all releases. */
function hiddenlyEdited(
  plain: Plain,
  eye: Eye,
  seed: number,
  made: (name: string) => void = () => undefined,
): Plain {
  const draft = draftOf(plain);
  for (const { change, name } of inSomeOrder(editsFor('public'), seed)) {
    if (change(draft, eye, diceOf(seed, name))) made(name);
  }
  return draft;
}

describe('the releases up to an instant', () => {
  test('give the same views after edits that are hidden then', () => {
    const tally = new Map(editsFor('public').map(({ name }) => [name, 0]));
    let releases = 0;
    fc.assert(
      fc.property(looking('public'), fc.nat(), ({ plain, eye }, seed) => {
        const all = followed(plain, eye);
        const draft = hiddenlyEdited(plain, all, seed, (name) => {
          tally.set(name, (tally.get(name) ?? 0) + 1);
        });
        const steps = stepsOf(plain, eye.at);
        expect(stepsOf(draft, eye.at)).toEqual(steps);
        const [before, after] = [releasedOf(plain), releasedOf(draft)];
        for (const at of steps) {
          const was = view(before, { kind: 'public', at });
          const is = view(after, { kind: 'public', at });
          if (viewText(was) === viewText(is)) continue;
          expect(is).toEqual(was);
          expect.fail('the same values in another order');
        }
        releases += steps.length;
      }),
      { numRuns: 80, endOnFailure: true },
    );
    expect([...tally].filter(([, times]) => times < 2)).toEqual([]);
    expect(releases).toBeGreaterThan(200);
  }, 120_000);

  test('give the same sites after edits that are hidden then', async () => {
    let releases = 0;
    await fc.assert(
      fc.asyncProperty(looking('public'), fc.nat(), async ({ plain, eye }, seed) => {
        const draft = hiddenlyEdited(plain, followed(plain, eye), seed);
        for (const at of stepsOf(plain, eye.at)) {
          expect(await apart(plain, draft, at)).toBeNull();
          releases++;
        }
      }),
      { numRuns: 8, endOnFailure: true },
    );
    expect(releases).toBeGreaterThan(15);
  }, 120_000);
});
