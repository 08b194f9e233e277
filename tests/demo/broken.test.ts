import { readdirSync } from 'node:fs';

import { describe, expect, it } from 'vitest';

import type { CheckReport } from '../../schema/index.js';
import { instantOf } from '../../pipeline/model/index.js';
import { runMain } from '../cli/run-main.js';
import { withEdits } from './apply.js';
import { BROKEN, LATE } from './broken.js';
import { demoFiles, placeContent } from './copy.js';
import { placeOf, relatedAt } from './stretch.js';

const files = demoFiles({ art: true });
const approved = demoFiles({ art: true, approvals: true });
const RELEASE_DAY = instantOf('2027-04-16T09:00:00+01:00[Europe/London]');

type Content = ReadonlyMap<string, string | Uint8Array>;

async function findingsOf(content: Content, now?: number): Promise<CheckReport['findings']> {
  await using placed = await placeContent(content);
  const { stdout, stderr } = await runMain(['check', '--format', 'json'], placed.root, {}, now);
  expect(stderr).toBe('');
  const report: CheckReport = JSON.parse(stdout);
  return report.findings.filter(({ accepted }) => accepted === undefined);
}

describe.each(BROKEN.map((broken) => [broken.says, broken] as const))('%s', (_, broken) => {
  const content = withEdits(files, broken.files);
  const place = placeOf(broken.at, content);

  it('is found, and nothing else', { timeout: 120_000 }, async () => {
    const related = broken.related.map((one) => relatedAt(one, content));
    expect(await findingsOf(content)).toEqual([{ ...broken.finding, ...place, related }]);
  });

  it('keeps everything from going out', { timeout: 120_000 }, async () => {
    await using placed = await placeContent(content);
    const { rule, message } = broken.finding;
    expect(await runMain(['publish', '--out', 'site'], placed.root)).toEqual({
      code: 1,
      stdout: '',
      stderr:
        'nothing was published: 1 finding in the way\n' +
        `  ${place.file}:${String(place.line)}:${String(place.column)}  ${message}  ${rule}\n`,
    });
    expect(readdirSync(placed.root)).toEqual(['content']);
  });
});

/** A digest is not known before the text is approved. */
function withoutDigests(text: string): string {
  return text.replace(/\b(copy|version) [0-9a-f]{6}\b/g, '$1 DIGEST');
}

const STALE = 'Amara Linde approved version DIGEST, and it was changed since';

describe.each(LATE.map((late) => [late.says, late] as const))('%s', (_, late) => {
  const content = withEdits(approved, late.files);

  it('is found', { timeout: 120_000 }, async () => {
    const findings = await findingsOf(content, RELEASE_DAY);
    const said = findings.map(({ rule, severity, set, card, message }) =>
      withoutDigests(`${severity} ${rule} ${set ?? ''}/${card ?? ''} ${message}`),
    );
    expect(said).toEqual([`error approval-stale ${late.card} copy: ${STALE}`]);
  });

  it('keeps everything from going out, with the words', { timeout: 120_000 }, async () => {
    await using placed = await placeContent(content);
    const run = await runMain(['publish', '--out', 'site'], placed.root, {}, RELEASE_DAY);
    expect([run.code, run.stdout]).toEqual([1, '']);
    const [why = '', which, words = '', ...rest] = withoutDigests(run.stderr).split('\n');
    expect(why).toBe(
      'nothing was published: not everything that would show is approved ' +
        '(--unapproved hold shows it as held, --unapproved last-approved as it was approved)',
    );
    expect(which).toBe(`  ${late.card}, copy DIGEST: ${STALE}`);
    expect(words).toContain(late.changed);
    expect(rest).toEqual(['']);
    expect(readdirSync(placed.root)).toEqual(['content']);
  });

  it('says nothing of it where others read the log', { timeout: 120_000 }, async () => {
    await using placed = await placeContent(content);
    const run = await runMain(
      ['publish', '--out', 'site'],
      placed.root,
      { CI: 'true' },
      RELEASE_DAY,
    );
    expect(run).toEqual({
      code: 1,
      stdout: '',
      stderr: 'nothing was published: something has a finding; run the check in private\n',
    });
  });
});
