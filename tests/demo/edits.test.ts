import { readdirSync } from 'node:fs';

import { describe, expect, it } from 'vitest';

import type { CheckReport } from '../../schema/index.js';
import { RULES, check } from '../../pipeline/checks/index.js';
import {
  approvalsOf,
  memoryFolder,
  readProperty,
  readReview,
  keptDictionaries,
} from '../../pipeline/read/index.js';
import { runMain } from '../cli/run-main.js';
import { withEdits } from './apply.js';
import { demoFiles, placeContent } from './copy.js';
import { DEMO_EDITS } from './edits/index.js';

const files = demoFiles({ art: true });
/** With what was approved of it: any edit of a card is something to approve anew. */
const approved = demoFiles({ art: true, approvals: true });
const aboutApproval = new Set(
  RULES.filter(({ about }) => about === 'approval').map(({ id }) => id),
);

function findingsOf(content: ReadonlyMap<string, string | Uint8Array>): CheckReport['findings'] {
  const folder = memoryFolder(content);
  const { content: read, fonts } = readProperty(folder);
  const approvals = approvalsOf(folder, read, fonts, readReview(folder));
  const { findings } = check(read, { fonts, dictionaries: keptDictionaries, approvals });
  return findings.filter(({ accepted }) => accepted === undefined);
}

describe('the demo', () => {
  it('gives no finding as it is', () => {
    expect(findingsOf(approved)).toEqual([]);
    expect(findingsOf(files)).toEqual([]);
  });

  it('has one named edit for each rule', () => {
    expect(DEMO_EDITS.map((edit) => edit.rule).sort()).toEqual(RULES.map((rule) => rule.id).sort());
  });

  it.each(DEMO_EDITS.map((edit) => [edit.rule, edit.says, edit] as const))(
    '%s: %s',
    (rule, _, edit) => {
      const base = aboutApproval.has(rule) ? approved : files;
      expect(findingsOf(withEdits(base, edit.files))).toEqual([
        { rule, related: [], ...edit.finding },
      ]);
    },
  );
});

describe('twelve contents, each broken in one way', () => {
  const errors = DEMO_EDITS.filter(
    ({ rule, finding }) => finding.severity === 'error' && !aboutApproval.has(rule),
  );
  const every = Math.floor(errors.length / 12);
  const twelve = errors.filter((_, at) => at % every === 0).slice(0, 12);

  it('are twelve', () => {
    expect(twelve.length).toBe(12);
  });

  it.each(twelve.map((edit) => [edit.rule, edit] as const))(
    '%s: exit 1 and that finding, whole',
    async (rule, edit) => {
      await using placed = await placeContent(withEdits(files, edit.files));
      const run = await runMain(['check', '--format', 'json'], placed.root);
      const report: CheckReport = JSON.parse(run.stdout);
      expect({ code: run.code, stderr: run.stderr }).toEqual({ code: 1, stderr: '' });
      const standing = report.findings.filter(({ accepted }) => accepted === undefined);
      expect(standing).toEqual([{ rule, related: [], ...edit.finding }]);
      expect(readdirSync(placed.root)).toEqual(['content']);
    },
  );
});
