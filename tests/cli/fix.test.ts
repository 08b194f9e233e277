import {
  readFileSync,
  readdirSync,
  symlinkSync,
  unlinkSync,
  writeFileSync,
  mkdirSync,
} from 'node:fs';
import { join } from 'node:path';

import { describe, expect, test } from 'vitest';

import { sampleWith, type Files } from '../../pipeline/checks/index.js';
import type { CheckReport } from '../../schema/index.js';
import { placeContent } from '../demo/copy.js';
import { runMain } from './run-main.js';

const LAMP = 'one/cards/base/a2.md';
const CHART = 'one/cards/extra/b1.md';

const lamp = (front: string, bio = 'A lamp that nobody lit is burning.'): string =>
  `---\n${front}\nspoiler: open\nstory: 1/4\n---\n${bio}\n`;

/** Three mistakes that can be mended for certain, in two files. */
const BROKEN: Files = {
  [LAMP]: `\ufeff${lamp('number: "02"  # as printed\nname: The\u200b Lamp').replaceAll('\n', '\r\n')}`,
  [CHART]: '---\nnumber: X-1\nname: The Chart\nSpoiler: open\n---\nInk, and a thumbprint.\n',
};

const place = (files: Files) => placeContent(new Map(sampleWith(files)));
const read = (content: string, path: string): string => readFileSync(join(content, path), 'utf8');

const PATCH = `--- one/cards/base/a2.md
+++ one/cards/base/a2.md
@@ -1,5 +1,5 @@
 ---
-number: "02"  # as printed
-name: The\\u{200b} Lamp
+number: "2"  # as printed
+name: The Lamp
 spoiler: open
 story: 1/4
--- one/cards/extra/b1.md
+++ one/cards/extra/b1.md
@@ -2,5 +2,5 @@
 number: X-1
 name: The Chart
-Spoiler: open
+spoiler: open
 ---
 Ink, and a thumbprint.
`;

