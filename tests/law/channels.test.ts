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

/** Why a gate that tells of a key in this way tells nothing that is hidden; null if it does. */
function excuseOf(key: Key, way: Way): string | null {
  const single = ONE_OF_EACH.has(key.shape);
  if (TOLD.has(nameOf(key))) return 'what it decides is there for all to see';
  if (single && key.decision === 'open') return 'it is public';
  if (single && way === 'an order by it') return 'there is one';
  if (way === 'whether it is there' && ALWAYS_THERE.has(nameOf(key))) return 'it is always there';
  return null;
}

/** Which kinds of edits find out each way of telling of a key. */
type Found = ReadonlyMap<Way, Set<string>>;
const FOUND: ReadonlyMap<Key, Found> = new Map(
  KEYS.map((key) => [key, new Map(ALL_WAYS.map((way) => [way, new Set()]))]),
);

/** So many kinds of edits are remembered for each way. */
const ENOUGH = 3;

/** Tries every leaky gate: whatever it tells beside the view must change with some hidden edit. */
function tryAll(): void {
  for (const { plain, eye, edits } of casesFor('public', 14)) {
    const before = hiddenValues(plain, eye);
    for (const { name, draft } of edits) {
      const after = hiddenValues(draft, eye);
      for (const [index, key] of KEYS.entries()) compare(key, name, before[index], after[index]);
    }
  }
}

/** Notes in which ways a gate would tell of a kind of edit. */
function compare(
  key: Key,
  name: string,
  before: readonly string[] = [],
  after: readonly string[] = [],
): void {
  if (before.length === after.length && before.every((text, at) => text === after[at])) return;
  for (const [way, names] of FOUND.get(key) ?? []) {
    if (names.size < ENOUGH && WAYS[way](before) !== WAYS[way](after)) names.add(name);
  }
}

function killedWays(key: Key): readonly Way[] {
  return ALL_WAYS.filter((way) => (FOUND.get(key)?.get(way)?.size ?? 0) > 0);
}

/** Few edits that find out all ways of telling of a key, the one that finds out most first. */
function killersOf(key: Key): readonly string[] {
  const found = FOUND.get(key);
  const chosen: string[] = [];
  for (let left = killedWays(key); left.length > 0;) {
    const finds = (name: string): Way[] => left.filter((way) => found?.get(way)?.has(name));
    const names = [...new Set(left.flatMap((way) => [...(found?.get(way) ?? [])]))];
    const best = names.reduce((a, b) => (finds(b).length > finds(a).length ? b : a));
    left = left.filter((way) => !finds(best).includes(way));
    chosen.push(best);
  }
  return chosen;
}

/** "name: VPLO by name of a placeholder"; what is no leak in brackets, with the reason. */
function lineOf(key: Key): string {
  const killed = killedWays(key);
  const excuses = new Map<string, string>();
  for (const way of ALL_WAYS) {
    const excuse = excuseOf(key, way);
    if (excuse !== null) excuses.set(excuse, `${excuses.get(excuse) ?? ''}${LETTERS[way]}`);
  }
  const by = killed.length > 0 ? ` ${lettersOf(killed)} by ${killersOf(key).join(' and ')}` : '';
  const none = [...excuses].map(([excuse, ways]) => ` [${ways}: ${excuse}]`).join('');
  return `${key.key}:${by}${none}`;
}

const LETTERS: { readonly [W in Way]: string } = {
  'its value': 'V',
  'whether it is there': 'P',
  'its length or count': 'L',
  'an order by it': 'O',
};

function lettersOf(ways: readonly Way[]): string {
  return ways.map((way) => LETTERS[way]).join('');
}

/** The list of all mutants, a line for each shape, and how many there are. */
function listOf(): string {
  const shapes = [...new Set(KEYS.map(({ shape }) => shape))];
  const lines = shapes.map((shape) => {
    const keys = KEYS.filter((key) => key.shape === shape);
    const killed = keys.flatMap(killedWays).length;
    return `${shape} (${killed} of ${4 * keys.length}) ${keys.map(lineOf).join('; ')}`;
  });
  const killed = KEYS.flatMap(killedWays).length;
  const all = ALL_WAYS.length * KEYS.length;
  return [
    'Leaky gates, from the tables of the gate: for each key one that tells V its value, P whether',
    'it is there, L its length or count, O an order by it; and by which hidden edit it is found out.',
    ...lines,
    `${all} leaky gates of ${KEYS.length} keys: ${killed} found out, ${all - killed} tell nothing hidden`,
    '',
  ].join('\n');
}

describe('hidden edits find out a gate that tells of', () => {
  beforeAll(tryAll, 120_000);

  for (const key of KEYS) {
    const ways = ALL_WAYS.filter((way) => excuseOf(key, way) === null);
    test(`${nameOf(key)}: ${ways.join(', ') || 'nothing that is hidden'}`, () => {
      expect(killedWays(key)).toEqual(ways);
    });
  }

  test('every key of every table, and the list of them is printed', () => {
    process.stdout.write(listOf());
    const excused = KEYS.flatMap((key) => ALL_WAYS.filter((way) => excuseOf(key, way) !== null));
    expect(KEYS.flatMap(killedWays).length + excused.length).toBe(4 * KEYS.length);
  });
});
