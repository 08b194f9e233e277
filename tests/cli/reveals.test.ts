import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import { RevealsReport } from '../../schema/index.js';
import { sampleWith } from '../../pipeline/checks/index.js';
import { edited } from '../../pipeline/checks/sample.js';
import { validate } from '../../pipeline/read/index.js';
import { placeContent, type Placed } from '../demo/copy.js';
import { runMain } from './run-main.js';

const BEFORE = '2027-04-16T19:59:59+01:00[Europe/London]';
const LIFT = '2027-04-16T20:00:00+01:00[Europe/London]';
const LAST = '2027-06-04T20:00:00+01:00[Europe/London]';

let placed: Placed;
beforeAll(async () => {
  placed = await placeContent(
    sampleWith(edited('one/cards/base/a2.md', ['spoiler: open', 'spoiler: later'])),
  );
});
afterAll(async () => {
  await placed[Symbol.asyncDispose]();
});

const reveals = (...more: string[]) => runMain(['reveals', ...more], placed.root);

function reportOf(text: string): RevealsReport {
  const valid = validate(RevealsReport, JSON.parse(text));
  if (!valid.ok) throw new Error(JSON.stringify(valid.faults));
  return valid.value;
}

const card = { set: 'one', subset: 'base', number: '2', name: 'The Lamp' };
const lift = {
  names: [],
  titles: [],
  cards: [{ ...card, change: 'revealed', fields: ['name', 'announced opening'] }],
};

describe('reveals', () => {
  it('tells the timeline as text, and a stretch of it', async () => {
    const whole = await reveals();
    expect(whole).toMatchObject({ code: 0, stderr: '' });
    expect(whole.stdout).toMatch(/^INTERNAL\n\n1 September 2026, 09:00\n/);
    const after = await reveals('--from', LIFT);
    expect(after.stdout).toBe(
      'INTERNAL\n\n4 June 2027, 20:00\n  lifts: Episode 2\n  nothing changes on the site\n\n' +
        '5 June 2027, 09:00\n  in shops: One\n  nothing changes on the site\n',
    );
  });

  it('tells the exact difference of two instants', async () => {
    expect((await reveals('--from', BEFORE, '--to', LIFT)).stdout).toBe(
      'INTERNAL\n\nFrom 16 April 2027, 19:59 to 16 April 2027, 20:00\n' +
        '  revealed         2      The Lamp (one/base)\n',
    );
  });

  it('tells both as JSON of its shape', async () => {
    const report = reportOf(
      (await reveals('--from', BEFORE, '--to', LIFT, '--format', 'json')).stdout,
    );
    expect(report.difference).toEqual({ from: BEFORE, to: LIFT, ...lift });
    expect(report.steps).toEqual([
      { at: LIFT, opens: ['Episode 1'], inShops: [], ...lift, shown: 3, placeholders: 0 },
    ]);
    const all = reportOf((await reveals('--format', 'json')).stdout);
    expect(all.difference).toBeNull();
    expect(all.steps.map(({ at }) => at.slice(0, 10))).toEqual([
      '2026-09-01',
      '2027-04-16',
      '2027-06-04',
      '2027-06-05',
    ]);
  });

  it('makes a calendar and a picture', async () => {
    const calendar = (await reveals('--to', LAST, '--format', 'ics')).stdout;
    expect(calendar.match(/BEGIN:VEVENT/g)).toHaveLength(3);
    expect((await reveals('--format', 'svg')).stdout).toMatch(/^<svg [\s\S]*<\/svg>\n$/);
  });

  it.each([
    [['--format', 'pdf'], /^--format pdf: it is text or json or ics or svg$/m],
    [['--from', '2027'], /^--from 2027: /m],
    [['--to', 'soon'], /^--to soon: /m],
    [['--from', LAST, '--to', LIFT], /^--from must be earlier than --to$/m],
  ])('%j is not understood', async (args, stderr) => {
    const run = await reveals(...args);
    expect(run).toMatchObject({ code: 2, stdout: '' });
    expect(run.stderr).toMatch(stderr);
  });
});
