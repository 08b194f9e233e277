import type { RulePage } from '../checks/index.js';
import { fileLines, findingLines, sayAcceptable, sayFixes, saySeverity } from './rule-lines.js';

/** The page of a rule for a terminal. */
export function ruleText(page: RulePage): string {
  const { id, about, why, passes, fails } = page;
  return [
    `${id} (${about}): ${saySeverity(page)}\n${why}\n${sayAcceptable(page)}\n${sayFixes(page)}\n`,
    ...passes.map(({ says, files }) => `Passes: ${says}.\n${filesText(files)}`),
    ...fails.map(
      (failing) =>
        `Does not pass: ${failing.says}.\n${filesText(failing.files)}\n${indented(findingLines(failing))}`,
    ),
  ].join('\n');
}

/** All rules by subject, a line each. */
export function rulesText(pages: readonly RulePage[]): string {
  const widest = Math.max(...pages.map(({ id }) => id.length));
  const widestAbout = Math.max(...pages.map(({ about }) => about.length));
  return pages
    .map(({ id, about, why }) => `${id.padEnd(widest)}  ${about.padEnd(widestAbout)}  ${why}\n`)
    .join('');
}

function filesText(files: RulePage['passes'][number]['files']): string {
  return files.map((file) => `\n  ${file.path}\n${indented(fileLines(file))}`).join('');
}

function indented(lines: readonly string[]): string {
  return lines.map((line) => `${`  ${line}`.trimEnd()}\n`).join('');
}
