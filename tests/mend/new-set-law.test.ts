import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { filesOf, groundOf, type SetKey } from '../../pipeline/mend/index.js';
import { freeId, idFrom } from '../../pipeline/mend/new-set-ids.js';
import { instantText } from '../../pipeline/mend/new-set-instant.js';
import { readNumbers } from '../../pipeline/mend/new-set-numbers.js';
import { readSpec, writeSpec } from '../../pipeline/mend/new-set-spec.js';
import { instantOf } from '../../pipeline/model/index.js';
import { memoryFolder, readContent } from '../../pipeline/read/index.js';
import { DEMO_NOW } from '../demo/day.js';

/** Signs that mean something to YAML or to a terminal, letters of several scripts, and a smile. */
const SIGNS =
  '-#:"\'{}[],&*!|>%@`?~\\ /=;.…©–’0 1 9 a b Z é ß ж 漢 א ب 🛶 👩‍🚀 \u0301 \u00a0 \u2028 \u0007';
const titles = fc
  .oneof(
    fc
      .array(fc.constantFrom(...Array.from(SIGNS)), { minLength: 1, maxLength: 14 })
      .map((all) => all.join('')),
    fc.constantFrom(
      'null',
      'true',
      'no',
      '~',
      '- one',
      '# two',
      'a: b',
      'a #b',
      '1e3',
      '0x1f',
      '---',
      '{',
      'unset',
      '"',
      "it's",
      'שלום',
      '007',
      '12:30',
      '...',
      '<<',
      '=',
      '%YAML 1.2',
      '? x',
      '\t',
    ),
  )
  .filter((title) => title.trim() === title && title !== '');

const empty = memoryFolder(new Map());

test('what is asked for reads back exactly, whatever it is', () => {
  const found = groundOf(empty, DEMO_NOW);
  if (!found.ok) throw new Error(found.why);
  const { ground } = found;
  let quoted = 0;
  fc.assert(
    fc.property(titles, titles, titles, titles, (title, work, person, subset) => {
      const spec = writeSpec([
        ['id', 'crew'],
        ['title', subset],
        ['numbers', '1-3'],
        ['facts', 'Berth'],
      ]);
      const answers = new Map<SetKey, string[]>([
        ['property-title', [work]],
        ['title', [title]],
        ['short', [title]],
        ['legal', [work]],
        ['licensor', [person === 'none' ? 'x' : person]],
        ['subset', [spec]],
        ['zone', ['Europe/London']],
        ['street', ['2027-04-16']],
      ]);
      const content = readContent(memoryFolder(filesOf(answers, ground)));
      expect(content.faults.map(({ message }) => message)).toEqual([]);
      const plan = content.sets[0]?.plan.value;
      expect(content.property?.value).toMatchObject({ title: work, legal: { line: work } });
      expect(plan).toMatchObject({ title, short: title });
      expect(plan?.subsets).toMatchObject([
        { id: 'crew', title: subset.trim(), numbers: { from: 1, to: 3 }, facts: ['Berth'] },
      ]);
      expect(content.people?.value.people.at(-1)).toMatchObject({ name: person, role: 'licensor' });
      if (String(filesOf(answers, ground).get('property.yaml')).includes('title: "')) quoted += 1;
    }),
    { numRuns: 150 },
  );
  expect(quoted).toBeGreaterThan(50);
});

test('keys and values of an option read back', () => {
  const value = fc.string({ minLength: 1, maxLength: 12 }).filter((text) => text.trim() === text);
  fc.assert(
    fc.property(value, value, (title, statement) => {
      const said = [
        ['title', title],
        ['statement', statement],
      ] as const;
      const { said: read, why } = readSpec(writeSpec(said), ['title', 'statement']);
      expect(why).toEqual([]);
      expect([...read]).toEqual(said);
    }),
  );
});

describe('numbers', () => {
  test.each([
    ['48', { from: 1, to: 48 }],
    ['1-48', { from: 1, to: 48 }],
    ['49–83', { from: 49, to: 83 }],
    ['LC-1-LC-8', { prefix: 'LC-', from: 1, to: 8 }],
    ['LC-1-8', { prefix: 'LC-', from: 1, to: 8 }],
    ['SG-1,SG-2', { codes: ['SG-1', 'SG-2'] }],
    ['SG-1-SG-3, XX', { codes: ['SG-1', 'SG-2', 'SG-3', 'XX'] }],
    ['SG-1', { codes: ['SG-1'] }],
    ['none', 'none'],
  ])('%s', (text, numbers) => {
    expect(readNumbers(text)).toEqual({ ok: true, numbers });
  });

  test.each(['9-3', 'SG-1,,SG-2', '', '1-999999999', 'A-9-A-3, B'])('refuses %j', (text) => {
    expect(readNumbers(text).ok).toBe(false);
  });

  test('a prefix may be said apart', () => {
    const numbers = { prefix: 'MB-', from: 1, to: 12 };
    expect(readNumbers('1-12', 'MB-')).toEqual({ ok: true, numbers });
  });
});

describe('a day in a zone', () => {
  // Offsets of the IANA time zone database: London leaves summer time on 31 October 2027 at 02:00.
  test.each([
    ['2027-04-16', 'Europe/London', '2027-04-16T09:00:00+01:00[Europe/London]'],
    ['2027-01-15 20:30', 'Europe/London', '2027-01-15T20:30:00+00:00[Europe/London]'],
    ['2027-10-31 09:00', 'Europe/London', '2027-10-31T09:00:00+00:00[Europe/London]'],
    ['2027-10-31 00:30', 'Europe/London', '2027-10-31T00:30:00+01:00[Europe/London]'],
    ['2027-04-17T09:00', 'Australia/Sydney', '2027-04-17T09:00:00+10:00[Australia/Sydney]'],
    ['2027-04-16 23:30', 'Pacific/Kiritimati', '2027-04-16T23:30:00+14:00[Pacific/Kiritimati]'],
  ])('%s in %s', (text, zone, expected) => {
    expect(instantText(text, zone)).toBe(expected);
    expect(() => instantOf(expected)).not.toThrow();
  });

  test.each(['unset', '2027-02-30', 'soon', '2027-04-16T09:00:00+05:00[Europe/London]'])(
    'leaves %s as it is, for check to speak of',
    (text) => {
      expect(instantText(text, 'Europe/London')).toBe(text);
    },
  );
});

describe('ids of titles', () => {
  test.each([
    ['The Ferrywrights: High Water', 'the-ferrywrights-high-water'],
    ['Maker’s Benches', 'makers-benches'],
    ['Été à l’île', 'ete-a-lile'],
    ['漢字', ''],
    ['--- #1 ---', '1'],
    ['long '.repeat(30), 'long-long-long-long-long-long-long-long'],
  ])('%s', (title, id) => {
    expect(idFrom(title)).toBe(id);
  });

  test('one that is taken gets a number', () => {
    expect(freeId('one', new Set(['one', 'one-2']))).toBe('one-3');
  });
});
