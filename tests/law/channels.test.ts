import { beforeAll, describe, expect, test } from 'vitest';

import { casesFor } from './cases.js';
import { KEYS, WAYS, hiddenValues, nameOf, type Key, type Way } from './channels.js';

const ALL_WAYS = Object.keys(WAYS) as Way[];

/** Shapes of which a content has one, that is never absent: what the tables open of it is open. */
const ONE_OF_EACH: ReadonlySet<string> = new Set([
  'property',
  'legal',
  'site',
  'look',
  'names',
  'people',
]);

/** Keys that are in every content, so that their being there tells nothing. */
const ALWAYS_THERE: ReadonlySet<string> = new Set([
  'property.id',
  'property.levels',
  'property.embargoes',
  'property.approvals',
  'names.names',
  'people.people',
]);

/** Keys of which nothing is hidden: what they decide is there for all to see. */
const TOLD: ReadonlySet<string> = new Set(['property.since', 'site.shows']);

/** The ways in which a key could tell something that is hidden. */
function waysOf(key: Key): readonly Way[] {
  const name = nameOf(key);
  const single = ONE_OF_EACH.has(key.shape);
  if (TOLD.has(name) || (single && key.decision === 'open')) return [];
  return ALL_WAYS.filter((way) => {
    if (way === 'an order by it') return !single;
    return way !== 'whether it is there' || !ALWAYS_THERE.has(name);
  });
}

describe('hidden edits find out a gate that tells of', () => {
  const found = new Map<string, Set<Way>>(KEYS.map((key) => [nameOf(key), new Set<Way>()]));

  beforeAll(() => {
    for (const { plain, eye, edits } of casesFor('public', 20)) {
      const before = hiddenValues(plain, eye);
      for (const { draft } of edits) {
        for (const [index, after] of hiddenValues(draft, eye).entries()) {
          const key = KEYS[index];
          const was = before[index];
          if (!key || !was) continue;
          const known = found.get(nameOf(key));
          for (const way of ALL_WAYS) {
            if (!known?.has(way) && WAYS[way](was) !== WAYS[way](after)) known?.add(way);
          }
        }
      }
    }
  }, 120_000);

  for (const key of KEYS) {
    const ways = waysOf(key);
    if (ways.length === 0) continue;
    test(`${nameOf(key)}: ${ways.join(', ')}`, () => {
      const known = found.get(nameOf(key));
      expect(ALL_WAYS.filter((way) => known?.has(way))).toEqual(ways);
    });
  }
});
