import { OPEN, spotOf, startOf, type CardSet, type Spot } from '../../model/index.js';
import { ofCard } from '../rule.js';
import type { Subject } from '../subject.js';
import type { ToldText } from './text.js';

/** Less cannot be a name, or one of its words. */
const TELLING = /\p{L}{3}/u;

/**
 * The ids that files, folders and addresses show. They are given once, stand in every list and log,
 * and outlive what holds the thing itself: so they are open text from the first day.
 */
export function* outwardIds(subject: Subject): Generator<ToldText> {
  for (const text of allIds(subject)) if (TELLING.test(text.text)) yield text;
}

function* allIds({ content, property, sets }: Subject): Generator<ToldText> {
  const source = content.property?.source;
  if (source) {
    for (const list of ['levels', 'embargoes'] as const) {
      for (const [at, { id }] of (property[list] ?? []).entries()) {
        yield idText('the id of a hold', id, () => spotOf(source, [list, at, 'id']), {});
      }
    }
  }
  for (const [id, { source: file }] of content.layouts) {
    yield idText('the file name of this layout', id, () => startOf(file), {});
  }
  for (const set of sets) yield* idsOfSet(set);
}

function* idsOfSet(set: CardSet): Generator<ToldText> {
  const { source, value } = set.plan;
  const owner = { set: set.id };
  const spot = (...path: (string | number)[]) => {
    return () => spotOf(source, path);
  };
  yield idText('the folder of this set', set.id, spot('id'), owner);
  const groups = new Set<string>();
  for (const [at, { id, group, roster }] of value.subsets.entries()) {
    yield idText('the folder of this subset', id, spot('subsets', at, 'id'), owner);
    if (!groups.has(group)) yield idText('this group', group, spot('subsets', at, 'group'), owner);
    groups.add(group);
    if (roster !== undefined) {
      yield idText('the file name of this roster', roster, spot('subsets', at, 'roster'), owner);
    }
  }
  for (const id of Object.keys(value.totals ?? {})) {
    if (groups.has(id) || value.subsets.some((subset) => subset.id === id)) continue;
    yield idText('the id of this total', id, () => spotOf(source, ['totals', id], 'key'), owner);
  }
  for (const [at, { id }] of (value.parallels ?? []).entries()) {
    yield idText('the id of this parallel', id, spot('parallels', at, 'id'), owner);
  }
  for (const [at, { id }] of (value.products ?? []).entries()) {
    yield idText('the id of this product', id, spot('products', at, 'id'), owner);
  }
  for (const { id, source: file } of set.sales) {
    yield idText('the file name of this text', id, () => startOf(file), owner);
  }
  for (const card of set.cards) {
    const { id, source: file, front } = card;
    yield idText('the file name of this card', id, () => startOf(file), ofCard(card));
    const art = front.image?.file;
    if (art !== undefined) {
      const place = () => spotOf(file, ['image', 'file']);
      yield idText('the file name of this picture', art, place, ofCard(card));
    }
  }
}

function idText(what: string, text: string, place: () => Spot, owner: ToldText['owner']): ToldText {
  return { what, kind: 'id', text, holdOf: () => OPEN, spotOf: place, owner };
}
