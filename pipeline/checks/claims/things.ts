import type { CardSet } from '../../model/index.js';
import { isHyphen, numberTokens, readCount, type NumberToken } from '../../text/index.js';

/** What a claim can be about. */
export type Thing =
  /** A subset, group or total of the plan: what a count link can name. */
  | { readonly kind: 'part'; readonly id: string }
  /** All cards of the set, by any of the ways in which they are counted together. */
  | { readonly kind: 'whole' }
  /** The subset or group of the card that speaks. */
  | { readonly kind: 'own' }
  /** Any one subset, of a group or of all. */
  | { readonly kind: 'any'; readonly group: string | null }
  /** How many subsets there are, in a group or in all. */
  | { readonly kind: 'subsets'; readonly group: string | null }
  /** Copies of each card of a parallel. */
  | { readonly kind: 'run'; readonly parallel: string | null }
  | { readonly kind: 'parallels' }
  | { readonly kind: 'artists' }
  | { readonly kind: 'signers' }
  /** The number of the card that speaks, among so many. */
  | { readonly kind: 'number'; readonly among: number }
  /** Cards a pack, packs a box, cards a box, what a case holds; of one product or of any. */
  | { readonly kind: 'pack' | 'box' | 'boxful' | 'caseful'; readonly product: string | null };

/**
 * How much of a name a phrase is: a title with its capitals or a word of the trade alone makes a
 * claim; a group's word does in a text that sells; a common word only where collectors are spoken to.
 */
export type Manner = 'title' | 'trade' | 'group' | 'weak' | 'product';

interface Phrase {
  readonly keys: readonly string[];
  readonly things: readonly Thing[];
  readonly manner: Manner;
  /** Which of its words have a capital in the title. */
  readonly capitals: readonly boolean[];
  readonly product?: string;
}

/** The phrases by which the things of a plan are named, by their first word. */
export type Vocabulary = ReadonlyMap<string, readonly Phrase[]>;

/** A place where a text names something that can be counted. */
export interface Named {
  /** Tokens: the first, and the one behind the last. */
  readonly at: number;
  readonly next: number;
  readonly things: readonly Thing[];
  readonly manner: Manner;
  readonly plural: boolean;
  readonly product?: string;
}

/** Words that say nothing of which cards are meant. */
const GENERIC: ReadonlySet<string> = new Set(
  'card set series checklist collection box pack extra one everything the and'.split(' '),
);
const PLURALS_THAT_STAY = /(?:ss|us|is)$/;

