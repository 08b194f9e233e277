import type { Command } from 'commander';

import { RULES, check } from '../checks/index.js';
import { approvalsOf, readProperty, readReview, keptDictionaries } from '../read/index.js';
import { discreetReport } from '../release/index.js';
import { COULD_NOT_RUN, FINE, REFUSED, UsageError, type Io } from './io.js';
import { contentOf, inColour, isDiscreet, type Common } from './options.js';
import { discreetText, reportText } from './report-text.js';
import { countedFolder, withProgress, type Progress } from './progress.js';
import { watchFolder } from './watch.js';

interface CheckFlags extends Common {
  readonly only?: string;
  readonly set?: string;
  readonly format: 'text' | 'json';
  readonly strict?: boolean;
  readonly watch?: boolean;
  readonly discreet?: boolean;
}

/** `holdback check`: every rule over every file. */
export function addCheck(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('check')
    .description('run every rule over the content')
    .option('--only <rule>', 'this rule alone')
    .option('--set <id>', 'findings of this set alone')
    .option('--format <format>', 'text or json', oneOfFormats, 'text')
    .option('--strict', 'exit 1 on warnings too')
    .option('--watch', 'check again whenever a file changes')
    .option('--discreet', 'tell only what the public may know (default where CI is set)')
    .option('--no-discreet', 'tell everything')
    .action(async (_flags: unknown, command: Command) => {
      const flags = command.optsWithGlobals<CheckFlags>();
      if (flags.only !== undefined && !RULES.some((rule) => rule.id === flags.only)) {
        throw new UsageError(`there is no rule ${flags.only}; \`holdback explain\` lists them`);
      }
      const run = () => withProgress(io, (progress) => runCheck(flags, io, progress));
      finish(await run());
      if (flags.watch === true) await watchFolder(contentOf(flags, io).path, () => void run());
    });
}

function oneOfFormats(text: string): 'text' | 'json' {
  if (text === 'text' || text === 'json') return text;
  throw new UsageError(`--format ${text}: it is text or json`);
}

const UNTRUSTED =
  'what is kept in review/ cannot be trusted, so nothing counts as approved: `holdback ledger` says why\n';

function runCheck(flags: CheckFlags, io: Io, progress: Progress): number {
  const folder = countedFolder(contentOf(flags, io).folder, progress);
  const { content, fonts } = readProperty(folder);
  const review = readReview(folder);
  if (review.faults.length > 0 && !isDiscreet(flags.discreet, io)) io.err(UNTRUSTED);
  const whole = check(content, {
    fonts,
    dictionaries: keptDictionaries,
    approvals: approvalsOf(folder, content, fonts, review),
    progress,
    ...(flags.only === undefined ? {} : { only: [flags.only] }),
  });
  if (flags.set !== undefined && !content.sets.some((set) => set.id === flags.set)) {
    io.err(`there is no set ${flags.set}\n`);
    return COULD_NOT_RUN;
  }
  const report = flags.set === undefined ? whole : narrowed(whole, flags.set);
  const bad = report.counts.errors > 0 || (flags.strict === true && report.counts.warnings > 0);
  if (isDiscreet(flags.discreet, io)) {
    const told = discreetReport(content, io.now, bad);
    io.out(flags.format === 'json' ? json(told) : discreetText(told));
  } else {
    io.out(flags.format === 'json' ? json(report) : reportText(report, inColour(io)));
  }
  return bad ? REFUSED : FINE;
}

function narrowed(report: ReturnType<typeof check>, set: string): ReturnType<typeof check> {
  const findings = report.findings.filter((finding) => finding.set === set || finding.set === null);
  const standing = findings.filter((finding) => finding.accepted === undefined);
  const errors = standing.filter((finding) => finding.severity === 'error').length;
  const accepted = findings.length - standing.length;
  return {
    ok: errors === 0,
    counts: { ...report.counts, errors, warnings: standing.length - errors, accepted },
    findings,
  };
}

function json(value: unknown): string {
  return `${JSON.stringify(value, null, 2)}\n`;
}
