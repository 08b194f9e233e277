import { owedFor, subsetOf, type Card, type CardSet, type Content } from '../model/index.js';
import type { Surroundings } from './parts.js';

/** SHA-256 of the bytes of files that cards lean on, in hexadecimal. */
export interface Digests {
  /** By path below the content folder. */
  readonly art: ReadonlyMap<string, string>;
  /** Of each layout by its id: by `font.face`. */
  readonly fonts: ReadonlyMap<string, Readonly<Record<string, string>>>;
}

export const NO_DIGESTS: Digests = { art: new Map(), fonts: new Map() };

/** What of a card's approval lies outside its file. Art and fonts that are not there have no digest. */
export function surroundingsOf(
  { property, layouts }: Pick<Content, 'property' | 'layouts'>,
  set: CardSet,
  card: Card,
  digests: Digests,
): Surroundings {
  const { back, image } = card.front;
  const subset = subsetOf(set.plan.value, card.subset);
  const id = back ?? subset?.back ?? '';
  const legal = property?.value.legal;
  const owed = owedFor(legal?.depicts ?? [], image?.depicts ?? []);
  return {
    art: image === undefined ? null : (digests.art.get(`${set.id}/${image.file}`) ?? null),
    layout: layouts.get(id)?.value ?? null,
    fonts: digests.fonts.get(id) ?? {},
    legal: legal === undefined ? [] : [legal.line, ...owed],
    statement: subset?.statement ?? null,
  };
}
