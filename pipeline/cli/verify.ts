import { statSync } from 'node:fs';
import { resolve } from 'node:path';

import { verifySite } from '../release/index.js';
import { FINE, REFUSED, UsageError, type Io } from './io.js';
import { count, indented, plain } from './report-text.js';

/** Whether a published folder is what its `release.json` says. */
export function runVerify(dir: string, flags: { readonly out?: string }, io: Io): number {
  if (flags.out !== undefined) {
    throw new UsageError('--verify publishes nothing: leave out --out, or leave out --verify');
  }
  const folder = resolve(io.cwd, dir);
  if (statSync(folder, { throwIfNoEntry: false })?.isDirectory() !== true) {
    throw new UsageError(`there is no folder ${dir}: name a published one after --verify`);
  }
  const found = verifySite(folder);
  if (found === null) {
    io.err(
      `${dir} has no release.json that can be read: it is no published folder, or a broken one\n`,
    );
    return REFUSED;
  }
  const { release, missing, changed, extra } = found;
  if (missing.length + changed.length + extra.length === 0) {
    const files = count(Object.keys(release.files).length, 'file');
    io.out(`${dir} is what its release.json says: ${files} as of ${plain(release.asOf)}\n`);
    return FINE;
  }
  io.out(
    `${dir} is not what its release.json says\n` +
      [
        indented('missing:', missing),
        indented('changed:', changed),
        indented('extra:', extra),
      ].join(''),
  );
  return REFUSED;
}
