import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

import { describe, expect, it } from 'vitest';

import { demoFiles, placeContent, withEdit } from '../demo/copy.js';
import { cellsOf, csvRows, workbookRows } from '../sheets/read-back.js';
import { recordsOf } from '../sheets/support.js';
import { runMain } from './run-main.js';

const files = demoFiles({ art: true });
const PLAN = 'depth-charts/plan.yaml';
const PAST = '2027-03-01T00:00:00Z[UTC]';

describe('an export that is refused', () => {
  it.each([
    ['without a file', ['--merge'], 2, "missing required argument 'file'"],
    ['into a file of another name', ['a.xlsx', '--merge'], 2, 'name it .csv, .tsv or .txt'],
    ['in an unknown format', ['a.csv', '--merge', '--format', 'xml'], 2, 'it is csv or tsv'],
    ['in another encoding', ['a.csv', '--merge', '--encoding', 'x'], 2, 'it is utf-8 or utf-16'],
    ['for both', ['a.csv', '--merge', '--for', 'wilf', '--at', PAST], 2, 'or for the public'],
    ['for nobody known', ['a.csv', '--merge', '--for', 'pim'], 2, 'people.yaml knows no pim'],
    ['of no known set', ['a.csv', '--merge', '--set', 'low'], 2, 'there is no set low'],
    ['at no instant', ['a.csv', '--merge', '--at', '2027-04-16'], 2, '--at 2027-04-16: '],
    ['at an instant to come', ['a.csv', '--merge', '--at', '2027-05-01T00:00:00Z[UTC]'], 1, 'come'],
    ['before since', ['a.csv', '--merge', '--at', '2020-05-01T00:00:00Z[UTC]'], 1, 'nothing of'],
  ])('%s writes nothing', async (_, args, code, words) => {
    await using placed = await placeContent(files);
    const run = await runMain(['export', ...args], placed.root);
    expect(run).toMatchObject({ code, stdout: '', stderr: expect.stringContaining(words) });
    expect(readdirSync(placed.root)).toStrictEqual(['content']);
  });

  it('with two columns of one name says where', async () => {
    const merge = 'merge: { columns: [{ column: A, from: name }, { column: A, from: bio }] }\n';
    await using placed = await placeContent(withEdit(files, PLAN, 'stage: ', `${merge}stage: `));
    const run = await runMain(['export', 'a.csv', '--merge'], placed.root);
    expect(run).toMatchObject({ code: 1, stdout: '' });
    expect(run.stderr).toMatch(/^depth-charts\/plan\.yaml: two columns of `merge` are called A\./);
  });
});

describe('a merge file', () => {
  it('is UTF-16 with its mark, by tabs or commas as its name says', async () => {
    await using placed = await placeContent(files);
    const run = await runMain(['export', 'out/all.txt', '--merge'], placed.root);
    expect(run).toMatchObject({ code: 0, stderr: '' });
    const [, cards] =
      /^(\d+) cards written to out\/all\.txt, tsv in utf-16: INTERNAL, up to: Later episodes\n$/.exec(
        run.stdout,
      ) ?? [];
    const text = new TextDecoder('utf-16le', { ignoreBOM: true }).decode(
      readFileSync(join(placed.root, 'out/all.txt')),
    );
    expect(text).toMatch(/^\ufeffset\tnumber\tname\t/);
    expect(text.split('\r\n')).toHaveLength(Number(cards) + 2);
  });

  it('for a person is cut, in UTF-8 if that is asked for', async () => {
    await using placed = await placeContent(files);
    const args = ['--merge', '--for', 'wilf', '--encoding', 'utf-8', '--set', 'high-water'];
    const run = await runMain(['export', 'a.CSV', ...args], placed.root);
    const text = readFileSync(join(placed.root, 'a.CSV'), 'utf8');
    expect(text).toMatch(/^number,name,/);
    expect(text).not.toMatch(/Ysolde|Ninth Gate|Pellam/);
    const rows = String(recordsOf(text).length);
    expect(run.stdout).toBe(`${rows} cards written to a.CSV, csv in utf-8: For Wilf Garrity\n`);
  });

  it('of the public at an instant to come says so with --preview, one of now does not', async () => {
    await using placed = await placeContent(files);
    const then = ['--at', '2027-05-01T00:00:00Z[UTC]', '--preview', '--encoding', 'utf-8'];
    await runMain(['export', 'then.csv', '--merge', ...then], placed.root);
    const now = ['--at', '2027-03-30T11:00:00Z[UTC]', '--preview', '--encoding', 'utf-8'];
    await runMain(['export', 'now.csv', '--merge', ...now], placed.root);
    const [after, before] = ['then.csv', 'now.csv'].map((file) =>
      readFileSync(join(placed.root, file), 'utf8'),
    );
    expect(after).toContain('"Preview, not to be passed on before 16 April 2027, 20:00"');
    expect(before).not.toContain('Preview');
    expect([after?.includes('Marget Lull'), before?.includes('Marget Lull')]).toEqual([
      true,
      false,
    ]);
  });

  it('tells which cells got an apostrophe, and leaves them with --as-typed', async () => {
    const changed = withEdit(
      withEdit(
        files,
        PLAN,
        'stage: ',
        'merge: { columns: [{ column: D, from: facts.Depth }, { column: E, from: texts.none }] }\nstage: ',
      ),
      'depth-charts/cards/depths/d003.md',
      'One hand',
      '-1 hand',
    );
    await using placed = await placeContent(changed);
    const args = ['export', 'a.csv', '--merge', '--set', 'depth-charts', '--encoding', 'utf-8'];
    const run = await runMain(args, placed.root);
    expect(run).toMatchObject({
      code: 0,
      stderr:
        '1 apostrophe put before what begins like a formula, and page layout prints it; see --as-typed:\n' +
        '  depth-charts/depths/d003: facts.Depth\n' +
        'the column E is empty on every card\n',
    });
    expect(readFileSync(join(placed.root, 'a.csv'), 'utf8')).toContain("\r\n'-1 hand,,\r\n");
    const typed = await runMain([...args, '--as-typed'], placed.root);
    expect(typed.stderr).toBe('the column E is empty on every card\n');
    expect(readFileSync(join(placed.root, 'a.csv'), 'utf8')).toContain('\r\n-1 hand,,\r\n');
  });
});

