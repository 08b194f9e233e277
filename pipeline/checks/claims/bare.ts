import {
  claimOf,
  endsAt,
  hasWord,
  isCards,
  isClear,
  isCounted,
  nearestNamed,
  saysAt,
  startOf,
  wordAt,
  type Place,
  type Taken,
} from './place.js';
import { cardsHere, cardsOfSet } from './noun.js';
import { isPrintedNumber } from './own.js';
import { asks, isHandling } from './speech.js';
import type { Named } from './things.js';

/** A number without a noun: "collect all sixteen", "Lake Charts (8)", "17 of 84", "eight to find". */
export function bareClaim(place: Place): Taken | null {
  return (
    ofMany(place) ??
    asked(place) ??
    toCollect(place) ??
    titled(place) ??
    setOf(place) ??
    totalOf(place)
  );
}

/** "Card 17 of 84", "one of the sixteen": the second number. */
function ofMany(place: Place): Taken | null {
  const { number, numbers } = place;
  const start = startOf(place);
  if (!isBare(place)) return null;
  const slash = wordAt(place, start - 1) === '/';
  if (wordAt(place, start - 1) !== 'of' && !slash) return null;
  const first = numbers.find(({ next }) => next === start - 1);
  if (!first || first.value > number.value) return null;
  const printed = isPrintedNumber(place, first.at);
  const ofCards = place.sells || place.speaks || hasWord(place, /^(?:cards?|set)$/);
  if (!printed && (!ofCards || place.otherCards)) return null;
  const near = nearestNamed(place, (named) => isCards(named) && isClear(place, named));
  if (near) return claimOf(place, near.things, number.next);
  const run = { kind: 'run', parallel: null } as const;
  return claimOf(place, [...cardsHere(place), ...(printed ? [] : [run])], number.next);
}

function isBare(place: Place): boolean {
  const { next } = place.number;
  if (endsAt(place, next)) return true;
  return /^(?:in|and|or|but|that|which|to|from|of|on|is|are|was|as|make|makes|together|altogether|for|by)$/.test(
    wordAt(place, next),
  );
}

/** "Collect all sixteen", "find the other seven", "put all eight in a row". */
function asked(place: Place): Taken | null {
  const { tokens, sentence, number } = place;
  if (!isBare(place) || number.kind !== 'count' || number.form === 'other') return null;
  const yours = haveAll(place);
  if (yours) return yours;
  const words = tokens.slice(sentence.at, sentence.next);
  const verb = asks(words);
  if (verb === null || sentence.at + verb > number.at) return null;
  const start = number.at;
  if (isOneOf(place)) return null;
  const between = tokens.slice(sentence.at + verb + 1, start).map(({ word }) => word);
  const taken = between.filter(
    (word) => !/^(?:for|out|up|down|the|all|of|them|every|one|other|and|then|,)$/.test(word),
  );
  if (taken.length > 0 || between.length > 4) return null;
  const all = between.some((word) => word === 'all' || word === 'other' || word === 'one');
  const word = words[verb]?.word ?? '';
  if (!all && (isHandling(word) || (!place.sells && word !== 'collect'))) return null;
  const relation = between.includes('other') ? 'others' : 'exact';
  return claimOf(place, cardsHere(place), number.next, relation);
}

/** "Find one of 84": its second number is what is claimed. */
function isOneOf({ number, numbers, tokens }: Place): boolean {
  if (tokens[number.next]?.word !== 'of') return false;
  const second = numbers.find(({ at }) => at > number.next);
  return second !== undefined && second.at <= number.next + 3;
}

