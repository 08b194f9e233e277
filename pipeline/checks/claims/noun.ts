import { isHyphen } from '../../text/index.js';
import { hedgeOf } from './hedge.js';
import {
  claimOf,
  endsAt,
  hasWord,
  isCards,
  isClear,
  isCounted,
  nearestNamed,
  startOf,
  wordAt,
  type Place,
  type Relation,
  type Taken,
} from './place.js';
import { areMade, isPast, tells } from './story.js';
import { keyOf, type Named, type Thing } from './things.js';

/** What a number counts, by the words behind it. */
export interface Noun {
  readonly named: Named | null;
  /** A common word for cards: "card", "set". */
  readonly common: string | null;
  /** Tokens: where the noun starts, and behind it. */
  readonly at: number;
  readonly next: number;
}

/** Words that end what a number can count. */
const ENDING: ReadonlySet<string> = new Set(
  `of in on at to from by for with without into onto over under above below behind beside between
   through across after before around about against along among off up down out near past
   and or but nor so yet than as if when while where that which who whom whose because until
   the a an this these those my your his her its our their it he she we you they them i me us
   is are was were be been being am has have had having do does did can could will would shall
   should may might must not never no people men women children feet mice geese sheep fish
   here there now then ago later each every per all more`.split(/\s+/),
);
const COMMON: ReadonlySet<string> = new Set(['card', 'set', 'series', 'collection']);
/** Most words between a number and what it counts: "eight new hand-inked landscape charts". */
const MOST_BETWEEN = 4;
const ASIDE = /^[-‐‑"“”‘’*]$/;

/** The noun that a number counts, if it is cards of the set or a word for cards. */
export function nounAfter(place: Place, start: number): Noun | null {
  const { tokens, named, sentence } = place;
  let between = 0;
  for (let at = pastHedge(place, start); at < sentence.next && between <= MOST_BETWEEN; at++) {
    const token = tokens[at];
    if (!token) return null;
    const here = named.find((each) => each.at === at && each.manner !== 'product');
    if (here) return { named: here, common: null, at, next: here.next };
    if (token.kind === 'sign') {
      if (ASIDE.test(token.word) || (token.word === ',' && between > 0)) continue;
      return null;
    }
    if (token.kind === 'figure') return null;
    const key = keyOf(token.word);
    if (COMMON.has(key)) return { named: null, common: key, at, next: at + 1 };
    const isOther = token.word === 'more' && between === 0;
    if ((ENDING.has(token.word) && !isOther) || isManyThings(token.word)) return null;
    if (place.numbers.some((other) => other.at === at && other.kind === 'count')) return null;
    between += 1;
  }
  return null;
}

/** Past "or so", "+" and the like behind a number. */
function pastHedge(place: Place, at: number): number {
  if (wordAt(place, at) === '+' || wordAt(place, at) === 'plus') return at + 1;
  const or = wordAt(place, at) === 'or' && /^(?:so|more|fewer|less)$/.test(wordAt(place, at + 1));
  return or ? at + 2 : at;
}

/** A plural, or a verb in -s: the number counts that, and no cards. */
function isManyThings(word: string): boolean {
  return /[^su]s$/.test(word) && !/(?:is|'s)$/.test(word);
}

const FEW: ReadonlySet<string> = new Set(
  'first last next these those any another two three our'.split(' '),
);
const ALONE: ReadonlySet<string> = new Set('only just but single sole lone exactly'.split(' '));

/** Eight Lake Charts; the eighth Lake Chart; eight cards of the set; an eight-card set. */
export function nounClaim(place: Place): Taken | null {
  const { number } = place;
  const next = number.next;
  if (number.kind === 'ordinal') return ordinalClaim(place);
  const compound = compoundClaim(place);
  if (compound) return compound;
  if (/^(?:of|from|in)$/.test(wordAt(place, next))) return partClaim(place, next + 1);
  const noun = nounAfter(place, next);
  if (!noun || !agrees(place, noun) || (isYear(place) && noun.at > next)) return null;
  if (isPast(place, noun)) return null;
  const things = thingsOf(place, noun);
  return things && claimOf(place, things, noun.next, relationOf(place, noun));
}

/** "2027 Slackwater cards" is no count of cards; "2000 cards" is one. */
function isYear({ number, tokens }: Place): boolean {
  return (
    number.value >= 1900 && number.value < 2100 && /^\d{4}$/.test(tokens[number.at]?.word ?? '')
  );
}

/** Whether number and noun go together: one card, two cards; "eight insert trays" are no inserts. */
function agrees(place: Place, { named, common, next }: Noun): boolean {
  const { value } = place.number;
  const plural = named ? named.plural : wordAt(place, next - 1) !== common;
  if (common === 'set' || common === 'series' || common === 'collection') return false;
  if (common !== null) return value === 1 ? !plural : plural;
  if (value === 1 || plural) return true;
  const after = place.tokens[next];
  return endsAt(place, next) || after?.kind !== 'word' || ENDING.has(after.word);
}

/** What the noun means here; null for a word of the story. */
function thingsOf(place: Place, noun: Noun): readonly Thing[] | null {
  const { named } = noun;
  if (named) return isClear(place, named) ? subsetsHere(place, named) : null;
  if (place.otherCards && !place.sells) return null;
  const behind = namedBehind(place, noun.next);
  if (behind) return thingsNamed(place, behind);
  const beforeOf = /^(?:set|series|collection)$/.test(wordAt(place, startOf(place) - 2));
  const oneOf = wordAt(place, startOf(place) - 1) === 'of' && hasWord(place, /^(?:one|card)$/);
  if (!place.sells && !place.speaks && !beforeOf && !oneOf) return null;
  return beforeOf ? cardsOfSet(place) : cardsHere(place);
}

/** "42 inserts in four subsets": the subsets of what the sentence names, or all. */
function subsetsHere({ named, sentence }: Place, { things }: Named): readonly Thing[] {
  if (!things.some((thing) => thing.kind === 'subsets' && thing.group === null)) return things;
  const inside = named.filter(({ at, next }) => at >= sentence.at && next <= sentence.next);
  const groups = inside.flatMap((each) =>
    each.things.flatMap((thing) => (thing.kind === 'part' ? [thing.id] : [])),
  );
  return [...things, ...groups.map((group) => ({ kind: 'subsets', group }) as const)];
}

/** "Night Signals: a complete set of sixteen": the title that is named, the set, or one's own. */
export function cardsOfSet(place: Place): readonly Thing[] {
  const start = startOf(place) - 1;
  const phrase = place.named.find(({ next }) => next === start);
  const names = (named: Named): boolean =>
    named !== phrase && isCards(named) && isClear(place, named) && !isCounted(place, named);
  const title = nearestNamed(place, names, place.sentence);
  const own = place.sells ? [] : [{ kind: 'own' } as const];
  return [...(title?.things ?? []), ...(phrase?.things ?? [{ kind: 'whole' }]), ...own];
}

/** "Cards of the base set", "cards in Lake Charts". */
export function namedBehind(place: Place, at: number): Named | null {
  if (!/^(?:of|in|from|for|make|makes|complete|form)$/.test(wordAt(place, at))) return null;
  const up = wordAt(place, at + 1) === 'up' ? at + 2 : at + 1;
  const start = /^(?:the|this|our|a|an)$/.test(wordAt(place, up)) ? up + 1 : up;
  return place.named.find((named) => named.at === start && isCards(named)) ?? null;
}

/** Which cards "cards" are: the ones that the clause names, else any of the sentence, or all. */
export function cardsHere(place: Place): readonly Thing[] {
  const names = (named: Named): boolean =>
    isCards(named) && isClear(place, named) && !isCounted(place, named) && !isSpan(place, named);
  const near = nearestNamed(place, names);
  if (near) return thingsNamed(place, near);
  const far = nearestNamed(place, names, place.sentence);
  return [...(far?.things ?? []), { kind: 'whole' }, { kind: 'own' }];
}

/** "(Cards) from base to relics": all that lies between, and neither end alone. */
function isSpan(place: Place, { at, next }: Named): boolean {
  const before = wordAt(place, at - 1);
  if (before === 'from') return wordAt(place, next) === 'to';
  return (
    before === 'to' && place.named.some((first) => first.next === at - 1 && isSpan(place, first))
  );
}

/** "Over 140 cards in the whole set": a least number may be of all cards, and not of a total. */
function thingsNamed(place: Place, { at, things }: Named): readonly Thing[] {
  const isWhole = /^(?:whole|entire)$/.test(wordAt(place, at));
  const hedge = isWhole ? hedgeOf(place.tokens, place.number, place.clause.next) : null;
  return hedge === 'more' || hedge === 'least' ? [...things, { kind: 'whole' }] : things;
}

function relationOf(place: Place, noun: Noun): Relation {
  const { number } = place;
  const start = startOf(place);
  const between = place.tokens.slice(number.next, noun.at).map(({ word }) => word);
  const before = wordAt(place, number.at - 1);
  const other = /^(?:other|more|further|others)$/;
  if (other.test(before) || between.some((word) => other.test(word))) return 'others';
  if (areMade(place, noun.next)) return isPeople(noun) ? 'some' : 'copies';
  const all = /^(?:all|both)$/.test(before) || wordAt(place, number.at - 2) === 'all';
  if (all || number.form === 'other') return number.value === 1 ? alone(place) : 'exact';
  if (FEW.has(before) || FEW.has(wordAt(place, start - 1))) return 'part';
  if (number.value === 1) return alone(place);
  return tells(place, noun, start) ? 'some' : 'exact';
}

/** Whether it is people that are counted, of whom there are no copies: "20 artists have drawn". */
function isPeople({ named }: Noun): boolean {
  return named?.things.some(({ kind }) => kind === 'artists' || kind === 'signers') ?? false;
}

/** "One Lake Chart" is one of them; "only one", "a single" is all there is. */
function alone(place: Place): Relation {
  const own = place.tokens.slice(place.number.at, place.number.next).map(({ word }) => word);
  const before = wordAt(place, place.number.at - 1);
  return ALONE.has(before) || own.some((word) => ALONE.has(word)) ? 'exact' : 'part';
}

/** "Two of the eight Lake Charts", "all sixteen of the Night Signals", "16 of them are inserts". */
function partClaim(place: Place, at: number): Taken | null {
  if (wordAt(place, at - 1) !== 'of') return placedClaim(place, at);
  const those = /^(?:the|these|those|our|your|its|them|us)$/.test(wordAt(place, at));
  if (!those) return null;
  const are = namedAs(place, at + 1);
  if (are) return claimOf(place, are.things, are.next);
  const noun = nounAfter(place, at + 1);
  if (!noun || (noun.common !== null && noun.common !== 'card')) return null;
  const things = thingsOf(place, noun);
  if (!things) return null;
  const all = wordAt(place, place.number.at - 1) === 'all';
  return claimOf(place, things, noun.next, all ? 'exact' : 'part');
}

/** "(16 of the cards) are inserts": what is named behind the verb. */
function namedAs(place: Place, from: number): Named | null {
  for (let at = from; at < from + 3; at++) {
    if (!/^(?:are|being)$/.test(wordAt(place, at))) continue;
    const named = place.named.find((each) => each.at === at + 1 && isCards(each));
    return named && isClear(place, named) ? named : null;
  }
  return null;
}

/** "There are eight in Lake Charts", "84 in the base set", "45 in the set". */
function placedClaim(place: Place, at: number): Taken | null {
  const behind = namedBehind(place, at - 1);
  if (behind && isClear(place, behind)) return claimOf(place, behind.things, behind.next);
  const start = /^(?:the|this|our)$/.test(wordAt(place, at)) ? at + 1 : at;
  const set = /^(?:set|series|collection)$/.test(wordAt(place, start));
  if (!set || (!place.sells && !place.speaks)) return null;
  return claimOf(place, cardsHere(place), start + 1);
}

/** "The sixteenth card of the set", "the eighth and last Lake Chart". */
function ordinalClaim(place: Place): Taken | null {
  const { next } = place.number;
  const last = /^(?:last|final)$/;
  const and = wordAt(place, next) === 'and' && last.test(wordAt(place, next + 1));
  const noun = nounAfter(place, and ? next + 2 : next);
  if (!noun || (noun.common !== null && noun.common !== 'card')) return null;
  const things = ordinalThings(place, noun);
  if (!things) return null;
  const isLast = and || last.test(wordAt(place, next));
  return claimOf(place, things, noun.next, isLast ? 'exact' : 'part');
}

function ordinalThings(place: Place, noun: Noun): readonly Thing[] | null {
  if (noun.named) {
    const single = !noun.named.plural && isCards(noun.named);
    return single && isClear(place, noun.named) ? noun.named.things : null;
  }
  return namedBehind(place, noun.next)?.things ?? (place.speaks ? cardsHere(place) : null);
}

/** "An eight-card set", "an 84-card base set", "a 16-strong insert set". */
function compoundClaim(place: Place): Taken | null {
  const { next } = place.number;
  if (!isHyphen(place.tokens[next])) return null;
  const word = wordAt(place, next + 1);
  if (word !== 'card' && word !== 'strong') return null;
  const noun = nounAfter(place, next + 2);
  if (!noun || noun.common === 'card') return null;
  const { named } = noun;
  if (named && !isClear(place, named)) return null;
  if (!place.sells && !place.speaks && !named) return null;
  const set = named?.things.find(({ kind }) => kind === 'subsets');
  if (set?.kind === 'subsets') {
    const title = nearestNamed(place, (each) => isCards(each) && each.manner === 'title');
    const things = title?.things ?? [{ kind: 'any', group: set.group } as const];
    return claimOf(place, things, noun.next);
  }
  return claimOf(place, named && isCards(named) ? named.things : cardsHere(place), noun.next);
}
