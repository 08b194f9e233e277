import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import type { PublicData } from '../../schema/index.js';
import { data as siteData } from '../site/fixture.js';
import { data, troubled, withoutAddress } from './fixture.js';
import { textAt } from './support.js';

const PATH = 'high-water/checklist.csv';

/** RFC 4180: lines end in CRLF, a row is a row whatever stands in its cells. */
function cellsOf(text: string): string[][] {
  return parse(text, { record_delimiter: '\r\n' });
}

function highWater({ sets }: PublicData) {
  const set = sets.find(({ id }) => id === 'high-water');
  if (!set) throw new Error('no such set');
  return set;
}

describe('a set as CSV', () => {
  test('has a row for each card and each of its parallels', () => {
    const page = 'https://cards.example/ferrywrights/high-water/';
    const set = 'The Ferrywrights: High Water';
    const crew = [set, 'Crew and Craft', 'Base set'];
    const signed = [set, 'Signatures', 'Autographs'];
    const divers = 'Mirela Voss as Dorrit Sill; Caspar Voss (redemption)';
    expect(cellsOf(textAt(data, PATH))).toEqual([
      'Set,Subset,Group,Number,Name,Printing,Run,State,Signers,To be revealed,Revealed,Page'.split(
        ',',
      ),
      ...[
        ['Card', '', '2026-09-01'],
        ['Tarred', '', '2026-09-01'],
        ['Varnished', '84', '2027-04-16'],
      ].map(([printing, run, day]) => [
        ...[...crew, '17', 'Odalys Thrane', printing, run],
        ...['shown', '', '', day, `${page}crew/17/`],
      ]),
      ...[
        ['Card', '250', ''],
        ['Tarred', '', ''],
        ['Varnished', '84', '2027-04-16'],
      ].map(([printing, run, day]) => [
        ...[...crew, '17b', 'Odalys Thrane', printing, run],
        ...['shown', '', '', day, `${page}crew/17b/`],
      ]),
      ...[
        ['Card', ''],
        ['Tarred', ''],
        ['Varnished', '84'],
      ].map(([printing, run]) => [
        ...[...crew, '18', 'Magistrate Tern', printing, run],
        ...['shown', '', '', '2027-04-16', `${page}crew/18/`],
      ]),
      ...['19', '20'].flatMap((number) =>
        [
          ['Card', ''],
          ['Tarred', ''],
          ['Varnished', '84'],
        ].map(([printing, run]) => [
          ...[...crew, number, number === '19' ? 'The voice in the lock' : 'To be revealed'],
          ...[printing, run, 'to be revealed', '', '2027-05-14', '', `${page}crew/${number}/`],
        ]),
      ),
      [
        ...[...crew, '21', 'A plank of the Widow’s Kettle', 'Card', ''],
        ...['not issued', '', '', '', `${page}crew/21/`],
      ],
      ...[
        ['Card', '1'],
        ['Tarred', ''],
      ].map(([printing, run]) => [
        ...[...signed, 'SG-9', 'The two divers', printing, run],
        ...['shown', divers, '', '2027-04-16', `${page}signatures/SG-9/`],
      ]),
      ...['Card', 'Tarred'].map((printing) => [
        ...[...signed, '', 'To be revealed', printing, ''],
        ...['to be revealed', '', '', '', ''],
      ]),
    ]);
  });

  test('gives the pages below the top of a site without an address', () => {
    const [, first = []] = cellsOf(textAt(withoutAddress, PATH));
    expect(first.at(-1)).toBe('high-water/crew/17/');
  });

  test('comes back whole, whatever the texts are (RFC 4180; OWASP, CSV Injection)', () => {
    const neutral = (text: string) => (/^[=+\-@\t\r\n]/.test(text) ? `'${text}` : text);
    fc.assert(
      fc.property(troubled, (some) => {
        const set = highWater(some);
        const [, ...rows] = cellsOf(textAt(some, PATH));
        expect(rows.map((row) => row.length)).toEqual(rows.map(() => 12));
        const cards = set.subsets.flatMap((subset) =>
          subset.cards.flatMap((card) => {
            const parallels = set.parallels.filter(({ of }) => of.includes(subset.id));
            const printings = ['Card', ...parallels.map(({ title }) => title)];
            return printings
              .slice(0, card.state === 'not issued' ? 1 : undefined)
              .map((printing) => [set.title, subset.title, card.name, printing]);
          }),
        );
        const kept = cards.map((row) => row.map(neutral));
        expect(rows.map((row) => [row[0], row[1], row[4], row[5]])).toEqual(kept);
        expect(rows.flat().filter((cell) => /^[=+\-@\t\r\n]/.test(cell))).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });

  // RFC 4180, 2.6 and 2.7: line breaks, double quotes and commas stand in double quotes.
  test.each([
    ['a\rb', '"a\rb"'],
    ['a\nb', '"a\nb"'],
    ['a,b', '"a,b"'],
    ['a "b" c', '"a ""b"" c"'],
    ['=1+1', "'=1+1"],
    ['-1,5', `"'-1,5"`],
    ['a;b', 'a;b'],
  ])('%j is written as %j', (name, cell) => {
    const some = structuredClone(data);
    const card = some.sets[0]?.subsets[0]?.cards[0];
    if (!card) throw new Error('the fixture has a card');
    card.name = name;
    expect(textAt(some, PATH)).toContain(`,17,${cell},Card,`);
  });

  test('has as many rows as there are issued cards, each with its parallels, and others once', () => {
    const set = highWater(siteData);
    const expected = set.subsets.map(({ id, cards }) => {
      const issued = cards.filter(({ state }) => state !== 'not issued').length;
      const parallels = set.parallels.filter(({ of }) => of.includes(id)).length;
      return issued * (1 + parallels) + cards.length - issued;
    });
    expect(expected).toEqual([21 * 4, 7 * 3, 4 * 2, 3, 2, 0]);
    const rows = cellsOf(textAt(siteData, PATH)).length - 1;
    expect(rows).toBe(expected.reduce((sum, count) => sum + count, 0));
  });
});
