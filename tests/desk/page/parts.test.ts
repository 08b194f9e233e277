import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';

import { linksIn } from '../../../pipeline/desk/page/copy/links.js';
import { narrowest } from '../../../pipeline/desk/page/copy/narrowest.js';
import { fieldChanges, type Fields } from '../../../pipeline/desk/page/card/field-changes.js';
import { pruned } from '../../../pipeline/desk/page/form/pruned.js';
import { EventText } from '../../../pipeline/desk/page/line/event-text.js';
import { instantWords } from '../../../pipeline/desk/page/parts/instant-words.js';
import { sayInstant, writeInstant } from '../../../pipeline/model/index.js';
import type { FieldChange, FieldModel, FieldValue } from '../../../pipeline/desk/protocol.js';

describe('the fewest changes of front matter', () => {
  test.each<[string, Fields, Fields, readonly FieldChange[]]>([
    ['none', { name: 'Pell' }, { name: 'Pell' }, []],
    ['a value', { name: 'Pell' }, { name: 'Pim' }, [{ path: ['name'], value: 'Pim' }]],
    ['a key more', {}, { run: '250' }, [{ path: ['run'], value: '250' }]],
    ['a key less', { run: '250' }, {}, [{ path: ['run'], value: null }]],
    [
      'deep in a map',
      { image: { file: 'a.svg', alt: 'A boat' } },
      { image: { file: 'a.svg', alt: 'A raft' } },
      [{ path: ['image', 'alt'], value: 'A raft' }],
    ],
    ['an item', { e: ['a', 'b'] }, { e: ['a', 'c'] }, [{ path: ['e', 1], value: 'c' }]],
    ['an item more', { e: ['a'] }, { e: ['a', 'b'] }, [{ path: ['e', 1], value: 'b' }]],
    ['an item less', { e: ['a', 'b', 'c'] }, { e: ['a', 'c'] }, [{ path: ['e', 1], value: null }]],
    ['the only item', { e: ['a'] }, { e: [] }, [{ path: ['e'], value: [] }]],
    ['another list', { e: ['a', 'b'] }, { e: ['c'] }, [{ path: ['e'], value: ['c'] }]],
    ['another kind', { bio: 'none' }, { bio: ['x'] }, [{ path: ['bio'], value: ['x'] }]],
  ])('%s', (_, before, after, changes) => {
    expect(fieldChanges(before, after)).toEqual(changes);
  });

  const { value } = fc.letrec<{ value: FieldValue }>((tie) => ({
    value: fc.oneof(
      { depthSize: 'small' },
      fc.constantFrom('', 'a', 'b', '007'),
      fc.array(tie('value'), { maxLength: 4 }),
      fc.dictionary(fc.constantFrom('k', 'l', 'm'), tie('value'), { noNullPrototype: true }),
    ),
  }));
  const fields = fc.dictionary(fc.constantFrom('k', 'l', 'm', 'n'), value, {
    noNullPrototype: true,
  });

  property.prop([fields, fields])('made on the one, they give the other', (before, after) => {
    const made = fieldChanges(before, after).reduce<FieldValue>(applied, before);
    expect(made).toEqual(after);
  });
});

/** The change as the desk makes it, written anew. */
function applied(value: FieldValue, { path, value: next }: FieldChange): FieldValue {
  const [key, ...rest] = path;
  const inner = (old: FieldValue): FieldValue | null =>
    rest.length === 0 ? next : applied(old, { path: rest, value: next });
  if (Array.isArray(value)) {
    const items = value as readonly FieldValue[];
    const put = inner(items[Number(key)] ?? '');
    const after = items.slice(Number(key) + 1);
    return [...items.slice(0, Number(key)), ...(put === null ? [] : [put]), ...after];
  }
  const map = value as Fields;
  const put = inner(map[String(key)] ?? '');
  const others = Object.entries(map).filter(([each]) => each !== key);
  return Object.fromEntries([...others, ...(put === null ? [] : [[String(key), put] as const])]);
}

