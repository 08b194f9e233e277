import { describe, expect, test } from 'vitest';

import { mergeTable, mergeText } from '../../pipeline/out/sheets/index.js';
import { dayAt, personAt, publicAt, seen } from '../gate/support.js';
import { diceOf, edited } from '../law/edit.js';
import { example } from '../law/example.js';
import type { Eye } from '../law/held.js';
import { HIDDEN_EDITS } from '../law/hidden-edits.js';
import type { Plain } from '../law/plain.js';

const DAY = 20;

/** Everything that leaves in a merge file of a cut view, and what is said beside it. */
function told(plain: Plain, id: string | null): string {
  const audience = id === null ? publicAt(DAY) : personAt(plain, id, DAY);
  const table = mergeTable(seen(plain, audience));
  return JSON.stringify([table, mergeText(table, 'tsv')]);
}

function eyeOf(plain: Plain, id: string | null): Eye {
  const person = plain.people.people.find((candidate) => candidate.id === id) ?? null;
  return { at: dayAt(DAY), person };
}

describe('two contents that differ by a hidden edit give one merge file', () => {
  test.each([
    ['the public', null, 'person', 100],
    ['a reviewer', 'amara', 'public', 90],
  ] as const)('for %s', (_, id, other, least) => {
    const before = told(example(), id);
    let applied = 0;
    for (const edit of HIDDEN_EDITS.filter(({ from }) => from !== other)) {
      for (let seed = 0; seed < 3; seed += 1) {
        const after = edited(edit, example(), eyeOf(example(), id), diceOf(seed));
        if (!after) continue;
        applied += 1;
        expect(told(after, id), edit.name).toBe(before);
      }
    }
    expect(applied).toBeGreaterThan(least);
  });

  test('and an edit that all may notice gives another', () => {
    const after = example();
    for (const card of after.sets[0]?.cards ?? []) card.front.facts = { Berth: 'Lock ten' };
    expect(told(after, null)).not.toBe(told(example(), null));
  });
});
