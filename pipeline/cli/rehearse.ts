import { resolve } from 'node:path';

import { readInstant, sayInstant } from '../model/index.js';
import { drawWith } from './draw.js';
import { rehearse, type Rehearsed } from '../release/index.js';
import type { Policy } from '../select/index.js';
import { FINE, REFUSED, UsageError, type Io } from './io.js';
import { contentOf, isDiscreet, type Common } from './options.js';
import { withProgress } from './progress.js';
import { SECRET_REFUSAL, sayRefusal } from './publish-text.js';
import { indented } from './report-text.js';

interface RehearseFlags extends Common {
  readonly at?: string;
  readonly out?: string;
  readonly theme?: string;
  readonly unapproved: Policy;
  readonly discreet?: boolean;
}

const WHERE = 'review/rehearsal.json';

/** Makes and searches the site of every step of time to come; publishes nothing. */
export async function runRehearse(flags: RehearseFlags, io: Io): Promise<number> {
  if (flags.at !== undefined) {
    throw new UsageError('--rehearse takes every lift to come: leave out --at');
  }
  const { path, folder } = contentOf(flags, io);
  const order = {
    contentPath: path,
    folder,
    now: io.now,
    policy: flags.unapproved,
    ...(flags.out === undefined ? {} : { out: resolve(io.cwd, flags.out) }),
    ...(flags.theme === undefined ? {} : { theme: resolve(io.cwd, flags.theme) }),
    draw: drawWith(io),
    ...(io.interrupts ? { signal: io.interrupts.signal } : {}),
  };
  const rehearsed = await withProgress(
    io,
    (progress, whole) => rehearse({ ...order, progress, whole }),
    flags,
  );
  const discreet = isDiscreet(flags.discreet, io);
  if (!rehearsed.done) {
    io.err(sayRefusal(rehearsed.unready, '', discreet));
    return REFUSED;
  }
  const isBlocked = rehearsed.record.lifts.some(({ digest }) => digest === null);
  if (discreet) {
    if (isBlocked) io.err(SECRET_REFUSAL);
    else io.out(`rehearsed: the record is in ${WHERE}\n`);
  } else {
    io.out(sayRehearsal(rehearsed.record, flags.out));
  }
  return isBlocked ? REFUSED : FINE;
}

function sayRehearsal(
  { lifts }: Extract<Rehearsed, { done: true }>['record'],
  out: string | undefined,
): string {
  const blocks = lifts.map(({ at, digest, blocks: found }) => {
    const reading = readInstant(at);
    const when = reading.ok ? sayInstant(reading.at, reading.zone) : at;
    if (digest === null) return indented(`${when}: would be refused`, found);
    return `${when}: would go out, digest ${digest}\n`;
  });
  const none = lifts.length === 0 ? ['no lift is to come\n'] : [];
  const kept = out === undefined ? '' : `the sites are in ${out}: they tell what is held\n`;
  return ['INTERNAL\n', ...blocks, ...none, kept, `the record is in ${WHERE}\n`].join('');
}
