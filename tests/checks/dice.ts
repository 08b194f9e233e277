/** A small generator of numbers that is the same on every machine (Lehmer 1951, 48271 mod 2^31 - 1). */
export class Dice {
  #state: number;

  constructor(seed: number) {
    this.#state = seed;
  }

  below(limit: number): number {
    this.#state = (this.#state * 48271) % 2147483647;
    return this.#state % limit;
  }

  pick<T>(from: readonly T[]): T {
    const found = from[this.below(from.length)];
    if (found === undefined) throw new RangeError('nothing to pick from');
    return found;
  }
}