/** A word without possessive and plural, for comparing. */
export function keyOf(word: string): string {
  const bare = word.replace(/'s?$/, '');
  if (bare.length < 4 || PLURALS_THAT_STAY.test(bare)) return bare;
  if (bare.endsWith('ies')) return `${bare.slice(0, -3)}y`;
  if (/(?:ch|sh|x|z|ss)es$/.test(bare)) return bare.slice(0, -2);
  return bare.endsWith('s') ? bare.slice(0, -1) : bare;
}

const vocabularies = new WeakMap<CardSet['plan']['value'], Vocabulary>();

/** The vocabulary of a set; made once for a plan. */
export function vocabularyOf(set: CardSet): Vocabulary {
  const plan = set.plan.value;
  const before = vocabularies.get(plan);
  if (before) return before;
  const index = new Map<string, Phrase[]>();
  for (const phrase of phrasesOf(set)) {
    const [first] = phrase.keys;
    if (first === undefined) continue;
    const others = index.get(first) ?? [];
    index.set(first, [...others, phrase]);
  }
  for (const phrases of index.values()) phrases.sort((a, b) => b.keys.length - a.keys.length);
  vocabularies.set(plan, index);
  return index;
}

function* phrasesOf(set: CardSet): Generator<Phrase> {
  const plan = set.plan.value;
  for (const { id, title } of plan.subsets) {
    const thing: Thing = { kind: 'part', id };
    yield* titled(title, [thing]);
    yield* headOf(title, thing);
  }
  for (const id of new Set(plan.subsets.map(({ group }) => group))) yield* groupPhrases(id);
  for (const [id, total] of Object.entries(plan.totals ?? {})) {
    if (typeof total === 'number' || total.title === undefined) continue;
    yield* titled(total.title, [{ kind: 'part', id }], true);
  }
  for (const title of [plan.title, plan.short, plan.title.split(': ').at(-1)]) {
    if (title !== undefined) yield* titled(title, [{ kind: 'whole' }]);
  }
  for (const { id, title } of plan.parallels ?? []) {
    yield* titled(title, [{ kind: 'run', parallel: id }]);
  }
  for (const { id, title } of plan.products ?? []) {
    for (const phrase of titled(title, [])) yield { ...phrase, manner: 'product', product: id };
  }
  yield* tradePhrases(plan);
}

/** A title as it stands; of one that is a common word or a number, nothing. */
function* titled(title: string, things: readonly Thing[], common = false): Generator<Phrase> {
  const tokens = wordsOf(title);
  const start = /^(?:the|a|an)$/.test(tokens[0]?.word ?? '') && tokens.length > 1 ? 1 : 0;
  const words = tokens.slice(start);
  const keys = words.map(({ word }) => keyOf(word));
  if (keys.length === 0 || keys.every((key) => GENERIC.has(key)) || readCount(title) !== null) {
    return;
  }
  const capitals = words.map(({ capital }) => capital && !common);
  yield { keys, things, manner: 'title', capitals };
}

const LINKING: ReadonlySet<string> = new Set('of from in at for by to with'.split(' '));

/** The noun of a title alone: "Charts" of "Lake Charts", "Letters" of "Letters from the Street". */
function* headOf(title: string, thing: Thing): Generator<Phrase> {
  const words = wordsOf(title);
  if (words.length < 2 || words.some(({ word }) => word === 'and' || word === '&')) return;
  const link = words.findIndex(({ word }) => LINKING.has(word));
  const head = words[link > 0 ? link - 1 : words.length - 1];
  if (!head || !head.word.endsWith('s')) return;
  const key = keyOf(head.word);
  if (GENERIC.has(key)) return;
  yield { keys: [key], things: [thing], manner: 'title', capitals: [true] };
}

const GROUP_WORDS: Readonly<Record<string, readonly (readonly [string, Manner])[]>> = {
  base: [
    ['base card', 'trade'],
    ['base set', 'trade'],
    ['base', 'group'],
  ],
  insert: [
    ['insert card', 'trade'],
    ['insert', 'group'],
  ],
  autograph: [
    ['autograph card', 'trade'],
    ['autographed card', 'trade'],
    ['signed card', 'group'],
    ['signature card', 'group'],
    ['autograph', 'group'],
  ],
  relic: [
    ['relic card', 'trade'],
    ['relic', 'group'],
  ],
  sketch: [
    ['sketch card', 'trade'],
    ['sketch', 'weak'],
  ],
  promo: [
    ['promo card', 'trade'],
    ['promotional card', 'trade'],
    ['promo', 'group'],
  ],
  topper: [
    ['box topper', 'trade'],
    ['topper', 'group'],
  ],
};

function* groupPhrases(id: string): Generator<Phrase> {
  const key = keyOf(id);
  const things: readonly Thing[] = [{ kind: 'part', id }];
  const named = Object.hasOwn(GROUP_WORDS, key) ? GROUP_WORDS[key] : undefined;
  const words = id.replaceAll('-', ' ');
  const own: readonly (readonly [string, Manner])[] =
    GENERIC.has(key) || named
      ? []
      : [
          [`${words} card`, 'group'],
          [words, 'weak'],
        ];
  for (const [phrase, manner] of [...(named ?? []), ...own]) yield common(phrase, things, manner);
  if (id === 'base') return;
  yield common(`${key} set`, [{ kind: 'subsets', group: id }], 'trade');
}

function* tradePhrases(plan: CardSet['plan']['value']): Generator<Phrase> {
  const total = Object.entries(plan.totals ?? {}).find(
    ([, each]) => typeof each === 'object' && /\bset\b/i.test(each.title ?? ''),
  );
  for (const word of ['complete set', 'full set', 'whole set', 'entire set']) {
    yield common(word, [total ? { kind: 'part', id: total[0] } : { kind: 'whole' }], 'trade');
  }
  yield common('subset', [{ kind: 'subsets', group: null }], 'trade');
  yield common('parallel', [{ kind: 'parallels' }], 'group');
  for (const word of ['artist', 'sketch artist', 'illustrator']) {
    yield common(word, [{ kind: 'artists' }], 'group');
  }
  yield common('signer', [{ kind: 'signers' }], 'group');
}

function common(phrase: string, things: readonly Thing[], manner: Manner): Phrase {
  const keys = phrase.split(' ').map(keyOf);
  return { keys, things, manner, capitals: keys.map(() => false) };
}

function wordsOf(text: string): readonly NumberToken[] {
  return numberTokens(text).flatMap((token) => {
    if (token.word === '&') return [{ ...token, word: 'and' }];
    return token.kind === 'sign' ? [] : [token];
  });
}

/** Every place of a text that names a thing of the plan; the longest phrase wins. */
export function namedIn(tokens: readonly NumberToken[], vocabulary: Vocabulary): Named[] {
  const found: Named[] = [];
  for (let at = 0; at < tokens.length;) {
    const named = namedAt(tokens, at, vocabulary);
    if (named) found.push(named);
    at = named?.next ?? at + 1;
  }
  return found;
}

function namedAt(tokens: readonly NumberToken[], at: number, vocabulary: Vocabulary): Named | null {
  const first = tokens[at];
  if (first?.kind !== 'word') return null;
  const fits = (vocabulary.get(keyOf(first.word)) ?? []).flatMap((phrase) => {
    const next = endOf(tokens, at, phrase.keys);
    return next === null ? [] : [{ phrase, next }];
  });
  const length = fits[0]?.phrase.keys.length;
  const best = fits.filter(({ phrase }) => phrase.keys.length === length);
  const [one] = best;
  if (!one) return null;
  const last = tokens[one.next - 1]?.word ?? '';
  const card = keyOf(tokens[one.next]?.word ?? '') === 'card';
  const manners = best.map(({ phrase }) => {
    const whole = phrase.manner === 'product' || hasCapitals(tokens, at, phrase);
    return whole ? phrase.manner : lowered(card || length !== 1);
  });
  const product = one.phrase.product;
  return {
    at,
    next: card ? one.next + 1 : one.next,
    things: best.flatMap(({ phrase }) => phrase.things),
    manner: STRENGTHS.find((manner) => manners.includes(manner)) ?? 'weak',
    plural: card ? tokens[one.next]?.word !== 'card' : last !== keyOf(last),
    ...(product === undefined ? {} : { product }),
  };
}

const STRENGTHS: readonly Manner[] = ['title', 'trade', 'group', 'product', 'weak'];

/** A title without its capitals: a common noun, unless it is long. */
function lowered(clear: boolean): Manner {
  return clear ? 'group' : 'weak';
}

function hasCapitals(tokens: readonly NumberToken[], at: number, { capitals }: Phrase): boolean {
  const words = tokens.slice(at, at + capitals.length * 2).filter((token) => !isHyphen(token));
  return capitals.every((capital, place) => !capital || words[place]?.capital === true);
}

/** Where a phrase ends that starts here; hyphens between its words are passed over. */
function endOf(tokens: readonly NumberToken[], at: number, keys: readonly string[]): number | null {
  let place = at;
  for (const [position, key] of keys.entries()) {
    if (position > 0 && isHyphen(tokens[place])) place += 1;
    const token = tokens[place];
    const word = token?.word === '&' ? 'and' : token?.kind === 'word' ? keyOf(token.word) : null;
    if (word !== key) return null;
    place += 1;
  }
  return place;
}
