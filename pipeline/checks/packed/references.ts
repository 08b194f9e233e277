import { identityOf, spotOf } from '../../model/index.js';
import type { Remark } from '../rule.js';
import type { Subject } from '../subject.js';
import { refer } from '../unknown.js';

/** Ids in what is said about packs that name no subset, parallel or card of their set. */
export function* packReferences({ sets }: Subject): Generator<Remark> {
  for (const set of sets) {
    const { source, value } = set.plan;
    const { subsets, parallels = [], products = [], redemptions = [] } = value;
    const kinds = new Set([...subsets, ...parallels].map(({ id }) => id));
    for (const [at, { contents = [], guarantees = [] }] of products.entries()) {
      for (const [position, { of }] of contents.entries()) {
        const path = ['products', at, 'contents', position, 'of'];
        yield* refer('subset or parallel', of, kinds, source, path);
      }
      for (const [position, { of }] of guarantees.entries()) {
        for (const [index, id] of of.entries()) {
          const path = ['products', at, 'guarantees', position, 'of', index];
          yield* refer('subset or parallel', id, kinds, source, path);
        }
      }
    }
    const cards = new Set(set.cards.map(identityOf));
    const unknown = (id: string): boolean => {
      const [folder = ''] = id.split('/');
      return !cards.has(id) && !set.unread.has(folder);
    };
    for (const [at, { found, sends }] of redemptions.entries()) {
      const path = ['redemptions', at];
      if (!found.includes('/')) {
        yield* refer('subset or parallel', found, kinds, source, [...path, 'found']);
      } else if (unknown(found)) {
        yield noCard(found, spotOf(source, [...path, 'found']));
      }
      for (const [index, id] of sends.entries()) {
        if (unknown(id)) yield noCard(id, spotOf(source, [...path, 'sends', index]));
      }
    }
    for (const [at, { sheet }] of subsets.entries()) {
      for (const [index, id] of (sheet?.doubled ?? []).entries()) {
        if (!unknown(id)) continue;
        yield noCard(id, spotOf(source, ['subsets', at, 'sheet', 'doubled', index]));
      }
    }
  }
}

/** The nearest identity is only another card, so none is offered. */
function noCard(id: string, spot: Remark['spot']): Remark {
  return {
    spot,
    message: `there is no card \`${id}\` that this can name`,
    found: id,
    expected: 'the subset and id of a card of this set',
  };
}
