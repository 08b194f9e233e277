import type { CardFront } from '../../schema/index.js';
import type { Card, Copy, Paragraph, Run } from '../model/index.js';
import type { Json } from './digest.js';
import { COVERED_BY, type CardPart } from './parts.js';
import {
  listOf,
  mapOf,
  numberOf,
  pairsOf,
  textOf,
  textsOf,
  valueOf,
  wordsIn,
} from './kept-values.js';

/**
 * A card with its copy as it was approved, from what the approval covers. The words are held by
 * nothing: what holds them belongs to the `web` part.
 */
export function withCopy(card: Card, covers: Json): Card {
  const rest = without(card.front, ['facts', 'texts', 'credits', 'signers']);
  const facts = Object.fromEntries(pairsOf(covers, 'facts'));
  const texts = mapOf(covers, 'texts');
  const credits = listOf(covers, 'credits').flatMap((credit) => {
    const [role, name] = [textOf(credit, 'role'), textOf(credit, 'name')];
    return role === null || name === null ? [] : [{ role, name }];
  });
  const signers = listOf(covers, 'signers').flatMap((signer) => signerOf(signer) ?? []);
  return {
    ...card,
    front: {
      ...rest,
      name: textOf(covers, 'name') ?? rest.name,
      ...(Object.keys(facts).length > 0 ? { facts } : {}),
      ...(Object.keys(texts).length > 0 ? { texts } : {}),
      ...(credits.length > 0 ? { credits } : {}),
      ...(signers.length > 0 ? { signers } : {}),
    },
    bio: wordsIn(covers),
  };
}

type OptionalKey = Exclude<keyof CardFront, 'number' | 'name' | 'spoiler'>;

/** A front matter without some of the keys that it need not have. */
function without(front: CardFront, keys: readonly OptionalKey[]): CardFront {
  const less = { ...front };
  for (const key of keys) Reflect.deleteProperty(less, key);
  return less;
}

type Signer = NonNullable<CardFront['signers']>[number];
const STATES: readonly Signer['state'][] = [
  'asked',
  'contracted',
  'signed',
  'redemption',
  'withdrawn',
];

function signerOf(value: Json): Signer | null {
  const [name, as] = [textOf(value, 'name'), textOf(value, 'as')];
  const state = STATES.find((known) => known === textOf(value, 'state'));
  if (name === null || state === undefined) return null;
  return { name, state, ...(as === null ? {} : { as }) };
}

/**
 * A card with what holds it and what the site says of it as that was approved; null if its words
 * have not the held words in them that were approved.
 */
export function withWeb(card: Card, covers: Json): Card | null {
  const bio = withSpans(card.bio, listOf(covers, 'spans'));
  return bio === null ? null : { ...withWebFront(card, covers), bio };
}

/** The same without any words: a placeholder shows none. */
export function withWebAlone(card: Card, covers: Json): Card {
  return { ...withWebFront(card, covers), bio: [] };
}

function withWebFront(card: Card, covers: Json): Card {
  const { image, variation } = card.front;
  const rest = without(card.front, [
    'embargo',
    'publicName',
    'holds',
    'shortPrint',
    'run',
    'image',
    'variation',
  ]);
  const embargo = textsOf(covers, 'embargo');
  const holds = { ...uncoveredHolds(card.front), ...mapOf(covers, 'holds') };
  const [publicName, run] = [textOf(covers, 'publicName'), numberOf(covers, 'run')];
  const shortPrint = (['SP', 'SSP'] as const).find((one) => one === textOf(covers, 'shortPrint'));
  return {
    ...card,
    front: {
      ...rest,
      spoiler: textOf(covers, 'spoiler') ?? rest.spoiler,
      ...(embargo.length > 0 ? { embargo: [...embargo] } : {}),
      ...(publicName === null ? {} : { publicName }),
      ...(Object.keys(holds).length > 0 ? { holds } : {}),
      ...(shortPrint === undefined ? {} : { shortPrint }),
      ...(run === null ? {} : { run }),
      ...(image === undefined ? {} : { image: withAlt(image, textOf(covers, 'alt')) }),
      ...variationOf(variation, covers),
    },
  };
}

