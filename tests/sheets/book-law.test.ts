import { describe, expect, test } from 'vitest';

import { view, type Audience } from '../../pipeline/gate/index.js';
import { bookOf, cardsBy, type BookOptions, type What } from '../../pipeline/out/sheets/index.js';
import { toldNames } from '../../pipeline/out/sheets/names.js';
import { dayAt, HOUSE, personAt, publicAt, seen } from '../gate/support.js';
import { releasedOf } from '../law/outputs.js';
import { diceOf, edited } from '../law/edit.js';
import { example } from '../law/example.js';
import type { Eye } from '../law/held.js';
import { HIDDEN_EDITS } from '../law/hidden-edits.js';
import type { Plain } from '../law/plain.js';
import { csvRows } from './read-back.js';

const DAY = 20;
const FONTS: BookOptions['fonts'] = new Map();

/** The example, whose cards a writer of this clearance writes. */
function content(clearance: string): Plain {
  const plain = example();
  for (const card of plain.sets[0]?.cards ?? []) card.front.writer = 'pip';
  for (const subset of plain.sets[0]?.plan.subsets ?? []) subset.bio = { words: { min: 20 } };
  for (const name of plain.names.names) name.avoid = [{ form: 'Miss O', use: name.name }];
  plain.people.people.push({ id: 'pip', name: 'Pip', role: 'writer', clearance });
  return plain;
}

/** Everything that leaves in a file of cards: its cells, its mark, and how many cards it has. */
async function told(plain: Plain, id: string | null, what: What): Promise<string> {
  const audience: Audience = id === null ? publicAt(DAY) : personAt(plain, id, DAY);
  const made = seen(plain, audience);
  const options = optionsFor(plain, audience);
  const book = bookOf(made, { what, fonts: FONTS, ...options });
  const names = toldNames(made, options.anybody ?? null).map(({ cells }) => [...cells]);
  return JSON.stringify([book.cards, book.mark, csvRows(await book.bytes('csv')), names]);
}

function optionsFor(plain: Plain, audience: Audience): Pick<BookOptions, 'own' | 'anybody'> {
  if (audience.kind !== 'person') return {};
  const person = { ...audience.person, clearance: 'open', knows: [] };
  const anybody = view(releasedOf(plain), { ...audience, person });
  const own = audience.person.role === 'writer' ? { own: cardsBy('pip', seen(plain, HOUSE)) } : {};
  return { anybody, ...own };
}

/** Who writes a card is no secret from its writer: the one key of the house that decides here. */
function sameWriters(before: Plain, after: Plain): boolean {
  const writers = ({ sets }: Plain): string =>
    JSON.stringify(
      sets.map(({ cards }) =>
        cards.map(({ subset, id, front }) => [subset, id, front.writer]).sort(),
      ),
    );
  return writers(before) === writers(after);
}

describe('two contents that differ by a hidden edit give one file of cards', () => {
  test.each([
    ['the public', null, 'person', 90],
    ['a reviewer', 'amara', 'public', 80],
    ['a writer', 'pip', 'public', 60],
  ] as const)('for %s', async (_, id, other, least) => {
    const start = content('shops');
    const person = start.people.people.find((candidate) => candidate.id === id) ?? null;
    const eye: Eye = { at: dayAt(DAY), person };
    const before = [await told(start, id, 'copy'), await told(start, id, 'checklist')];
    let applied = 0;
    for (const edit of HIDDEN_EDITS.filter(({ from }) => from !== other)) {
      for (let seed = 0; seed < 2; seed += 1) {
        const after = edited(edit, content('shops'), eye, diceOf(seed));
        if (!after || (id === 'pip' && !sameWriters(start, after))) continue;
        applied += 1;
        const now = [await told(after, id, 'copy'), await told(after, id, 'checklist')];
        expect(now, edit.name).toStrictEqual(before);
      }
    }
    expect(applied).toBeGreaterThan(least);
  });

  test('and an edit that all may notice gives another', async () => {
    const before = content('shops');
    const after = content('shops');
    for (const card of after.sets[0]?.cards ?? []) card.front.facts = { Berth: 'Lock ten' };
    for (const id of [null, 'amara', 'pip']) {
      expect(await told(after, id, 'copy')).not.toBe(await told(before, id, 'copy'));
    }
  });
});

test('a writer’s file differs for another clearance, and has no held word', async () => {
  const [lower, higher] = [
    await told(content('shops'), 'pip', 'copy'),
    await told(content('spring'), 'pip', 'copy'),
  ];
  expect(lower).not.toContain('Nobody rings it.');
  expect(higher).toContain('[Nobody rings it.](held)');
});
