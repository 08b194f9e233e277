import type { FormRole } from './form-entry.js';
import type { FormMatch, NearForm } from './form-match.js';

const RANK: Readonly<Record<FormRole, number>> = { right: 0, other: 1, avoid: 2, part: 3 };
const SLIPS = [null, 'capitals', 'marks', 'joined', 'swapped', 'letters'] as const;

/** Whether a match is a better one of the same words: more like its form, or of a form in use. */
export function isBetter<T>(a: FormMatch<T>, b: FormMatch<T>): boolean {
  const by = SLIPS.indexOf(a.slip) - SLIPS.indexOf(b.slip);
  return by !== 0 ? by < 0 : RANK[a.entry.form.role] < RANK[b.entry.form.role];
}

/** Matches of which none lies in another: the longest first, what is right before what is not. */
export function chosen<T>(matches: readonly FormMatch<T>[]): readonly FormMatch<T>[] {
  if (matches.length < 2) return matches;
  const sorted = matches.toSorted(
    (a, b) =>
      b.length - a.length || Number(a.slip !== null) - Number(b.slip !== null) || a.at - b.at,
  );
  const kept: FormMatch<T>[] = [];
  for (const match of sorted) if (!kept.some((each) => overlaps(each, match))) kept.push(match);
  return kept.sort((a, b) => a.at - b.at);
}

/** Whether a form stands there in all its letters. */
export function isSameLetters<T>({ slip, entry }: FormMatch<T>): boolean {
  return entry.form.role !== 'other' && (slip === null || slip === 'capitals');
}

/** Whether all words of a match are words of another. */
export function isWithin<T>(match: FormMatch<T>, other: FormMatch<T>): boolean {
  return match.at >= other.at && match.at + match.length <= other.at + other.length;
}

/** Whether two matches have words in common. */
export function overlaps<T>(a: FormMatch<T>, b: FormMatch<T>): boolean {
  return a.at < b.at + b.length && b.at < a.at + a.length;
}

/** Whether words are part of a form that goes on beyond them, or is all of them. */
export function crosses<T>(match: NearForm<T>, owner: ReadonlyMap<number, FormMatch<T>>): boolean {
  for (let index = match.at; index < match.at + match.length; index += 1) {
    const other = owner.get(index);
    if (!other) continue;
    if (other.at < match.at || other.at + other.length > match.at + match.length) return true;
    if (other.length >= match.length) return true;
  }
  return false;
}

/** Of forms that the same words are nearly, the longest and nearest; unclear, if others are as near. */
export function nearest<T>(near: readonly NearForm<T>[]): readonly FormMatch<T>[] {
  const sorted = near.toSorted(
    (a, b) =>
      b.length - a.length ||
      a.distance - b.distance ||
      RANK[a.entry.form.role] - RANK[b.entry.form.role] ||
      a.at - b.at,
  );
  const kept: NearForm<T>[] = [];
  for (const match of sorted) {
    const rival = kept.findIndex((each) => overlaps(each, match));
    const other = kept[rival];
    if (!other) kept.push(match);
    else if (isRival(match, other)) kept[rival] = { ...other, clear: false };
  }
  return kept;
}

function isRival<T>(a: NearForm<T>, b: NearForm<T>): boolean {
  return a.at === b.at && a.length === b.length && a.distance === b.distance && a.put !== b.put;
}
