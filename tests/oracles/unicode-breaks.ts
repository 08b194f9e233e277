/**
 * Makes `unicode-line-breaks.txt` and `unicode-graphemes.txt` again: the rows of the Unicode 15.0.0
 * break tests without their comments, from Debian's unicode-data 15.0.0-1.
 *
 *     apt-get install unicode-data && npx tsx tests/oracles/unicode-breaks.ts
 */
import { readFileSync, writeFileSync } from 'node:fs';

const NOTICE = `# Copyright (c) 1991-2022 Unicode, Inc. Unicode Data Files, used under the Unicode License
# Agreement for Data Files and Software: see https://www.unicode.org/license.html. Comments were
# taken out; a row is code points with ÷ (a break is allowed) or × (none is) between them.
`;

for (const [from, to] of [
  ['LineBreakTest', 'unicode-line-breaks.txt'],
  ['GraphemeBreakTest', 'unicode-graphemes.txt'],
] as const) {
  const source = readFileSync(`/usr/share/unicode/auxiliary/${from}.txt`, 'utf8');
  const [title = ''] = source.split('\n');
  const rows = source
    .split('\n')
    .map((line) => line.replace(/#.*$/u, '').trim())
    .filter((line) => line !== '');
  const text = `${title}\n${NOTICE}${rows.join('\n')}\n`;
  writeFileSync(new URL(to, import.meta.url), text);
}
