import { describe, expect, test } from 'vitest';

import { RULES, sampleWith, type Failing, type Rule } from '../../pipeline/checks/index.js';
import type { Finding } from '../../schema/index.js';
import { lookAt } from './look.js';

describe.each(RULES)('$id', (rule) => {
  test.each(rule.examples.passes)('passes: $says', ({ files }) => {
    const { findings, ok } = lookAt(files);
    expect(findings.filter((finding) => finding.accepted === undefined)).toStrictEqual([]);
    expect(ok).toBe(true);
  });

  test.each(rule.examples.fails)('fails: $says', (example) => {
    const { findings, ok, counts } = lookAt(example.files);
    expect(findings.map((finding) => shown(finding, example))).toStrictEqual([
      expectedOf(rule, example),
    ]);
    const errors = expectedOf(rule, example).severity === 'error' ? 1 : 0;
    expect([ok, counts.errors, counts.warnings]).toStrictEqual([errors === 0, errors, 1 - errors]);
  });
});

/** A finding whole, its range as the words that it covers and its other places as text. */
function shown({ line, column, endLine, endColumn, file, ...rest }: Finding, { files }: Failing) {
  const text = sampleWith(files).get(file) ?? '';
  return {
    ...rest,
    at: `${file}:${String(line)}:${String(column)}`,
    covers: text.slice(offsetOf(text, line, column), offsetOf(text, endLine, endColumn)),
    related: rest.related.map(
      (other) => `${other.file}:${String(other.line)}:${String(other.column)} ${other.message}`,
    ),
  };
}

function expectedOf(rule: Rule, { gives }: Failing) {
  const [, set = null, card = null] =
    /^(?!backs\/)([^/:]+)\/(?:cards\/([^:]+)\.md)?/.exec(gives.at) ?? [];
  return {
    rule: rule.id,
    ...gives,
    severity: gives.severity ?? rule.severity,
    related: gives.related ?? [],
    set,
    card,
  };
}

/** The offset of a line and a column, both from 1. */
function offsetOf(text: string, line: number, column: number): number {
  const before = text.split('\n').slice(0, line - 1);
  return before.reduce((sum, each) => sum + each.length + 1, 0) + column - 1;
}
