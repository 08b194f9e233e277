import type { FileText } from './texts.js';

/**
 * How one card's file was, in the order in which it came to be so, and where in it the file is now.
 * Nothing that stood there is ever let go: what was undone and then written over is put in again, as
 * it was gone back over, so that undoing far enough comes to it.
 */
export class Versions {
  #all: FileText[];
  #at = 0;

  constructor(first: FileText) {
    this.#all = [first];
  }

  get now(): FileText {
    return this.#of(this.#at);
  }

  get before(): FileText | null {
    return this.#at > 0 ? this.#of(this.#at - 1) : null;
  }

  get after(): FileText | null {
    return this.#at < this.#all.length - 1 ? this.#of(this.#at + 1) : null;
  }

  /** Notes what the file is now, if that is something else. */
  put(version: FileText): void {
    if (version.digest === this.now.digest) return;
    for (let at = this.#all.length - 2; at >= this.#at; at -= 1) this.#all.push(this.#of(at));
    this.#all.push(version);
    this.#at = this.#all.length - 1;
  }

  back(): void {
    this.#at = Math.max(0, this.#at - 1);
  }

  forth(): void {
    this.#at = Math.min(this.#all.length - 1, this.#at + 1);
  }

  /** A version of this digest, by which what was edited against it is understood. */
  find(digest: string): FileText | null {
    return this.#all.findLast((version) => version.digest === digest) ?? null;
  }

  #of(at: number): FileText {
    const version = this.#all[at];
    if (!version) throw new RangeError(`there is no version ${String(at)}`);
    return version;
  }
}
