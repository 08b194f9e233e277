import { beforeAll, describe, expect, test } from 'vitest';

import { printedSheets } from '../../pipeline/out/print/index.js';
import { ask, pageTexts } from '../proof/tools.js';
import { card, data, dataOf, faces, freshFaces, setOf, SPRING, subset } from './fixture.js';

interface Outline {
  readonly title: string;
  readonly destpageposfrom1: number;
}

describe('the documents', () => {
  let sheets: ReadonlyMap<string, Uint8Array>;

  beforeAll(async () => {
    sheets = await printedSheets(data, faces);
  });

  const sheet = (path: string): Uint8Array => sheets.get(path) ?? expect.fail(path);

  test('stand under the paths of their sets, in order', () => {
    expect([...sheets.keys()]).toEqual([
      'depth-charts/checklist-a4.pdf',
      'depth-charts/checklist-letter.pdf',
      'depth-charts/counter-a4.pdf',
      'depth-charts/counter-letter.pdf',
      'high-water/checklist-a4.pdf',
      'high-water/checklist-letter.pdf',
      'high-water/counter-a4.pdf',
      'high-water/counter-letter.pdf',
    ]);
  });

  test('are in order', () => {
    for (const [path, pdf] of sheets) {
      const said = ask('qpdf', ['--check', 'FILE'], pdf);
      expect(said, path).toContain('No syntax or stream encoding errors');
    }
  });

  test('say what they are, from when and by what, and name no author', () => {
    const info = ask('pdfinfo', ['FILE'], sheet('high-water/checklist-a4.pdf'));
    expect(info).toMatch(/^Title: +The Ferrywrights: High Water: checklist$/m);
    expect(info).toMatch(/^Producer: +Holdback$/m);
    expect(info).toMatch(/^CreationDate: +Fri Apr 16 08:00:00 2027 UTC$/m);
    expect(info).toMatch(/^PDF version: +1\.7$/m);
    expect(info).toMatch(/^Tagged: +yes$/m);
    expect(info).not.toMatch(/^Author/m);
    const other = ask('pdfinfo', ['FILE'], sheet('high-water/counter-a4.pdf'));
    expect(other).toMatch(/^Title: +The Ferrywrights: High Water: counter sheet$/m);
  });

  // ISO 216: A4 is 210 x 297 mm. US Letter is 8.5 x 11 in. 72 points are an inch.
  test.each([
    ['a4', /^Page size: +595\.276 x 841\.89 pts \(A4\)$/m],
    ['letter', /^Page size: +612 x 792 pts \(letter\)$/m],
  ])('have the size of their paper (%s)', (paper, size) => {
    for (const kind of ['checklist', 'counter']) {
      expect(ask('pdfinfo', ['FILE'], sheet(`high-water/${kind}-${paper}.pdf`))).toMatch(size);
    }
  });

  test('embed each font once, in part, with its letters to be read', () => {
    for (const [path, pdf] of sheets) {
      const rows = ask('pdffonts', ['FILE'], pdf).trim().split('\n').slice(2);
      expect(rows.length, path).toBeGreaterThan(3);
      expect(rows.length, path).toBeLessThan(7);
      for (const row of rows) expect(row).toMatch(/^[A-Z]{6}\+Alegreya\S* .* yes yes yes /);
    }
  });

  // ISO 14289-1 (PDF/UA-1), 7.1 and 7.2: marked, a title that is shown, a natural language.
  test('are marked, show their title and say their language', () => {
    const json = ask('qpdf', ['--json=2', 'FILE'], sheet('high-water/checklist-a4.pdf'));
    expect(json).toContain('"/Marked": true');
    expect(json).toContain('"/DisplayDocTitle": true');
    expect(json).toContain('"/Lang": "u:en-GB"');
  });

  test('have a bookmark to each subset, where it starts', () => {
    const marks = (path: string): readonly (readonly [string, number])[] => {
      const json = JSON.parse(ask('qpdf', ['--json=2', 'FILE'], sheet(path))) as {
        readonly outlines: readonly Outline[];
      };
      return json.outlines.map(({ title, destpageposfrom1: page }) => [title, page]);
    };
    expect(marks('high-water/checklist-letter.pdf')).toEqual([
      ['Crew and Craft', 1],
      ['High Water', 1],
      ['Checklist', 1],
      ['Lake Charts', 2],
      ['Maker’s Benches', 2],
      ['Night Signals', 2],
      ['Signatures', 2],
      ['Timber relics', 2],
      ['Sketch Cards', 2],
      ['Parallels', 2],
    ]);
    expect(marks('high-water/counter-a4.pdf').map(([title]) => title)).toEqual([
      'In shops',
      'Products',
      'Subsets',
      'Parallels',
      'Still to come',
    ]);
  });
});

describe('the same data give the same bytes', () => {
  const small = dataOf([setOf([subset('a', 'Base', 'base', [card('1', 'Łaska and Ōtani')])])]);

  const bytes = async (of: typeof data, fonts = faces): Promise<readonly string[]> =>
    [...(await printedSheets(of, fonts))].map(
      ([path, pdf]) => `${path} ${Buffer.from(pdf).toString('base64')}`,
    );

  test('twice, in fonts that were opened anew', async () => {
    expect(await bytes(small, freshFaces())).toEqual(await bytes(small, freshFaces()));
  });

  // In Source Serif the apostrophe is drawn as the modifier letter is, by one glyph.
  test('whatever was drawn in the fonts before', async () => {
    const named = (name: string): typeof data =>
      dataOf([setOf([subset('a', 'Base', 'base', [card('1', name)])])]);
    const used = freshFaces('source-serif-4', 'source-sans-3');
    await bytes(named('Te\u02bca'), used);
    const sheets = await printedSheets(named('Widow’s Kettle'), used);
    const pdf = sheets.get('high-water/checklist-a4.pdf') ?? expect.fail('no sheet');
    expect(pageTexts(pdf)[0]).toContain('Widow’s Kettle');
    expect(await bytes(named('Widow’s Kettle'), used)).toEqual(
      await bytes(named('Widow’s Kettle'), freshFaces('source-serif-4', 'source-sans-3')),
    );
  });

  test('and others where a word, a date or the day of it is another', async () => {
    const first = await bytes(small);
    const changed: readonly (typeof data)[] = [
      dataOf([setOf([subset('a', 'Base', 'base', [card('1', 'Łaska and Otani')])])]),
      { ...small, asOf: SPRING },
      { ...small, preview: true },
    ];
    for (const each of changed) {
      const sheets = await bytes(each);
      expect(sheets.filter((one, index) => one === first[index]).length).toBeLessThan(3);
    }
  });
});