describe('a spreadsheet that is refused', () => {
  it.each([
    ['of another name', ['a.txt'], 2, 'a.txt: name it .xlsx or .csv'],
    ['of nothing known', ['a.csv', '--what', 'all'], 2, '--what all: it is copy or checklist'],
    ['in tabs', ['a.csv', '--format', 'tsv'], 2, '--format: only with --merge'],
    [
      'in another encoding',
      ['a.csv', '--encoding', 'utf-8', '--as-typed'],
      2,
      '--encoding, --as-typed: only with --merge',
    ],
    ['to be merged', ['a.csv', '--merge', '--what', 'copy'], 2, '--what is for a spreadsheet'],
    ['for both', ['a.csv', '--for', 'wilf', '--at', PAST], 2, 'or for the public'],
    ['for nobody known', ['a.csv', '--for', 'pim'], 2, 'people.yaml knows no pim'],
    ['of no known set', ['a.xlsx', '--set', 'low'], 2, 'there is no set low'],
    ['at an instant to come', ['a.csv', '--at', '2027-05-01T00:00:00Z[UTC]'], 1, 'come'],
    ['before since', ['a.csv', '--at', '2020-05-01T00:00:00Z[UTC]'], 1, 'nothing of'],
  ])('%s writes nothing', async (_, args, code, words) => {
    await using placed = await placeContent(files);
    const run = await runMain(['export', ...args], placed.root);
    expect(run).toMatchObject({ code, stdout: '', stderr: expect.stringContaining(words) });
    expect(readdirSync(placed.root)).toStrictEqual(['content']);
  });

  it('because a cell cannot hold a text, says which', async () => {
    const long = withEdit(
      files,
      'depth-charts/cards/depths/d003.md',
      'One hand',
      'One hand'.repeat(1200),
    );
    await using placed = await placeContent(
      new Map(long).set(
        'depth-charts/cards/depths/d001.md',
        longBio(String(files.get('depth-charts/cards/depths/d001.md'))),
      ),
    );
    const run = await runMain(['export', 'a.xlsx'], placed.root);
    expect(run).toMatchObject({ code: 1, stdout: '' });
    expect(run.stderr).toBe(
      'an .xlsx file cannot hold this; mend it, or write a .csv file:\n' +
        '  depth-charts/depths/d001: Bio has 40000 characters, and a cell holds 32766\n',
    );
    expect(readdirSync(placed.root)).toStrictEqual(['content']);
    expect(await runMain(['export', 'a.csv'], placed.root)).toMatchObject({ code: 0 });
  });
});

/** A card with a bio of 40,000 letters and spaces. */
function longBio(text: string): string {
  return `${text.slice(0, text.indexOf('---', 4))}---\n${'A bell. '.repeat(5000).trimEnd()}.\n`;
}

