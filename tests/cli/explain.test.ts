import { readFileSync } from 'node:fs';

import { describe, expect, test } from 'vitest';

import { RULES, pageOfRule, sampleWith } from '../../pipeline/checks/index.js';
import { ruleMarkdown, ruleText, rulesMarkdown } from '../../pipeline/status/index.js';
import { runMain } from './run-main.js';

const PAGES = RULES.map(pageOfRule);

describe('RULES.md', () => {
  test('is what the rules make of it: npm run rules', () => {
    expect(readFileSync(new URL('../../RULES.md', import.meta.url), 'utf8')).toBe(
      rulesMarkdown(PAGES),
    );
  });

  test('has a heading for each rule, and a link to it', () => {
    const markdown = rulesMarkdown(PAGES);
    for (const { id } of RULES) {
      expect(markdown).toContain(`\n### ${id}\n`);
      expect(markdown).toContain(`[${id}](#${id})`);
    }
    expect(markdown.match(/^## /gm)?.length).toBe(new Set(RULES.map(({ about }) => about)).size);
  });
});

describe('the page of a rule', () => {
  test('says why, and what passes and what does not, in both renderings', () => {
    for (const page of PAGES) {
      const [text, markdown] = [ruleText(page), ruleMarkdown(page)];
      for (const rendering of [text, markdown]) {
        expect(rendering).toContain(page.why);
        for (const { says } of [...page.passes, ...page.fails]) expect(rendering).toContain(says);
      }
      for (const { finding } of page.fails) expect(text).toContain(`${finding.at}  `);
      expect(markdown).toContain(`${page.fails[0]?.finding.at ?? ''}  `);
    }
  });

  test('underlines what is found', () => {
    for (const { id, fails } of PAGES) {
      for (const { says, files, finding } of fails) {
        const [, path = '', line = ''] = /^(.+):(\d+):\d+$/.exec(finding.at) ?? [];
        const lines = files.find((file) => file.path === path)?.lines ?? [];
        const at = lines.findIndex((each) => 'text' in each && each.at === Number(line));
        if (at < 0) {
          // The file is not there, is empty, or the place is below its last line.
          expect(finding.covers, `${id}: ${says}`).toBe('');
          continue;
        }
        const [shown, mark] = [lines[at], lines[at + 1]];
        if (!shown || !mark || !('text' in shown) || !('mark' in mark)) throw new Error(says);
        const covered = shown.text.slice(mark.mark.from - 1, mark.mark.to - 1);
        const [first = ''] = finding.covers.split('\n');
        if (first !== '') expect(covered, `${id}: ${says}`).toBe(first);
      }
    }
  });

  test('shows a card whole, and of a long file what matters', () => {
    const page = pageOfRule({
      ...(RULES[0] ?? never()),
      examples: {
        passes: [{ says: 'it is so', files: { 'one/cards/base/a1.md': '---\nx\n---\n' } }],
        fails: [
          {
            says: 'a long file',
            files: {
              'property.yaml': String(sampleWith({}).get('property.yaml')).replace(
                'title: The Lake',
                'title: A Lake',
              ),
            },
            gives: { at: 'property.yaml:3:7', covers: 'Europe/London', message: 'm' },
          },
        ],
      },
    });
    expect(page.passes[0]?.files[0]?.lines).toEqual([
      { text: '---', at: 1 },
      { text: 'x', at: 2 },
      { text: '---', at: 3 },
    ]);
    expect(page.fails[0]?.files).toEqual([
      {
        path: 'property.yaml',
        lines: [
          { gap: true },
          { text: 'title: A Lake', at: 2 },
          { text: 'zone: Europe/London', at: 3 },
          { mark: { from: 7, to: 20 } },
          { gap: true },
        ],
      },
    ]);
  });
});

describe('explain', () => {
  test('lists the rules by subject, each with what it is for', async () => {
    const { stdout } = await runMain(['explain'], '/');
    const lines = stdout.trimEnd().split('\n');
    expect(lines.length).toBe(RULES.length);
    const subjects = RULES.map(({ about }) => about);
    const runs = subjects.filter((about, at) => about !== subjects[at - 1]);
    expect(runs).toEqual([...new Set(subjects)]);
    for (const [at, { id, about, why }] of RULES.entries()) {
      expect(lines[at]?.split(/ {2,}/)).toEqual([id, about, why]);
    }
  });

  test('prints a page', async () => {
    const { stdout, code } = await runMain(['explain', 'number-form'], '/');
    expect(code).toBe(0);
    expect(stdout).toBe(ruleText(PAGES.find(({ id }) => id === 'number-form') ?? never()));
    expect(stdout).toContain('number-form (numbers): error\n');
    expect(stdout).toContain('  number: X-01\n          ^^^^\n  name: The Chart\n');
  });

  test('no terminal is turned by what an example shows', async () => {
    const { stdout } = await runMain(['explain', 'control-character'], '/');
    expect(stdout).toContain('The\\u{200b} Lamp');
    expect(stdout.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Cf}]/u);
  });
});

function never(): never {
  throw new Error('there is no such rule');
}
