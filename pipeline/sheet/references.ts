import type { CardFront } from '../../schema/index.js';
import { identityOf, type CardSet, type Content } from '../model/index.js';
import { nearest } from '../text/index.js';

/** Says what a card speaks of that is not there. */
export type ReferenceCheck = (front: CardFront) => readonly string[];

/** Makes the check of references of a set's cards: levels, people, layouts, documents, cuts. */
export function referenceCheck(content: Content, set: CardSet): ReferenceCheck {
  const property = content.property?.value;
  const idsOf = (list: readonly { readonly id: string }[] | undefined): ReadonlySet<string> =>
    new Set(list?.map(({ id }) => id));
  const levels = idsOf(property?.levels);
  const embargoes = idsOf(property?.embargoes);
  const holds = new Set([...levels, ...embargoes]);
  const people = idsOf(content.people?.value.people);
  const cuts = idsOf(property?.cuts);
  const documents = idsOf(property?.documents);
  const layouts = new Set(content.layouts.keys());
  const cards = new Set(set.cards.map(identityOf));
  return (front) => [
    ...unknown('level', front.spoiler, levels),
    ...(front.embargo ?? []).flatMap((id) => unknown('embargo', id, embargoes)),
    ...Object.values(front.holds ?? {}).flatMap((id) => unknown('level or embargo', id, holds)),
    ...unknown('person', front.writer, people),
    ...(front.accepted ?? []).flatMap(({ by }) => unknown('person', by, people)),
    ...unknown('layout', front.back, layouts),
    ...unknown('cut', front.checkedAgainst, cuts),
    ...(front.sources ?? []).flatMap(({ doc }) => unknown('document', doc, documents)),
    ...unknown('card', front.variation?.of, cards),
  ];
}

function unknown(
  what: string,
  id: string | undefined,
  known: ReadonlySet<string>,
): readonly string[] {
  if (id === undefined || known.has(id)) return [];
  const near = nearest(id, known);
  const list = known.size > 0 && known.size <= 12 ? `; there is ${[...known].join(', ')}` : '';
  return [`there is no ${what} ${id}${near === null ? list : `; did you mean ${near}?`}`];
}