describe('a spreadsheet', () => {
  it('of the house has every card whole, and the names', async () => {
    await using placed = await placeContent(files);
    const run = await runMain(['export', 'a.xlsx'], placed.root);
    const [, cards] =
      /^copy of (\d+) cards written to a\.xlsx: INTERNAL, up to: Later episodes\n$/.exec(
        run.stdout,
      ) ?? [];
    const sheets = await workbookRows(readFileSync(join(placed.root, 'a.xlsx')));
    expect([...sheets.keys()]).toStrictEqual([
      'About this file',
      'Depth Charts',
      'High Water',
      'Names',
    ]);
    const rows = [...(sheets.get('Depth Charts') ?? []), ...(sheets.get('High Water') ?? [])];
    expect(rows).toHaveLength(Number(cards) + 2);
    const first = cellsOf(sheets.get('High Water') ?? [])[0];
    expect(first?.get('Identity')).toBe('crew/c001');
    expect(first?.get('Bio')).toContain('*Patient Heron*');
    expect(Number(first?.get('Lines there are'))).toBeGreaterThan(Number(first?.get('Lines used')));
    expect(first?.get('Words at least')).toBe('35');
    expect(JSON.stringify(sheets.get('Names'))).toContain('Miss Thrane: use Captain Thrane');
  });

  it('for a writer has their own cards, cut, with the room that each has', async () => {
    await using placed = await placeContent(files);
    const run = await runMain(['export', 'a.CSV', '--for', 'jonah'], placed.root);
    const rows = cellsOf(csvRows(readFileSync(join(placed.root, 'a.CSV'))));
    expect(run.stdout).toBe(
      `copy of ${String(rows.length)} cards written to a.CSV: For Jonah Prewett\n`,
    );
    const isHis = (row: ReadonlyMap<string, string>): boolean => {
      const [subset, id] = (row.get('Identity') ?? '').split('/');
      const file = `${row.get('Set') ?? ''}/cards/${subset ?? ''}/${id ?? ''}.md`;
      return /^writer: jonah$/m.test(String(files.get(file)));
    };
    expect(rows.length).toBeGreaterThan(20);
    expect(rows.filter((row) => !isHis(row))).toStrictEqual([]);
    expect(new Set(rows.map((row) => row.get('Cut')))).toStrictEqual(new Set(['yes']));
    expect(rows.filter((row) => row.has('Fit')).length).toBeGreaterThan(20);
    expect(readFileSync(join(placed.root, 'a.CSV'), 'utf8')).not.toMatch(/Ysolde|Ninth Gate/);
  });

  it('for anybody else has all that they see', async () => {
    await using placed = await placeContent(files);
    const run = await runMain(['export', 'a.csv', '--for', 'amara'], placed.root);
    const all = await runMain(['export', 'b.csv'], placed.root);
    const [seen, there] = [run, all].map(({ stdout }) => Number(/\d+/.exec(stdout)?.[0]));
    expect(seen).toBeGreaterThan(150);
    expect(seen).toBeLessThanOrEqual(there ?? 0);
  });

  it('of the public is the checklist of that instant, with nothing of the house', async () => {
    await using placed = await placeContent(files);
    const args = ['--at', PAST, '--what', 'checklist', '--set', 'depth-charts'];
    const run = await runMain(['export', 'a.csv', ...args], placed.root);
    const bytes = readFileSync(join(placed.root, 'a.csv'));
    expect(bytes.subarray(0, 3)).toStrictEqual(Buffer.from([0xef, 0xbb, 0xbf]));
    const rows = csvRows(bytes);
    expect(rows[0]).toStrictEqual([
      'Number',
      'Name',
      'Subset title',
      'Set title',
      'On the checklist',
      'Cut',
    ]);
    expect(run.stdout).toBe(`checklist of ${String(rows.length - 1)} cards written to a.csv\n`);
  });

  it('of an instant to come says so with --preview', async () => {
    await using placed = await placeContent(files);
    const then = ['--at', '2027-05-01T00:00:00Z[UTC]', '--preview', '--what', 'checklist'];
    await runMain(['export', 'a.xlsx', ...then], placed.root);
    const sheets = await workbookRows(readFileSync(join(placed.root, 'a.xlsx')));
    const marks = [...sheets.values()].map(([headings]) => headings?.at(-1));
    expect(new Set(marks)).toStrictEqual(
      new Set(['Preview, not to be passed on before 16 April 2027, 20:00']),
    );
  });
});
