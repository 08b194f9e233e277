import { describe, expect, it } from 'vitest';

import type { ClaimsReport } from '../../schema/index.js';
import { demoFiles, placeContent, withEdit } from '../demo/copy.js';
import { runMain } from './run-main.js';

const COUNTER = 'high-water/sales/counter.md';
const COUNTER_TEXT = `---
title: For the counter
kind: shop
goes: "2027-04-16T09:00:00+01:00[Europe/London]"
spoiler: open
---
There are [126](count:set) cards in the complete set and [42](count:inserts) of them are inserts.

© 2027 Lantern & Oar
`;
const files = demoFiles({ art: true }).set(COUNTER, COUNTER_TEXT);

describe('check --claims', () => {
  it('lists every number with what it was taken for, and ends as the check does', async () => {
    await using placed = await placeContent(files);
    const run = await runMain(['check', '--claims', '--format', 'json'], placed.root);
    const report: ClaimsReport = JSON.parse(run.stdout);
    expect([run.code, run.stderr, report.ok]).toStrictEqual([0, '', true]);
    expect(
      report.numbers.filter(({ file, taken }) => file === COUNTER && taken === 'claim'),
    ).toStrictEqual([
      {
        set: 'high-water',
        card: null,
        file: COUNTER,
        line: 7,
        column: 12,
        endLine: 7,
        endColumn: 15,
        text: 'this text',
        words: '126 cards',
        number: 126,
        taken: 'claim',
        link: 'set',
        stands: 'holds',
        real: [{ count: 126, of: 'the total `set`' }],
      },
      {
        set: 'high-water',
        card: null,
        file: COUNTER,
        line: 7,
        column: 59,
        endLine: 7,
        endColumn: 61,
        text: 'this text',
        words: '42 of them are inserts',
        number: 42,
        taken: 'claim',
        link: 'inserts',
        stands: 'holds',
        real: [{ count: 42, of: 'the group `inserts`' }],
      },
    ]);
    const [changed] = report.numbers.filter(({ stands }) => stands === 'wrong');
    expect(changed).toMatchObject({ number: 21, link: 'sketches', real: [{ count: 20 }] });
    expect(report.counts.wrong).toBe(1);
    const { claims, story, others } = report.counts;
    expect(claims + story + others).toBe(report.numbers.length);
    // The song of nine gates, and a count that is said to be story.
    const song = report.numbers.filter(({ card }) => card === 'story/s054');
    expect(song.map(({ taken }) => taken)).toStrictEqual(song.map(() => 'story'));
    expect(song.filter(({ link }) => link === 'none').map(({ words }) => words)).toStrictEqual([
      'nine',
    ]);
  });

  it('says it in text, of one set, and ends with 1 where a claim is wrong', async () => {
    const broken = withEdit(files, COUNTER, '[42](count:inserts)', '[43](count:inserts)');
    await using placed = await placeContent(broken);
    const run = await runMain(['check', '--claims', '--set', 'high-water'], placed.root);
    expect(run.code).toBe(1);
    expect(run.stdout).toContain(
      '43 of them are inserts: a claim about the group `inserts` (42): it does not hold\n',
    );
    expect(run.stdout).toMatch(
      /\d+ claims: \d+ hold, 2 do not; \d+ numbers of story, \d+ others?\n$/,
    );
    expect(run.stdout).not.toContain('depth-charts/');
  });

  it('says nothing where others read the log, whatever there is', async () => {
    await using placed = await placeContent(files);
    await using other = await placeContent(
      withEdit(files, COUNTER, '[42](count:inserts)', '[43](count:inserts)'),
    );
    const runs = await Promise.all(
      [placed, other].map(({ root }) => runMain(['check', '--claims', '--discreet'], root)),
    );
    expect(runs[0]).toStrictEqual(runs[1]);
    expect(runs[0]).toMatchObject({ code: 1, stdout: '' });
    expect(runs[0]?.stderr).toBe(
      'the list of claims shows words that are not public: run it in private, or with --no-discreet\n',
    );
  });

  it('is a list in text or json', async () => {
    await using placed = await placeContent(files);
    const run = await runMain(['check', '--claims', '--format', 'sarif'], placed.root);
    expect(run.code).toBe(2);
  });
});
