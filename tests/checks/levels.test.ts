import { describe, expect, test } from 'vitest';

import type { Files } from '../../pipeline/checks/index.js';
import { cardText, changed } from './change.js';
import { lookAt, said } from './look.js';

const property = (...changes: readonly (readonly [string, string])[]): Files =>
  changed('property.yaml', changes);
const card = (front: string, bio?: string): Files => ({
  'one/cards/base/a2.md': cardText(`number: "2"\nname: The Lamp\nstory: 1/4\n${front}`, bio),
});
const names = (entry: string, more = ''): Files => ({
  'names.yaml': `names:\n  - { name: Odalys Thrane, kind: character, ${entry} }\n${more}`,
});
const person = (entry: string): Files => ({
  'people.yaml': `people:\n  - { id: jonah, name: Jonah Prewett, role: writer, ${entry} }\n`,
});

/** Every place that names a level or an embargo, with one that there is none of. */
const PLACES: readonly (readonly [string, Files])[] = [
  ['a document', property(['beats:', 'documents: [{ id: a, title: A, level: lats }]\nbeats:'])],
  [
    'a document’s embargo',
    property(['beats:', 'documents: [{ id: a, title: A, embargo: [lats] }]\nbeats:']),
  ],
  ['a beat', property(['rises, level: open', 'rises, level: lats'])],
  ['a beat’s embargo', property(['level: open }\nlegal', 'level: open, embargo: [lats] }\nlegal'])],
  ['a name', names('level: lats')],
  ['a name’s embargo', names('level: open, embargo: [lats]')],
  ['an alias', names('level: open, aliases: [{ form: Thrane, level: lats }]')],
  [
    'an alias’s embargo',
    names('level: open, aliases: [Odalys, { form: Thrane, embargo: [lats] }]'),
  ],
  ['a secret', names('level: open', 'secrets: [{ id: a, level: lats, says: A, allOf: [[a]] }]')],
  [
    'a secret’s embargo',
    names(
      'level: open',
      'secrets: [{ id: a, level: open, embargo: [lats], says: A, allOf: [[a]] }]',
    ),
  ],
  ['a clearance', person('clearance: lats')],
  ['what a person knows', person('clearance: open, knows: [guest, lats]')],
  ['a set', changed('one/plan.yaml', [['spoiler: open', 'spoiler: lats']])],
  [
    'a set’s embargo',
    changed('one/plan.yaml', [['spoiler: open', 'spoiler: open\nembargo: [lats]']]),
  ],
  ['a subset', changed('one/plan.yaml', [['group: inserts', 'group: inserts, spoiler: lats']])],
  [
    'a subset’s embargo',
    changed('one/plan.yaml', [['group: inserts', 'group: inserts, embargo: [lats]']]),
  ],
  [
    'a parallel',
    changed('one/plan.yaml', [
      ['totals', 'parallels: [{ id: a, title: A, of: [base], spoiler: lats }]\ntotals'],
    ]),
  ],
  [
    'a parallel’s embargo',
    changed('one/plan.yaml', [
      ['totals', 'parallels: [{ id: a, title: A, of: [base], embargo: [lats] }]\ntotals'],
    ]),
  ],
  ['a card', card('spoiler: lats')],
  ['a card’s embargo', card('spoiler: open\nembargo: [lats]')],
  ['a held field', card('spoiler: open\nholds: { bio: lats }')],
  ['a held span', card('spoiler: open', 'A [lamp](held:lats) burns.')],
  ['a held span with emphasis in it', card('spoiler: open', 'A [*lamp* of](held:lats) brass.')],
  [
    'a sales text',
    {
      'one/sales/a.md':
        '---\nkind: web\ngoes: unset\nspoiler: lats\n---\nA.\n\n© 2027 Lantern & Oar\n',
    },
  ],
  [
    'a sales text’s embargo',
    {
      'one/sales/a.md':
        '---\nkind: web\ngoes: unset\nspoiler: open\nembargo: [lats]\n---\nA.\n\n© 2027 Lantern & Oar\n',
    },
  ],
  [
    'a span of a sales text',
    {
      'one/sales/a.md':
        '---\nkind: web\ngoes: unset\nspoiler: open\n---\nA [lamp](held:lats).\n\n© 2027 Lantern & Oar\n',
    },
  ],
];

