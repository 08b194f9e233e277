import type { Finding } from '../../schema/index.js';
import { QUESTIONS, type NewSet, type SetKey } from '../mend/index.js';
import { count, findingsText, plain } from './report-text.js';

/** What would be written: the whole of each file but for stubs, of which a line for each folder. */
export function newSetText({ files, warnings }: Extract<NewSet, { ok: true }>): string {
  const shown: string[] = [];
  const stubs = new Map<string, number>();
  for (const [path, { after }] of files) {
    const folder = path.slice(0, path.lastIndexOf('/'));
    if (/^[^/]+\/cards\//.test(path)) stubs.set(folder, (stubs.get(folder) ?? 0) + 1);
    else shown.push(`${plain(path)}\n${indented(new TextDecoder().decode(after))}`);
  }
  const folders = [...stubs].map(
    ([folder, cards]) => `${plain(folder)}/  ${count(cards, 'stub')}\n`,
  );
  const blocks = ['INTERNAL\n', ...shown, folders.join('')].filter((block) => block !== '');
  const found =
    warnings.length === 0
      ? ''
      : `, and \`check\` will have ${count(warnings.length, 'warning')} until its cards are written`;
  return `${blocks.join('\n')}\n${count(files.size, 'file')}${found}\n`;
}

function indented(text: string): string {
  return text
    .split('\n')
    .map((line) => (line === '' ? '' : `  ${plain(line)}`))
    .join('\n');
}

/** A line for each option that is not said and has to be. */
export function missingText(missing: readonly SetKey[]): string {
  return missing
    .map((key) => {
      const help = QUESTIONS.find((question) => question.key === key)?.help ?? '';
      return `  --${key} is missing. ${help}\n`;
    })
    .join('');
}

/** Errors that a new set would bring. */
export function worseText(findings: readonly Finding[]): string {
  return findingsText(findings);
}
