import { readdirSync } from 'node:fs';

import { describe, expect, it } from 'vitest';

import type { CheckReport } from '../../schema/index.js';
import { RULES } from '../../pipeline/checks/index.js';
import { runMain } from '../cli/run-main.js';
import { withEdits } from './apply.js';
import { CopyChecker } from './check-copies.js';
import { demoFiles, placeContent } from './copy.js';
import { DEMO_EDITS, findingOf } from './edits/index.js';

const files = demoFiles({ art: true });
/** With what was approved of it: any edit of a card is something to approve anew. */
const approved = demoFiles({ art: true, approvals: true });
const copies = new CopyChecker();
const aboutApproval = new Set(
  RULES.filter(({ about }) => about === 'approval').map(({ id }) => id),
);

describe('the demo', () => {
  it('gives no finding as it is', () => {
    expect(copies.findingsOf(approved)).toEqual([]);
    expect(copies.findingsOf(files)).toEqual([]);
  });

  it('has one named edit for each rule', () => {
    expect(DEMO_EDITS.map((edit) => edit.rule).sort()).toEqual(RULES.map((rule) => rule.id).sort());
  });

  it.each(DEMO_EDITS.map((edit) => [edit.rule, edit.says, edit] as const))(
    '%s: %s',
    (rule, _, edit) => {
      const base = aboutApproval.has(rule) ? approved : files;
      const content = withEdits(base, edit.files);
      expect(copies.findingsOf(content)).toEqual([findingOf(edit, content)]);
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
    async (_, edit) => {
      const content = withEdits(files, edit.files);
      await using placed = await placeContent(content);
      const run = await runMain(['check', '--format', 'json'], placed.root);
      const report: CheckReport = JSON.parse(run.stdout);
      expect({ code: run.code, stderr: run.stderr }).toEqual({ code: 1, stderr: '' });
      const standing = report.findings.filter(({ accepted }) => accepted === undefined);
      expect(standing).toEqual([findingOf(edit, content)]);
      expect(readdirSync(placed.root)).toEqual(['content']);
    },
  );
});
