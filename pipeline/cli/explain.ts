import type { Command } from 'commander';

import { RULES, pageOfRule, type Rule } from '../checks/index.js';
import { ruleText, rulesText } from '../status/index.js';
import { nearest } from '../text/index.js';
import { FINE, UsageError, type Io } from './io.js';

/** `holdback explain`: what a rule asks and why, with a content that passes and one that does not. */
export function addExplain(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('explain')
    .description('what a rule asks, and why')
    .argument('[rule]', 'a rule; without one, all are listed by subject')
    .action((id: string | undefined) => {
      io.out(
        id === undefined ? rulesText(RULES.map(pageOfRule)) : ruleText(pageOfRule(ruleCalled(id))),
      );
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
