import type { Decision } from '../../pipeline/gate/decision.js';
import { TABLES } from '../../pipeline/gate/tables.js';
import { aboutCard, aboutSubset, oddsStanding, standing, type Eye, type Standing } from './held.js';
import type { Plain, PlainCard, PlainSet } from './plain.js';

/**
 * Leaky gates, one for each key of the tables and each way of leaking: beside the view they tell
 * something of what the public must not see of that key.
 */

export type Shape = keyof typeof TABLES;

/** A thing of some shape, and how it stands for the public. */
interface Thing {
  readonly value: object;
  readonly standing: Standing;
}

function cards(plain: Plain, eye: Eye): { set: PlainSet; card: PlainCard; standing: Standing }[] {
  return plain.sets.flatMap((set) =>
    set.cards.map((card) => ({
      set,
      card,
      standing: standing(plain, eye, ...aboutCard(set, card)),
    })),
  );
}

/** Things that lie in cards stand as their card does. */
function inCards(part: (card: PlainCard) => readonly object[]) {
  return (plain: Plain, eye: Eye): Thing[] =>
    cards(plain, eye).flatMap(({ card, standing: is }) =>
      part(card).map((value) => ({ value, standing: is })),
    );
}

/** Things of which the public sees nothing but what the tables open. */
function known(things: (plain: Plain) => readonly object[]) {
  return (plain: Plain): Thing[] =>
    things(plain).map((value) => ({ value, standing: 'open' as const }));
}

function unlifted(things: (plain: Plain) => readonly { readonly id: string }[]) {
  return (plain: Plain, eye: Eye): Thing[] =>
    things(plain)
      .map((value) => ({ value, standing: standing(plain, eye, value.id) }))
      .filter(({ standing: is }) => is !== 'open');
}

function maybe<T>(value: T | undefined | null): T[] {
  return value === undefined || value === null ? [] : [value];
}

/** Everything of each shape that a content has. */
const THINGS: { readonly [S in Shape]: (plain: Plain, eye: Eye) => readonly Thing[] } = {
  card: inCards(({ front }) => [front]),
  image: inCards(({ front }) => maybe(front.image)),
  signer: inCards(({ front }) => front.signers ?? []),
  credit: inCards(({ front }) => front.credits ?? []),
  variation: inCards(({ front }) => maybe(front.variation)),
  source: inCards(({ front }) => front.sources ?? []),
  subset: (plain, eye) =>
    plain.sets.flatMap((set) =>
      set.plan.subsets.map((value) => ({
        value,
        standing: standing(plain, eye, ...aboutSubset(set, value.id)),
      })),
    ),
  roster: (plain, eye) =>
    plain.sets.flatMap((set) =>
      set.plan.subsets.flatMap(({ id, roster }) =>
        maybe(set.rosters[roster ?? '']).map((value) => ({
          value,
          standing: standing(plain, eye, ...aboutSubset(set, id)),
        })),
      ),
    ),
  artist: (plain) =>
    plain.sets.flatMap(({ rosters }) =>
      Object.values(rosters).flatMap(({ artists }) =>
        artists.map((value) => ({
          value,
          standing: value.state === 'signed' ? ('open' as const) : ('placeholder' as const),
        })),
      ),
    ),
  parallel: (plain, eye) =>
    plain.sets.flatMap(({ plan }) =>
      (plan.parallels ?? []).map((value) => ({
        value,
        standing: standing(plain, eye, plan, value),
      })),
    ),
  product: (plain, eye) =>
    plain.sets.flatMap(({ plan }) =>
      (plan.products ?? []).map((value) => ({
        value,
        standing: standing(plain, eye, plan, value),
      })),
    ),
  content: (plain, eye) =>
    plain.sets.flatMap((set) =>
      (set.plan.products ?? []).flatMap((product) =>
        (product.contents ?? []).map((value) => {
          const isSold = standing(plain, eye, set.plan, product) === 'open';
          return { value, standing: isSold ? oddsStanding(plain, eye, set, value.of) : 'absent' };
        }),
      ),
    ),
  plan: (plain, eye) =>
    plain.sets.map(({ plan }) => ({ value: plan, standing: standing(plain, eye, plan) })),
  correction: (plain, eye) =>
    plain.sets.flatMap((set) =>
      (set.corrections?.corrections ?? []).map((value) => {
        const card = set.cards.find(({ subset, id }) => `${subset}/${id}` === value.card);
        const is = card ? standing(plain, eye, ...aboutCard(set, card)) : 'absent';
        return { value, standing: is };
      }),
    ),
  property: known(({ property }) => [property]),
  level: unlifted(({ property }) => property.levels),
  embargo: unlifted(({ property }) => property.embargoes ?? []),
  legal: known(({ property }) => maybe(property.legal)),
  site: known(({ property }) => maybe(property.site)),
  look: known(({ property }) => maybe(property.site?.look)),
  cut: known(({ property }) => property.cuts ?? []),
  document: known(({ property }) => property.documents ?? []),
  beat: known(({ property }) => property.beats ?? []),
  names: known(({ names }) => [names]),
  name: (plain, eye) =>
    plain.names.names.map((value) => {
      const { level, embargo = [] } = value;
      return { value, standing: standing(plain, eye, { spoiler: level, embargo }) };
    }),
  secret: known(({ names }) => names.secrets ?? []),
  people: known(({ people }) => [people]),
  person: known(({ people }) => people.people),
  sales: known(({ sets }) => sets.flatMap(({ sales }) => sales.map(({ front }) => front))),
  back: known(({ layouts }) => layouts),
};

/** Whether the public must not see a key of a thing that stands like this. */
function isHidden(decision: Decision, { standing: is }: Thing): boolean {
  if (decision === 'open') return is === 'absent';
  return decision === 'shown' ? is !== 'open' : true;
}

/** The ways of leaking. */
export const WAYS = {
  'its value': (values: readonly string[]) => values.join('\n'),
  'whether it is there': (values: readonly string[]) =>
    values.map((value) => String(value !== '')).join(),
  'its length or count': (values: readonly string[]) => values.map((value) => value.length).join(),
  'an order by it': (values: readonly string[]) =>
    values
      .map((_, index) => index)
      .sort((a, b) => ((values[a] ?? '') < (values[b] ?? '') ? -1 : 1))
      .join(),
} as const;
export type Way = keyof typeof WAYS;

/** A key of a shape, with what the gate decides about it. */
export interface Key {
  readonly shape: Shape;
  readonly key: string;
  readonly decision: Decision;
}

export const KEYS: readonly Key[] = Object.entries(THINGS).flatMap(([shape]) => {
  const of = shape as Shape;
  return Object.entries(TABLES[of]).map(([key, decision]: [string, Decision]) => ({
    shape: of,
    key,
    decision,
  }));
});

/** "card.name". */
export function nameOf({ shape, key }: Key): string {
  return `${shape}.${key}`;
}

/** For each key what is hidden of it in a content: one text for each thing, empty where it is not. */
export function hiddenValues(plain: Plain, eye: Eye): readonly (readonly string[])[] {
  const things = new Map<Shape, readonly Thing[]>();
  return KEYS.map(({ shape, key, decision }) => {
    const all = things.get(shape) ?? THINGS[shape](plain, eye);
    things.set(shape, all);
    return all
      .filter((thing) => isHidden(decision, thing))
      .map(({ value }) => {
        const part: unknown = Reflect.get(value, key);
        return part === undefined ? '' : JSON.stringify(part);
      });
  });
}