describe('level-unknown', () => {
  test.each(PLACES)('looks at %s', (_, files) => {
    const { findings } = lookAt(files);
    expect(findings).toHaveLength(1);
    expect(findings).toMatchObject([{ rule: 'level-unknown', found: 'lats' }]);
    const [finding] = findings;
    const text = files[finding?.file ?? ''] ?? '';
    const line = text.split('\n')[(finding?.line ?? 0) - 1] ?? '';
    expect(line.slice((finding?.column ?? 0) - 1, (finding?.endColumn ?? 0) - 1)).toBe('lats');
  });

  test('an embargo is a level’s neighbour where either may stand', () => {
    expect(
      lookAt(card('spoiler: open\nholds: { bio: last }', 'A [lamp](held:guest).')).findings.map(
        ({ rule }) => rule,
      ),
    ).not.toContain('level-unknown');
  });
});

describe('level-order', () => {
  const LEVELS = [
    ['open', null, null],
    ['a', '2027-01-01', null],
    ['b', '2027-02-01', null],
    ['c', '2027-03-01', null],
    ['d', 'unset', null],
  ] as const;
  type Row = readonly [id: string, lift: string | null, print: string | null];

  function withLevels(rows: readonly Row[]): Files {
    const instant = (day: string): string =>
      day === 'unset' ? day : `"${day}T09:00:00+00:00[Europe/London]"`;
    const lines = rows.map(([id, lift, print]) => {
      const keys = [`id: ${id}`];
      if (lift !== null) keys.push(`lift: ${instant(lift)}`);
      if (print !== null) keys.push(`print: ${instant(print)}`);
      return `  - { ${keys.join(', ')} }\n`;
    });
    return {
      'property.yaml': `id: lake\ntitle: The Lake\nzone: Europe/London\nsince: "2026-09-01T09:00:00+01:00[Europe/London]"\nlevels:\n${lines.join('')}approvals: none\nbeats:\n  - { at: 1/1, says: The water rises, level: open }\nlegal: { line: "© 2027 Lantern & Oar" }\n`,
      'people.yaml': null,
    };
  }

  function put(id: string, key: 'lift' | 'print', day: string): Row[] {
    return LEVELS.map((row) => {
      if (row[0] !== id) return row;
      return key === 'lift' ? [row[0], day, row[2]] : [row[0], row[1], day];
    });
  }

  test.each([
    ['in order', LEVELS],
    ['two at once', put('b', 'lift', '2027-03-01')],
    ['printed before told', put('c', 'print', '2027-02-15')],
    ['printed at the lift of the one above', put('c', 'print', '2027-02-01')],
    ['printed when it lifts', put('c', 'print', '2027-03-01')],
    ['two without a date', put('c', 'lift', 'unset')],
  ])('passes: %s', (_, rows) => {
    expect(said(lookAt(withLevels(rows)).findings)).toStrictEqual([]);
  });

  test.each([
    ['a lift too late', put('a', 'lift', '2027-02-15'), '`b` lifts before `a`'],
    ['a lift too late for all', put('a', 'lift', '2027-12-15'), '`b` lifts before `a`'],
    ['a lift too early', put('c', 'lift', '2027-01-15'), '`c` lifts before `b`'],
    ['no date above a date', put('b', 'lift', 'unset'), '`c` lifts before `b`'],
    [
      'printed before the one above',
      put('c', 'print', '2027-01-15'),
      '`c` may be in shops before `b`',
    ],
    ['printed after its lift', put('b', 'print', '2027-02-15'), '`b` may be in shops only after'],
    ['never printed, but told', put('b', 'print', 'unset'), '`b` may be in shops only after'],
  ])('fails once: %s', (_, rows, message) => {
    const { findings } = lookAt(withLevels(rows));
    expect(findings).toMatchObject([
      { rule: 'level-order', message: expect.stringContaining(message) as unknown },
    ]);
  });

  test('an embargo may not be printed later than it lifts either', () => {
    const files = property([
      'lift: unset',
      'lift: "2027-03-01T09:00:00+00:00[Europe/London]", print: "2027-03-01T09:00:01+00:00[Europe/London]"',
    ]);
    expect(lookAt(files).findings).toMatchObject([{ rule: 'level-order' }]);
  });
});
