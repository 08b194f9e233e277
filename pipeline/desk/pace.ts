/**
 * Milliseconds without a letter after which what is typed is read with everything else, and of typing
 * without such a pause after which it is read all the same. In a set of a thousand cards reading takes
 * about as long as a letter may, so it stays out of the way of the next one.
 */
const UNREAD = 300;
const LONGEST_UNREAD = 8000;

/** Milliseconds for which the rules wait after a letter, after a question, and after the first ones. */
export const TYPING_REST = 1200;
export const REST = 200;
export const FIRST_REST = 1500;

/** When what is typed is read: who types on is not kept waiting by it, and yet hears of it. */
export class Pace {
  #readAt = -Infinity;

  constructor(private readonly elapsed: () => number = () => performance.now()) {}

  /** Everything was read just now. */
  read(): void {
    this.#readAt = this.elapsed();
  }

  /**
   * Milliseconds to wait before what was typed just now is read.
   * @param hasLooked whether all rules have looked once: before that there is nothing to hear of.
   */
  before(hasLooked: boolean): number {
    return hasLooked && this.elapsed() - this.#readAt > LONGEST_UNREAD ? 0 : UNREAD;
  }
}
