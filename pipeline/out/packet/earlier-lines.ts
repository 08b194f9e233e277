import { readInstant, sayInstant } from '../../model/index.js';
import type { EarlierLine } from './submission.js';

/** The first figures of a digest after the part that it is of: they tell a reviewer nothing. */
const DIGEST = / [0-9a-f]{6}(?=: )/;

/**
 * Earlier rounds as they are read: at one time of the clock, and what somebody decided on parts of a
 * card in one go as one line.
 */
export function earlierLines(earlier: readonly EarlierLine[], zone: string): EarlierLine[] {
  const lines: EarlierLine[] = [];
  for (const line of earlier) {
    const said = { ...line, at: sayAt(line.at, zone), what: sayWhat(line.what) };
    const before = lines.at(-1);
    const joined = before && joinedLine(before, said);
    if (joined) lines.splice(-1, 1, joined);
    else lines.push(said);
  }
  return lines;
}

/** "copy: approved" and "web: approved" as "copy, web: approved"; null where they say different things. */
function joinedLine(one: EarlierLine, next: EarlierLine): EarlierLine | null {
  const [parts = '', verdict] = one.what.split(/: (.*)/s);
  const [part = '', same] = next.what.split(/: (.*)/s);
  const isOne =
    one.at === next.at &&
    one.who === next.who &&
    verdict !== undefined &&
    verdict === same &&
    one.more.join('\n') === next.more.join('\n');
  return isOne ? { ...one, what: `${parts}, ${part}: ${verdict}` } : null;
}

/** What was submitted was sent to whom the line names. */
function sayWhat(what: string): string {
  return what.replace(DIGEST, '').replace(/^submitted /, 'was sent ');
}

function sayAt(at: string, zone: string): string {
  const read = readInstant(at);
  return read.ok ? sayInstant(read.at, zone) : at;
}
