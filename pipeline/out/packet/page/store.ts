import { DraftCrypt } from '../draft-crypt.js';
import { isDraft, type Draft } from './book.js';

/** Keeps drafts in this browser, sealed. Where it has no storage nothing is kept. */
export class Store {
  #last: Promise<void> = Promise.resolve();
  /** False once something could not be kept. */
  works = true;

  private constructor(readonly crypt: DraftCrypt) {}

  static async of(privateKey: string): Promise<Store> {
    return new Store(await DraftCrypt.of(privateKey));
  }

  async draft(): Promise<Draft | null> {
    const kept = this.#try(() => localStorage.getItem(this.crypt.name));
    const text = kept ? await this.crypt.opened(kept) : null;
    const value: unknown = text === null ? null : JSON.parse(text);
    return isDraft(value) ? value : null;
  }

  /** One after another, so that the last one stays. */
  keep(draft: Draft): Promise<void> {
    this.#last = this.#last.then(async () => {
      const nonce = crypto.getRandomValues(new Uint8Array(12));
      const sealed = await this.crypt.sealed(JSON.stringify(draft), nonce);
      this.#try(() => localStorage.setItem(this.crypt.name, sealed));
    });
    return this.#last;
  }

  async forget(): Promise<void> {
    await this.#last;
    this.#try(() => localStorage.removeItem(this.crypt.name));
  }

  #try<T>(use: () => T): T | null {
    try {
      return use();
    } catch {
      this.works = false;
      return null;
    }
  }
}