/** Holds of today on fields that no part covers: such a field is today's, and so is its hold. */
function uncoveredHolds({ holds }: CardFront): Record<string, string> {
  const table: Readonly<Record<string, readonly CardPart[]>> = COVERED_BY;
  const entries = Object.entries(holds ?? {});
  return Object.fromEntries(entries.filter(([field]) => table[field]?.length === 0));
}

type Image = NonNullable<CardFront['image']>;

function withAlt(image: Image, alt: string | null): Image {
  const bare = { ...image };
  delete bare.alt;
  return alt === null ? bare : { ...bare, alt };
}

function variationOf(
  today: CardFront['variation'],
  covers: Json,
): Pick<CardFront, 'variation'> | Record<string, never> {
  const [letter, tell] = [textOf(covers, 'letter'), textOf(covers, 'tell')];
  if (letter === null || tell === null) return {};
  return { variation: { of: today?.of ?? 'none/none', letter, tell } };
}

/** Held words put back into a bio that has none; null if one of them is not there. */
function withSpans(copy: Copy, spans: readonly Json[]): Copy | null {
  const bare = copy.map((paragraph) => paragraph.map((run): Run => ({ ...run, hold: null })));
  const held: Paragraph[] = [];
  for (const [at, paragraph] of bare.entries()) {
    const own = spans.filter((span) => valueOf(span, 'paragraph') === at);
    const marked = withHeld(paragraph, own);
    if (marked === null) return null;
    held.push(marked);
  }
  const isAllPut = spans.every((span) => (numberOf(span, 'paragraph') ?? -1) in bare);
  return isAllPut ? held : null;
}

function withHeld(paragraph: Paragraph, spans: readonly Json[]): Paragraph | null {
  const text = paragraph.map((run) => run.text).join('');
  const stretches: { from: number; to: number; hold: string }[] = [];
  let after = 0;
  for (const span of spans) {
    const [words, hold] = [textOf(span, 'text'), textOf(span, 'hold')];
    const from = words === null ? -1 : text.indexOf(words, after);
    if (words === null || hold === null || from < 0) return null;
    after = from + words.length;
    stretches.push({ from, to: after, hold });
  }
  const ends = stretches.flatMap(({ from, to }) => [from, to]);
  return cutAt(paragraph, ends).map(({ run, at }) => {
    const hold = stretches.find(({ from, to }) => at >= from && at < to)?.hold ?? null;
    return { ...run, hold };
  });
}

/** The runs of a paragraph, parted at these offsets into its text, with where each begins. */
function cutAt(
  paragraph: Paragraph,
  ends: readonly number[],
): readonly { readonly run: Run; readonly at: number }[] {
  let start = 0;
  return paragraph.flatMap((run) => {
    const [from, to] = [start, start + run.text.length];
    start = to;
    const cuts = [from, ...ends.filter((end) => end > from && end < to), to];
    return cuts.slice(0, -1).map((cut, index) => ({
      run: { ...run, text: run.text.slice(cut - from, (cuts[index + 1] ?? to) - from) },
      at: cut,
    }));
  });
}

/** A card with whoever is in its picture as that was approved; its art is another matter. */
export function withImage(card: Card, covers: Json, file: string | null): Card {
  const { image } = card.front;
  const rest = without(card.front, ['image']);
  if (file === null) return { ...card, front: rest };
  const depicts = textsOf(covers, 'depicts');
  const ref = textOf(covers, 'ref');
  const alt = image?.alt;
  return {
    ...card,
    front: {
      ...rest,
      image: {
        file,
        ...(alt === undefined ? {} : { alt }),
        ...(ref === null ? {} : { ref }),
        ...(depicts.length > 0 ? { depicts: [...depicts] } : {}),
      },
    },
  };
}
