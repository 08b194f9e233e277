import type { CardFront } from '../../schema/index.js';
import type { Card } from '../model/index.js';
import { holdableFields } from './held-fields.js';

export type CardSource = NonNullable<CardFront['sources']>[number];

/** Whether a source speaks for a fact: for it by its name, for all facts, or for the whole card. */
export function speaksForFact({ for: what }: CardSource, fact: string): boolean {
  return what === undefined || what === 'facts' || what === fact || what === `facts.${fact}`;
}

/** Whether a source speaks for words in quotation marks, in the bio or in a text such as `texts.caption`. */
export function speaksForQuote({ for: what }: CardSource, field: string): boolean {
  return what === 'quote' || what === 'bio' || what === field;
}

/** What `for` may name on a card: facts by their names, the fields that it has, and its quotations. */
export function subjectsOf(card: Card): readonly string[] {
  const always = ['facts', 'bio', 'quote', 'name', 'publicName', 'image', 'story', 'relic'];
  return [...new Set([...Object.keys(card.front.facts ?? {}), ...holdableFields(card), ...always])];
}
