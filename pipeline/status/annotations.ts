import type { CheckReport, DiscreetReport, Finding } from '../../schema/index.js';
import { findingWords } from './finding-words.js';

/**
 * Findings as workflow commands of a hosted build (GitHub Docs, "Workflow commands for GitHub
 * Actions", in print from memory): each is one line, and shows beside the line that it is about.
 * Accepted ones are left out.
 * @param placed the path of a file as the repository knows it.
 */
export function annotations(report: CheckReport, placed: (file: string) => string): string {
  return report.findings
    .filter(({ accepted }) => accepted === undefined)
    .map((finding) => command(finding.severity, placeOf(finding, placed), findingWords(finding)))
    .join('');
}

/** What of it the public may know, and one sentence for the rest: no file, no line of a file. */
export function discreetAnnotations({ findings, rest }: DiscreetReport): string {
  const told = findings.map(({ rule, severity, set, subset, number, line }) => {
    const where = line === 0 ? 'name' : `paragraph ${String(line)}`;
    return command(severity, { title: rule }, `${set}/${subset} ${number}, ${where}`);
  });
  return [...told, ...(rest === null ? [] : [command('error', {}, rest)])].join('');
}

function placeOf(finding: Finding, placed: (file: string) => string): Record<string, string> {
  return {
    file: placed(finding.file),
    line: String(finding.line),
    endLine: String(finding.endLine),
    // Columns are shown only where an annotation stands in one line.
    ...(finding.line === finding.endLine
      ? { col: String(finding.column), endColumn: String(finding.endColumn) }
      : {}),
    title: finding.rule,
  };
}

function command(
  kind: 'error' | 'warning',
  properties: Readonly<Record<string, string>>,
  message: string,
): string {
  const listed = Object.entries(properties).map(([key, value]) => `${key}=${ofProperty(value)}`);
  return `::${[kind, ...(listed.length === 0 ? [] : [listed.join(',')])].join(' ')}::${ofMessage(message)}\n`;
}

function ofMessage(text: string): string {
  return text.replaceAll('%', '%25').replaceAll('\r', '%0D').replaceAll('\n', '%0A');
}

function ofProperty(text: string): string {
  return ofMessage(text).replaceAll(':', '%3A').replaceAll(',', '%2C');
}
