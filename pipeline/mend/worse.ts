import type { Finding } from '../../schema/index.js';
import type { Content } from '../model/index.js';
import type { Looked } from './look.js';

type KeyOf = (finding: Finding) => string;

/** Not by its place: that moves when words before it change. */
const WORDS: KeyOf = ({ rule, set, card, message, found, expected }) =>
  JSON.stringify([rule, set, card, message, found ?? null, expected ?? null]);

/** Messages may speak of numbers, and the finding of one card may pass to its neighbour. */
const RULE_AND_SET: KeyOf = ({ rule, set }) => JSON.stringify([rule, set]);

/**
 * Errors of a changed content that were not there before. Of a set in which a file that could not be
 * read was mended, nobody knew the errors: they are not new.
 */
export function newErrors(was: Looked, now: Looked, mended: ReadonlySet<string>): Finding[] {
  const [faultyBefore, faultyNow] = [faultyIn(was.content), faultyIn(now.content)];
  const read = [...faultyBefore].filter((file) => mended.has(file));
  const sets = new Set(read.map((file) => file.split('/')[0]));
  const isShared = read.some((file) => !file.includes('/') || file.startsWith('backs/'));
  return more(was, now, WORDS).filter(
    ({ file, set }) =>
      (faultyNow.has(file) && !faultyBefore.has(file)) || !(isShared || sets.has(set ?? '')),
  );
}

/** Errors of a rule in a set of which there were fewer before. */
export function moreErrors(was: Looked, now: Looked): Finding[] {
  return more(was, now, RULE_AND_SET);
}

/** Approvals that hold now, and would not: each has to be asked for again. */
export function fallenApprovals(was: Looked, now: Looked): Finding[] {
  return more(was, now, WORDS, staleOf);
}

function more(was: Looked, now: Looked, keyOf: KeyOf, which = errorsOf): Finding[] {
  const known = new Map<string, number>();
  for (const finding of which(was)) {
    known.set(keyOf(finding), (known.get(keyOf(finding)) ?? 0) + 1);
  }
  return which(now).filter((finding) => {
    const left = known.get(keyOf(finding)) ?? 0;
    known.set(keyOf(finding), left - 1);
    return left <= 0;
  });
}

/** What has to be approved anew is said, and is no mistake. */
function errorsOf({ report }: Looked): readonly Finding[] {
  return report.findings.filter(
    ({ severity, accepted, rule }) =>
      severity === 'error' && accepted === undefined && !rule.startsWith('approval-'),
  );
}

function staleOf({ report }: Looked): readonly Finding[] {
  return report.findings.filter(({ rule }) => rule === 'approval-stale');
}

function faultyIn(content: Content): ReadonlySet<string> {
  return new Set(content.faults.map(({ spot }) => spot.source.file));
}
