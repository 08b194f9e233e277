import { readFileSync } from 'node:fs';

import { describe, expect, it } from 'vitest';

import { RULES } from '../../pipeline/checks/index.js';
import { withRulesTable } from '../setup/rules-table.js';
import { runCli } from '../setup/run-cli.js';

const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');

describe('the README', () => {
  it('has the table of rules as the rules make it', () => {
    expect(readme).toBe(withRulesTable(readme));
    expect(RULES.length).toBeGreaterThan(25);
  });

  it('names every command that the tool has, and no other', async () => {
    const help = await runCli(['--help'], { cwd: process.cwd() });
    const commands = [...help.stdout.matchAll(/^ {2}([a-z]+) .*$/gm)]
      .map(([, name]) => name)
      .filter((name) => name !== 'help');
    const named = [...readme.matchAll(/^\| `([a-z]+)[^`]*` \|/gm)].map(([, name]) => name);
    const rules = new Set(RULES.map((rule) => rule.id.split('-')[0]));
    expect(named.filter((name) => !rules.has(name ?? ''))).toEqual(
      expect.arrayContaining(commands),
    );
    for (const command of commands) expect(readme).toContain(`\`${command ?? ''}`);
  });
});
