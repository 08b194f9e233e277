import {
  claimOf,
  hasWord,
  nearestNamed,
  saysAt,
  startOf,
  wordAt,
  type Place,
  type Taken,
} from './place.js';
import type { Named } from './things.js';

/** "84 of each", "numbered to 84", "limited to 12 copies", "one-of-one", "1/1". */
export function runClaim(place: Place): Taken | null {
  const end = behindOf(place) ?? aheadOf(place) ?? oneOfOne(place);
  if (end === null) return null;
  const parallel = nearestNamed(place, isParallel, place.sentence);
  if (!parallel && !place.sells && !isOfCards(place)) return null;
  const [thing] = parallel?.things ?? [];
  const named = thing?.kind === 'run' ? thing.parallel : null;
  return claimOf(place, [{ kind: 'run', parallel: named }], end);
}

function isParallel({ things }: Named): boolean {
  return things.some(({ kind }) => kind === 'run');
}

/** Whether a sentence of a story is of the card itself all the same. */
function isOfCards(place: Place): boolean {
  if (wordAt(place, place.sentence.at) === 'numbered') return true;
  return place.speaks || hasWord(place, /^(?:cards?|parallels?|serial|print|printed)$/);
}

/** What stands behind the number: the token behind it. */
function behindOf(place: Place): number | null {
  const { next } = place.number;
  for (const words of [
    'of each card',
    'of each',
    'copies of each card',
    'copies of each',
    'copies each',
  ]) {
    if (saysAt(place, next, words)) return next + words.split(' ').length;
  }
  const each = saysAt(place, next, 'each') && !!nearestNamed(place, isParallel);
  if (each) return next + 1;
  const made = /^(?:were|are|was|will|exist|exists|made)$/.test(wordAt(place, next + 1));
  if (/^(?:copies|copy)$/.test(wordAt(place, next)) && (place.sells || made)) return next + 1;
  const exist = /^(?:exist|exists)$/.test(wordAt(place, next));
  const printed = saysAt(place, next, 'were printed') || saysAt(place, next, 'are printed');
  return exist || printed ? next + (exist ? 1 : 2) : null;
}

const AHEAD: readonly string[] = [
  'numbered to',
  'numbered out of',
  'numbered of',
  'limited to',
  'restricted to',
  'run of',
  'edition of',
  'print run :',
  'run :',
  'printed in',
];

/** What stands before it. */
function aheadOf(place: Place): number | null {
  const { number, tokens } = place;
  const start = startOf(place);
  const said = AHEAD.some((words) => saysAt(place, start - words.split(' ').length, words));
  const slash = tokens[number.at - 1]?.word === '/' && tokens[number.at - 2]?.kind !== 'figure';
  if (!said && !slash && !isGapped(place, start)) return null;
  return /^(?:copies|copy|cards?)$/.test(wordAt(place, number.next))
    ? number.next + 1
    : number.next;
}

/** "(Varnished is limited to 84), Brass-Nailed to 12": a verb that is said once. */
function isGapped(place: Place, start: number): boolean {
  if (!place.sells || wordAt(place, start - 1) !== 'to') return false;
  const parallel = place.named.find((named) => named.next === start - 1 && isParallel(named));
  if (!parallel || wordAt(place, parallel.at - 1) === 'from') return false;
  return hasWord(place, /^(?:numbered|limited|restricted)$/);
}

/** "One-of-one", "one of one", "1/1": the only copy; its second number alone is the claim. */
function oneOfOne(place: Place): number | null {
  const { number, numbers } = place;
  if (number.value !== 1) return null;
  const plural = ['- of - ones', 'of ones'].find((ones) => saysAt(place, number.next, ones));
  if (plural !== undefined) return number.next + plural.split(' ').length;
  const words = place.tokens.slice(Math.max(0, number.at - 4), number.at).map(({ word }) => word);
  const joined = words.join(' ');
  const of = /(?:^|\s)(?:one|1) (?:[-‐‑] )?of(?: [-‐‑])?$|(?:^|\s)1 \/$/.test(joined);
  return of && numbers.some(({ next, value }) => value === 1 && next < number.at)
    ? number.next
    : null;
}

/** Whether a number is the first of "one of one". */
export function startsOneOfOne(place: Place): boolean {
  const { number } = place;
  if (number.value !== 1) return false;
  return ['- of - one', '- of - 1', 'of one', '/ 1', 'of 1'].some((words) =>
    saysAt(place, number.next, words),
  );
}
