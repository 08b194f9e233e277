import type { PublishOutcome, Refusal } from '../release/index.js';
import { count, findingsText, indented, plain } from './report-text.js';

type Done = Extract<PublishOutcome, { done: true }>;

/** What was done. */
export function sayDone(outcome: Done, out: string): string {
  if (!outcome.changed) {
    return `nothing has changed since ${plain(outcome.asOf)}: nothing was published\n`;
  }
  const { record, files } = outcome;
  const kind = record.preview ? 'a preview, not to be passed on' : 'published';
  return `${kind}: ${count(files, 'file')} as of ${record.asOf} in ${out}\n`;
}

/** Cards that are not shown as they stand; where others read the log, nothing is said of them. */
export function sayInstead(outcome: Done, discreet: boolean): string {
  if (!outcome.changed || discreet) return '';
  const { held, broughtBack } = outcome.instead;
  return [
    held.length > 0 ? indented('shown as held, since they are not approved:', held) : '',
    broughtBack.length > 0 ? indented('shown as they were last approved:', broughtBack) : '',
  ].join('');
}

/** What was taken back is for the house: where others read the log, only the record tells it. */
export function sayTakenBack(outcome: Done, discreet: boolean): string {
  if (!outcome.changed) return '';
  const { id, takenBack } = outcome.record;
  if (discreet) return `what to purge from caches is in review/releases/${id}.json\n`;
  if (!takenBack) return 'no last release could be read: purge the whole site from caches\n';
  const addresses = takenBack.addresses.map((address) => `  ${plain(address)}\n`).join('');
  return `${indented('taken back:', takenBack.parts)}purge from caches:\n${addresses}`;
}

/** The one sentence where others read the log. */
export const SECRET_REFUSAL =
  'nothing was published: something has a finding; run the check in private\n';

/** Why nothing was published. */
export function sayRefusal(refusal: Refusal, out: string, discreet: boolean): string {
  switch (refusal.why) {
    case 'future':
      return 'that instant is still to come: --preview builds it, and says so on every page\n';
    case 'public place':
      return `what the public sees is in ${out}: give a preview a place of its own\n`;
    case 'before since':
      return 'nothing of this property is public by then\n';
    case 'locked':
      return sayLocked(refusal, out);
    case 'unread':
      return (
        `nothing was published: the last release in ${out} cannot be read, so nobody can tell ` +
        'what would go; --earlier publishes all the same\n'
      );
    case 'blocked':
    case 'unapproved':
    case 'ledger':
    case 'audit':
    case 'less':
      return discreet ? SECRET_REFUSAL : sayFindings(refusal, out);
  }
}

const UNAPPROVED =
  'nothing was published: not everything that would show is approved (--unapproved hold shows it as ' +
  'held, --unapproved last-approved as it was approved)';

type Found = Extract<Refusal, { why: 'blocked' | 'unapproved' | 'ledger' | 'audit' | 'less' }>;

function sayFindings(refusal: Found, out: string): string {
  if (refusal.why === 'less') return sayLess(refusal, out);
  if (refusal.why === 'blocked') {
    const blocked = `nothing was published: ${count(refusal.findings.length, 'finding')} in the way`;
    return `${blocked}\n${findingsText(refusal.findings)}`;
  }
  if (refusal.why === 'ledger') {
    const faults = refusal.faults.map(({ file, line, message }) =>
      line === null ? `${file}: ${message}` : `${file}:${String(line)}: ${message}`,
    );
    return indented('nothing was published: what is kept in review/ cannot be trusted', faults);
  }
  if (refusal.why === 'unapproved') return indented(UNAPPROVED, refusal.lines);
  const told = refusal.findings.map(({ file, words, from }) => `${file}: ${words} (${from})`);
  return indented('nothing was published: the finished site tells what is held', told);
}

function sayLess({ since, goes }: Extract<Refusal, { why: 'less' }>, out: string): string {
  const later = since === null ? '' : `: its last release is as of ${plain(since)}, which is later`;
  return (
    `nothing was published into ${out}${later}\n` +
    indented('this would go:', goes) +
    '--earlier publishes it all the same; --take-back too, and lists what to purge from caches\n'
  );
}

function sayLocked({ path, holder }: Extract<Refusal, { why: 'locked' }>, out: string): string {
  if (holder === null) {
    return `nothing was published: ${path} is in the way and is no lock; look at it and remove it\n`;
  }
  const since = new Date(holder.since).toISOString();
  return (
    `nothing was published: process ${String(holder.pid)} on ${holder.host} has been publishing ` +
    `into ${out} since ${since}; wait until it ends, or end it, and publish again. ` +
    `If there is no such process, remove ${path}\n`
  );
}
