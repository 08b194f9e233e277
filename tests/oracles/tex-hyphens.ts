/**
 * Makes `tex-hyphens.txt.gz` again: where plain TeX divides every word of four and more small
 * letters in Debian's word list, one word a line, hyphens shown. TeX 3.141592653 of texlive-base
 * 2022.20230122 with its own hyphen.tex; wamerican 2020.12.07 (SCOWL, whose notice permits any use:
 * /usr/share/doc/wamerican/copyright).
 *
 *     apt-get install texlive-base wamerican && npx tsx tests/oracles/tex-hyphens.ts
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';

const words = readFileSync('/usr/share/dict/american-english', 'utf8')
  .split('\n')
  .filter((word) => /^[a-z]{4,}$/u.test(word));

const folder = mkdtempSync(join(tmpdir(), 'tex-hyphens-'));
const shown = words.map((word) => `\\showhyphens{${word}}`).join('\n');
writeFileSync(join(folder, 'hyphens.tex'), `\\batchmode\n${shown}\n\\end\n`);
const environment = { ...process.env, max_print_line: '10000' };
execFileSync('tex', ['-interaction=batchmode', 'hyphens.tex'], { cwd: folder, env: environment });

const log = readFileSync(join(folder, 'hyphens.log'), 'latin1');
const answers = [...log.matchAll(/^\[\] \\tenrm (\S+)/gmu)].map((match) => match[1] ?? '');
if (answers.length !== words.length) {
  throw new Error(`${answers.length} answers to ${words.length} words`);
}
answers.forEach((answer, index) => {
  if (answer.replaceAll('-', '') !== words[index]) throw new Error(`${answer}: ${words[index]}`);
});
const file = new URL('tex-hyphens.txt.gz', import.meta.url);
writeFileSync(file, gzipSync(`${answers.join('\n')}\n`, { level: 9 }));
