import { readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { ImportReport } from '../../schema/index.js';
import { writeChanges } from '../../pipeline/mend/index.js';
import { memoryFolder, readContent, validate } from '../../pipeline/read/index.js';
import { realDisk, type Disk } from '../../pipeline/write/index.js';
import { RULES } from '../../pipeline/checks/index.js';
import { importText } from '../../pipeline/cli/import-text.js';
import { runMain } from '../cli/run-main.js';
import { placeContent } from '../demo/copy.js';
import { csv, imported, sample, textOf } from './support.js';

const HEAD = ['Identity', 'Subset', 'Number', 'Name', 'Bio', 'Remark', 'Image file', 'Image alt'];
const ROWS = csv(
  HEAD,
  ['base/a1', '', '1', 'The Quay', 'Another text.', 'seen', '', ''],
  ['', 'extra', 'X-2', 'The Map', 'Ink and salt.', '', '', ''],
  ['', 'base', '1', 'The Pier', '', '', '', ''],
  ['base/a9', '', '', '', '', '', '', ''],
  ['', 'base', '2', 'The Lamp', '', '', 'art/../../x.svg', 'A lamp'],
);

function textsIn(content: string): Map<string, string> {
  const paths = readdirSync(content, { recursive: true, encoding: 'utf8' });
  return new Map(
    paths
      .filter((path) => /\.(md|yaml)$/.test(path))
      .sort()
      .map((path) => [path, readFileSync(join(content, path), 'utf8')]),
  );
}

async function asked(args: string, bytes: Uint8Array = ROWS) {
  await using placed = await placeContent(new Map(sample()));
  writeFileSync(join(placed.root, 'in.csv'), bytes);
  const before = textsIn(placed.content);
  const said = `import in.csv --set one --format json${args}`.split(' ');
  const run = await runMain(said, placed.root);
  const after = textsIn(placed.content);
  const parsed = validate(ImportReport, JSON.parse(run.stdout));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  const changed = [...after].filter(([path, text]) => before.get(path) !== text);
  return { run, report: parsed.value, after, changed: changed.map(([path]) => path) };
}

const TWICE = [
  { sheet: 'in.csv', row: 2, reasons: ['the same card stands in row 4 too: leave one'] },
  { sheet: 'in.csv', row: 4, reasons: ['the same card stands in row 2 too: leave one'] },
];

describe('holdback import', () => {
  test('writes nothing unless it is told to', async () => {
    const { report, run, changed } = await asked('');
    expect(changed).toEqual([]);
    expect([run.code, report.ok, report.written]).toEqual([1, false, false]);
    expect(report.rejected.slice(0, 2)).toEqual(TWICE);
    expect(report.rejected.map(({ row }) => row)).toEqual([2, 4, 5, 6]);
    expect(report.rejected[2]?.reasons[0]).toMatch(
      /^there is no card base\/a9; did you mean base\/a1\?/,
    );
    expect(report.rejected[3]?.reasons[0]).toMatch(
      /^`check` would find (path-outside|art-missing)/,
    );
  });

  test('writes what it said, and nothing else', async () => {
    const dry = await asked('');
    const { report, changed, after } = await asked(' --write');
    expect({ ...report, written: false }).toEqual(dry.report);
    expect(report.written).toBe(true);
    expect(changed).toEqual(['one/cards/extra/b2.md']);
    expect(report.adds.map(({ file }) => file)).toEqual(changed);
    expect(after.get('one/cards/extra/b2.md')).toBe(
      '---\nnumber: X-2\nname: The Map\nspoiler: open\nstate: draft\n---\nInk and salt.\n'.replace(
        'X-2',
        '"X-2"',
      ),
    );
  });

  const ONE = csv(HEAD, ['base/a1', '', '1', 'The Pier', 'Another text.', 'seen', '', '']);

  test('fills what is empty and leaves alone what stands', async () => {
    const { report, changed, after, run } = await asked(' --write', ONE);
    expect(run.code).toBe(0);
    expect(changed).toEqual(['one/cards/base/a1.md']);
    expect(report.changes.map(({ key, stands, says }) => [key, stands, says])).toEqual([
      ['remark', null, 'seen'],
    ]);
    expect(report.conflicts.map(({ key, stands, says }) => [key, stands, says])).toEqual([
      ['name', 'The Quay', 'The Pier'],
      ['bio', 'The quay stands in water to the knee.', 'Another text.'],
    ]);
    expect(after.get('one/cards/base/a1.md')).toBe(
      '---\nnumber: "1"\nname: The Quay\nspoiler: open\nstory: 1/1\nremark: seen\n---\nThe quay stands in water to the knee.\n',
    );
  });

  test('takes what the sheet says with --overwrite', async () => {
    const { report, after } = await asked(' --write --overwrite', ONE);
    expect(report.conflicts).toEqual([]);
    expect(after.get('one/cards/base/a1.md')).toBe(
      '---\nnumber: "1"\nname: The Pier\nspoiler: open\nstory: 1/1\nremark: seen\n---\nAnother text.\n',
    );
  });

  test('saves the mapping that it used, by which it reads the same, and says its faults', async () => {
    await using placed = await placeContent(new Map(sample()));
    const root = placed.root;
    writeFileSync(join(root, 'in.csv'), csv(['No.', 'Title', 'yes'], ['X-3', 'yes', 'y']));
    const first = await runMain(
      ['import', 'in.csv', '--set', 'one', '--save-mapping', 'm.yaml'],
      root,
    );
    expect(first.code).toBe(0);
    const again = await runMain(['import', 'in.csv', '--set', 'one', '--mapping', 'm.yaml'], root);
    expect(again.stdout.split('New cards:')[1]).toBe(first.stdout.split('New cards:')[1]);
    writeFileSync(
      join(root, 'bad.yaml'),
      'columns:\n  - { heading: A, key: nmae }\n  - { heading: B }\n',
    );
    const bad = await runMain(['import', 'in.csv', '--set', 'one', '--mapping', 'bad.yaml'], root);
    expect(bad.code).toBe(1);
    expect(bad.stdout).toContain('names a key that no card has: nmae; did you mean name?');
    expect(bad.stdout).toContain('the column “B” has neither `key` nor `ignore: true`');
    writeFileSync(join(root, 'worse.yaml'), 'colums: []\n');
    const worse = await runMain(
      ['import', 'in.csv', '--set', 'one', '--mapping', 'worse.yaml'],
      root,
    );
    expect(worse.stderr).toContain('worse.yaml:1:1');
  });

  test('says which approvals would fall, and writes all the same', () => {
    const stale = RULES.find(({ id }) => id === 'approval-stale');
    const approved = stale?.examples.passes[0]?.files ?? {};
    const asks = (...cells: string[]) =>
      imported(csv(['Identity', 'Bio', 'Remark'], cells), { overwrite: true }, approved);
    const changed = asks('extra/b1', 'Ink and salt.', '');
    expect(changed.report.ok).toBe(true);
    expect([...changed.files.keys()]).toEqual(['one/cards/extra/b1.md']);
    expect(importText(changed.report)).toMatch(
      /\nApprovals that no longer hold:\n.*b1\.md.*copy: Amara Linde approved version e37953/,
    );
    const noted = asks('extra/b1', '', 'seen');
    expect([noted.files.size, noted.report.findings]).toEqual([1, []]);
    expect(importText(noted.report)).not.toContain('Approvals');
  });

  test('writes all or nothing', async () => {
    const rows = csv(
      HEAD,
      ['', 'base', '3', 'A', 'One.', '', '', ''],
      ['', 'base', '4', 'B', 'Two.', '', '', ''],
    );
    const { files } = imported(rows);
    expect(files.size).toBe(2);
    for (let fails = 1; fails < 12; fails += 1) {
      await using placed = await placeContent(new Map(sample()));
      const before = textsIn(placed.content);
      const place = { contentPath: placed.content, now: 0 };
      const failed = await writeChanges({ ...place, disk: failingAt(fails) }, files).then(
        () => false,
        () => true,
      );
      await runMain(['import', 'no.csv', '--set', 'one'], placed.root);
      await runMain(['check'], placed.root);
      const news = [...textsIn(placed.content)].filter(([path, text]) => before.get(path) !== text);
      expect([0, 2], String(fails)).toContain(news.length);
      if (!failed) expect(news.length).toBe(2);
    }
  });
});

/** The disk, whose nth rename does not happen. */
function failingAt(nth: number): Disk {
  let renames = 0;
  return {
    ...realDisk,
    rename: (from, to) => {
      renames += 1;
      if (renames === nth) throw new Error('the disk is gone');
      realDisk.rename(from, to);
    },
  };
}

/** What YAML or a spreadsheet could take for something else. */
const TRICKY = [
  'yes',
  'null',
  '# x',
  ': ',
  'a: b',
  '- a',
  '"',
  "'",
  '{',
  ']',
  '&a',
  '*a',
  '!t',
  '---',
  '007',
  '1e3',
  '~',
  '%',
  '@x',
  '`',
  '|',
  '>',
  '=1',
  'é',
  '🛶',
  'a #b',
  'constructor',
  '__proto__',
];
const tricky = fc
  .array(fc.oneof(fc.constantFrom(...TRICKY), fc.string({ unit: 'binary', maxLength: 4 })), {
    minLength: 1,
    maxLength: 4,
  })
  .map((parts) => parts.join(' ').normalize('NFC'));

describe('whatever a cell holds', () => {
  const HEADINGS = [
    'Number',
    'Name',
    'Remark',
    'Image file',
    'Image alt',
    'Fact: Berth',
    'Credits',
  ];

  test('is in the card as it was, new or changed, or its row is rejected', () => {
    let written = 0;
    fc.assert(
      fc.property(
        fc.array(tricky, { minLength: 4, maxLength: 4 }),
        fc.boolean(),
        (texts, isNew) => {
          const [name = '', remark = '', alt = '', berth = ''] = texts.map((text) => text.trim());
          const number = isNew ? '3' : '1';
          const cells = [number, name, remark, '', alt, berth, ''];
          const { report, files } = imported(
            csv([...HEADINGS, 'Subset'], [...cells, 'base']),
            { overwrite: true },
            {
              'one/cards/base/a1.md':
                '---\r\nnumber: "1" # the first\r\nname: "Q"\r\nspoiler: open\r\nimage:\r\n  file: art/a.svg # big\r\n---\r\n\r\nA quay.\r\n',
              'one/art/a.svg': '<svg xmlns="http://www.w3.org/2000/svg"/>',
            },
          );
          if (report.rejected.length > 0) return;
          const all = new Map([...files].map(([path, { after }]) => [path, after]));
          const after = readContent(
            memoryFolder(new Map<string, string | Uint8Array>([...sample(), ...all])),
          );
          const card = after.sets[0]?.cards.find(
            (each) => each.front.number === number && each.subset === 'base',
          );
          if (files.size === 0 || !card) return;
          written += 1;
          expect(card.front.name.trim()).toBe(card.front.name);
          if (remark !== '') expect(spaced(card.front.remark ?? '')).toBe(spaced(typedOf(remark)));
          if (berth !== '')
            expect(spaced(card.front.facts?.['Berth'] ?? '')).toBe(spaced(typedOf(berth)));
          if (!isNew) expect(card.source.text).toContain('number: "1" # the first\r\n');
          if (!isNew) expect(card.source.text).toContain('file: art/a.svg # big\r\n');
          if (!isNew) expect(card.source.text.replaceAll('\r\n', '')).not.toContain('\n');
        },
      ),
      { seed: 7, numRuns: 150 },
    );
    expect(written).toBeGreaterThan(20);
  });

  const typedOf = (text: string): string => (/^'+[=+\-@]/.test(text) ? text.slice(1) : text);
  const spaced = (text: string): string =>
    text.replace(
      /^[\s\u00ad\u200b-\u200f\u2060\ufeff]+|[\s\u00ad\u200b-\u200f\u2060\ufeff]+$/gu,
      '',
    );

  test('HTML in a bio is left to `check`', () => {
    const made = imported(
      csv(['Subset', 'Number', 'Name', 'Bio'], ['base', '3', 'A', '<b>Loud</b>']),
    );
    expect(textOf(made, 'one/cards/base/a3.md')).toMatch(/---\n<b>Loud<\/b>\n$/);
    expect(made.report.findings.map(({ rule }) => rule)).toContain('copy-markup');
  });

  test('a level, a person or a key that is not there is named with the nearest', () => {
    const { report } = imported(
      csv(
        ['Subset', 'Number', 'Name', 'Spoiler', 'Writer', 'Short print'],
        ['base', '3', 'A', 'opne', 'jonha', 'SPP'],
        ['base', '4', 'B', 'open', 'jonha', ''],
        ['base', '44', 'C', '', '', ''],
      ),
    );
    expect(report.rejected.map(({ reasons }) => reasons)).toEqual([
      [expect.stringContaining('shortPrint')],
      ['there is no person jonha; did you mean jonah?'],
      ['the plan gives base no number 44; did you mean 4?'],
    ]);
  });

  test('headings that objects have by themselves stand for nothing, twice the same is refused', () => {
    const { report } = imported(
      csv(['__proto__', 'constructor', 'Number', 'Name'], ['a', 'b', 'X-3', 'C']),
    );
    expect(report.sheets[0]?.unread).toEqual(['__proto__', 'constructor']);
    expect(report.adds.map(({ values }) => values.length)).toEqual([2]);
    expect(imported(csv(['No.', '#', 'Name'], ['3', '4', 'C'])).report.refused).toEqual([
      'sheet.csv: “No.” in A and “#” in B both stand for number: say in a mapping which one is read, by `column`',
    ]);
  });
});
