import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

import { PacksPublic, PacksReport } from '../../schema/index.js';
import { sampleWith, type Files } from '../../pipeline/checks/index.js';
import { packedWith } from '../../pipeline/checks/packed/sample.js';
import { validate } from '../../pipeline/read/index.js';
import { placeContent } from '../demo/copy.js';
import { runMain, type MainRun } from './run-main.js';

const LINE = '{ of: extra, odds: 2 }';
const TO_COME = '2027-06-05T09:00:00+01:00[Europe/London]';

interface Ran extends MainRun {
  /** The text of each file that was written. */
  readonly written: ReadonlyMap<string, string>;
}

/** `packs` over the sample with these files; what it writes is read before the folder goes. */
async function packs(files: Files, ...args: readonly string[]): Promise<Ran> {
  await using placed = await placeContent(sampleWith(files));
  const run = await runMain(['packs', ...args], placed.root);
  const written = ['list.csv', 'picture.svg'].flatMap((name): [string, string][] => {
    const path = join(placed.root, name);
    return existsSync(path) ? [[name, readFileSync(path, 'utf8')]] : [];
  });
  return { ...run, written: new Map(written) };
}

describe('packs, for the house', () => {
  it('tells what is packed, beside what is said of it', async () => {
    const run = await packs(packedWith());
    expect({ code: run.code, stderr: run.stderr }).toEqual({ code: 0, stderr: '' });
    expect(run.stdout).toBe(`INTERNAL, up to: Known

One

Impossible or unlikely:
  nothing: it all adds up

Hobby: 2 cards a pack, 2 packs a box, 2 boxes a case, 5 cases
20 packs, 40 places: 10 taken, 30 left
  What        copies  places  a box  a case  true odds  as stated
  Extra           10      10      1       2        1:2  1:2
  Base cards      30      30      3       6

Made, those kept in reserve too:
  What        cards  copies of each
  Base            2              15
  Extra, X-1      1              10

Hobby: packs until a set is complete, of 20 packs that are made
  Model: every card of a set is as likely as it is common, packs are filled by chance, and no pack
  holds a card twice (by draws: cards come one by one). It is what to expect, not what is promised.
  Set         cards  model     packs, on average  50 %  90 %  99 %  each of 4 who trade
  Extra           1  by packs                  2     1     4     7                    2
  Base cards      2  by packs                1.7     1     3     4                  1.7
`);
  });

  it.each([
    [3, '1:3\n'],
    [4, '1:4, worse than the truth\n'],
    [5, '1:5, rounded up\n'],
  ])('says how 1:%i stands beside a truth of 1:2.5', async (odds, said) => {
    const run = await packs(packedWith([LINE, `{ of: extra, copies: 8, odds: ${String(odds)} }`]));
    expect(run.code).toBe(0);
    expect(run.stdout).toContain(`  Extra            8       8    0.8     1.6      1:2.5  ${said}`);
  });

  it('tells the press sheets, to nobody else', async () => {
    const sheet = 'sheet: { columns: 5, rows: 1, doubled: [base/a1], spare: 1 }';
    const files = packedWith(['group: base, numbers', `group: base, ${sheet}, numbers`]);
    const run = await packs(files, '--picture', 'picture.svg');
    expect(run.stdout).toContain(`Press sheets:
  Form  across and down  cards  blank  sheets needed  printed
  Base            5 × 1      2      0              8        9

Copies that come of them, if no sheet is spoilt, beside those that are to be made:
  Form  cards      each on a sheet  copies of each  over or under
  Base  1, double                3              27            +12
        2                        2              18             +3

`);
    expect(run.written.get('picture.svg')).toContain('>most over: +12 of card 1</text>');
    const open = await packs(files, '--public');
    expect(open.stdout).toBe((await packs(packedWith(), '--public')).stdout);
  });

  it('says what is impossible, and ends with 1', async () => {
    const run = await packs(packedWith([LINE, '{ of: extra, perBox: 1, odds: 1 }']));
    expect(run.code).toBe(1);
    expect(run.stdout).toContain(
      '  error odds-stated: `Hobby`: 1:1 packs for Extra is better than the truth, which is 10 copies in 20 packs: at best 1:2 may be said (one/plan.yaml:19:39)\n',
    );
    expect(run.stdout).toContain('1:1, better than the truth');
  });

  it('tells the same as JSON of its shape', async () => {
    const { stdout } = await packs(packedWith(), '--format', 'json');
    const valid = validate(PacksReport, JSON.parse(stdout));
    if (!valid.ok) throw new Error(JSON.stringify(valid.faults));
    const [set] = valid.value.sets;
    expect(set?.products.map(({ lines }) => lines.map((line) => [line.of, line.perBox]))).toEqual([
      [
        ['extra', '1'],
        [null, '3'],
      ],
    ]);
  });

  it('tells what each number of cases would give while that is open', async () => {
    const run = await packs(
      packedWith(['stage: locked', 'stage: planning'], ['cases: 5', 'cases: unset']),
    );
    expect(run.code).toBe(0);
    expect(run.stdout)
      .toContain(`Hobby: nobody has decided how many cases are made. Of 1 to 1,000, 1,000 numbers of cases come out whole:
  cases  places left  base cards in all  of each
      1            6                  6        3
      2           12                 12        6
`);
    expect(run.stdout).toContain('  and 976 more\n');
  });

  it('says so where no plan tells what is in packs', async () => {
    expect(await packs({})).toMatchObject({
      code: 0,
      stdout: '',
      stderr: 'no plan says what is in its packs: `contents` of a product says it\n',
    });
  });
});

