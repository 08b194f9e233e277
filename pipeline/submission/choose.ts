import type { Decision, PeopleFile, Subset } from '../../schema/index.js';
import { shownWhole, view, type Audience, type View } from '../gate/index.js';
import { identityOf, subsetOf, type Card, type CardSet, type SalesText } from '../model/index.js';
import { rolesFor, type Part } from '../review/index.js';
import type { Released } from '../select/index.js';

export type Person = PeopleFile['people'][number];

/** What of a property is to be sent. */
export interface Selection {
  /** Only these parts, if given. */
  readonly parts?: readonly Part[];
  /** The id of the one set. */
  readonly set?: string;
  /** The id of the one subset. */
  readonly subset?: string;
}

/** A card or sales text with the parts that a person may decide on. */
export interface Chosen {
  readonly key: string;
  readonly parts: readonly Part[];
  readonly set: CardSet;
  readonly card: Card | null;
  readonly text: SalesText | null;
}

/** What a person is shown, and what of it they may decide on. */
export interface Choice {
  readonly view: View;
  readonly chosen: readonly Chosen[];
}

/**
 * What a person may decide on: parts of which nothing is held from them, that their role must
 * approve, of cards that are handed in. Null if there is nothing that they may see at all.
 */
export function choose(
  released: Released,
  audience: Audience & { readonly kind: 'person' },
  selection: Selection,
): Choice | null {
  const seen = view(released, audience);
  if (!seen) return null;
  const whole = shownWhole(released, audience);
  const shown = shownKeys(seen);
  const { role } = audience.person;
  const partsOf = (key: string, card: Card | null, subset: Subset | null): readonly Part[] =>
    (whole.get(key) ?? []).filter(
      (part: Decision['part']) =>
        shown.has(key) &&
        (selection.parts?.includes(part) ?? true) &&
        rolesFor(part, card, subset, released).includes(role),
    );
  const chosen = released.sets
    .filter(({ id }) => selection.set === undefined || id === selection.set)
    .flatMap((set): readonly Chosen[] => [
      ...set.cards.filter(isHandedIn).flatMap((card): Chosen[] => {
        if (selection.subset !== undefined && card.subset !== selection.subset) return [];
        const key = `${set.id}/${identityOf(card)}`;
        const subset = subsetOf(set.plan.value, card.subset) ?? null;
        return [{ key, parts: partsOf(key, card, subset), set, card, text: null }];
      }),
      ...(selection.subset === undefined ? set.sales : []).map((text): Chosen => {
        const key = `${set.id}/sales/${text.id}`;
        return { key, parts: partsOf(key, null, null), set, card: null, text };
      }),
    ]);
  return { view: seen, chosen: chosen.filter(({ parts }) => parts.length > 0) };
}

function isHandedIn({ front }: Card): boolean {
  return front.state === 'ready';
}

/** Keys of all that a view shows as itself: what it has not cannot be sent. */
function shownKeys({ sets }: View): ReadonlySet<string> {
  return new Set(
    sets.flatMap((set) => [
      ...set.subsets
        .flatMap(({ cards }) => cards)
        .flatMap(({ state, identity }) =>
          state === 'placeholder' || identity === null ? [] : [`${set.id}/${identity}`],
        ),
      ...set.sales.map(({ id }) => `${set.id}/sales/${id}`),
    ]),
  );
}
