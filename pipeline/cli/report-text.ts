import type { CheckReport, DiscreetReport, Finding } from '../../schema/index.js';
import { createColors } from 'picocolors';

type Colours = ReturnType<typeof createColors>;

/** A report for people: findings by file, then one line of counts. */
export function reportText(report: CheckReport, colour: boolean): string {
  const colours = createColors(colour);
  const open = report.findings.filter((finding) => finding.accepted === undefined);
  const files = [...new Set(open.map((finding) => finding.file))];
  const blocks = files.map((file) => {
    const lines = open
      .filter((finding) => finding.file === file)
      .flatMap((finding) => findingLines(finding, colours));
    return [colours.underline(plain(file)), ...lines].join('\n');
  });
  return `${[...blocks, summary(report, colours)].join('\n\n')}\n`;
}

function findingLines(finding: Finding, colours: Colours): string[] {
  const place = `${String(finding.line)}:${String(finding.column)}`;
  const kind = finding.severity === 'error' ? colours.red('error') : colours.yellow('warning');
  const about = [
    ...(finding.found === undefined ? [] : [`found ${plain(finding.found)}`]),
    ...(finding.expected === undefined ? [] : [`expected ${plain(finding.expected)}`]),
  ];
  return [
    `  ${place.padEnd(8)} ${kind}  ${plain(finding.message)}  ${colours.dim(finding.rule)}`,
    ...about.map((line) => `           ${line}`),
    ...finding.related.map(
      (other) =>
        `           ${plain(other.message)}: ${plain(other.file)}:${String(other.line)}:${String(other.column)}`,
    ),
  ];
}

/** The line of counts alone, without colour. */
export function summaryText(report: CheckReport): string {
  return summary(report, createColors(false));
}

function summary({ counts }: CheckReport, colours: Colours): string {
  const cards = `${count(counts.cards, 'card')} in ${count(counts.sets, 'set')}`;
  const accepted = counts.accepted > 0 ? `, ${String(counts.accepted)} accepted` : '';
  if (counts.errors + counts.warnings === 0) {
    return colours.green(`${cards}: nothing found${accepted}`);
  }
  const found = `${count(counts.errors, 'error')}, ${count(counts.warnings, 'warning')}${accepted}`;
  return `${cards}: ${found}`;
}

/** "1 card", "2 cards". */
export function count(number: number, word: string, many = `${word}s`): string {
  return `${String(number)} ${number === 1 ? word : many}`;
}

/** Text from a file with control characters made visible, so that none reaches the terminal. */
export function plain(text: string): string {
  return text.replace(/[\p{Cc}\u200e\u200f\u202a-\u202e\u2066-\u2069]/gu, (character) => {
    const code = character.codePointAt(0) ?? 0;
    return code === 10 ? ' ' : `\\u{${code.toString(16)}}`;
  });
}

/** Findings alone, one a line, for a refusal. */
export function findingsText(findings: readonly Finding[]): string {
  return findings
    .map((finding) => {
      const place = `${finding.file}:${String(finding.line)}:${String(finding.column)}`;
      return `  ${plain(place)}  ${plain(finding.message)}  ${finding.rule}\n`;
    })
    .join('');
}

/** A discreet report: rule, number and paragraph of what is public, one sentence for the rest. */
export function discreetText(report: DiscreetReport): string {
  const lines = report.findings.map(
    (finding) =>
      `${finding.set}/${finding.subset} ${plain(finding.number)}, ` +
      `${finding.line === 0 ? 'name' : `paragraph ${String(finding.line)}`}: ${finding.rule}\n`,
  );
  const rest = report.rest === null ? '' : `${report.rest}\n`;
  return lines.join('') + rest || 'nothing found\n';
}

/** A title with items below it, each on a line; nothing if there are none. */
export function indented(title: string, items: readonly string[]): string {
  if (items.length === 0) return '';
  return `${title}\n${items.map((item) => `  ${plain(item)}\n`).join('')}`;
}