describe('check --fix', () => {
  test('shows a diff, writes those bytes alone, and says what is left', async () => {
    await using placed = await place(BROKEN);
    const run = await runMain(['check', '--fix'], placed.root);
    expect(run).toEqual({
      code: 0,
      stdout: `${PATCH}\n3 fixes in 2 files written\n\n3 cards in 1 set: nothing found\n`,
      stderr: '',
    });
    expect(read(placed.content, LAMP)).toBe(
      `\ufeff${lamp('number: "2"  # as printed\nname: The Lamp').replaceAll('\n', '\r\n')}`,
    );
    expect(read(placed.content, CHART)).toBe(String(BROKEN[CHART]).replace('Spoiler', 'spoiler'));
    expect(readdirSync(placed.content).sort()).toEqual(['one', 'people.yaml', 'property.yaml']);
  });

  test('changes nothing the second time', async () => {
    await using placed = await place(BROKEN);
    await runMain(['check', '--fix'], placed.root);
    const before = read(placed.content, LAMP) + read(placed.content, CHART);
    const run = await runMain(['check', '--fix'], placed.root);
    expect(run.stdout).toBe(
      'nothing can be fixed for certain\n\n3 cards in 1 set: nothing found\n',
    );
    expect(read(placed.content, LAMP) + read(placed.content, CHART)).toBe(before);
  });

  test('--dry-run shows the diff and nothing else, and writes nothing', async () => {
    await using placed = await place(BROKEN);
    const run = await runMain(['check', '--fix', '--dry-run'], placed.root);
    expect(run).toEqual({
      code: 1,
      stdout: PATCH,
      stderr: '3 fixes in 2 files; nothing is written: --dry-run\n',
    });
    expect(read(placed.content, CHART)).toBe(BROKEN[CHART]);
  });

  test('leaves what somebody has to decide on', async () => {
    const unsure: Files = {
      [CHART]: '---\nnumber: X-1\nname: The Chart\nspolier: open\n---\nInk, and a thumbprint.\n',
    };
    await using placed = await place(unsure);
    const run = await runMain(['check', '--fix'], placed.root);
    expect(run.code).toBe(1);
    expect(run.stdout).toMatch(
      /^nothing can be fixed for certain\n\n.*\n.*there is no key `spolier`/,
    );
    expect(read(placed.content, CHART)).toBe(unsure[CHART]);
  });

  test('writes nothing where that would bring an error, and names it', async () => {
    await using placed = await place({ [LAMP]: lamp('number: "01"\nname: The Lamp') });
    const run = await runMain(['check', '--fix'], placed.root);
    expect(run.code).toBe(1);
    expect(run.stdout).toContain('other fixes are not made, since `check` would then find:\n');
    expect(run.stdout).toContain('card base/a1 has the number 1 too');
    expect(read(placed.content, LAMP)).toBe(lamp('number: "01"\nname: The Lamp'));
  });

  test('shows errors that nobody could see before, and keeps what was mended', async () => {
    await using placed = await place({
      [CHART]: '---\nnumber: X-1\nname: The Chart\nSpoiler: open\n---\nInk.\n',
    });
    const run = await runMain(['check', '--fix'], placed.root);
    expect(run.code).toBe(1);
    expect(run.stdout).toContain('1 fix in 1 file written');
    expect(run.stdout).toContain('copy-words');
    expect(read(placed.content, CHART)).toContain('\nspoiler: open');
  });

  test('does not touch what was accepted', async () => {
    const words = `accepted: [{ rule: control-character, words: "U+200B, zero width space", why: it is so, by: jonah }]`;
    const text = lamp(`number: "2"\nname: The\u200b Lamp\n${words}`);
    await using placed = await place({ [LAMP]: text });
    const run = await runMain(['check', '--fix'], placed.root);
    expect(run).toMatchObject({ code: 0, stdout: expect.stringContaining('1 accepted') });
    expect(read(placed.content, LAMP)).toBe(text);
  });

  test('does not write to a link, nor to where it leads', async () => {
    await using placed = await place(BROKEN);
    const [link, target] = [join(placed.content, LAMP), join(placed.content, 'lamp.md')];
    writeFileSync(target, readFileSync(link));
    unlinkSync(link);
    symlinkSync('../../../lamp.md', link);
    const before = readFileSync(target);
    const run = await runMain(['check', '--fix'], placed.root);
    expect(run.stdout).toContain('1 fix in 1 file written');
    expect(run.stdout).toContain('these stand in a file that is a link, which is not written to:');
    expect(readFileSync(target).equals(before)).toBe(true);
  });

  test('takes one rule or one set alone', async () => {
    await using placed = await place(BROKEN);
    const one = await runMain(['check', '--fix', '--only', 'control-character'], placed.root);
    expect(one.stdout).toContain('1 fix in 1 file written');
    expect(read(placed.content, LAMP)).toContain('"02"');
    const other = await runMain(['check', '--fix', '--set', 'two'], placed.root);
    expect(other).toEqual({ code: 2, stdout: '', stderr: 'there is no set two\n' });
    expect(read(placed.content, LAMP)).toContain('"02"');
  });

  test('gives the report as data, and the diff on the other channel', async () => {
    await using placed = await place(BROKEN);
    const run = await runMain(['check', '--fix', '--format', 'json'], placed.root);
    const report: CheckReport = JSON.parse(run.stdout);
    expect(report.findings).toEqual([]);
    expect(run.stderr).toBe(`${PATCH}\n3 fixes in 2 files written\n\n`);
  });

  test('is refused where others read the log, in the same words whatever there is to fix', async () => {
    await using placed = await place(BROKEN);
    const broken = await runMain(['check', '--fix'], placed.root, { CI: 'true' });
    await using whole = await place({});
    expect(broken).toEqual(await runMain(['check', '--fix'], whole.root, { CI: 'true' }));
    expect(broken).toMatchObject({ code: 1, stdout: '' });
    expect(read(placed.content, CHART)).toBe(BROKEN[CHART]);
  });

  test('waits for nobody who is writing', async () => {
    await using placed = await place(BROKEN);
    const lock = join(placed.content, 'review', 'ledger.jsonl.lock');
    mkdirSync(lock, { recursive: true });
    writeFileSync(join(lock, `${String(process.pid)}_1_elsewhere`), '');
    const run = await runMain(['check', '--fix'], placed.root);
    expect(run).toMatchObject({ code: 1, stderr: expect.stringContaining('by somebody else') });
    expect(read(placed.content, CHART)).toBe(BROKEN[CHART]);
  });

  test.each([[['check', '--fix', '--watch']], [['check', '--dry-run']]])(
    '%j is refused as a slip',
    async (args) => {
      await using placed = await place({});
      expect((await runMain(args, placed.root)).code).toBe(2);
    },
  );
});
