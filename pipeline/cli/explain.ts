import type { Command } from 'commander';

import { RULES, type Rule } from '../checks/index.js';
import { nearest } from '../text/index.js';
import { FINE, UsageError, type Io } from './io.js';

/** `holdback explain`: what a rule asks and why, with a content that passes and one that does not. */
export function addExplain(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('explain')
    .description('what a rule asks, and why')
    .argument('[rule]', 'a rule; without one, all are listed')
    .action((id: string | undefined) => {
      io.out(id === undefined ? listOfRules() : pageOf(ruleCalled(id)));
      finish(FINE);
    });
}

function ruleCalled(id: string): Rule {
  const rule = RULES.find((candidate) => candidate.id === id);
  if (rule) return rule;
  const near = nearest(
    id,
    RULES.map((candidate) => candidate.id),
  );
  throw new UsageError(`there is no rule ${id}${near === null ? '' : `; did you mean ${near}?`}`);
}

function listOfRules(): string {
  const widest = Math.max(...RULES.map((rule) => rule.id.length));
  return RULES.map((rule) => `${rule.id.padEnd(widest)}  ${rule.why}\n`).join('');
}

function pageOf(rule: Rule): string {
  const lenient = rule.lenientIn ? `, only a warning in stage ${rule.lenientIn.join(' or ')}` : '';
  const passing = rule.examples.passes.map(
    (example) => `Passes: ${example.says}.\n${filesOf(example.files)}`,
  );
  const failing = rule.examples.fails.map(
    (example) =>
      `Does not pass: ${example.says}.\n${filesOf(example.files)}\n` +
      `  ${example.gives.at}  ${example.gives.message}\n`,
  );
  return [
    `${rule.id} (${rule.about}): ${rule.severity}${lenient}\n${rule.why}\n`,
    ...passing,
    ...failing,
  ].join('\n');
}

function filesOf(files: Readonly<Record<string, string | null>>): string {
  return Object.entries(files)
    .map(([path, text]) => {
      const body = text === null ? '  (no such file)\n' : text.replace(/^(?=.)/gm, '  ');
      return `\n  ${path}\n${body}`;
    })
    .join('');
}
