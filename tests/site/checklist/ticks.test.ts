import { fc, test } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import { changeWords } from '../../../site/scripts/change-words.js';
import { type Collection, type ListCard } from '../../../site/scripts/collection.js';
import { leftOut, progressOf } from '../../../site/scripts/progress.js';
import { NOT_KEPT, SET_ASIDE, Store } from '../../../site/scripts/store.js';
import { readTicksFile, writeTicksFile } from '../../../site/scripts/ticks-file.js';
import {
  changesBetween,
  countOf,
  NO_TICKS,
  ticksFromJson,
  type Ticks,
  ticksToJson,
  withChanges,
} from '../../../site/scripts/ticks.js';

const ids = fc.constantFrom('', 'tarred', 'varnished', '__proto__', 'constructor', 'cards');
const keys = fc.constantFrom(
  'crew/1',
  'crew/17b',
  'charts/LC-4',
  '__proto__',
  'x/:name',
  'a/"\\u0000',
);
const changes = fc.array(
  fc.record({
    printing: ids,
    key: keys,
    from: fc.constant(0),
    to: fc.integer({ min: 0, max: 999 }),
  }),
);
const ticks: fc.Arbitrary<Ticks> = changes.map((all) => withChanges(NO_TICKS, all));

const about = { site: 'The Ferrywrights', set: 'high-water', asOf: '2027-04-16T09:00:00+01:00' };

describe('ticks', () => {
  test.prop([ticks, ticks])('become others by what differs, and back again', (some, others) => {
    const between = changesBetween(some, others);
    expect(withChanges(some, between)).toEqual(others);
    expect(changesBetween(others, withChanges(some, between))).toEqual([]);
    for (const { printing, key, from, to } of between) {
      expect([countOf(some, printing, key), countOf(others, printing, key)]).toEqual([from, to]);
      expect(from).not.toBe(to);
    }
  });

  test.prop([ticks])('are the same after they were kept or passed on', (some) => {
    const json: unknown = JSON.parse(JSON.stringify(ticksToJson(some)));
    expect(ticksFromJson(json)).toEqual(some);
    expect(readTicksFile(writeTicksFile(about, some), about)).toEqual({ ticks: some });
  });

  it.each([
    null,
    7,
    {},
    { cards: {} },
    { cards: [], parallels: {} },
    { cards: { a: 0 }, parallels: {} },
    { cards: { a: 1.5 }, parallels: {} },
    { cards: { a: '1' }, parallels: {} },
    { cards: { a: 1000 }, parallels: {} },
    { cards: {}, parallels: { tarred: 1 } },
  ])('are not made of %j', (value) => {
    expect(ticksFromJson(value)).toBe(null);
  });

  it('are written to a file in the order of their keys', () => {
    const some = withChanges(NO_TICKS, [
      { printing: 'tarred', key: 'crew/2', from: 0, to: 1 },
      { printing: '', key: 'crew/2', from: 0, to: 2 },
      { printing: '', key: 'charts/LC-1', from: 0, to: 1 },
    ]);
    expect(writeTicksFile(about, some)).toBe(`{
  "format": 1,
  "site": "The Ferrywrights",
  "set": "high-water",
  "asOf": "2027-04-16T09:00:00+01:00",
  "ticks": {
    "cards": {
      "charts/LC-1": 1,
      "crew/2": 2
    },
    "parallels": {
      "tarred": {
        "crew/2": 1
      }
    }
  }
}
`);
  });

  it.each([
    ['no json', 'This is no file of ticks.'],
    ['[]', 'This is no file of ticks.'],
    ['{"ticks":{},"format":2}', 'This file of ticks has another form'],
    [
      '{"ticks":{},"format":1,"set":"depth-charts"}',
      'This file is of the set “depth-charts”, this page of “high-water”.',
    ],
    ['{"ticks":{},"format":1,"set":"high-water"}', 'it is damaged'],
  ])('in the file %s are refused', (text, refused) => {
    expect(readTicksFile(text, about)).toEqual({
      refused: expect.stringContaining(refused) as string,
    });
  });
});

/** What a browser keeps, and what it was asked to. */
function keeper(kept: Record<string, string> = {}, isFull = false) {
  return {
    kept,
    getItem: (key: string) => (Object.hasOwn(kept, key) ? (kept[key] ?? null) : null),
    setItem: (key: string, value: string) => {
      if (isFull) throw new Error('full');
      kept[key] = value;
    },
  };
}

const one = (key: string, to = 1) => [{ printing: '', key, from: 0, to }];
const had = ({ ticks: now }: Store) => ticksToJson(now).cards;

