import { isAbsolute, relative, sep } from 'node:path';

import type { Io } from './io.js';

/**
 * How files of a content folder are called from the folder that the command runs in, so that a log
 * names no path of the machine: `content/…`. A content folder elsewhere adds nothing.
 */
export function placedFrom(contentPath: string, io: Pick<Io, 'cwd'>): (file: string) => string {
  const way = relative(io.cwd, contentPath);
  const isElsewhere = way === '' || way.startsWith('..') || isAbsolute(way);
  return (file) => (isElsewhere ? file : `${way.split(sep).join('/')}/${file}`);
}
