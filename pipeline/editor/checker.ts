import {
  LookAhead,
  lookAgain,
  lookInSteps,
  readingFindings,
  reportOf,
  type Looked,
} from '../checks/index.js';
import type { Finding } from '../../schema/index.js';
import { changedCards } from './changed-cards.js';
import type { Reader, Standing } from './reader.js';

/** What is known of a folder at a moment. */
export interface Known {
  readonly standing: Standing;
  /** As `check` sorts them, accepted ones among them. */
  readonly findings: readonly Finding[];
}

/** Most cards that are looked at one by one before all are looked at together. */
const FEW = 8;

/**
 * The findings of a folder that is being written in. `read` answers at once: exact for the file that
 * was typed in under every rule that looks at one card. `settle` then makes all of it what `check`
 * finds. While a file cannot be read its faults are shown, and all other files as they were found
 * with what it held last.
 */
export class Checker {
  readonly #reader: Reader;
  readonly #ahead = new LookAhead();
  #known: Known | null = null;
  #looked: Looked | null = null;
  #settled = false;

  constructor(reader: Reader) {
    this.#reader = reader;
  }

  /** What is known now; null before the first `read`. */
  get known(): Known | null {
    return this.#known;
  }

  /** Whether it is what `check` finds. */
  get isSettled(): boolean {
    return this.#settled;
  }

  /**
   * Reads what has changed and answers at once.
   * @throws what the folder throws when the disk fails.
   */
  read(): Known {
    const standing = this.#reader.read();
    this.#settled = false;
    this.#looked = this.#looked && this.#quick(this.#looked, standing);
    return this.#tell(standing);
  }

  /** Looks at everything, rule by rule, so that whoever asks can stop between two and read anew. */
  *settle(): Generator<undefined, Known, undefined> {
    const standing = this.#known?.standing ?? this.read().standing;
    yield* this.#ahead.over(standing.content, standing.options);
    this.#looked = yield* lookInSteps(standing.content, standing.options);
    this.#settled = true;
    return this.#tell(standing);
  }

  #quick(before: Looked, { content, options }: Standing): Looked {
    const changes = changedCards(before.content, content);
    if (!changes || changes.length > FEW) return before;
    return changes.reduce((looked, change) => lookAgain(looked, content, change, options), before);
  }

  #tell(standing: Standing): Known {
    this.#known = { standing, findings: this.#findings(standing) };
    return this.#known;
  }

  #findings({ asTyped, unreadable, older }: Standing): readonly Finding[] {
    if (!this.#looked) return readingFindings(asTyped);
    const { findings } = reportOf(this.#looked);
    const anew = this.#settled ? older : unreadable;
    if (anew.size === 0) return findings;
    return [
      ...findings.filter(({ file }) => !anew.has(file)),
      ...readingFindings(asTyped).filter(({ file }) => anew.has(file)),
    ];
  }
}
