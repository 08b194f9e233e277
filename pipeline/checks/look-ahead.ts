import type { Card, CardSet, Content } from '../model/index.js';
import { groundOf, type Ground } from './ground.js';
import { CARD_RULES, withCardsAlone } from './one-card.js';
import { RULES } from './rules.js';
import type { CheckOptions } from './run.js';
import { subjectOf, type Subject } from './subject.js';

/** Cards that are looked at between two pauses: about a twentieth of a second for cards that are new. */
const BATCH = 16;

/** What else than a card decides what is worked out of it. */
interface Around {
  readonly ground: Ground;
  readonly fonts: CheckOptions['fonts'];
  readonly layouts: Content['layouts'];
}

/**
 * Looks at new cards a few at a time, so that what is worked out of each is at hand when every rule
 * looks at all of them: a rule that looked at a thousand new cards at once would keep an editor
 * waiting for seconds.
 */
export class LookAhead {
  #around: Around | null = null;
  #cards = new WeakSet<Card>();

  /** Whoever asks may stop after each few, and go on later. */
  *over(content: Content, options: CheckOptions): Generator<undefined, void, undefined> {
    const subject = subjectOf(content, options);
    if (!subject) return;
    this.#beAmid({ ground: groundOf(subject), fonts: options.fonts, layouts: content.layouts });
    for (const set of subject.sets) {
      const cards = set.cards.filter((card) => !this.#cards.has(card));
      for (let from = 0; from < cards.length; from += BATCH) {
        yield undefined;
        this.#lookAt(subject, set, cards.slice(from, from + BATCH));
      }
    }
  }

  #beAmid(around: Around): void {
    const before = this.#around;
    this.#around = around;
    if (before && isSame(before, around)) return;
    this.#cards = new WeakSet();
  }

  #lookAt(subject: Subject, set: CardSet, cards: readonly Card[]): void {
    const some = withCardsAlone(subject, set, cards);
    for (const { id, look } of RULES) {
      if (!CARD_RULES.has(id) || !look) continue;
      Array.from(look(some));
    }
    for (const card of cards) this.#cards.add(card);
  }
}

function isSame(a: Around, b: Around): boolean {
  return (
    a.ground === b.ground &&
    a.fonts === b.fonts &&
    a.layouts.size === b.layouts.size &&
    [...a.layouts].every(([id, layout]) => b.layouts.get(id) === layout)
  );
}
