/** Jobs on one thing, one after another; on different things, at once. */
export class InTurn {
  readonly #last = new Map<string, Promise<unknown>>();

  of<T>(thing: string, job: () => Promise<T>): Promise<T> {
    const before = this.#last.get(thing) ?? Promise.resolve();
    const now = before.then(job, job);
    this.#last.set(thing, now);
    const forget = (): void => {
      if (this.#last.get(thing) === now) this.#last.delete(thing);
    };
    now.then(forget, forget);
    return now;
  }
}
