import type { Finding } from '../../schema/index.js';
import { fenceOf, type SourceFile } from '../model/index.js';
import { offsetOf } from './offset.js';
import { quotedAs } from './scalar.js';
import type { Change } from './splice.js';

/** A finding with the change that its fix makes. */
export interface FindingFix {
  readonly finding: Finding;
  readonly change: Change;
}

/**
 * The change that a finding's fix makes in the file that it was found in; null for one without a
 * fix. A value in quotes stays in them.
 */
export function fixOf(source: SourceFile, finding: Finding): FindingFix | null {
  const { fix, line, column, endLine, endColumn } = finding;
  if (fix === undefined) return null;
  const from = offsetOf(source.text, { line, column });
  const to = offsetOf(source.text, { line: endLine, column: endColumn });
  const was = source.text.slice(from, to);
  const staysQuoted = isQuoted(was) && isYaml(source, from) && !fix.startsWith(was.charAt(0));
  return {
    finding,
    change: { spot: { source, from, to }, text: staysQuoted ? quotedAs(was, fix) : fix },
  };
}

/** Fixes of one file that stand apart from all others, and those that overlap or touch another. */
export function apart(fixes: readonly FindingFix[]): {
  readonly alone: readonly FindingFix[];
  readonly crowded: readonly FindingFix[];
} {
  const inOrder = [...fixes].sort(
    ({ change: { spot: a } }, { change: { spot: b } }) => a.from - b.from || a.to - b.to,
  );
  const groups: { fixes: FindingFix[]; to: number }[] = [];
  for (const fix of inOrder) {
    const { from, to } = fix.change.spot;
    const last = groups.at(-1);
    if (last && from <= last.to) {
      last.fixes.push(fix);
      last.to = Math.max(last.to, to);
    } else groups.push({ fixes: [fix], to });
  }
  const of = (wanted: boolean): readonly FindingFix[] =>
    groups.flatMap((group) => ((group.fixes.length === 1) === wanted ? group.fixes : []));
  return { alone: of(true), crowded: of(false) };
}

/** Whether a stretch is one YAML value in quotes, from the first to the last. */
function isQuoted(was: string): boolean {
  return /^"(?:[^"\\]|\\[^])*"$/.test(was) || /^'(?:[^']|'')*'$/.test(was);
}

function isYaml({ file, text }: SourceFile, at: number): boolean {
  if (!file.endsWith('.md')) return true;
  const fence = fenceOf(text);
  return fence !== null && at >= fence.yamlFrom && at < fence.yamlTo;
}
