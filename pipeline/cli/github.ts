import type { CheckReport, DiscreetReport } from '../../schema/index.js';
import { annotations, discreetAnnotations } from '../status/index.js';
import { summaryText } from './report-text.js';

/** What `check --format github` prints: annotations, and a line of counts for whoever reads the log. */
export function githubText(report: CheckReport, placed: (file: string) => string): string {
  return `${annotations(report, placed)}${summaryText(report)}\n`;
}

/** The same where others read the log. */
export function discreetGithubText(report: DiscreetReport): string {
  return discreetAnnotations(report) || 'nothing found\n';
}