/** "Until you have all sixteen". */
function haveAll(place: Place): Taken | null {
  const { number } = place;
  const all = wordAt(place, number.at - 1) === 'all';
  const have = /^(?:have|own|hold|got|found)$/.test(wordAt(place, number.at - 2));
  if (!all || !have || !hasWord(place, /^(?:you|you've)$/)) return null;
  return place.speaks ? claimOf(place, cardsHere(place), number.next) : null;
}

/** "Sixteen to collect", "eight in all", "84 altogether". */
function toCollect(place: Place): Taken | null {
  const { number } = place;
  const more = wordAt(place, number.next) === 'more';
  const next = more ? number.next + 1 : number.next;
  if (number.kind !== 'count') return null;
  const collect = ['collect', 'find', 'gather', 'complete', 'chase', 'hunt', 'seek'].find((verb) =>
    saysAt(place, next, `to ${verb}`),
  );
  const story = hasWord(place, /^(?:she|he|they|him|her|them)$/);
  if (collect !== undefined && (place.sells || !story)) {
    return claimOf(place, cardsHere(place), next + 2, more ? 'others' : 'exact');
  }
  const all = ['in all', 'in total', 'altogether'].find((words) => saysAt(place, next, words));
  if (all === undefined) return null;
  const names = (each: Named): boolean => isCards(each) && isClear(place, each);
  const named = nearestNamed(place, names) ?? nearestNamed(place, names, place.sentence);
  if (!named) return null;
  return claimOf(place, named.things, next + all.split(' ').length);
}

const COUNTING_VERB =
  /^(?:number|numbers|total|totals|is|are|has|have|contains?|holds?|reaches|makes?|comprises?)$/;

/** "Lake Charts (8)", "Base cards: 84", "Lake Charts, eight of them", "the base set runs to 84". */
function titled(place: Place): Taken | null {
  const { number } = place;
  const ofThem = saysAt(place, number.next, 'of them');
  const cards = /^(?:in|strong)$/.test(wordAt(place, number.next));
  if (number.kind !== 'count' || !(endsAt(place, number.next) || ofThem || cards)) return null;
  const start = startOf(place);
  const named = place.named.find(
    (each) => isBefore(place, each, start) && isCards(each) && !isCounted(place, each),
  );
  if (!named || !isClear(place, named)) return null;
  return claimOf(place, named.things, ofThem ? number.next + 2 : number.next);
}

/** Whether a title ends just before a number, with a sign or a verb that counts between. */
function isBefore(place: Place, { next }: Named, start: number): boolean {
  const between = place.tokens.slice(next, start).map(({ word }) => word);
  if (between.length === 0 || between.length > 3) return false;
  const said = between.join(' ');
  if (/^[(:,–—x×=-]$/.test(said)) return true;
  const [first = '', ...rest] = between;
  if (COUNTING_VERB.test(first)) return rest.length === 0;
  return /^(?:runs to|run to|comes to|come to|adds up to|add up to|amounts to|of which there are)$/.test(
    said,
  );
}

/** Whether a number has no noun: the sentence ends, or its verb follows. */
function goesOn(place: Place): boolean {
  const { next } = place.number;
  const verb =
    /^(?:is|are|was|makes?|spells?|will|shows?|tells?|gives?|forms?|has|and|that|which)$/;
  return endsAt(place, next) || verb.test(wordAt(place, next));
}

/** "A complete set of 45", "the full series of sixteen". */
function setOf(place: Place): Taken | null {
  const { number } = place;
  const start = startOf(place);
  if (number.kind !== 'count' || !goesOn(place)) return null;
  if (wordAt(place, start - 1) !== 'of') return null;
  if (!/^(?:set|series|subset)$/.test(wordAt(place, start - 2))) return null;
  const kind = wordAt(place, start - 3);
  const clear = /^(?:complete|full|whole|entire|this|insert|base|card)$/.test(kind);
  if (!clear && !place.sells && !place.speaks) return null;
  return claimOf(place, cardsOfSet(place), number.next);
}

/** "84 base cards and 42 inserts make 126". */
function totalOf(place: Place): Taken | null {
  const { number } = place;
  const before = wordAt(place, startOf(place) - 1);
  const making = /^(?:make|makes|making|total|totals|totalling|totaling|=)$/.test(before);
  const adding = saysAt(place, startOf(place) - 2, 'up to') && hasWord(place, /^add(?:s|ing)?$/);
  if (number.kind !== 'count' || !place.sells || !endsAt(place, number.next)) return null;
  if (!making && !adding) return null;
  const counted = place.named.some((named) => isCards(named) && isCounted(place, named));
  return counted ? claimOf(place, cardsHere(place), number.next) : null;
}
