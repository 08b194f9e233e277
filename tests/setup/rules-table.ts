import { RULES } from '../../pipeline/checks/index.js';

const OPEN = '<!-- rules -->';
const CLOSE = '<!-- /rules -->';

/** The README with its table of rules made anew from the rules. */
export function withRulesTable(readme: string): string {
  const from = readme.indexOf(OPEN) + OPEN.length;
  const to = readme.indexOf(CLOSE);
  if (from < OPEN.length || to < from) throw new Error('the README has no place for the rules');
  return `${readme.slice(0, from)}\n${rulesTable()}${readme.slice(to)}`;
}

function rulesTable(): string {
  const rows = RULES.map((rule) => {
    const lenient = rule.lenientIn ? `; a warning in ${rule.lenientIn.join(' and ')}` : '';
    return `| \`${rule.id}\` | ${rule.about} | ${rule.severity}${lenient} | ${rule.why} |\n`;
  });
  return `| rule | about | severity | why |\n| --- | --- | --- | --- |\n${rows.join('')}`;
}
