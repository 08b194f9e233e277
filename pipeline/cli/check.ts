import type { Command } from 'commander';

import type { CheckReport } from '../../schema/index.js';
import { RULES } from '../checks/index.js';
import { fixContent, isOwnFile, look, writeChanges, type Looked } from '../mend/index.js';
import type { Folder } from '../read/index.js';
import { discreetReport } from '../release/index.js';
import { realDisk } from '../write/index.js';
import { NO_CLAIMS_HERE, claimsIn, claimsText } from './claims.js';
import { NO_FIX_HERE, fixedText, leftText } from './fix-text.js';
import { discreetGithubText, githubText } from './github.js';
import { COULD_NOT_RUN, FINE, REFUSED, UsageError, type Io } from './io.js';
import { contentOf, inColour, isDiscreet, oneOf, type Common } from './options.js';
import { placedFrom } from './placed.js';
import { discreetText, plain, reportText } from './report-text.js';
import { countedFolder, withProgress, type Working } from './progress.js';
import { discreetSarifText, sarifText } from './sarif.js';
import { watchFolder } from './watch.js';

const FORMATS = ['text', 'json', 'sarif', 'github'] as const;

interface CheckFlags extends Common {
  readonly only?: string;
  readonly set?: string;
  readonly format: (typeof FORMATS)[number];
  readonly strict?: boolean;
  readonly watch?: boolean;
  readonly fix?: boolean;
  readonly dryRun?: boolean;
  readonly claims?: boolean;
  readonly discreet?: boolean;
}

/** `holdback check`: every rule over every file. */
export function addCheck(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('check')
    .description('run every rule over the content')
    .option('--only <rule>', 'this rule alone')
    .option('--set <id>', 'findings of this set alone')
    .option('--format <format>', FORMATS.join(', '), oneOf('format', FORMATS), 'text')
    .option('--strict', 'exit 1 on warnings too')
    .option('--watch', 'check again whenever a file changes')
    .option('--fix', 'show what can be fixed for certain as a diff, write it, and check again')
    .option('--dry-run', 'with --fix: show the diff and write nothing')
    .option('--claims', 'list every number of a text, and what it was taken for')
    .option('--discreet', 'tell only what the public may know (default where CI is set)')
    .option('--no-discreet', 'tell everything')
    .action(async (_flags: unknown, command: Command) => {
      const flags = command.optsWithGlobals<CheckFlags>();
      refuseUnfit(flags);
      const run = () =>
        withProgress(io, (progress, whole) => runCheck(flags, io, { progress, whole }), flags);
      finish(await run());
      if (flags.watch === true) await watchFolder(contentOf(flags, io).path, run);
    });
}

/** @throws UsageError for options that mean nothing, or nothing together. */
function refuseUnfit({ only, watch, fix, dryRun, claims, format }: CheckFlags): void {
  if (claims === true && (fix === true || (format !== 'text' && format !== 'json'))) {
    throw new UsageError('--claims is a list in text or json, and fixes nothing');
  }
  if (only !== undefined && !RULES.some((rule) => rule.id === only)) {
    throw new UsageError(`there is no rule ${only}; \`holdback explain\` lists them`);
  }
  if (fix === true && watch === true) {
    throw new UsageError('--fix writes what --watch waits for: give one of them');
  }
  if (dryRun === true && fix !== true) throw new UsageError('--dry-run belongs to --fix');
}

const UNTRUSTED =
  'what is kept in review/ cannot be trusted, so nothing counts as approved: `holdback ledger` says why\n';

async function runCheck(flags: CheckFlags, io: Io, working: Working): Promise<number> {
  if (flags.claims === true && isDiscreet(flags.discreet, io)) {
    io.err(NO_CLAIMS_HERE);
    return REFUSED;
  }
  const { path, folder } = contentOf(flags, io);
  if (flags.fix === true) return runFix(flags, { path, folder }, io, working);
  const { progress, whole } = working;
  const looked = await whole(() =>
    look(countedFolder(folder, progress), {
      progress,
      ...(flags.only === undefined ? {} : { only: [flags.only] }),
    }),
  );
  if (flags.claims === true) return sayClaims(looked, folder, flags, io);
  return say(looked, { path, folder }, flags, io);
}

