import {
  countBefore,
  itemOf,
  thingEnding,
  timesAt,
  type Counted,
  type OddsItem,
} from './odds-item.js';
import { wordIn, type OddsSentence, type Rate } from './odds-rate.js';
import type { FoundThing } from './odds-thing.js';

/** What may stand between something that is found and how often. */
const BETWEEN = new Set(
  `in inside into to from is are can be found come comes coming packed seeded inserted included placed
   guaranteed promised waits wait waiting hides hide hiding turns turn up numbered limited / average about around
   roughly approximately nearly almost only just awaits await you appears appear drops drop falls fall
   lies lie sits sit at odds a rate of for the will together combined all any either - – — , ( : = " ”
   “ * for least at most more than over under less approx .`.split(/\s+/),
);
const MOST_BETWEEN = 9;

/** What is named before a rate: "Lake Charts (1:4)", "two inserts in every pack", "one per box". */
export function behind(
  sentence: OddsSentence,
  rate: Rate,
  earlier: readonly Rate[],
  used: ReadonlySet<number>,
): readonly OddsItem[] {
  let times: Counted | null = null;
  let passed = 0;
  for (let at = rate.at - 1; at >= sentence.at && passed <= MOST_BETWEEN; at--) {
    const thing = thingEnding(sentence, at + 1);
    if (thing) {
      // "Signatures: one a box, twelve a case" names what it counts but once.
      const isFree = times !== null || !used.has(thing.at);
      return isFree ? listed(sentence, thing, rate, times) : [];
    }
    const rated = earlier.find(({ at: from, next }) => from <= at && at < next);
    if (rated) {
      if (rate.count === null && times === null) return [];
      at = rated.count === null ? (timesAt(sentence, rated.at - 1)?.at ?? rated.at) : rated.at;
      continue;
    }
    const product = sentence.named.find(({ at: from, next }) => from <= at && at < next);
    if (product?.manner === 'product') {
      at = product.at;
      continue;
    }
    const word = wordIn(sentence, at);
    if (word === ')') {
      at = openingOf(sentence, at);
      continue;
    }
    const counted = timesAt(sentence, at);
    if (counted && rate.count !== null && isRun(sentence, counted.at)) {
      at = counted.at;
    } else if (counted && times === null && rate.count === null) {
      times = counted;
      at = counted.at;
    } else if (!isBetween(sentence, at, rate.count !== null || times !== null)) {
      return [];
    }
    passed += 1;
  }
  return [];
}

/** "Numbered to 12", "/12": copies of each, which are no odds. */
function isRun(sentence: OddsSentence, at: number): boolean {
  return /^(?:to|\/)$/.test(wordIn(sentence, at - 1));
}

/** Whether a word may stand between; where another rate may be passed, what joins rates too. */
function isBetween(sentence: OddsSentence, at: number, joins: boolean): boolean {
  const word = wordIn(sentence, at);
  if (word === 'on') return wordIn(sentence, at + 1) === 'average';
  return BETWEEN.has(word) || (joins && /^(?:and|or|;)$/.test(word));
}

function openingOf(sentence: OddsSentence, at: number): number {
  let opening = at;
  while (opening > sentence.at && wordIn(sentence, opening) !== '(') opening -= 1;
  return opening;
}

/** A thing with the count before it, and what is listed with it. */
function listed(
  sentence: OddsSentence,
  last: FoundThing,
  rate: Rate,
  times: Counted | null,
): readonly OddsItem[] {
  const items: OddsItem[] = [];
  let others: FoundThing[] = [];
  let isEither = false;
  let next = rate.next;
  for (let thing: FoundThing | null = last; thing;) {
    const own: Counted | null = times ? null : countBefore(sentence, thing);
    const start: number = own?.at ?? thing.at;
    const before: Before | null = listedBefore(sentence, start);
    const isOr: boolean = before?.link === 'or' || (before?.link === ',' && isEither);
    const isWhole = rate.count !== null && before !== null;
    if (before && (isOr || isWhole)) {
      others = [...others, thing];
      isEither ||= isOr;
    } else {
      items.push(itemOf(thing, others, isEither, own ?? times, { at: start, next }));
      others = [];
      isEither = false;
      next = thing.next;
      if (rate.count !== null || times) break;
    }
    thing = before?.thing ?? null;
    // What is listed before without a count of its own is no part of the promise.
    if (thing && !isOr && rate.count === null && !countBefore(sentence, thing)) break;
  }
  return items;
}

interface Before {
  readonly thing: FoundThing;
  readonly link: 'and' | 'or' | ',';
}

/** What is listed before a place: "a relic or" before "a sketch card". */
function listedBefore(sentence: OddsSentence, at: number): Before | null {
  const word = wordIn(sentence, at - 1);
  const isComma = word === ',';
  const link = isComma ? ',' : /^(?:and|plus|&)$/.test(word) ? 'and' : word === 'or' ? 'or' : null;
  if (link === null) return null;
  const end = !isComma && wordIn(sentence, at - 2) === ',' ? at - 2 : at - 1;
  const thing = thingEnding(sentence, end);
  return thing && { thing, link };
}
