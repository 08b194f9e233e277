import { identityOf, type CardSet } from '../model/index.js';
import { nearest } from '../text/index.js';
import type { Found, Ground } from './ground.js';

/** A card that somebody named, or why it is none. */
export type Named =
  | { readonly ok: true; readonly key: string; readonly found: Found }
  | { readonly ok: false; readonly why: string };

/** Cards by every name that they can be called by. */
export class CardNames {
  readonly #byName = new Map<string, { readonly key: string; readonly found: Found }[]>();

  /** @param only the id of the one set that is meant, if it is said. */
  constructor({ content }: Pick<Ground, 'content'>, only?: string) {
    for (const set of content.sets) if (only === undefined || set.id === only) this.#addAll(set);
  }

  /** The card of `set/subset/id`, or of `subset/id` or a number where only one card has it. */
  find(typed: string): Named {
    const found = this.#byName.get(typed) ?? [];
    const [first, second] = found;
    if (!first) return { ok: false, why: this.#sayUnknown(typed) };
    if (!second) return { ok: true, ...first };
    const keys = found.map(({ key }) => key).join(', ');
    return { ok: false, why: `${typed}: several cards are called so: name one of ${keys}` };
  }

  #addAll(set: CardSet): void {
    for (const card of set.cards) {
      const { number, variation } = card.front;
      const named = { key: `${set.id}/${identityOf(card)}`, found: { set, card } };
      const numbers =
        number === 'none'
          ? []
          : variation === undefined
            ? [number]
            : [`${number}${variation.letter}`, `${number} ${variation.letter}`];
      for (const name of [named.key, identityOf(card), ...numbers]) {
        const before = this.#byName.get(name);
        if (before) before.push(named);
        else this.#byName.set(name, [named]);
      }
    }
  }

  #sayUnknown(typed: string): string {
    const near = nearest(typed, this.#byName.keys());
    return `there is no card ${typed}${near === null ? ': it is a set, subset and card, such as high-water/crew/c017' : `: the nearest is ${near}`}`;
  }
}
