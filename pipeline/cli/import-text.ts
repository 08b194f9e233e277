import type { Finding, ImportReport } from '../../schema/index.js';
import { mappingText } from '../sheet/index.js';
import { count, findingsText, indented, plain } from './report-text.js';

/** What `import` read and would change, for people. */
export function importText(report: ImportReport): string {
  const { adds, changes, conflicts, rejected, refused, findings } = report;
  const blocks = [
    'INTERNAL\n',
    indented(
      'Read:',
      report.sheets.map(({ name, header, rows }) => {
        return `${name}: ${count(rows, 'row')} below the headings in row ${String(header)}`;
      }),
    ),
    indented(
      'Headings that stand for nothing here, and were not read:',
      report.sheets.flatMap(({ name, unread }) => unread.map((heading) => `${name}: ${heading}`)),
    ),
    mappingBlock(report),
    table(
      'New cards:',
      ['card', 'number', 'row', 'what'],
      adds.map(({ card, number, values, ...place }) => [
        card,
        number,
        rowOf(place, report),
        values.map(({ key, value }) => `${key}: ${shortened(value)}`).join('; '),
      ]),
    ),
    table(
      'Changes:',
      ['card', 'key', 'row', 'stands', 'sheet says'],
      changes.map((change) => [
        change.card,
        change.key,
        rowOf(change, report),
        change.stands === null ? '–' : shortened(change.stands),
        shortened(change.says),
      ]),
    ),
    table(
      'Conflicts, left alone (--overwrite takes what the sheet says):',
      ['card', 'key', 'row', 'stands', 'sheet says'],
      conflicts.map((conflict) => [
        conflict.card,
        conflict.key,
        rowOf(conflict, report),
        shortened(conflict.stands),
        shortened(conflict.says),
      ]),
    ),
    indented(
      'Rows that were skipped:',
      skippedRuns(report).map(({ to, ...skip }) => {
        const more = to === skip.row ? '' : ` to ${String(to)}`;
        return `${rowOf(skip, report)}${more}: ${skip.why}`;
      }),
    ),
    indented(
      'Rows that were rejected:',
      rejected.flatMap((row) => row.reasons.map((reason) => `${rowOf(row, report)}: ${reason}`)),
    ),
    findingsBlock(
      'Errors that `check` would find and does not find now:',
      findings.filter((finding) => !isFallen(finding)),
    ),
    findingsBlock('Approvals that no longer hold:', findings.filter(isFallen)),
    indented('Refused:', refused),
    summary(report),
  ];
  return blocks.filter((block) => block !== '').join('\n');
}

function isFallen({ rule }: Finding): boolean {
  return rule === 'approval-stale';
}

function findingsBlock(title: string, findings: readonly Finding[]): string {
  return findings.length === 0 ? '' : `${title}\n${findingsText(findings)}`;
}

/** Rows that follow each other and were skipped for the same reason are said at once. */
function skippedRuns({
  skipped,
}: ImportReport): readonly (ImportReport['skipped'][number] & { readonly to: number })[] {
  const runs: (ImportReport['skipped'][number] & { to: number })[] = [];
  for (const skip of skipped) {
    const last = runs.at(-1);
    if (last && last.sheet === skip.sheet && last.why === skip.why && last.to + 1 === skip.row) {
      last.to = skip.row;
    } else runs.push({ ...skip, to: skip.row });
  }
  return runs;
}

function mappingBlock({ mapping }: ImportReport): string {
  const lines = mappingText(mapping).trimEnd().split('\n');
  return indented('By this mapping (--save-mapping FILE keeps it):', lines);
}

function summary({ adds, changes, conflicts, rejected, same }: ImportReport): string {
  const cards = new Set(changes.map(({ card }) => card)).size;
  return `${[
    count(adds.length, 'new card'),
    `${count(changes.length, 'change')} in ${count(cards, 'card')}`,
    count(conflicts.length, 'conflict'),
    `${count(rejected.length, 'row')} rejected`,
    `${count(same, 'row')} the same`,
  ].join(', ')}\n`;
}

function rowOf(
  { sheet, row }: { readonly sheet: string; readonly row: number },
  { sheets }: ImportReport,
): string {
  return sheets.length === 1 && sheets[0]?.name === sheet
    ? `row ${String(row)}`
    : `${sheet}, row ${String(row)}`;
}

/** Most characters of a cell in a table; the whole of it stands in the JSON. */
const LONGEST = 60;

function shortened(text: string): string {
  const line = plain(text);
  if (line.length <= LONGEST) return line;
  // Without half a character at the end.
  return `${line.slice(0, LONGEST - 1).replace(/[\ud800-\udbff]$/, '')}…`;
}

function table(
  title: string,
  headings: readonly string[],
  rows: readonly (readonly string[])[],
): string {
  if (rows.length === 0) return '';
  const all = [headings, ...rows.map((row) => row.map(plain))];
  const widths = headings.map((_, at) =>
    all.reduce((most, row) => Math.max(most, row[at]?.length ?? 0), 0),
  );
  const lines = all.map((row) =>
    row.map((cell, at) => (at === row.length - 1 ? cell : cell.padEnd(widths[at] ?? 0))).join('  '),
  );
  return `${title}\n${lines.map((line) => `  ${line}\n`).join('')}`;
}
