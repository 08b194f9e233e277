import fc from 'fast-check';
import { expect, test } from 'vitest';

import { printedSheets, type PrintFaces } from '../../pipeline/out/print/index.js';
import { clean } from '../../pipeline/out/print/set-lines.js';
import { notes } from '../../pipeline/out/wording/index.js';
import type { PublicCard, PublicSubset } from '../../schema/index.js';
import { card, dataOf, faces, setOf, SPRING, subset } from './fixture.js';
import { boxesOn, issuedRows, outside, overlaps, unspaced } from './reading.js';

const LETTERS = Array.from('aeinorstlcdmpugKTMSOH  -’éłŌñ水🏮');
const name = fc
  .array(fc.constantFrom(...LETTERS), { minLength: 1, maxLength: 50 })
  .map((letters) => `N${letters.join('')}`);

const rows = fc.record({
  name,
  letter: fc.constantFrom(null, null, null, 'b'),
  state: fc.constantFrom(
    'shown' as const,
    'shown' as const,
    'placeholder' as const,
    'not issued' as const,
  ),
  opens: fc.constantFrom(null, SPRING),
  tell: fc.option(name, { freq: 6 }),
  run: fc.option(fc.integer({ min: 1, max: 20_000 }), { freq: 6 }),
  signer: fc.option(name, { freq: 6 }),
});

const sets = fc
  .array(
    fc.record({
      title: name,
      group: fc.constantFrom('base', 'base', 'inserts', 'box-toppers'),
      prefix: fc.constantFrom('', 'LC-', 'SIG-', 'Ł'),
      rows: fc.array(rows, { maxLength: 70 }),
      artists: fc.array(name, { maxLength: 4 }),
    }),
    { maxLength: 6 },
  )
  .map((all) =>
    all.map(({ title, group, prefix, rows: cards, artists }, index) =>
      subset(
        `s${String(index)}`,
        title,
        group,
        cards.map(({ signer, ...more }, at) =>
          card(`${prefix}${String(100 * index + at)}`, more.name, {
            ...more,
            signers: signer === null ? [] : [{ name: signer, as: null, redemption: false }],
          }),
        ),
        { artists },
      ),
    ),
  );

/** How a row reads with what no font has replaced, without white space. */
function read(one: PublicCard, { text }: PrintFaces): string {
  const said = [
    `${one.number ?? ''}${one.letter ?? ''}`,
    one.name,
    ...notes(one, 'Europe/London').map(({ words }) => words),
  ];
  const letters = Array.from(clean(said[0] ?? '') + clean(said[1] ?? '') + said.slice(2).join(';'));
  return letters
    .map((letter) => (text.regular.shows(letter) ? letter : '?'))
    .join('')
    .replace(/\s+/g, '');
}

/** The base set comes first. */
function inOrder(subsets: readonly PublicSubset[]): readonly PublicSubset[] {
  const base = subsets.filter(({ group }) => group === 'base');
  return [...base, ...subsets.filter((each) => !base.includes(each))];
}

const SIZES = { a4: { width: 595.28, height: 841.89 }, letter: { width: 612, height: 792 } };

test('whatever a set lists is printed once, in order, and nothing on anything else', async () => {
  await fc.assert(
    fc.asyncProperty(
      sets,
      fc.constantFrom('a4' as const, 'letter' as const),
      async (subsets, paper) => {
        const sheets = await printedSheets(dataOf([setOf(subsets)]), faces);
        const pdf = sheets.get(`high-water/checklist-${paper}.pdf`) ?? expect.fail('no sheet');
        const said = unspaced(pdf);
        let at = 0;
        for (const one of inOrder(subsets).flatMap(({ cards }) => cards)) {
          const found = said.indexOf(read(one, faces), at);
          expect(found, JSON.stringify(one.name)).toBeGreaterThanOrEqual(at);
          at = found + 1;
        }
        const boxes = boxesOn(pdf).reduce((sum, count) => sum + count, 0);
        expect(boxes).toBe(issuedRows(subsets));
        expect(overlaps(pdf)).toEqual([]);
        expect(outside(pdf, SIZES[paper], 34)).toEqual([]);
      },
    ),
    { numRuns: 25 },
  );
});
