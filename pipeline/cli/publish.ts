import { resolve } from 'node:path';
import type { Command } from 'commander';

import { drawWith } from './draw.js';
import { publish, type PublishOrder } from '../release/index.js';
import { POLICIES, type Policy } from '../select/index.js';
import { FINE, REFUSED, UsageError, type Io } from './io.js';
import { contentOf, instantFrom, isDiscreet, oneOf, type Common } from './options.js';
import { withProgress } from './progress.js';
import { sayDone, sayInstead, sayRefusal, sayTakenBack } from './publish-text.js';
import { runRehearse } from './rehearse.js';
import { runVerify } from './verify.js';

interface PublishFlags extends Common {
  readonly at?: string;
  readonly out?: string;
  readonly preview?: boolean;
  readonly plain?: boolean;
  readonly theme?: string;
  readonly unapproved: Policy;
  readonly verify?: string;
  readonly rehearse?: boolean;
  readonly earlier?: boolean;
  readonly takeBack?: boolean;
  readonly discreet?: boolean;
}

/** `holdback publish`: the checklist site as of an instant. */
export function addPublish(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('publish')
    .description('build the checklist site as of an instant')
    .option('--out <dir>', 'where the site goes')
    .option('--at <instant>', 'the instant; now, if it is not said')
    .option('--preview', 'allow an instant to come; every page says so')
    .option('--plain', 'write into an empty folder instead of swapping a link')
    .option('--theme <dir>', 'templates of your own')
    .option(
      '--unapproved <policy>',
      'what is not approved: refuse, hold or last-approved',
      oneOf<Policy>('unapproved', POLICIES),
      'refuse',
    )
    .option('--earlier', 'allow a site that is earlier or shows less than the last one')
    .option('--take-back', 'the same, and list what caches must forget')
    .option('--rehearse', 'publish nothing: make and search every release to come')
    .option('--verify <dir>', 'publish nothing: compare a published folder with its release.json')
    .option('--discreet', 'tell only what the public may know (default where CI is set)')
    .option('--no-discreet', 'tell everything')
    .action(async (_flags: unknown, command: Command) => {
      const flags = command.optsWithGlobals<PublishFlags>();
      finish(await runOneOf(flags, io));
    });
}

async function runOneOf(flags: PublishFlags, io: Io): Promise<number> {
  if (flags.verify !== undefined) return runVerify(flags.verify, flags, io);
  return flags.rehearse === true ? runRehearse(flags, io) : runPublish(flags, io);
}

async function runPublish(flags: PublishFlags, io: Io): Promise<number> {
  if (flags.out === undefined) throw new UsageError('--out DIR is missing');
  const order = orderOf(flags, flags.out, io);
  const outcome = await withProgress(
    io,
    (progress, whole) => publish({ ...order, progress, whole }),
    flags,
  );
  const discreet = isDiscreet(flags.discreet, io);
  if (!outcome.done) {
    io.err(sayRefusal(outcome.refusal, flags.out, discreet));
    return REFUSED;
  }
  io.out(sayDone(outcome, flags.out));
  io.out(sayInstead(outcome, discreet));
  if (flags.takeBack === true) io.out(sayTakenBack(outcome, discreet));
  return FINE;
}

function orderOf(flags: PublishFlags, out: string, io: Io): PublishOrder {
  const { path, folder } = contentOf(flags, io);
  return {
    contentPath: path,
    folder,
    at: instantFrom(flags.at, io),
    now: io.now,
    preview: flags.preview === true,
    out: resolve(io.cwd, out),
    plain: flags.plain === true,
    policy: flags.unapproved,
    earlier: flags.earlier === true,
    takeBack: flags.takeBack === true,
    ...(flags.theme === undefined ? {} : { theme: resolve(io.cwd, flags.theme) }),
    draw: drawWith(io),
    ...(io.interrupts ? { signal: io.interrupts.signal } : {}),
  };
}
