import { isHyphen } from '../../text/index.js';
import {
  claimOf,
  endsAt,
  hasWord,
  nearestNamed,
  startOf,
  wordAt,
  type Place,
  type Taken,
} from './place.js';
import { nounAfter } from './noun.js';
import { holderOf, type Holder } from './holder.js';
import { tellsOfPeople } from './speech.js';
import { keyOf, type Thing } from './things.js';

/** "1:24", "one in 24", "one autograph a box": odds, which are for the arithmetic of packs. */
export function isOdds(place: Place): boolean {
  const { tokens, number } = place;
  const colon = (at: number): boolean =>
    tokens[at]?.word === ':' && tokens[at + 1]?.kind === 'figure' && wordAt(place, at - 1) === '1';
  if (colon(number.next) || (colon(number.at - 1) && number.at > 1)) return true;
  return isRate(place) || isOfPacks(place) || isGuarantee(place);
}

/** "One in (every) 24 (packs)", "1 per 24", "every ten packs". */
function isRate(place: Place): boolean {
  const { number, numbers } = place;
  const inEvery = (at: number): number =>
    /^(?:in|per|out)$/.test(wordAt(place, at))
      ? at + (/^(?:every|each|of|about|roughly|around)$/.test(wordAt(place, at + 1)) ? 2 : 1)
      : -1;
  const ahead = inEvery(number.next);
  const rated = numbers.some(({ at, kind }) => at === ahead && kind !== 'code');
  if (number.value === 1 && rated) return true;
  const start = startOf(place);
  const one = numbers.find(({ next, value }) => value === 1 && inEvery(next) === start);
  if (one) return true;
  return (
    /^(?:every|each|per)$/.test(wordAt(place, start - 1)) &&
    holderOf(wordAt(place, number.next)) !== null
  );
}

/** "In one pack of four": the four, which are no cards. */
function isOfPacks(place: Place): boolean {
  const { number, numbers } = place;
  const start = startOf(place);
  if (wordAt(place, start - 1) !== 'of' || holderOf(wordAt(place, start - 2)) === null)
    return false;
  const one = numbers.find(({ next, value }) => next === start - 2 && value === 1);
  const next = keyOf(wordAt(place, number.next));
  return one !== undefined && wordAt(place, one.at - 1) === 'in' && next !== 'card';
}

/** "One autograph a box", "each pack holds two inserts": so many of a kind, in each. */
function isGuarantee(place: Place): boolean {
  const noun = nounAfter(place, place.number.next);
  if (!noun?.named) return false;
  const near = perHolder(place, noun.next) ?? perPacks(place, noun.next);
  return near !== null || holds(place) !== null;
}

/** Cards a pack, packs a box, cards a box: what a product of the plan says. */
export function packClaim(place: Place): Taken | null {
  const found = perClaim(place) ?? compoundPack(place) ?? packOf(place) ?? holderClaim(place);
  if (!found) return null;
  const { kind, end } = found;
  if (!place.sells && !isOfProduct(place)) return { as: 'story' };
  const product = nearestNamed(place, ({ manner }) => manner === 'product', place.sentence);
  return claimOf(place, [{ kind, product: product?.product ?? null }], end);
}

/** In a story a pack of cards may be any; one that is sold says so. */
function isOfProduct(place: Place): boolean {
  if (place.otherCards || place.number.value === 52) return false;
  if (hasWord(place, /^(?:per|every|each|hobby|retail|wrapper)$/)) return true;
  const { tokens, sentence } = place;
  const words = tokens.slice(sentence.at, sentence.next);
  const isHere = words.some(
    ({ word }, at) => word === 'this' && holderOf(words[at + 1]?.word ?? '') === 'pack',
  );
  return isHere && !tellsOfPeople(words);
}

type PackKind = Extract<Thing, { product: string | null }>['kind'];
interface PackFound {
  readonly kind: PackKind;
  readonly end: number;
}