describe('the narrowest replacement', () => {
  property.prop([fc.string({ maxLength: 30 }), fc.string({ maxLength: 30 })])(
    'made on the one text, it gives the other, and nothing around it differs',
    (before, after) => {
      const change = narrowest(before, after);
      if (change === null) {
        expect(before).toBe(after);
        return;
      }
      const { from, to, insert } = change;
      expect(before.slice(0, from) + insert + before.slice(to)).toBe(after);
      const old = before.slice(from, to);
      expect(old === '' || insert === '' || old[0] !== insert[0]).toBe(true);
      expect(old === '' || insert === '' || old.at(-1) !== insert.at(-1)).toBe(true);
    },
  );
});

describe('events of a stream (HTML Standard, 9.2.6: its examples, from memory)', () => {
  const STREAM =
    ': a remark\n\ndata: one\n\nevent: job\r\ndata: {"a":\r\ndata: 1}\r\nid: 7\r\n\r\nevent: none\n\ndata:two\rdata\r\rdata: cut';
  const EVENTS = [
    { kind: 'message', text: 'one' },
    { kind: 'job', text: '{"a":\n1}' },
    { kind: 'message', text: 'two\n' },
  ];

  property.prop([fc.array(fc.nat(STREAM.length), { maxLength: 8 })])(
    'are the same wherever the pieces are cut',
    (cuts) => {
      const places = [0, ...cuts.sort((a, b) => a - b), STREAM.length];
      const text = new EventText();
      const events = places.flatMap((from, at) => text.add(STREAM.slice(from, places[at + 1])));
      expect(events).toEqual(EVENTS);
    },
  );
});

test('held spans and count links are found where they stand', () => {
  const copy = 'Rings. [Not a [word](held:premiere) of [nine](count:none) [x](https://a)';
  expect(linksIn(copy).map(({ from, to, ...rest }) => [rest, copy.slice(from, to)])).toEqual([
    [{ kind: 'held', words: 'word', of: 'premiere' }, '[word](held:premiere)'],
    [{ kind: 'count', words: 'nine', of: 'none' }, '[nine](count:none)'],
  ]);
});

test('fields that were left empty and need not be there are left out', () => {
  const text = { type: 'text', suggestions: [] } as const;
  const model = (key: string, shape: FieldModel['shape'], required = false): FieldModel => ({
    key,
    required,
    description: null,
    expected: null,
    shape,
  });
  const models = [
    model('name', text, true),
    model('why', text),
    model('embargo', { type: 'list', items: text, expected: null }),
    model('image', { type: 'group', fields: [model('file', text, true), model('alt', text)] }),
    model('facts', { type: 'record', keys: [], values: text }),
  ];
  const typed = {
    name: '',
    why: '',
    embargo: ['', 'fair'],
    image: { file: 'a.svg', alt: '' },
    facts: {},
    odd: '',
  };
  expect(pruned(models, typed)).toEqual({
    name: '',
    embargo: ['fair'],
    image: { file: 'a.svg' },
    odd: '',
  });
});

test.each([
  ['2027-04-16T20:00:00+01:00[Europe/London]', '16 April 2027, 20:00 (Europe/London)'],
  ['2027-02-01T09:05:00+00:00', '1 February 2027, 09:05'],
  ['unset', 'unset'],
  ['2027-13-01T09:05:00+00:00', '2027-13-01T09:05:00+00:00'],
])('%s is read as %s', (instant, words) => {
  expect(instantWords(instant)).toBe(words);
});

property.prop({
  at: fc.integer({ min: Date.UTC(2000, 0, 1), max: Date.UTC(2099, 11, 31) }),
  zone: fc.constantFrom('Europe/London', 'Australia/Sydney', 'America/New_York', 'UTC'),
})('an instant is read at the desk as the house says it elsewhere', ({ at, zone }) => {
  expect(instantWords(writeInstant(at, zone))).toBe(`${sayInstant(at, zone)} (${zone})`);
});
