import { resolve } from 'node:path';
import type { Command } from 'commander';

import { readInstant, type Instant } from '../model/index.js';
import type { Part } from '../review/index.js';
import { KEY_SEED_OCTETS, sendPacket, type Sending } from '../submission/index.js';
import { realDisk, writeWhole } from '../write/index.js';
import { FINE, REFUSED, UsageError, type Io } from './io.js';
import { contentOf, oneOf, type Common } from './options.js';
import { deliveryOf, type PacketForm } from './packet-file.js';
import { withProgress, type Working } from './progress.js';
import { count, plain } from './report-text.js';

interface PacketFlags extends Common {
  readonly for: string;
  readonly out: string;
  readonly as: PacketForm;
  readonly parts?: string;
  readonly set?: string;
  readonly subset?: string;
  readonly passphraseFile?: string;
  readonly expires?: string;
}

const PARTS: readonly Part[] = ['copy', 'image', 'layout', 'web', 'sales'];

/** `holdback packet`: a submission to a reviewer. */
export function addPacket(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('packet')
    .description('a submission: one sealed file for a reviewer, with what they may decide on')
    .requiredOption('--for <person>', 'whom it is for')
    .requiredOption('--out <file>', 'the file to send')
    .option('--as <form>', 'html or pdf', oneOf<PacketForm>('as', ['html', 'pdf']), 'html')
    .option('--parts <parts>', `only these, such as copy,image; of ${PARTS.join(', ')}`)
    .option('--set <id>', 'this set alone')
    .option('--subset <id>', 'this subset alone')
    .option('--passphrase-file <file>', 'the passphrase that opens it; without it, a new one')
    .option('--expires <day>', 'until when decisions are taken, such as 2027-05-01')
    .action(async (_flags: unknown, command: Command) => {
      const flags = command.optsWithGlobals<PacketFlags>();
      finish(
        await withProgress(io, (progress, whole) => runPacket(flags, io, { progress, whole })),
      );
    });
}

async function runPacket(flags: PacketFlags, io: Io, working: Working): Promise<number> {
  const { path } = contentOf(flags, io);
  const out = resolve(io.cwd, flags.out);
  const { make, said } = deliveryOf(flags, io, working);
  const outcome = await sendPacket({
    contentPath: path,
    now: io.now,
    person: flags.for,
    seed: io.random(KEY_SEED_OCTETS),
    whole: working.whole,
    deliver: async (sending: Sending) => {
      const bytes = await make(sending);
      working.progress('writing');
      writeWhole(realDisk, out, bytes);
    },
    ...(flags.parts === undefined ? {} : { parts: partsFrom(flags.parts) }),
    ...(flags.set === undefined ? {} : { set: flags.set }),
    ...(flags.subset === undefined ? {} : { subset: flags.subset }),
    ...(flags.expires === undefined ? {} : { expires: dayFrom(flags.expires) }),
  });
  if (!outcome.done) {
    io.err('no packet was made\n');
    for (const line of outcome.why) io.err(`  ${plain(line)}\n`);
    return REFUSED;
  }
  const { id, decides, expires } = outcome.record;
  const texts = new Set(decides.map(({ card }) => card)).size;
  io.out(
    `packet ${id} is in ${flags.out}: ${count(texts, 'text')}, ${count(decides.length, 'part')} to decide on, until ${expires}\n`,
  );
  io.err(said);
  return FINE;
}

function partsFrom(text: string): readonly Part[] {
  return text.split(',').map((word) => oneOf<Part>('parts', PARTS)(word.trim()));
}

/** The end of a day in UTC, or an instant. */
function dayFrom(text: string): Instant {
  const reading = readInstant(
    /^\d{4}-\d{2}-\d{2}$/.test(text) ? `${text}T23:59:59+00:00[UTC]` : text,
  );
  if (reading.ok) return reading.at;
  throw new UsageError(`--expires ${text}: ${reading.why}. Write it like 2027-05-01.`);
}
