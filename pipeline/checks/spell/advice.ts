import type { English } from '../../text/index.js';
import { smallLetters, type Lexicon } from './lexicon.js';
import { oneSlipAway } from './near.js';
import type { Speller } from './speller.js';
import type { Subject } from '../subject.js';

/**
 * Different wrong words of a run for which the dictionary itself is asked what may be meant, if no
 * single slip explains them: each takes it up to 0.3 s.
 */
const MOST_ASKED = 20;

/** What may be meant by wrong words; each is asked for once, and the dictionary itself not often. */
export class Advice {
  private readonly given = new Map<string, readonly string[]>();
  private asked = 0;

  constructor(
    private readonly subject: Subject,
    private readonly lexicon: Lexicon,
  ) {}

  for(word: string, { english, knows }: Speller): readonly string[] {
    const key = `${english} ${word}`;
    const before = this.given.get(key);
    if (before) return before;
    const small = smallLetters(word);
    const knowsSmall = (other: string): boolean => this.lexicon.all.has(other) || knows(other);
    let near = oneSlipAway(small, knowsSmall);
    if (near.length === 0 && this.asked < MOST_ASKED) {
      this.asked += 1;
      near = this.subject.dictionaries(english).near(word);
    }
    const most = near.slice(0, 3).map((other) => withCapitalsOf(word, other));
    this.given.set(key, most);
    return most;
  }

  /** Whose other spelling it is, if it is one. */
  foreign(word: string, english: English): English | null {
    const other = english === 'american' ? 'british' : 'american';
    return this.subject.dictionaries(other).knows(smallLetters(word)) ? other : null;
  }
}

function withCapitalsOf(word: string, other: string): string {
  if (/^\p{Lu}{2}/u.test(word)) return other.toUpperCase();
  return /^\p{Lu}/u.test(word) ? other.charAt(0).toUpperCase() + other.slice(1) : other;
}
