import type { BackFile, CardFront, Decision } from '../../schema/index.js';
import { heldSpans, identityOf, type Card, type Copy, type SalesText } from '../model/index.js';
import { digestOf, type Json } from './digest.js';

/** What is approved by itself. */
export type Part = Decision['part'];
export type CardPart = Exclude<Part, 'sales'>;
export const CARD_PARTS = ['copy', 'image', 'layout', 'web'] as const satisfies readonly CardPart[];

/** What of a card's approval lies outside its file. */
export interface Surroundings {
  /** SHA-256 of the bytes of its art; null without art. */
  readonly art: string | null;
  /** The layout that it prints in; null if it has none. */
  readonly layout: BackFile | null;
  /** SHA-256 of the bytes of each font file of the layout, by `font.face`. */
  readonly fonts: Readonly<Record<string, string>>;
  /** The legal lines that it prints, in their order. */
  readonly legal: readonly string[];
  /** What its subset says of what its cards carry; null if it says nothing. */
  readonly statement: string | null;
}

/** Which parts cover a key of a card: total, so that a key added later must be decided on. */
export const COVERED_BY = {
  format: [],
  number: ['layout'],
  name: ['copy'],
  spoiler: ['web'],
  embargo: ['web'],
  ships: [],
  state: [],
  publicName: ['web'],
  holds: ['web'],
  image: ['image', 'web'],
  facts: ['copy'],
  texts: ['copy'],
  signers: ['copy'],
  credits: ['copy'],
  story: [],
  variation: ['web'],
  shortPrint: ['web'],
  run: ['web'],
  relic: [],
  issued: [],
  why: [],
  bio: ['copy'],
  back: ['layout'],
  writer: [],
  sources: [],
  checkedAgainst: [],
  remark: [],
  accepted: [],
} as const satisfies { readonly [K in keyof CardFront]-?: readonly CardPart[] };

/** Exactly what a part of a card covers, with set and identity. */
export function covers(part: CardPart, card: Card, around: Surroundings): Json {
  const whose = { part, set: card.set, card: identityOf(card) };
  switch (part) {
    case 'copy':
      return { ...whose, ...copyOf(card) };
    case 'image':
      return { ...whose, ...imageOf(card, around) };
    case 'layout':
      return { ...whose, ...layoutOf(card, around) };
    case 'web':
      return { ...whose, ...webOf(card) };
  }
}

/** The digest of a part of a card: it changes when, and only when, what the part covers changes. */
export function partDigest(part: CardPart, card: Card, around: Surroundings): string {
  return digestOf(covers(part, card, around));
}

/** Exactly what the approval of an outward text covers. */
export function coversSales({ set, id, front, words }: SalesText): Json {
  const { kind, title, spoiler, embargo } = front;
  return {
    part: 'sales',
    set,
    card: `sales/${id}`,
    kind,
    title: title ?? null,
    spoiler,
    embargo: [...(embargo ?? [])].sort(),
    words: wordsOf(words),
    spans: spansOf(words),
  };
}

export function salesDigest(text: SalesText): string {
  return digestOf(coversSales(text));
}

/** Held spans are no part of the copy: what they hold is the `web` part. */
function copyOf({ front, bio }: Card): Record<string, Json> {
  return {
    name: front.name,
    bio: wordsOf(bio),
    texts: front.texts ?? {},
    facts: Object.entries(front.facts ?? {}),
    credits: (front.credits ?? []).map(({ role, name }) => ({ role, name })),
    signers: (front.signers ?? []).map(({ name, as, state }): Json => ({
      name,
      as: as ?? null,
      state,
    })),
  };
}

/** Runs of one face are one: where a hold begins and ends is not seen on the card. */
function wordsOf(copy: Copy): Json {
  return copy.map((paragraph) =>
    paragraph
      .reduce<{ text: string; italic: boolean; bold: boolean }[]>((runs, run) => {
        const { text, italic, bold } = run;
        const last = runs.at(-1);
        const isSame = last?.italic === italic && last.bold === bold;
        if (!last || !isSame) return [...runs, { text, italic, bold }];
        return [...runs.slice(0, -1), { ...last, text: last.text + text }];
      }, [])
      .map(({ text, italic, bold }): Json => ({ text, italic, bold })),
  );
}

/** Held words, with what holds them and the paragraph they stand in. */
function spansOf(copy: Copy): Json {
  return copy.flatMap((words, paragraph) =>
    heldSpans([words]).map(({ hold, text }): Json => ({ paragraph, hold, text })),
  );
}

function imageOf({ front }: Card, { art }: Surroundings): Record<string, Json> {
  const { depicts, ref } = front.image ?? {};
  return { art, depicts: [...(depicts ?? [])].sort(), ref: ref ?? null };
}

function layoutOf({ front }: Card, around: Surroundings): Record<string, Json> {
  return {
    number: front.number,
    layout: around.layout === null ? null : plainValue(around.layout),
    fonts: { ...around.fonts },
    legal: [...around.legal],
    // A card without one is covered as it was before there were any.
    ...(typeof around.statement === 'string' ? { statement: around.statement } : {}),
  };
}

function webOf({ front, bio }: Card): Record<string, Json> {
  const { spoiler, embargo, publicName, holds, image, variation, shortPrint, run } = front;
  return {
    spoiler,
    embargo: [...(embargo ?? [])].sort(),
    publicName: publicName ?? null,
    holds: { ...holds },
    alt: image?.alt ?? null,
    letter: variation?.letter ?? null,
    tell: variation?.tell ?? null,
    shortPrint: shortPrint ?? null,
    run: run ?? null,
    spans: spansOf(bio),
  };
}

/** A value that was read from a file, as plain data: keys without a value are as if not there. */
function plainValue(value: unknown): Json {
  if (value === null || typeof value === 'string') return value;
  if (typeof value === 'number' || typeof value === 'boolean') return value;
  if (Array.isArray(value)) return value.map(plainValue);
  if (typeof value !== 'object') throw new TypeError('a file has no such value');
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, inner]) => inner !== undefined)
      .map(([key, inner]) => [key, plainValue(inner)]),
  );
}

const BARE: Surroundings = { art: null, layout: null, fonts: {}, legal: [], statement: null };

/** The digest of a card's `copy` part, which nothing outside its file has to do with. */
export function copyDigest(card: Card): string {
  return partDigest('copy', card, BARE);
}

/** The first letters of a digest: what a person reads out to compare two. */
export function copyVersion(card: Card): string {
  return copyDigest(card).slice(0, 6);
}
