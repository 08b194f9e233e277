import { describe, expect, test } from 'vitest';

import { assembleView } from '../../pipeline/gate/assemble.js';
import type { Decision } from '../../pipeline/gate/decision.js';
import { TABLES, type Tables } from '../../pipeline/gate/tables.js';
import type { Audience } from '../../pipeline/gate/index.js';
import type { Released } from '../../pipeline/select/index.js';
import { casesFor, type Case } from './cases.js';
import { audienceOf, releasedOf, viewText } from './outputs.js';

/** Decisions from least to most permissive. */
const PERMISSIVE: readonly Decision[] = ['house', 'reviewer', 'shown', 'open'];

/**
 * Shapes of which nothing is listed while it is held: they have no placeholder on which `open`
 * could show more than `shown` does.
 */
const NO_PLACEHOLDER: ReadonlySet<string> = new Set([
  'image',
  'name',
  'signer',
  'credit',
  'variation',
  'roster',
  'artist',
  'parallel',
  'product',
  'content',
  'correction',
]);

interface Entry {
  readonly shape: string;
  readonly key: string;
  readonly from: Decision;
}

/** Decisions of the gate's tables, made more permissive. */
interface Mutant {
  readonly name: string;
  /** The keys whose decisions are other than they were. */
  readonly keys: readonly string[];
  readonly tables: Tables;
}

const ENTRIES: readonly Entry[] = Object.entries(TABLES).flatMap(([shape, table]) =>
  Object.entries(table).map(([key, from]: [string, Decision]) => ({ shape, key, from })),
);

/** Keys that no view shows: that the gate never looks at their decision is a test of its own. */
const SILENT = ENTRIES.filter(({ from }) => from === 'never' || from === 'decides');

const MUTANTS: readonly Mutant[] = ENTRIES.filter((entry) => !SILENT.includes(entry)).flatMap(
  ({ shape, key, from }) =>
    PERMISSIVE.slice(PERMISSIVE.indexOf(from) + 1)
      .filter((to) => !(from === 'shown' && to === 'open' && NO_PLACEHOLDER.has(shape)))
      .map((to) => ({
        name: `${shape}.${key}: ${from} becomes ${to}`,
        keys: [key],
        tables: withDecisions([`${shape}.${key}`], to),
      })),
);

/** Keys that show only together, so that one of them alone opens nothing. */
const TOGETHER: Record<string, readonly string[]> = {
  'when a card is in hands': ['card.ships', 'subset.ships'],
  'the ids in a hold': ['level.id', 'embargo.id'],
  'where facts come from': ['card.sources', 'document.title', 'source.ref', 'source.for'],
  'when things open, by name': ['image.ref', 'level.label', 'embargo.label'],
  'what is owed to whoever is shown': ['image.depicts', 'legal.depicts'],
  'a sales text': ['sales.kind', 'sales.title'],
  'a layout': ['card.back', 'subset.back', ...Object.keys(TABLES.back).map((key) => `back.${key}`)],
};

const JOINT: readonly Mutant[] = Object.entries(TOGETHER).map(([what, keys]) => ({
  name: `${what}: ${keys.slice(0, 3).join(', ')} and so on become shown`,
  keys: keys.map((key) => key.slice(key.indexOf('.') + 1)),
  tables: withDecisions(keys, 'shown'),
}));

/** Mutants that change no view at all, by the key, with the reason. */
const EQUIVALENT: readonly (readonly [keys: readonly string[], why: string])[] = [
  [['card.ships', 'subset.ships'], 'a card is in hands by either, so both must allow it'],
  [['level.id', 'embargo.id'], 'a hold names both, so both must allow it'],
  [
    Object.keys(TABLES.back).map((key) => `back.${key}`),
    'a layout goes with a card whose layout is told, which the public never is',
  ],
  [
    ['document.title', 'source.ref', 'source.for'],
    'a source is told with the sources of a card, and with the title of its document',
  ],
  [['embargo.label'], 'a label is told to whoever reviews a card, with that of its level'],
  [['level.label'], 'the label of a level is told from its lift, whatever is decided'],
  [['legal.depicts'], 'a line is owed to whoever is told to be in the picture'],
  [['sales.title'], 'a sales text is told or not by its kind'],
  [['person.name'], 'the public has no person, and a person is told their own name alone'],
  [['card.issued'], 'what a pulled card loses, a placeholder does not show'],
];

