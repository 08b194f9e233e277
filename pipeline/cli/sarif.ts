import type { CheckReport, DiscreetReport } from '../../schema/index.js';
import { RULES, pageOfRule } from '../checks/index.js';
import { fixOf } from '../edit/index.js';
import { textOf } from '../mend/index.js';
import type { SourceFile } from '../model/index.js';
import type { Folder } from '../read/index.js';
import { discreetSarif, sarifLog } from '../status/index.js';
import { ownVersion } from './version.js';

/** What `check --format sarif` prints. */
export function sarifText(
  report: CheckReport,
  folder: Folder,
  placed: (file: string) => string,
): string {
  const sources = new Map<string, SourceFile>();
  const sourceOf = (file: string): SourceFile => {
    const source = sources.get(file) ?? textOf(folder, file).source;
    sources.set(file, source);
    return source;
  };
  const fixText = (finding: CheckReport['findings'][number]): string | null =>
    finding.fix === undefined
      ? null
      : (fixOf(sourceOf(finding.file), finding)?.change.text ?? null);
  return textOfLog(sarifLog(report, { ...ground(), placed, fixText }));
}

/** The same where others read the log. */
export function discreetSarifText(report: DiscreetReport): string {
  return textOfLog(discreetSarif(report, ground()));
}

function ground() {
  return { version: ownVersion(), rules: RULES.map(pageOfRule) };
}

function textOfLog(log: object): string {
  return `${JSON.stringify(log, null, 2)}\n`;
}