/** Lists numbers and what they were taken for; the exit code is that of the check. */
function sayClaims(looked: Looked, folder: Folder, flags: CheckFlags, io: Io): number {
  if (!hasSet(looked, flags, io)) return COULD_NOT_RUN;
  const code = codeOf(narrowed(looked.report, flags), flags);
  const list = claimsIn(folder, flags.set, looked.report.ok);
  io.out(flags.format === 'json' ? json(list) : claimsText(list));
  return code;
}

interface Place {
  readonly path: string;
  readonly folder: Folder;
}

/** Says what was found, as far as it is asked for and may be told. */
function say(looked: Looked, { path, folder }: Place, flags: CheckFlags, io: Io): number {
  const { content, review, report: whole } = looked;
  const discreet = isDiscreet(flags.discreet, io);
  if (review.faults.length > 0 && !discreet) io.err(UNTRUSTED);
  if (!hasSet(looked, flags, io)) return COULD_NOT_RUN;
  const report = narrowed(whole, flags);
  const code = codeOf(report, flags);
  if (discreet) {
    const told = discreetReport(content, io.now, code !== FINE);
    const texts = {
      text: discreetText,
      json,
      sarif: discreetSarifText,
      github: discreetGithubText,
    };
    io.out(texts[flags.format](told));
    return code;
  }
  const placed = placedFrom(path, io);
  const texts = {
    text: () => reportText(report, inColour(io)),
    json: () => json(report),
    sarif: () => sarifText(report, folder, placed),
    github: () => githubText(report, placed),
  };
  io.out(texts[flags.format]());
  return code;
}

function hasSet({ content }: Looked, { set: asked }: CheckFlags, io: Io): boolean {
  if (asked === undefined || content.sets.some((set) => set.id === asked)) return true;
  io.err(`there is no set ${asked}\n`);
  return false;
}

/** Makes what is certain, shows it, writes it, and says what is left. */
async function runFix(
  flags: CheckFlags,
  place: Place,
  io: Io,
  { progress, whole }: Working,
): Promise<number> {
  if (isDiscreet(flags.discreet, io)) {
    io.err(NO_FIX_HERE);
    return REFUSED;
  }
  const fixing = await whole(() =>
    fixContent({
      folder: place.folder,
      wants: ({ rule, set }) =>
        (flags.only === undefined || rule === flags.only) && isOf(flags.set, set),
      mayWrite: (file) => isOwnFile(realDisk, place.path, file),
      progress,
    }),
  );
  if (!hasSet(fixing.was, flags, io)) return COULD_NOT_RUN;
  // Whoever reads the report as data reads the diff on the other channel.
  const show = flags.format === 'text' ? io.out : io.err;
  show(fixing.patch);
  if (flags.dryRun === true) {
    io.err(leftText(fixing) + fixedText(fixing, true));
    return codeOf(narrowed(fixing.was.report, flags), flags);
  }
  if (fixing.files.size > 0) {
    const written = await writeChanges({ contentPath: place.path, now: io.now }, fixing.files);
    if (!written.done) {
      for (const line of written.why) io.err(`${plain(line)}\n`);
      return REFUSED;
    }
  }
  show(`${fixing.patch === '' ? '' : '\n'}${leftText(fixing)}${fixedText(fixing, false)}\n`);
  return say(fixing.now, place, flags, io);
}

function codeOf({ counts }: CheckReport, { strict }: CheckFlags): number {
  return counts.errors > 0 || (strict === true && counts.warnings > 0) ? REFUSED : FINE;
}

function isOf(asked: string | undefined, set: string | null): boolean {
  return asked === undefined || set === asked || set === null;
}

/** The findings that are asked for, counted anew. */
function narrowed(report: CheckReport, { only, set }: CheckFlags): CheckReport {
  if (only === undefined && set === undefined) return report;
  const findings = report.findings.filter(
    (finding) => isOf(set, finding.set) && (only === undefined || finding.rule === only),
  );
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
