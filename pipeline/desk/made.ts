/** A file that was made, at an address that nobody can guess. */
export interface MadeFile {
  readonly type: string;
  readonly bytes: Uint8Array;
}

/** Most files that are kept. */
const MOST = 6;

/** What jobs made, in memory: a browser's viewer asks for it without the token. */
export class Made {
  readonly #files = new Map<string, MadeFile>();

  /** @param random so many octets of chance, as text that can stand in an address. */
  constructor(private readonly random: () => string) {}

  /** Keeps a PDF, and gives its address. */
  put(name: string, bytes: Uint8Array): string {
    const path = `/made/${this.random()}/${name}`;
    this.#files.set(path, { type: 'application/pdf', bytes });
    for (const oldest of this.#files.keys()) {
      if (this.#files.size <= MOST) break;
      this.#files.delete(oldest);
    }
    return path;
  }

  at(path: string): MadeFile | null {
    return this.#files.get(path) ?? null;
  }
}