describe('the list for the packing house', () => {
  it('has a row for each line, a mark, and no formula', async () => {
    const files = packedWith(['title: Extra', 'title: \'=1+1, "x"\'']);
    const run = await packs(files, '--packout', 'list.csv');
    expect(run.stderr).toBe('wrote list.csv\n');
    expect(run.written.get('list.csv')).toBe(
      [
        'Product,Cases,Boxes a case,Packs a box,Places a pack,What,Copies,"A case, on average","A box, on average",Places each,Places,Cards,Copies of each,"INTERNAL, up to: Known"',
        `Hobby,5,2,2,2,"'=1+1, ""x""",10,2,1,1,10,1,10,`,
        'Hobby,5,2,2,2,Base cards,30,6,3,1,30,2,15,',
        '',
      ].join('\r\n'),
    );
  });

  it('is not written while the figures do not add up', async () => {
    const run = await packs(
      packedWith([LINE, '{ of: extra, copies: 11, odds: 2 }']),
      '--packout',
      'list.csv',
    );
    expect({ code: run.code, stderr: run.stderr, written: run.written.size }).toEqual({
      code: 1,
      stderr: 'there is no list for the packing house until the figures add up\n',
      written: 0,
    });
  });
});

describe('the picture', () => {
  it('names everything, bears the mark, and escapes what titles hold', async () => {
    const run = await packs(
      packedWith(['title: Extra', "title: 'A<b> & C'"]),
      '--picture',
      'picture.svg',
    );
    expect(run.code).toBe(0);
    const picture = run.written.get('picture.svg') ?? '';
    expect(picture).toContain('>INTERNAL, up to: Known</text>');
    expect(picture).toContain('A&lt;b&gt; &amp; C');
    expect(picture).not.toContain('<b>');
    for (const words of ['from most to fewest', 'what its packs hold', 'who have a whole set']) {
      expect(picture).toContain(words);
    }
    expect(picture).not.toMatch(/NaN|Infinity|undefined/);
  });
});

