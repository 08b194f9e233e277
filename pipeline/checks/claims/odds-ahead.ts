import { countBefore, itemOf, MOST_ADJECTIVES, NO_ADJECTIVE, type OddsItem } from './odds-item.js';
import { countAt, wordIn, type OddsSentence, type Rate } from './odds-rate.js';
import { thingAt, type FoundThing } from './odds-thing.js';

/** Verbs by which a pack, a box or a case is said to hold something. */
export const HOLDING =
  /^(?:holds?|has|have|contains?|carry|carries|includes?|hides?|brings?|gives?|offers?|delivers?|yields?|comes?|with)$/;
/** What may stand between a rate and what is found: "each pack holds", "1:24 packs for". */
const LEADING = new Set(
  `holds hold has have contains contain carries carry includes include hides hide brings bring gives
   give offers offer delivers deliver yields yield comes come with will there you find you'll
   get at least most about on average , : – — ( for a an of guaranteed also even just only up to more
   chance chances likelihood
   than and contain " “ *`.split(/\s+/),
);
const MOST_LEADING = 7;

/** What is named behind a rate: "every box has an autograph and two relics", "1:24 packs for Letters". */
export function ahead(sentence: OddsSentence, rate: Rate, later: Rate | null): readonly OddsItem[] {
  const items: OddsItem[] = [];
  const end = later?.at ?? sentence.next;
  let at = rate.next;
  let passed = 0;
  let isHolding = false;
  while (at < end && passed <= MOST_LEADING) {
    const word = wordIn(sentence, at);
    const thing = nextThing(sentence, at, end);
    if (thing) {
      const counted = countBefore(sentence, thing);
      const isSaid = counted !== null && counted.at >= rate.next;
      if (!isSaid && !isHolding && rate.count === null) break;
      const either = eitherAfter(sentence, thing, end);
      const last = either.at(-1) ?? thing;
      if (later?.at === last.next && later.count !== null) break;
      const span = { at: rate.at, next: last.next };
      const own = isSaid ? counted : null;
      const spot = { at: own?.at ?? thing.at, next: last.next };
      items.push(itemOf(thing, either, either.length > 0, own, span, spot));
      at = last.next;
      passed = 0;
      if (!/^(?:,|and|plus|&)$/.test(wordIn(sentence, at))) break;
      at += 1;
      if (/^(?:and|plus)$/.test(wordIn(sentence, at))) at += 1;
      isHolding = false;
      continue;
    }
    isHolding ||= HOLDING.test(word) || /^(?:find|for|get)$/.test(word);
    const isThere = /^(?:is|are)$/.test(word) && isBesideThere(sentence, at);
    if (items.length > 0 || !(LEADING.has(word) || isThere)) break;
    at += 1;
    passed += 1;
  }
  return items;
}

/** "There is", "is there": what only is something is nothing that is found. */
function isBesideThere(sentence: OddsSentence, at: number): boolean {
  return wordIn(sentence, at - 1) === 'there' || wordIn(sentence, at + 1) === 'there';
}

/** A thing that starts here, its count, "of the" and adjectives passed over. */
function nextThing(sentence: OddsSentence, at: number, end: number): FoundThing | null {
  const direct = thingAt(sentence, at);
  if (direct) return direct.next <= end ? direct : null;
  const count = countAt(sentence, at);
  const isCounted = count !== null || /^(?:a|an|another)$/.test(wordIn(sentence, at));
  if (!isCounted) return null;
  const isOf =
    count && wordIn(sentence, count.next) === 'of' && wordIn(sentence, count.next + 1) === 'the';
  const start = count ? count.next + (isOf ? 2 : 0) : at + 1;
  for (let place = start; place < Math.min(end, start + MOST_ADJECTIVES + 1); place++) {
    const thing = thingAt(sentence, place);
    if (thing) return thing.next <= end ? thing : null;
    const isWord = sentence.tokens[place]?.kind === 'word';
    if (!isWord && !/^[-‐‑"“*]$/.test(wordIn(sentence, place))) return null;
    if (NO_ADJECTIVE.test(wordIn(sentence, place))) return null;
  }
  return null;
}

/** "(An autograph) or a relic", "(autographs), relics or sketch cards". */
function eitherAfter(sentence: OddsSentence, first: FoundThing, end: number): FoundThing[] {
  const found: FoundThing[] = [];
  let isEither = false;
  for (let at = first.next; /^(?:,|or)$/.test(wordIn(sentence, at));) {
    const isOr = wordIn(sentence, at) === 'or' || wordIn(sentence, at + 1) === 'or';
    const start = wordIn(sentence, at) === ',' && isOr ? at + 2 : at + 1;
    const thing = nextThing(sentence, start, end);
    if (!thing) break;
    found.push(thing);
    isEither ||= isOr;
    at = thing.next;
  }
  return isEither ? found : [];
}
