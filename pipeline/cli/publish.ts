import { resolve } from 'node:path';
import type { Command } from 'commander';

import { rasterise } from '../read/index.js';
import { publish, type Refusal } from '../release/index.js';
import { FINE, REFUSED, UsageError, type Io } from './io.js';
import { contentOf, instantFrom, isDiscreet, type Common } from './options.js';
import { withProgress } from './progress.js';
import { count, findingsText, plain } from './report-text.js';

interface PublishFlags extends Common {
  readonly at?: string;
  readonly out?: string;
  readonly preview?: boolean;
  readonly plain?: boolean;
  readonly theme?: string;
  readonly discreet?: boolean;
}

/** `holdback publish`: the checklist site as of an instant. */
export function addPublish(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('publish')
    .description('build the checklist site as of an instant')
    .requiredOption('--out <dir>', 'where the site goes')
    .option('--at <instant>', 'the instant; now, if it is not said')
    .option('--preview', 'allow an instant to come; every page says so')
    .option('--plain', 'write into an empty folder instead of swapping a link')
    .option('--theme <dir>', 'templates of your own')
    .option('--discreet', 'tell only what the public may know (default where CI is set)')
    .option('--no-discreet', 'tell everything')
    .action(async (_flags: unknown, command: Command) => {
      finish(await runPublish(command.optsWithGlobals<PublishFlags>(), io));
    });
}

async function runPublish(flags: PublishFlags, io: Io): Promise<number> {
  if (flags.out === undefined) throw new UsageError('--out DIR is missing');
  const { path, folder } = contentOf(flags, io);
  const order = {
    contentPath: path,
    folder,
    at: instantFrom(flags.at, io),
    now: io.now,
    preview: flags.preview === true,
    out: resolve(io.cwd, flags.out),
    plain: flags.plain === true,
    ...(flags.theme === undefined ? {} : { theme: resolve(io.cwd, flags.theme) }),
    encode: (art: Uint8Array, width: number) => rasterise(art, width, 'webp'),
  };
  const outcome = await withProgress(io, (progress) => publish({ ...order, progress }));
  if (!outcome.done) {
    io.err(sayRefusal(outcome.refusal, isDiscreet(flags.discreet, io)));
    return REFUSED;
  }
  const { record, files } = outcome;
  const kind = record.preview ? 'a preview, not to be passed on' : 'published';
  io.out(`${kind}: ${count(files, 'file')} as of ${record.asOf} in ${flags.out}\n`);
  return FINE;
}

const SECRET_REFUSAL = 'nothing was published: something has a finding; run the check in private\n';

function sayRefusal(refusal: Refusal, discreet: boolean): string {
  if (refusal.why === 'future') {
    return 'that instant is still to come: --preview builds it, and says so on every page\n';
  }
  if (refusal.why === 'before since') return 'nothing of this property is public by then\n';
  if (discreet) return SECRET_REFUSAL;
  if (refusal.why === 'blocked') {
    const blocked = `nothing was published: ${count(refusal.findings.length, 'finding')} in the way`;
    return `${blocked}\n${findingsText(refusal.findings)}`;
  }
  const lines = refusal.findings.map(
    (finding) => `  ${finding.file}: ${plain(finding.words)} (${finding.from})\n`,
  );
  return `nothing was published: the finished site tells what is held\n${lines.join('')}`;
}