describe('packs --public', () => {
  it('is a block for a wrapper, with its cautions', async () => {
    const run = await packs(packedWith(), '--public');
    expect(run).toMatchObject({ code: 0, stderr: '' });
    expect(run.stdout).toBe(`One

Hobby: 2 cards a pack, 2 packs a box
  Extra  1:2 packs

Odds are averages over all the packs that are made, rounded up.
A pack, a box or a case may hold more of something, fewer, or none.

----

Before this is printed: whether “no purchase necessary” has to be said, and which rules for prizes apply, is for counsel and local law. Nothing here says so.
`);
  });

  const HELD = packedWith(['group: inserts, numbers', 'group: inserts, spoiler: last, numbers']);

  it('says nothing of what is held, and everything to the house', async () => {
    const run = await packs(HELD, '--public');
    expect(run).toMatchObject({ code: 0, stdout: 'No odds are public.\n' });
    expect((await packs(HELD)).stdout).toContain('Extra');
  });

  it('refuses an instant to come; a preview of it says so', async () => {
    const refused = await packs(HELD, '--public', '--at', TO_COME);
    expect(refused).toMatchObject({ code: 1, stdout: '' });
    const shown = await packs(HELD, '--public', '--at', TO_COME, '--preview');
    expect(shown.code).toBe(0);
    expect(shown.stdout).toMatch(
      /^Preview, not to be passed on before 5 June 2027, 09:00\n\nOne\n/,
    );
    expect(shown.stdout).toContain('  Extra  1:2 packs\n');
  });

  it('refuses before anything is public', async () => {
    const run = await packs(HELD, '--public', '--at', '2026-08-31T09:00:00+01:00[Europe/London]');
    expect(run).toMatchObject({ code: 1, stdout: '' });
  });

  it('is JSON of its shape too', async () => {
    const { stdout } = await packs(packedWith(), '--public', '--format', 'json');
    const valid = validate(PacksPublic, JSON.parse(stdout));
    if (!valid.ok) throw new Error(JSON.stringify(valid.faults));
    expect(valid.value.sets[0]?.products[0]?.odds).toEqual([{ title: 'Extra', packs: 2 }]);
    expect(stdout).not.toMatch(/copies|cases/);
  });
});

describe('packs where others read the log', () => {
  const HELD = packedWith(['group: inserts, numbers', 'group: inserts, spoiler: last, numbers']);
  const REFUSAL = {
    code: 1,
    stdout: '',
    stderr:
      'what is packed is not public: run it in private, or with --no-discreet; --public tells what anybody may know\n',
    written: new Map(),
  };

  it.each([
    ['the report', []],
    ['as JSON', ['--format', 'json']],
    ['of one set', ['--set', 'one']],
    ['of a set that there is not', ['--set', 'two']],
    ['the list for the packing house', ['--packout', 'list.csv']],
    ['the picture', ['--picture', 'picture.svg']],
    ['what is public later', ['--public', '--at', TO_COME, '--preview']],
  ])('%s is refused by one sentence', async (_what, args) => {
    expect(await packs(HELD, '--discreet', ...args)).toEqual(REFUSAL);
  });

  it('nor does it tell whether the figures add up', async () => {
    const wrong = packedWith([LINE, '{ of: extra, copies: 11, odds: 2 }']);
    expect(await packs(wrong, '--discreet')).toEqual(REFUSAL);
  });

  it('what anybody may know is told', async () => {
    const told = await packs(HELD, '--public', '--discreet');
    expect(told).toEqual(await packs(HELD, '--public'));
    expect(told.code).toBe(0);
  });

  it('is so where CI is set, unless it is asked not to be', async () => {
    await using placed = await placeContent(sampleWith(packedWith()));
    const run = async (...args: readonly string[]) =>
      await runMain(['packs', ...args], placed.root, { CI: 'true' });
    expect((await run()).stderr).toBe(REFUSAL.stderr);
    expect((await run('--no-discreet')).stdout).toContain('INTERNAL');
  });
});

describe('what cannot be asked together', () => {
  it.each([
    [['--public', '--packout', 'list.csv']],
    [['--public', '--picture', 'picture.svg']],
    [['--at', TO_COME]],
    [['--preview']],
    [['--set', 'two']],
    [['--public', '--set', 'two']],
    [['--format', 'yaml']],
  ])('%j ends with 2 and one sentence', async (args) => {
    const run = await packs(packedWith(), ...args);
    expect({ code: run.code, stdout: run.stdout, written: run.written.size }).toEqual({
      code: 2,
      stdout: '',
      written: 0,
    });
    expect(run.stderr).toMatch(/^[^\n]+\n$/);
  });
});
