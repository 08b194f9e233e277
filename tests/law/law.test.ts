import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { diceOf, draftOf, edited, inSomeOrder, shuffle, type HiddenEdit } from './edit.js';
import { momentOf, standing, type Eye } from './held.js';
import { HIDDEN_EDITS, editsFor } from './hidden-edits.js';
import { OUTPUTS, audienceOf, outputsOf, releasedOf } from './outputs.js';
import { contentOf, filesOf, type Plain } from './plain.js';
import { DAY } from './generate-words.js';
import { looking, plainContent } from './property.js';
import { memoryFolder, readContent } from '../../pipeline/read/index.js';
import { select } from '../../pipeline/select/index.js';

/** How often each kind of edit was applied. */
type Tally = Map<string, number>;

/** Edits are made on top of one another in so many chains, each on the content taken afresh. */
const CHAINS = 12;

/**
 * Applies hidden edits of every kind to a content: what is made of it stays as it was. A kind that
 * has been applied often enough makes room for others.
 */
function obey(
  { plain, eye }: { plain: Plain; eye: Eye },
  seed: number,
  tally: Tally,
  enough: number,
): void {
  const before = outputsOf(plain, eye);
  const edits = editsFor(eye.person === null ? 'public' : 'person').filter(
    ({ name }) => (tally.get(name) ?? 0) < enough,
  );
  for (const chain of chainsOf(edits, seed)) {
    const draft = draftOf(plain);
    let text = JSON.stringify(draft);
    for (const { name, change } of chain) {
      const was = text;
      const dice = diceOf(seed, name);
      if (!change(draft, eye, dice) || (text = JSON.stringify(draft)) === was) continue;
      tally.set(name, (tally.get(name) ?? 0) + 1);
      same(name, before, outputsOf(draft, eye));
    }
  }
}

/** Edits parted by chance into chains: one more kind lengthens one of them alone. */
function chainsOf(edits: readonly HiddenEdit[], seed: number): readonly (readonly HiddenEdit[])[] {
  const ordered = inSomeOrder(edits, seed);
  return Array.from({ length: CHAINS }, (_, which) =>
    ordered.filter(({ name }) => diceOf(seed + 1, name).below(CHAINS) === which),
  );
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

/** Kinds that were applied fewer times than asked, with how often. */
function rare(audience: 'public' | 'person', tally: Tally, wanted: number): [string, number][] {
  return editsFor(audience)
    .map(({ name }): [string, number] => [name, tally.get(name) ?? 0])
    .filter(([, count]) => count < wanted);
}

describe('the law', () => {
  test('the list of hidden edits names each kind once', () => {
    const names = HIDDEN_EDITS.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
  });

  test('10,000 hidden edits leave what the public gets as it is', { timeout: 300_000 }, () => {
    const tally: Tally = new Map();
    fc.assert(
      fc.property(looking('public'), fc.nat(), (looked, seed) => {
        obey(looked, seed, tally, 80);
      }),
      { numRuns: 220 },
    );
    expect(rare('public', tally, 50)).toEqual([]);
    expect(total(tally)).toBeGreaterThanOrEqual(10_000);
  });

  test('hidden edits leave what a person gets as it is', { timeout: 300_000 }, () => {
    const tally: Tally = new Map();
    fc.assert(
      fc.property(looking('person'), fc.nat(), (looked, seed) => {
        obey(looked, seed, tally, 20);
      }),
      { numRuns: 120 },
    );
    expect(rare('person', tally, 10)).toEqual([]);
    expect(total(tally)).toBeGreaterThanOrEqual(2_500);
  });

  test('two instants between the same steps give the same', () => {
    fc.assert(
      fc.property(plainContent, fc.nat(), fc.nat(), (plain, which, within) => {
        const steps = stepsOf(plain);
        const from = steps[which % steps.length] ?? 0;
        const to = steps.find((step) => step > from) ?? from + 400 * DAY;
        const between = from + (within % (to - from));
        const at = (instant: number): readonly string[] =>
          outputsOf(plain, { at: instant, person: null });
        same('the start of a step', at(from), at(between));
        same('the end of a step', at(from), at(to - 1));
      }),
      { numRuns: 120 },
    );
  });

  test('files in any order, and edits of files, give the same', { timeout: 120_000 }, () => {
    fc.assert(
      fc.property(looking('public'), fc.nat(), ({ plain, eye }, seed) => {
        const before = outputsOf(plain, eye);
        same('as read', before, readOutputs(plain, eye, seed));
        const [chosen] = inSomeOrder(editsFor('public'), seed);
        const draft = chosen && edited(chosen, plain, eye, diceOf(seed, chosen.name));
        if (draft) same(chosen.name, before, readOutputs(draft, eye, seed + 1));
      }),
      { numRuns: 10 },
    );
  });
});

/**
 * The steps of time, worked out anew: since, every lift, and the street instant of each set that is
 * shown then.
 */
function stepsOf(plain: Plain): number[] {
  const { since, levels, embargoes = [] } = plain.property;
  const lifts = [...levels, ...embargoes].flatMap(({ lift }) =>
    lift === undefined || lift === 'unset' ? [] : momentOf(lift),
  );
  const streets = plain.sets.flatMap(({ plan }) => {
    if (plan.street === undefined) return [];
    const regions = typeof plan.street === 'string' ? [plan.street] : Object.values(plan.street);
    const at = Math.min(...regions.map(momentOf));
    return standing(plain, { at, person: null }, plan) === 'open' ? [at] : [];
  });
  const first = momentOf(since);
  const all = [first, ...lifts, ...streets].filter((step) => step >= first);
  return [...new Set(all)].sort((a, b) => a - b);
}

/** What is made of the content's files, laid down in an order given by chance. */
function readOutputs(plain: Plain, eye: Eye, seed: number): readonly string[] {
  const files = [...filesOf(plain)];
  shuffle(files, diceOf(seed));
  const content = readContent(memoryFolder(new Map(files)));
  expect(content.faults.map(({ message, spot }) => [spot.source.file, message])).toEqual([]);
  expect(content.cardFiles).toBe(contentOf(plain).cardFiles);
  const released = select(content) ?? releasedOf(plain);
  return OUTPUTS.map((output) => output.of(released, audienceOf(plain, eye)));
}
