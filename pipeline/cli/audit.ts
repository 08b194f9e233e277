import { readFileSync, readdirSync, realpathSync, statSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Command } from 'commander';

import { audit, sayAuditPlace, type AuditFinding, type Reader } from '../audit/index.js';
import type { Content } from '../model/index.js';
import { readContent } from '../read/index.js';
import { auditEyes } from '../release/index.js';
import type { Whole } from './interrupts.js';
import { FINE, REFUSED, UsageError, type Io } from './io.js';
import { contentOf, instantFrom, isDiscreet, oneOf, type Common } from './options.js';
import { withProgress, type Progress, type Working } from './progress.js';
import { count, plain } from './report-text.js';

interface AuditFlags extends Common {
  readonly at?: string;
  readonly clearance?: string;
  readonly format: 'text' | 'json';
  readonly discreet?: boolean;
}

/** The one sentence where others read the log. */
export const SECRET_FOUND = 'Something held was found. Run the audit in private to see it.';

/** `holdback audit`: search a finished folder for what is held. */
export function addAudit(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('audit')
    .description('search a finished folder for what is held')
    .argument('<dir>', 'the finished folder')
    .option('--at <instant>', 'the instant at which the public may see the folder')
    .option('--clearance <level>', 'the level that whoever gets the folder is cleared for')
    .option('--format <format>', 'text or json', oneOf('format', ['text', 'json'] as const), 'text')
    .option('--discreet', 'tell only whether anything was found (default where CI is set)')
    .option('--no-discreet', 'tell everything')
    .action(async (dir: string, _flags: unknown, command: Command) => {
      const flags = command.optsWithGlobals<AuditFlags>();
      const run = (progress: Progress, whole: Whole) =>
        runAudit(dir, flags, io, { progress, whole });
      finish(await withProgress(io, run, flags));
    });
}

async function runAudit(
  dir: string,
  flags: AuditFlags,
  io: Io,
  { progress, whole }: Working,
): Promise<number> {
  const { folder } = contentOf(flags, io);
  progress('reading');
  const files = await whole(() => filesIn(dir, io));
  const content = await whole(() => readContent(folder));
  if (!content.property || content.faults.length > 0) {
    io.err('some files cannot be read: run `holdback check` first\n');
    return REFUSED;
  }
  progress('searching for what is held');
  const reader = readerOf(flags, content, io);
  const findings = await audit(files, content, reader, auditEyes(folder), whole);
  const discreet = isDiscreet(flags.discreet, io);
  io.out(
    flags.format === 'json'
      ? sayJson(findings, files.size, discreet)
      : sayText(findings, files.size, discreet),
  );
  return findings.length === 0 ? FINE : REFUSED;
}

/** @throws UsageError if it is not said who reads, or nobody knows the level. */
function readerOf({ at, clearance }: AuditFlags, content: Content, io: Io): Reader {
  if ((at === undefined) === (clearance === undefined)) {
    throw new UsageError('say for whom: --at INSTANT for the public, or --clearance LEVEL');
  }
  if (clearance === undefined) return { at: instantFrom(at, io) };
  const levels = content.property?.value.levels.map(({ id }) => id) ?? [];
  if (levels.includes(clearance)) return { at: io.now, clearance };
  throw new UsageError(`--clearance ${clearance}: the levels are ${levels.join(', ')}`);
}

/**
 * Every file below a folder, hidden ones and links too: path with / to bytes, in order.
 * @throws UsageError if there is no such folder.
 */
function filesIn(dir: string, io: Io): ReadonlyMap<string, Uint8Array> {
  const root = resolve(io.cwd, dir);
  if (statSync(root, { throwIfNoEntry: false })?.isDirectory() !== true) {
    throw new UsageError(`there is no folder ${dir}: name a finished one`);
  }
  const files = new Map<string, Uint8Array>();
  for (const path of pathsBelow(root, '', [])) files.set(path, readFileSync(resolve(root, path)));
  return files;
}

/** A folder that is linked from within itself is gone through once. */
function pathsBelow(root: string, below: string, above: readonly string[]): string[] {
  const real = realpathSync(resolve(root, below));
  if (above.includes(real)) return [];
  return readdirSync(real)
    .sort()
    .flatMap((name) => {
      const path = below === '' ? name : `${below}/${name}`;
      const isFolder = statSync(resolve(root, path)).isDirectory();
      return isFolder ? pathsBelow(root, path, [...above, real]) : [path];
    });
}

function sayText(findings: readonly AuditFinding[], files: number, discreet: boolean): string {
  if (findings.length === 0) return `${count(files, 'file')} searched: nothing held was found\n`;
  if (discreet) return `${SECRET_FOUND}\n`;
  const lines = findings.map((finding) => {
    const words = finding.words === '' ? '' : `: ${plain(finding.words)}`;
    return `${plain(sayAuditPlace(finding))}  ${plain(finding.from)}${words}\n`;
  });
  return `${lines.join('')}${count(files, 'file')} searched: ${count(findings.length, 'finding')}\n`;
}

function sayJson(findings: readonly AuditFinding[], files: number, discreet: boolean): string {
  const ok = findings.length === 0;
  const report = discreet
    ? { ok, rest: ok ? null : SECRET_FOUND }
    : {
        ok,
        files,
        findings: findings.map(({ file, place, card, from, words }) => {
          const { inside, line, column, byte } = place;
          return { file, inside, line, column, byte, card, from, words };
        }),
      };
  return `${JSON.stringify(report, null, 2)}\n`;
}
