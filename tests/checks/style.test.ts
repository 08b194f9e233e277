import { describe, expect, it } from 'vitest';

import { changed } from './change.js';
import { lookAt } from './look.js';

/** The bio of the second card of the sample after `--fix` would have written what is certain. */
function fixed(bio: string, style = ''): string {
  const files = {
    ...changed('one/cards/base/a2.md', [['A lamp that nobody lit is burning.', bio]]),
    ...changed('one/plan.yaml', [['english: british', `english: british${style}`]]),
  };
  const text = files['one/cards/base/a2.md'] ?? '';
  const { findings } = lookAt(files, ['house-style', 'repeated-word']);
  const starts = text
    .split('\n')
    .reduce<number[]>((all, line) => [...all, (all.at(-1) ?? 0) + line.length + 1], [0]);
  const offset = (line: number, column: number): number => (starts[line - 1] ?? 0) + column - 1;
  return findings
    .toReversed()
    .reduce((sum, { line, column, endLine, endColumn, fix }) => {
      const [from, to] = [offset(line, column), offset(endLine, endColumn)];
      return sum.slice(0, from) + (fix ?? '[?]') + sum.slice(to);
    }, text)
    .split('---\n')
    .slice(2)
    .join('---\n')
    .replace(/\n$/, '');
}

describe('house style', () => {
  it.each([
    ['', 'A  lamp , lit;and out .', 'A lamp, lit; and out.'],
    ['', 'A lamp. \nIt burns.', 'A lamp.\nIt burns.'],
    ['', 'A lamp ,lit ; and ( mostly ) out.', 'A lamp, lit; and (mostly) out.'],
    ['', 'Then I I left. It is is late.', 'Then I left. It is late.'],
    ['', 'Lit. . . perhaps.', 'Lit. . . perhaps.'],
    [', ellipsis: sign', 'Lit. . . perhaps.', 'Lit… perhaps.'],
    [', ellipsis: dots', 'Lit. . . perhaps.', 'Lit... perhaps.'],
    [
      ', dash: spaced-en',
      'Lit–but not out. The lamp–a tall one–burns–badly. Lit –once– twice.',
      'Lit – but not out. The lamp – a tall one – burns – badly. Lit – once – twice.',
    ],
    [
      ', dash: spaced-en',
      'The north–south ferry, a Thrane–Hask quarrel, 1998–2004 and route A–B.',
      'The north–south ferry, a Thrane–Hask quarrel, 1998–2004 and route A–B.',
    ],
    [', dash: closed-em', 'Lit–but not out, lit –or out.', 'Lit—but not out, lit—or out.'],
    [
      ', numbers: { words: 10 }',
      'All 5 lamps, only 1 oar, a hundred and six steps, 4 °C. No. 4 sank.',
      'All five lamps, only one oar, 106 steps, 4 °C. No. 4 sank.',
    ],
    [
      ', numbers: { words: 1000 }',
      'There are 412 steps, and 906 are wet, a thousand dry and 1,001 lost.',
      'There are four hundred and twelve steps, and nine hundred and six are wet, a thousand dry and 1,001 lost.',
    ],
    ['', 'A line,  \nand another.', 'A line,  \nand another.'],
    [
      '',
      'At 12:30, 1,200 of them; see slackwater.example/x.',
      'At 12:30, 1,200 of them; see slackwater.example/x.',
    ],
    ['', 'The the lamp of of\nthe quay had had it.', 'The lamp of\nthe quay had had it.'],
    [
      ', quotes: curly',
      `"It's 5' high," 'tis said of the '90s.`,
      "“It’s 5' high,” ’tis said of the ’90s.",
    ],
    [', quotes: straight', '“It’s lit,” ‘they’ said.', `"It's lit," 'they' said.`],
    [', quotes: curly, speech: single', '“It is ‘lit’,” she said.', '‘It is “lit”,’ she said.'],
    [
      ', dash: spaced-en',
      'Lit - once -- and—again, 1–8, LC-1, -5 and 3 - 2.',
      'Lit – once – and – again, 1–8, LC-1, -5 and 3 - 2.',
    ],
    [', dash: closed-em', 'Lit – once -- twice.', 'Lit—once—twice.'],
    [', ellipsis: sign', 'Lit...', 'Lit…'],
    [', ellipsis: dots', 'Lit…', 'Lit...'],
    [
      ', units: spaced',
      'It is 5mm by 10°C and 50%, LC-5m.',
      'It is 5 mm by 10 °C and 50 %, LC-5m.',
    ],
    [', units: closed', 'It is 5 mm and 50 %.', 'It is 5mm and 50%.'],
    [
      ', numbers: { words: 12 }',
      '7 lamps and 9 boats, but thirty eels.',
      'Seven lamps and nine boats, but 30 eels.',
    ],
    [
      ', numbers: { words: 12 }',
      'On card 7, at 8 o’clock on 3 May, 84 of each, 1 of 1, 5 mm, 3-2, 1:4, 8 years old.',
      'On card 7, at 8 o’clock on 3 May, 84 of each, 1 of 1, 5 mm, 3-2, 1:4, 8 years old.',
    ],
  ])('%s: %s', (style, bio, right) => {
    expect(fixed(bio, style)).toBe(right);
    if (bio !== right) expect(fixed(right, style)).toBe(right);
  });
});