function isEquivalent({ name }: Mutant): boolean {
  return EQUIVALENT.some(([keys]) => keys.some((key) => name.startsWith(`${key}:`)));
}

function withDecisions(keys: readonly string[], to: Decision): Tables {
  return Object.fromEntries(
    Object.entries(TABLES).map(([shape, table]) => [
      shape,
      Object.fromEntries(
        Object.entries(table).map(([key, from]: [string, Decision]) => [
          key,
          keys.includes(`${shape}.${key}`) ? to : from,
        ]),
      ),
    ]),
  ) as Tables;
}

/** What is given to the gate before and after hidden edits, ready made. */
interface Tried {
  readonly audience: Audience;
  readonly before: Released;
  readonly after: readonly Edited[];
}

interface Edited {
  readonly released: Released;
  /** Keys under which the edit changed something. */
  readonly touched: ReadonlySet<string>;
}

function triedOn({ plain, eye, edits }: Case): Tried {
  return {
    audience: audienceOf(plain, eye),
    before: releasedOf(plain),
    after: edits.map(({ draft }) => {
      const touched = new Set<string>();
      addTouched(plain, draft, touched);
      return { released: releasedOf(draft), touched };
    }),
  };
}

/** Adds the keys that lead to what differs between two plain values. */
function addTouched(before: unknown, after: unknown, touched: Set<string>): boolean {
  if (!isPlain(before) || !isPlain(after)) return before !== after;
  const keys = new Set([...Object.keys(before), ...Object.keys(after)]);
  const changed = [...keys].filter((key) => addTouched(before[key], after[key], touched));
  for (const key of changed) touched.add(key);
  return changed.length > 0;
}

function isPlain(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}

const TRIED: readonly Tried[] = [...casesFor('person', 6), ...casesFor('public', 6)].map(triedOn);

/** More for the few mutants that nothing of the first finds out; made when they are asked for. */
const MORE = 24;
let more: readonly Tried[] | null = null;
function moreTried(): readonly Tried[] {
  more ??= casesFor('public', MORE).slice(6).map(triedOn);
  return more;
}

/** Whether the law fails for a gate with these tables. What touches their keys is tried first. */
function killed({ tables, keys }: Mutant): boolean {
  const touches = ({ touched }: Edited): boolean => keys.some((key) => touched.has(key));
  const finds =
    (which: (edited: Edited) => boolean) =>
    ({ audience, before, after }: Tried): boolean => {
      const some = after.filter(which);
      if (some.length === 0) return false;
      const text = viewText(assembleView(before, audience, tables));
      return some.some(
        ({ released }) => viewText(assembleView(released, audience, tables)) !== text,
      );
    };
  const likely = finds(touches);
  const others = finds((edited) => !touches(edited));
  return (
    TRIED.some(likely) || TRIED.some(others) || moreTried().some(likely) || moreTried().some(others)
  );
}

/** Keys of the tables that the gate looks at while it makes these views. */
function consulted(): ReadonlySet<string> {
  const keys = new Set<string>();
  const watched = Object.fromEntries(
    Object.entries(TABLES).map(([shape, table]) => [
      shape,
      new Proxy(table, {
        get: (target, key): unknown => {
          keys.add(`${shape}.${String(key)}`);
          return Reflect.get(target, key);
        },
      }),
    ]),
  ) as Tables;
  for (const { before, audience } of TRIED) {
    assembleView(before, audience, watched);
    assembleView(before, { kind: 'house' }, watched);
  }
  return keys;
}

describe('the tables drive the gate', () => {
  test('every decision is looked at, but those on keys that show nowhere', () => {
    const seen = consulted();
    const unseen = ENTRIES.filter(({ shape, key }) => !seen.has(`${shape}.${key}`));
    expect(unseen).toEqual(SILENT);
  });
});

describe('the law fails for a gate with', () => {
  for (const mutant of [...MUTANTS.filter((each) => !isEquivalent(each)), ...JOINT]) {
    test(mutant.name, { timeout: 120_000 }, () => {
      expect(killed(mutant)).toBe(true);
    });
  }
});

describe('no view changes with', () => {
  for (const { name, tables } of MUTANTS.filter(isEquivalent)) {
    test(name, () => {
      for (const { audience, before } of TRIED) {
        const text = viewText(assembleView(before, audience, TABLES));
        expect(viewText(assembleView(before, audience, tables))).toBe(text);
      }
    });
  }
});
