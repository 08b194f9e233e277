import type { PropertyFile } from '../../schema/index.js';
import { spotOf, type Card, type CardSet, type Spot } from '../model/index.js';
import { NameIndex, foldedWords, type NamedForm } from '../text/index.js';
import type { Cut } from './cut-reach.js';
import type { Subject } from './subject.js';
import { cardTexts } from './told/card.js';
import { castIndex } from './told/scan.js';

/** A name that stands on a card, in whatever form. */
export interface NameUse {
  /** The name in `names.yaml`; of a name that is not there, the name as a cut has it. */
  readonly name: string;
  /** As it stands on the card. */
  readonly words: string;
  /** "the bio", "`facts.Berth`". */
  readonly what: string;
  readonly spot: () => Spot;
}

type Uses = WeakMap<Card, readonly NameUse[]>;

/** What was found on cards, by the property and the names that it was found with. */
const kept = new WeakMap<PropertyFile, WeakMap<object, Uses>>();
const NO_NAMES = {};

function usesWith({ property, content }: Subject): Uses {
  const byNames = kept.get(property) ?? new WeakMap<object, Uses>();
  kept.set(property, byNames);
  const names = content.names?.value ?? NO_NAMES;
  const uses: Uses = byNames.get(names) ?? new WeakMap<Card, readonly NameUse[]>();
  byNames.set(names, uses);
  return uses;
}

/** The names that cuts touch, as cards are searched for them. */
export class TouchedNames {
  readonly #subject: Subject;
  readonly #strange: NameIndex<string>;
  readonly #known = new Map<string, readonly string[]>();
  readonly #uses: Uses;

  constructor(subject: Subject) {
    this.#subject = subject;
    this.#uses = usesWith(subject);
    const strange: NamedForm<string>[] = [];
    for (const name of new Set((subject.property.cuts ?? []).flatMap(({ names }) => names ?? []))) {
      const bearers = this.#bearers(name);
      this.#known.set(name, bearers.length > 0 ? bearers : [name]);
      if (bearers.length === 0) strange.push({ form: name, exact: false, of: name });
    }
    this.#strange = new NameIndex(strange, { slips: false });
  }

  /** What a card uses of what a cut touches: each touched name once, where it first stands. */
  on(card: Card, set: CardSet, { names = [] }: Cut): readonly NameUse[] {
    if (names.length === 0) return [];
    const uses = this.#usesOf(card, set);
    return names.flatMap((touched) => {
      const bearers = this.#known.get(touched) ?? [];
      return uses.find(({ name }) => bearers.includes(name)) ?? [];
    });
  }

  /** Whose form a name of a cut is: "Captain Thrane" touches whoever is called so, in every form. */
  #bearers(name: string): readonly string[] {
    return castIndex(this.#subject)
      .find(name)
      .filter(({ doubt, from, to }) => doubt === null && from === 0 && to === name.length)
      .flatMap(({ of }) => of.map((bearer) => bearer.name));
  }

  #usesOf(card: Card, set: CardSet): readonly NameUse[] {
    const before = this.#uses.get(card);
    if (before) return before;
    const found = [...this.#search(card, set)];
    this.#uses.set(card, found);
    return found;
  }

  *#search(card: Card, set: CardSet): Generator<NameUse> {
    for (const { text, what, seams, spotOf: place } of cardTexts(card, set, this.#subject)) {
      if (seams) continue;
      for (const { name, from, to } of this.#named(text)) {
        yield { name, words: text.slice(from, to), what, spot: () => place(from, to) };
      }
    }
    for (const [at, words] of (card.front.image?.depicts ?? []).entries()) {
      const spot = (): Spot => spotOf(card.source, ['image', 'depicts', at]);
      for (const { name } of this.#named(words)) yield { name, words, what: '`depicts`', spot };
    }
  }

  *#named(text: string): Generator<{ name: string; from: number; to: number }> {
    const words = foldedWords(text);
    for (const { of, from, to, doubt } of castIndex(this.#subject).findIn(words)) {
      if (doubt === null) for (const { name } of of) yield { name, from, to };
    }
    for (const { of, from, to } of this.#strange.findIn(words)) {
      for (const name of of) yield { name, from, to };
    }
  }
}
