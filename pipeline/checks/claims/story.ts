import type { Noun } from './noun.js';
import { wordAt, type Place } from './place.js';

const MADE =
  /^(?:cut|made|signed|drawn|sketched|inked|printed|packed|inserted|seeded|produced|issued|numbered|autographed)$/;
const BEING = /^(?:are|were|was|have|had|been|being|will|be)$/;
const PAST = new Set(
  `was were had hung lit came went stood lay sat rose fell sank rang drew kept held made gave told
   said saw took brought left lost found knew hid swung shone blew broke burnt spoke woke ran sang
   threw grew bore sent led fed met flew froze`.split(/\s+/),
);

/** "(1,200 relics) were cut", "(sketch cards) have been drawn", "(1,200 relics), 240 of each". */
export function areMade(place: Place, next: number): boolean {
  let at = next;
  while (BEING.test(wordAt(place, at)) || wordAt(place, at) === 'by') at += 1;
  if (MADE.test(wordAt(place, at))) return true;
  return place.numbers.some(
    (other) =>
      other.at > next &&
      wordAt(place, other.next) === 'of' &&
      wordAt(place, other.next + 1) === 'each',
  );
}

/**
 * Whether a story tells what a number of things did: "Two Night Signals hung on the *Heron*". Of
 * cards a bio says what they are; only what is made of them is said in the past.
 */
export function isPast(place: Place, { named, next }: Noun): boolean {
  if (!named || !isStory(place)) return false;
  const verb = wordAt(place, next);
  if (areMade(place, next)) return false;
  return PAST.has(verb) || /^[a-z]{2,}[^e]ed$/.test(verb);
}

/** Whether fewer than there are may be some that a story tells of: no word says that it is all. */
export function tells(place: Place, { named }: Noun, start: number): boolean {
  if (!named || !isStory(place) || start < place.number.at) return false;
  return !/^(?:are|is|has|have|of|these|this)$/.test(wordAt(place, start - 1));
}

function isStory({ sells, speaks }: Place): boolean {
  return !sells && !speaks;
}
