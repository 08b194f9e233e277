import { countableKind, type Card, type CardSet } from '../../model/index.js';
import { isTextWithNumber } from './filter.js';
import { hedgeOf } from './hedge.js';
import { judge, type Claim } from './judge.js';
import { maySayOdds, oddsClaims, type OddsClaim } from './odds.js';
import { readClaims, type ClaimReading, type Mention, type ReadBy } from './read.js';
import { wrongSums, type WrongSum } from './sum.js';
import {
  claimTextsOfCard,
  layoutClaimTexts,
  otherClaimTexts,
  type ClaimText,
  type CountLink,
} from './texts.js';
import { vocabularyOf } from './things.js';
import type { Subject } from '../subject.js';

/** A count link that cannot be compared with anything. */
export interface BadLink {
  readonly link: CountLink;
  readonly why: 'no number' | 'several numbers' | 'unknown';
}

/** A text with all that it counts. */
export interface CountedText {
  readonly text: ClaimText;
  readonly reading: ClaimReading;
  readonly claims: readonly Claim[];
  /** How often it says that something is found; compared with what is packed by who asks. */
  readonly odds: readonly OddsClaim[];
  readonly badLinks: readonly BadLink[];
  readonly sums: readonly WrongSum[];
}

const counted = new WeakMap<Subject, readonly CountedText[]>();

/** Every text that claims a count, compared with what there is; several rules ask, so once. */
export function countedTexts(subject: Subject): readonly CountedText[] {
  const before = counted.get(subject);
  if (before) return before;
  const all = [...textsOf(subject, false)];
  counted.set(subject, all);
  return all;
}

/** Every text with a number, story and all: for the list of claims. */
export function* numberedTexts(subject: Subject): Generator<CountedText> {
  yield* textsOf(subject, true);
}

function* textsOf(subject: Subject, story: boolean): Generator<CountedText> {
  for (const set of subject.sets) {
    const by = readByOf(set);
    for (const card of set.cards) {
      for (const read of cardReadings(card, set, subject, by, story)) yield count(read, subject);
    }
    for (const text of otherClaimTexts(set, subject)) {
      const read = readText(text, by, story);
      if (read) yield count(read, subject);
    }
  }
  for (const text of layoutClaimTexts(subject)) {
    const [set] = text.sets;
    const read = set && readText(text, readByOf(set), story);
    if (read) yield count(read, subject);
  }
}

interface Read {
  readonly text: ClaimText;
  readonly reading: ClaimReading;
}
interface Kept {
  readonly property: Subject['property'];
  readonly by: ReadBy;
  readonly reads: readonly Read[];
}

const kept = new WeakMap<Card, Kept>();

/** What a card says does not change while card, plan and property stay as they are. */
function cardReadings(
  card: Card,
  set: CardSet,
  subject: Subject,
  by: ReadBy,
  story: boolean,
): readonly Read[] {
  const before = kept.get(card);
  if (!story && before?.by === by && before.property === subject.property) return before.reads;
  const reads = [...claimTextsOfCard(card, set, subject)].flatMap((text) => {
    const read = readText(text, by, story);
    return read ? [read] : [];
  });
  if (!story) kept.set(card, { property: subject.property, by, reads });
  return reads;
}

function readText(text: ClaimText, by: ReadBy, story: boolean): Read | null {
  const words = text.told.text;
  const mayCount = text.links.length > 0 || isTextWithNumber(words, story ? null : by);
  if (!mayCount && !maySayOdds(words)) return null;
  return { text, reading: readClaims(words, text.sells, by) };
}

const readBys = new WeakMap<CardSet['plan']['value'], ReadBy>();

function readByOf(set: CardSet): ReadBy {
  const plan = set.plan.value;
  const before = readBys.get(plan);
  if (before) return before;
  const prefixes = new Map(
    plan.subsets.flatMap(({ id, numbers }) => {
      if (numbers === 'none' || 'codes' in numbers || numbers.prefix === undefined) return [];
      return [[numbers.prefix.toLowerCase().replace(/[^\p{L}]/gu, ''), id] as const];
    }),
  );
  const by = { vocabulary: vocabularyOf(set), prefixes };
  readBys.set(plan, by);
  return by;
}

function count({ text, reading }: Read, subject: Subject): CountedText {
  const badLinks = text.links.flatMap((link) => badLink(link, text, reading) ?? []);
  const claims = reading.mentions.flatMap((mention) => {
    const link = linkOf(mention, text);
    if (!link) {
      const { taken } = mention;
      return taken.as === 'claim' ? [judge(subject, text, mention, taken, null)] : [];
    }
    if (link.names === 'none' || badLinks.some((bad) => bad.link === link)) return [];
    const taken = linkTaken(mention, link, reading);
    return taken ? [judge(subject, text, mention, taken, link)] : [];
  });
  const odds = oddsClaims(text, reading.tokens, reading.odds);
  return { text, reading, claims, odds, badLinks, sums: wrongSums(reading, claims) };
}

/** The count link that a number stands in. */
export function linkOf({ number }: Mention, { links }: ClaimText): CountLink | null {
  return links.find(({ from, to }) => number.from < to && number.to > from) ?? null;
}

/** A link says what it counts, whatever the words around it say. */
function linkTaken(
  mention: Mention,
  { names }: CountLink,
  { tokens }: ClaimReading,
): Claim['taken'] | null {
  const { number, taken, clause } = mention;
  if (taken.as === 'number' && number.kind !== 'code') return null;
  return {
    as: 'claim',
    things: [{ kind: 'part', id: names }],
    relation: 'exact',
    hedge: hedgeOf(tokens, number, clause.next),
    high: taken.as === 'claim' && taken.relation !== 'numbers' ? taken.high : null,
    end: number.next,
  };
}

function badLink(link: CountLink, text: ClaimText, { mentions }: ClaimReading): BadLink | null {
  if (link.names === 'none') return null;
  if (text.sets.every((set) => countableKind(set, link.names) === null)) {
    return { link, why: 'unknown' };
  }
  const inside = mentions.filter((mention) => linkOf(mention, text) === link);
  const says = inside.filter(({ number }) => number.kind === 'count' || number.kind === 'ordinal');
  const uppers = says.filter(({ taken }) => taken.as === 'number').length;
  if (says.length - uppers === 1) return null;
  return { link, why: says.length === 0 ? 'no number' : 'several numbers' };
}