/** What is counted where a holder is said: cards in a pack, packs in a box, cards in a box. */
function kindOf(counted: string, holder: Holder | null): PackKind | null {
  if (counted === 'card' && holder === 'pack') return 'pack';
  if (counted === 'pack' && holder === 'box') return 'box';
  if (counted === 'card' && holder === 'box') return 'boxful';
  return holder === 'case' ? 'caseful' : null;
}

/** The common noun behind a number: "card", "pack". */
function countedAt(place: Place, at: number): { readonly word: string; readonly next: number } {
  for (let next = at; next < at + 3; next++) {
    const key = keyOf(wordAt(place, next));
    if (key === 'card' || holderOf(key) === 'pack') {
      return { word: key === 'card' ? key : 'pack', next: next + 1 };
    }
    if (place.tokens[next]?.kind !== 'word' || key !== wordAt(place, next)) break;
  }
  return { word: '', next: at };
}

/** "… a pack", "per pack", "in every hobby box", "to the box": behind what is counted. */
function perHolder(place: Place, at: number): { holder: Holder; end: number } | null {
  let next = at;
  let per = false;
  while (/^(?:a|an|per|each|every|in|to|the|this|your|inside|from|\/)$/.test(wordAt(place, next))) {
    per ||= /^(?:a|per|each|every|the|this|your|\/)$/.test(wordAt(place, next));
    next += 1;
  }
  if (!per) return null;
  const product = place.named.find((named) => named.at === next && named.manner === 'product');
  const end = product ? product.next : next;
  const holder = holderOf(wordAt(place, end));
  return holder && { holder, end: end + 1 };
}

/** "… in every 24 packs". */
function perPacks(place: Place, at: number): Holder | null {
  if (!/^(?:in|per|every|each)$/.test(wordAt(place, at))) return null;
  const packs = place.numbers.find((other) => other.at > at && other.at <= at + 2);
  return packs ? holderOf(wordAt(place, packs.next)) : null;
}

function perClaim(place: Place): PackFound | null {
  const counted = countedAt(place, place.number.next);
  const per = perHolder(place, counted.next);
  const kind = per && kindOf(counted.word, per.holder);
  return kind ? { kind, end: per.end } : null;
}

/** "Six-card packs", "a 24-pack box". */
function compoundPack(place: Place): PackFound | null {
  const { tokens, number } = place;
  if (!isHyphen(tokens[number.next])) return null;
  const counted = keyOf(wordAt(place, number.next + 1));
  const product = place.named.find(
    (named) => named.at === number.next + 2 && named.manner === 'product',
  );
  const at = product ? product.next : number.next + 2;
  const kind = kindOf(counted, holderOf(wordAt(place, at)));
  return kind && { kind, end: at + 1 };
}

/** "Packs of six (cards)", "a box of 24 packs". */
function packOf(place: Place): PackFound | null {
  const start = startOf(place);
  const of = /^(?:of|with|containing|holding)$/.test(wordAt(place, start - 1));
  const holder = of ? holderOf(wordAt(place, start - 2)) : null;
  if (!holder) return null;
  const counted = countedAt(place, place.number.next);
  const bare = counted.word === '' && endsAt(place, place.number.next);
  const word = bare ? (holder === 'pack' ? 'card' : 'pack') : counted.word;
  const kind = kindOf(word, holder);
  return kind && { kind, end: bare ? place.number.next : counted.next };
}

/** The holder that is said to hold so many: "every pack holds six cards". */
function holds(place: Place): Holder | null {
  const start = startOf(place);
  const verb = /^(?:holds?|has|have|contains?|includes?|carry|carries|yields?|:|with|comes?)$/;
  const with_ = wordAt(place, start - 1) === 'with' ? start - 2 : start - 1;
  if (!verb.test(wordAt(place, start - 1)) && !verb.test(wordAt(place, with_))) return null;
  const back = verb.test(wordAt(place, with_)) ? with_ - 1 : start - 2;
  return holderOf(wordAt(place, back));
}

function holderClaim(place: Place): PackFound | null {
  const holder = holds(place);
  const counted = countedAt(place, place.number.next);
  const kind = holder && kindOf(counted.word, holder);
  return kind ? { kind, end: counted.next } : null;
}
