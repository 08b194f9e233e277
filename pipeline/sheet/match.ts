import type { Subset } from '../../schema/index.js';
import {
  identityOf,
  isVariation,
  plannedNumbers,
  type Card,
  type CardSet,
} from '../model/index.js';
import { nearest } from '../text/index.js';
import type { CardRow } from './rows.js';
import { folded } from './tidy.js';

/** The card that a row is of, a new one of a subset, or why nobody knows. */
export type Match =
  | { readonly kind: 'card'; readonly card: Card }
  | { readonly kind: 'new'; readonly subset: Subset; readonly number: string }
  | { readonly kind: 'none'; readonly why: string };

/** Most times that something near is looked for: a wrong file has thousands of unknown words. */
const MOST_ADVICE = 100;

/** Finds the cards of a set by what a row says of them. */
export class CardFinder {
  readonly #byIdentity: ReadonlyMap<string, Card>;
  readonly #byNumber: ReadonlyMap<string, readonly Card[]>;
  readonly #subsets: ReadonlyMap<string, Subset>;
  readonly #planned: ReadonlyMap<string, readonly Subset[]>;
  #advice = 0;

  constructor(private readonly set: CardSet) {
    const { subsets } = set.plan.value;
    this.#byIdentity = new Map(set.cards.map((card) => [identityOf(card), card]));
    this.#byNumber = grouped(set.cards, ({ front }) => front.number);
    this.#subsets = new Map([
      ...subsets.map((subset) => [folded(subset.title), subset] as const),
      ...subsets.map((subset) => [folded(subset.id), subset] as const),
    ]);
    const numbers = subsets.flatMap((subset) =>
      (plannedNumbers(subset.numbers) ?? []).map((number) => ({ number, subset })),
    );
    this.#planned = new Map(
      [...grouped(numbers, ({ number }) => number)].map(([number, own]) => [
        number,
        own.map(({ subset }) => subset),
      ]),
    );
  }

  /** The subset of a word: its id or its title. */
  subsetOf(word: string): Subset | undefined {
    return this.#subsets.get(folded(word));
  }

  find(row: CardRow): Match {
    if (row.identity !== null) return this.#named(row, row.identity);
    const subset = row.subset === null ? null : this.subsetOf(row.subset);
    if (subset === undefined) {
      const ids = this.set.plan.value.subsets.map(({ id }) => id);
      return none(`the plan has no subset ${row.subset ?? ''}${this.#near(row.subset ?? '', ids)}`);
    }
    const number = textOf(row, 'number');
    if (number === null && subset?.numbers !== 'none') return this.#called(row, subset);
    if (number === null || number === 'none') return this.#called(row, subset, 'none');
    return this.#numbered(row, subset, number);
  }

  #named(row: CardRow, identity: string): Match {
    const card = this.#byIdentity.get(identity);
    if (!card) {
      const [folder] = identity.split('/');
      const all = [...this.#byIdentity.keys()];
      const own = all.filter((known) => known.startsWith(`${folder ?? ''}/`));
      const near = this.#near(identity, own.length === 0 ? all : own);
      return none(
        `there is no card ${identity}${near}; a new card has no identity yet: leave the cell empty`,
      );
    }
    const subset = row.subset === null ? undefined : this.subsetOf(row.subset);
    if (row.subset !== null && subset?.id !== card.subset) {
      return none(
        `${identity} is of the subset ${card.subset}, and the row says ${row.subset}: a card stays where it is`,
      );
    }
    return { kind: 'card', card };
  }

  #numbered(row: CardRow, subset: Subset | null, number: string): Match {
    const letter = textOf(row, 'variation.letter');
    const cards = this.#bearers(number, subset);
    const own = cards.filter(({ front }) => (front.variation?.letter ?? null) === letter);
    if (own.length === 1 && own[0]) return { kind: 'card', card: own[0] };
    if (own.length > 1)
      return none(`several cards have the number ${number}: name one by Identity`);
    const [, parent, sign] = /^(.*[^\sa-z])\s?([a-z])$/.exec(number) ?? [];
    if (cards.length === 0 && parent !== undefined) {
      const variations = this.#bearers(parent, subset).filter(
        ({ front }) => front.variation?.letter === sign,
      );
      if (variations.length === 1 && variations[0]) return { kind: 'card', card: variations[0] };
    }
    return this.#planning(subset, number);
  }

  /** A card that is not there yet: its number must be one that the plan gives out. */
  #planning(subset: Subset | null, number: string): Match {
    const of = subset ? [subset] : (this.#planned.get(number) ?? []);
    const [only, more] = of;
    if (!only || more) {
      return none(
        only
          ? `several subsets have a number ${number}: say which by a column Subset, or with --into`
          : `no subset of the plan has a number ${number}${this.#near(number, this.#planned.keys())}`,
      );
    }
    if (this.#planned.get(number)?.includes(only) !== true) {
      const planned = plannedNumbers(only.numbers);
      if (planned === null) return none(`the cards of ${only.id} have no numbers: write none`);
      return none(`the plan gives ${only.id} no number ${number}${this.#near(number, planned)}`);
    }
    return { kind: 'new', subset: only, number };
  }

  #bearers(number: string, subset: Subset | null): readonly Card[] {
    const cards = this.#byNumber.get(number) ?? [];
    return subset ? cards.filter((card) => card.subset === subset.id) : cards;
  }

  /** A row without a number is of the one card with its name. */
  #called(row: CardRow, subset: Subset | null | undefined, number?: 'none'): Match {
    const name = textOf(row, 'name');
    if (name === null) return none('nothing says which card this is: no identity, number or name');
    const cards = this.set.cards.filter(
      (card) =>
        card.front.name === name &&
        !isVariation(card) &&
        (!subset || card.subset === subset.id) &&
        (number === undefined || card.front.number === number),
    );
    if (cards.length === 1 && cards[0]) return { kind: 'card', card: cards[0] };
    if (cards.length > 1) return none(`several cards are called ${name}: name one by Identity`);
    if (number === 'none' && subset?.numbers === 'none') return { kind: 'new', subset, number };
    return none(`no card is called ${name}, and a new one needs a number`);
  }

  #near(typed: string, known: Iterable<string>): string {
    this.#advice += 1;
    const near = this.#advice > MOST_ADVICE ? null : nearest(typed, known);
    return near === null ? '' : `; did you mean ${near}?`;
  }
}

/** The words of a key in a row; null if it has none. */
export function textOf({ entries }: CardRow, key: string): string | null {
  return entries.get(key)?.text ?? null;
}

function none(why: string): Match {
  return { kind: 'none', why };
}

function grouped<T>(all: readonly T[], keyOf: (each: T) => string): ReadonlyMap<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const each of all) {
    const own = groups.get(keyOf(each));
    if (own) own.push(each);
    else groups.set(keyOf(each), [each]);
  }
  return groups;
}
