import {
  paragraphText,
  spotOf,
  type Card,
  type CardSet,
  type Copy,
  type Paragraph,
  type SourceFile,
  type Spot,
  type YamlPath,
} from '../../model/index.js';
import { ofCard, type Remark } from '../rule.js';
import { spotInParagraph, spotInValue } from './spot.js';
import type { Subject } from '../subject.js';

/**
 * How a text is read: whole sentences, a value beside its name, a title, a title that a plan gives
 * to a part of it, or words set by law.
 */
export type Manner = 'prose' | 'fact' | 'title' | 'heading' | 'notice';

/** A text that is printed or shown, whatever holds it: what rules about language look at. */
export interface RunningText {
  readonly what: string;
  readonly manner: Manner;
  readonly text: string;
  /** Stretches that are counts held to the plan, or said to be none. */
  readonly counts: readonly { readonly from: number; readonly to: number }[];
  /** Where words stand, from and to in UTF-16 units. */
  readonly spotOf: (from: number, to: number) => Spot;
  readonly owner: Pick<Remark, 'set' | 'card'>;
}

interface Owned {
  readonly source: SourceFile;
  readonly owner: RunningText['owner'];
}

const ofCards = new WeakMap<Card, readonly RunningText[]>();

/** The texts of one card. A card that has not changed is not read again. */
export function textsOfCard(card: Card): readonly RunningText[] {
  const before = ofCards.get(card);
  if (before) return before;
  const texts = [...cardTexts(card)];
  ofCards.set(card, texts);
  return texts;
}

/** Every text beside the cards: of the property, its names and layouts, plans, sales, corrections. */
export function* textsBesideCards({ content, sets }: Subject): Generator<RunningText> {
  if (content.property) yield* propertyTexts(content.property);
  for (const [at, { publicName }] of (content.names?.value.names ?? []).entries()) {
    if (publicName === undefined || !content.names) continue;
    const around = { source: content.names.source, owner: {} };
    yield value('`publicName`', 'title', publicName, ['names', at, 'publicName'], around);
  }
  for (const { source, value: layout } of content.layouts.values()) {
    for (const [zone, text] of Object.entries(layout.shared ?? {})) {
      yield value(`\`shared.${zone}\``, 'prose', text, ['shared', zone], { source, owner: {} });
    }
  }
  for (const set of sets) yield* setTexts(set);
}

function* cardTexts(card: Card): Generator<RunningText> {
  const { front, source, bio } = card;
  const around = { source, owner: ofCard(card) };
  const text = (manner: Manner, words: string | undefined, path: YamlPath): RunningText[] =>
    words === undefined ? [] : [value(`\`${path.join('.')}\``, manner, words, path, around)];
  yield* text('title', front.name, ['name']);
  yield* text('title', front.publicName, ['publicName']);
  yield* text('prose', front.image?.alt, ['image', 'alt']);
  for (const [key, words] of Object.entries(front.facts ?? {})) {
    const path = ['facts', key];
    const spot = (from: number, to: number): Spot =>
      spotInValue(spotOf(source, path, 'key'), key, from, to);
    yield { ...value(`the fact \`${key}\``, 'title', key, path, around), spotOf: spot };
    yield* text('fact', words, path);
  }
  for (const [key, words] of Object.entries(front.texts ?? {})) {
    // A printed list has the words of the plan, where they are looked at.
    if (key !== 'list') yield* text('prose', words, ['texts', key]);
  }
  yield* text('prose', front.variation?.tell, ['variation', 'tell']);
  for (const [at, { role }] of (front.credits ?? []).entries()) {
    yield* text('title', role, ['credits', at, 'role']);
  }
  yield* copy('the bio', bio, around);
}

function* propertyTexts({
  source,
  value: property,
}: NonNullable<Subject['content']['property']>): Generator<RunningText> {
  const around = { source, owner: {} };
  const text = (manner: Manner, words: string | undefined, path: YamlPath): RunningText[] =>
    words === undefined ? [] : [value(`\`${path.join('.')}\``, manner, words, path, around)];
  yield* text('title', property.title, ['title']);
  yield* text('notice', property.legal?.line, ['legal', 'line']);
  for (const [at, { line }] of (property.legal?.depicts ?? []).entries()) {
    yield* text('notice', line, ['legal', 'depicts', at, 'line']);
  }
  yield* text('title', property.site?.title, ['site', 'title']);
  yield* text('prose', property.site?.dataTerms, ['site', 'dataTerms']);
  for (const key of ['levels', 'embargoes'] as const) {
    for (const [at, { label }] of (property[key] ?? []).entries()) {
      yield* text('title', label, [key, at, 'label']);
    }
  }
}

function* setTexts(set: CardSet): Generator<RunningText> {
  const { source, value: plan } = set.plan;
  const around = { source, owner: { set: set.id } };
  const text = (manner: Manner, words: string | undefined, path: YamlPath): RunningText[] =>
    words === undefined ? [] : [value(`\`${path.join('.')}\``, manner, words, path, around)];
  yield* text('heading', plan.title, ['title']);
  yield* text('heading', plan.short, ['short']);
  for (const [at, subset] of plan.subsets.entries()) {
    yield* text('heading', subset.title, ['subsets', at, 'title']);
    yield* text('notice', subset.statement, ['subsets', at, 'statement']);
  }
  for (const [id, total] of Object.entries(plan.totals ?? {})) {
    if (typeof total !== 'number') yield* text('heading', total.title, ['totals', id, 'title']);
  }
  for (const [at, parallel] of (plan.parallels ?? []).entries()) {
    yield* text('heading', parallel.title, ['parallels', at, 'title']);
    yield* text('prose', parallel.tell, ['parallels', at, 'tell']);
  }
  for (const [at, product] of (plan.products ?? []).entries()) {
    yield* text('heading', product.title, ['products', at, 'title']);
  }
  for (const { source: file, front, words } of set.sales) {
    const own = { source: file, owner: { set: set.id } };
    if (front.title !== undefined) yield value('`title`', 'title', front.title, ['title'], own);
    yield* copy('this text', words, own);
  }
  // What stood before a correction is quoted as it was, mistakes and all.
  for (const [at, { now, note }] of (set.corrections?.value.corrections ?? []).entries()) {
    if (!set.corrections) continue;
    const own = { source: set.corrections.source, owner: { set: set.id } };
    const path = ['corrections', at];
    yield value('`now`', 'fact', now, [...path, 'now'], own);
    if (note !== undefined) yield value('`note`', 'prose', note, [...path, 'note'], own);
  }
}

function value(
  what: string,
  manner: Manner,
  text: string,
  path: YamlPath,
  { source, owner }: Owned,
): RunningText {
  const place = (from: number, to: number): Spot =>
    spotInValue(spotOf(source, path), text, from, to);
  return { what, manner, text, counts: [], spotOf: place, owner };
}

function* copy(what: string, words: Copy, { source, owner }: Owned): Generator<RunningText> {
  for (const paragraph of words) {
    yield {
      what,
      manner: 'prose',
      text: paragraphText(paragraph),
      counts: countsIn(paragraph),
      spotOf: (from, to) => spotInParagraph(paragraph, from, to, source),
      owner,
    };
  }
}

function countsIn(paragraph: Paragraph): RunningText['counts'] {
  if (paragraph.every(({ count }) => count === null)) return [];
  let start = 0;
  return paragraph.flatMap(({ text, count }) => {
    const from = start;
    start += text.length;
    return count === null ? [] : [{ from, to: start }];
  });
}
