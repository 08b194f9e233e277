import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

import { describe, expect, it } from 'vitest';

import { demoFiles, placeContent, withEdit } from '../demo/copy.js';
import { recordsOf } from '../sheets/support.js';
import { runMain } from './run-main.js';

const files = demoFiles({ art: true });
const PLAN = 'depth-charts/plan.yaml';
const PAST = '2027-03-01T00:00:00Z[UTC]';

describe('an export that is refused', () => {
  it.each([
    ['without --merge', ['a.csv'], 2, 'only --merge is there for now'],
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
