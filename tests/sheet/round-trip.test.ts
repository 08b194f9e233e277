import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';

import type { Subset } from '../../schema/index.js';
import type { Card, CardSet, Content } from '../../pipeline/model/index.js';
import { bookOf } from '../../pipeline/out/sheets/index.js';
import { readContent, memoryFolder } from '../../pipeline/read/index.js';
import {
  planRows,
  readSheets,
  readTable,
  type SheetPlan,
  type TableReading,
} from '../../pipeline/sheet/index.js';
import { HOUSE, publicAt, seen } from '../gate/support.js';
import { exampleWith, say } from '../law/example.js';
import { oddCard } from '../sheets/odd-cards.js';
import { sample } from './support.js';

/** A thousand odd cards, in one subset. */
const ODD = fc.sample(oddCard, { numRuns: 1000, seed: 20270417 }).map((card, at) => ({
  ...card,
  subset: 'crew',
  id: `c${String(at).padStart(4, '0')}`,
}));

const VIEWED = exampleWith(
  ...ODD.map(({ subset, id, front }) => ({
    subset,
    id,
    front: { ...front, spoiler: 'open', embargo: [], holds: {} },
    bio: [[say('A bell.')]],
  })),
);

const CREW: Subset = { id: 'crew', title: 'Crew', group: 'base', numbers: 'none' };
const GROUND: Content = readContent(memoryFolder(sample()));

function setOf(change: (card: Card) => Card = (card) => card): CardSet {
  const [base] = GROUND.sets;
  if (!base) throw new Error('the sample has no set');
  const { source, value } = base.plan;
  return {
    ...base,
    id: 'high-water',
    plan: { source, value: { ...value, id: 'high-water', subsets: [CREW] } },
    cards: ODD.map(({ subset, id, front, body }) => {
      const file = `high-water/cards/${subset}/${id}.md`;
      const text = `---\nname: x\n---\n${body}\n`;
      return change({ set: 'high-water', subset, id, source: { file, text }, front, bio: [] });
    }),
  };
}

function planOf(
  bytes: Uint8Array,
  set: CardSet,
): SheetPlan & Pick<TableReading, 'refused' | 'skipped'> {
  const read = readSheets(readTable('all.csv', bytes), {
    set,
    mapping: null,
    sheets: [],
    into: null,
  });
  const plan = planRows(read.rows, { content: GROUND, set, overwrite: false });
  return {
    ...plan,
    refused: read.refused,
    rejected: [...read.rejected, ...plan.rejected],
    skipped: read.skipped,
  };
}

interface Made {
  readonly house: Uint8Array;
  readonly cut: Uint8Array;
}

const FILES = new Map<string, Made>();
beforeAll(async () => {
  const cards = new Map(ODD.map((card) => [`high-water/${card.subset}/${card.id}`, card]));
  const fonts = new Map();
  const house = bookOf(seen(VIEWED, HOUSE), {
    what: 'copy',
    fonts,
    house: { names: [], facts: new Map(), cards },
  });
  const cut = bookOf(seen(VIEWED, publicAt(20)), { what: 'copy', fonts });
  for (const format of ['xlsx', 'csv'] as const) {
    FILES.set(format, { house: await house.bytes(format), cut: await cut.bytes(format) });
  }
});

function file(format: string, which: keyof Made): Uint8Array {
  return FILES.get(format)?.[which] ?? new Uint8Array();
}

describe.each(['xlsx', 'csv'] as const)('a thousand odd cards through %s', (format) => {
  test('say what they said: nothing is new, changed, in conflict or rejected', () => {
    const plan = planOf(file(format, 'house'), setOf());
    expect(plan.refused).toEqual([]);
    expect(plan.rejected.slice(0, 3)).toEqual([]);
    expect(
      plan.changes.flatMap(({ edits, conflicts }) => [...edits, ...conflicts]).slice(0, 3),
    ).toEqual([]);
    expect([plan.adds.length, plan.same]).toEqual([0, ODD.length]);
  });

  test('that say something else now are each in conflict', () => {
    const renamed = (card: Card): Card => ({ ...card, front: { ...card.front, name: 'Somebody' } });
    const plan = planOf(file(format, 'house'), setOf(renamed));
    const conflicts = plan.changes.flatMap((change) => change.conflicts);
    // A name of nothing that shows is an empty cell.
    const named = ODD.filter(({ front: { name } }) => /[^\s\u00ad\u200b-\u200f\u2060]/u.test(name));
    expect(named.length).toBeGreaterThan(900);
    expect(conflicts.filter(({ key }) => key === 'name').length).toBe(named.length);
    expect(plan.rejected).toEqual([]);
  });

  test('cut to what is public change nothing', () => {
    const plan = planOf(file(format, 'cut'), setOf());
    expect(plan.refused).toEqual([]);
    expect([plan.adds, plan.changes, plan.rejected]).toEqual([[], [], []]);
    expect(
      plan.skipped.filter(({ why }) => why.startsWith('marked as cut')).length,
    ).toBeGreaterThan(900);
  });
});