describe('the store', () => {
  test.prop([fc.array(changes, { maxLength: 8 })])(
    'takes back step by step all that was done',
    (steps) => {
      const store = new Store(keeper(), 'k');
      const before = [store.ticks];
      for (const step of steps) {
        if (store.change(step).length > 0) before.push(store.ticks);
      }
      for (const state of before.slice(0, -1).reverse()) {
        store.undo();
        expect(store.ticks).toEqual(state);
      }
      expect(store.canUndo).toBe(false);
      expect(store.undo()).toEqual([]);
    },
  );

  it('keeps what another page ticked meanwhile', () => {
    const shared = keeper();
    const [here, there] = [new Store(shared, 'k'), new Store(shared, 'k')];
    here.change(one('crew/1'));
    there.change(one('crew/2'));
    here.change(one('crew/3'));
    expect(had(here)).toEqual({ 'crew/1': 1, 'crew/2': 1, 'crew/3': 1 });
    there.refresh();
    expect(had(there)).toEqual(had(here));
    here.undo();
    expect(had(new Store(shared, 'k'))).toEqual({ 'crew/1': 1, 'crew/2': 1 });
  });

  it('keeps what no row of the page knows', () => {
    const shared = keeper({ k: '{"format":1,"cards":{"gone/9":2},"parallels":{}}' });
    new Store(shared, 'k').change(one('crew/1'));
    expect(JSON.parse(shared.kept['k'] ?? '')).toEqual({
      format: 1,
      cards: { 'crew/1': 1, 'gone/9': 2 },
      parallels: {},
    });
  });

  it.each([
    '',
    '{',
    '{"format":2,"cards":{},"parallels":{}}',
    '{"format":1,"cards":{"a":-1},"parallels":{}}',
  ])('sets %j aside, once, and throws nothing away', (foreign) => {
    const shared = keeper({ k: foreign, 'k:aside': 'what was set aside before' });
    const store = new Store(shared, 'k');
    expect([had(store), store.trouble]).toEqual([{}, SET_ASIDE]);
    new Store(shared, 'k').change(one('crew/1'));
    expect(shared.kept['k:aside']).toBe('what was set aside before');
    expect(shared.kept['k:aside-2']).toBe(foreign);
    expect(shared.kept['k:aside-3']).toBe(undefined);
    expect(new Store(shared, 'k').trouble).toBe(null);
  });

  it('says when nothing is kept, and goes on', () => {
    for (const refusing of [keeper({}, true), null]) {
      const store = new Store(refusing, 'k');
      store.change(one('crew/1'));
      store.change(one('crew/2'));
      expect([had(store), store.trouble]).toEqual([{ 'crew/1': 1, 'crew/2': 1 }, NOT_KEPT]);
      store.refresh();
      store.undo();
      expect(had(store)).toEqual({ 'crew/1': 1 });
    }
  });
});

const card = (number: string | null, letter = '', can = true): ListCard => {
  return { key: `s/${number ?? ':lamp'}${letter}`, number, letter, can };
};

const set: Collection = {
  head: 'High Water',
  parallels: [{ id: 'tarred', title: 'Tarred' }],
  subsets: [
    {
      title: 'Crew',
      base: true,
      of: new Set(['tarred']),
      cards: [card('1'), card('2'), card('2', 'b'), card('3'), card('4', '', false), card(null)],
    },
  ],
};

describe('how far somebody has come', () => {
  const say = (counts: Readonly<Record<string, number>>, printing = '', title = '') => {
    const all = Object.entries(counts).map(([key, to]) => ({
      printing,
      key: `s/${key}`,
      from: 0,
      to,
    }));
    return progressOf(set, withChanges(NO_TICKS, all), printing, title);
  };

  it.each([
    [{}, 'You have none of 4 cards and none of 1 variation.'],
    [
      { 2: 1 },
      'You have 1 of 4 cards and none of 1 variation; missing 1, 2b, 3, 1 without a number.',
    ],
    [
      { '2b': 3 },
      'You have none of 4 cards and 1 of 1 variation; missing 1-3, 1 without a number; 2 doubles.',
    ],
    [
      { 1: 1, 2: 2, '2b': 1, 3: 1, ':lamp': 1 },
      'You have 4 of 4 cards and 1 of 1 variation; 1 double.',
    ],
    [{ gone: 5, 4: 1 }, 'You have none of 4 cards and none of 1 variation.'],
  ])('with %j is said in one sentence', (counts, words) => {
    expect(say(counts)).toBe(words);
  });

  it('with a parallel is said of the parallel', () => {
    expect(say({ 3: 1 }, 'tarred', 'Tarred')).toBe(
      'Tarred: you have 1 of 4 cards and none of 1 variation; missing 1, 2, 2b, 1 without a number.',
    );
    expect(leftOut(set, NO_TICKS, 'tarred')).toBe(1);
  });

  it('where nothing can be had yet is said so', () => {
    const none = { ...set, subsets: [] };
    expect(progressOf(none, NO_TICKS, '', '')).toBe('You have none: no card here can be had yet.');
  });
});

describe('what a change comes to', () => {
  it('is said before it is made', () => {
    const change = (from: number, to: number) => ({ printing: '', key: 'k', from, to });
    expect(changeWords([])).toBe('This would change nothing.');
    expect(changeWords([change(0, 1), change(0, 2), change(1, 0), change(2, 3)])).toBe(
      'This would tick 2 cards, take the tick off 1 card, change the number of 1 card.',
    );
  });
});
