import type { CheckReport, Finding } from '../../schema/index.js';
import { RULES } from '../checks/index.js';
import type { Roll } from '../gate/index.js';

/** Groups of rules whose errors concern every release, whatever it shows. */
const ALWAYS = new Set(['files', 'levels', 'numbers', 'counts', 'spoilers']);

/**
 * The findings that keep a site from going out: errors of files, numbers, counts and spoilers
 * always; other errors only where the card is shown. Approval is judged by what shows, not by what
 * stands in the files: that is for `selectForSite`.
 */
export function blockers(report: CheckReport, roll: Roll): readonly Finding[] {
  const shown = new Set(roll.shown);
  const groups = new Map(RULES.map((rule) => [rule.id, rule.about]));
  return report.findings.filter((finding) => {
    if (finding.severity !== 'error' || finding.accepted !== undefined) return false;
    const group = groups.get(finding.rule);
    if (group === 'approval') return false;
    if (group === undefined || ALWAYS.has(group) || finding.card === null) return true;
    return shown.has(`${finding.set ?? ''}/${finding.card}`);
  });
}
