import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { diceOf, draftOf, shuffle } from './edit.js';
import type { Eye } from './held.js';
import { HIDDEN_EDITS } from './hidden-edits.js';
import { outputsOf } from './outputs.js';
import type { Plain } from './plain.js';
import { looking } from './property.js';

/** How often each kind of edit was applied. */
type Tally = Map<string, number>;

/** Kinds that have been applied this often make room for others. */
const ENOUGH = 80;
/** So many edits are made on top of one another before the content is taken afresh. */
const CHAIN = 12;

/** Applies hidden edits of every kind to a content; what is made of it stays as it was. */
function obey(plain: Plain, eye: Eye, seed: number, tally: Tally): void {
  const dice = diceOf(seed);
  const before = outputsOf(plain, eye);
  const edits = HIDDEN_EDITS.filter(({ name }) => (tally.get(name) ?? 0) < ENOUGH);
  shuffle(edits, dice);
  let draft = plain;
  let text = '';
  for (const [index, { name, change }] of edits.entries()) {
    if (index % CHAIN === 0) {
      draft = draftOf(plain);
      text = JSON.stringify(draft);
    }
    const was = text;
    if (!change(draft, eye, dice) || (text = JSON.stringify(draft)) === was) continue;
    tally.set(name, (tally.get(name) ?? 0) + 1);
    same(name, before, outputsOf(draft, eye));
  }
}

/** A message that shows what differs, not two long lines. */
function same(name: string, before: readonly string[], after: readonly string[]): void {
  for (const [index, text] of after.entries()) {
    if (text === before[index]) continue;
    expect(JSON.parse(text), name).toEqual(JSON.parse(before[index] ?? ''));
    expect.fail(`${name}: the same values in another order`);
  }
}

function total(tally: Tally): number {
  return [...tally.values()].reduce((sum, count) => sum + count, 0);
}

describe('the law', () => {
  test('10,000 hidden edits leave the public view as it is', { timeout: 120_000 }, () => {
    const tally: Tally = new Map();
    fc.assert(
      fc.property(looking('public'), fc.nat(), ({ plain, eye }, seed) => {
        obey(plain, eye, seed, tally);
      }),
      { numRuns: 220 },
    );
    console.log(total(tally), [...tally].sort((a, b) => a[1] - b[1]).slice(0, 45));
    console.log(HIDDEN_EDITS.filter(({ name }) => !tally.has(name)).map((e) => e.name));
  });
  test('person', { timeout: 120_000 }, () => {
    const tally: Tally = new Map();
    fc.assert(
      fc.property(looking('person'), fc.nat(), ({ plain, eye }, seed) => {
        obey(plain, eye, seed, tally);
      }),
      { numRuns: 60 },
    );
    console.log(total(tally), [...tally].sort((a, b) => a[1] - b[1]).slice(0, 30));
  });
});
