import type { Finding } from '../../schema/index.js';
import { diagnosticsOf, type Diagnostic } from './diagnostics.js';

/** The diagnostics of a file. */
export interface Published {
  readonly path: string;
  readonly version: number | null;
  readonly diagnostics: readonly Diagnostic[];
}

/** Tells an editor what is found in each file: only what it does not know yet. */
export class Publisher {
  readonly #told = new Map<string, string>();
  readonly #versionOf: (path: string) => number | null;
  readonly #uriOf: ((path: string) => string) | undefined;
  readonly #send: (published: Published) => void;

  /** @param uriOf addresses of related places, if the editor shows such. */
  constructor(
    versionOf: (path: string) => number | null,
    uriOf: ((path: string) => string) | undefined,
    send: (published: Published) => void,
  ) {
    this.#versionOf = versionOf;
    this.#uriOf = uriOf;
    this.#send = send;
  }

  /** @param open paths of documents that are open: they are told of even if nothing is found. */
  tell(findings: readonly Finding[], open: Iterable<string>): void {
    const byFile = new Map<string, Finding[]>();
    for (const finding of findings) {
      const known = byFile.get(finding.file);
      if (known) known.push(finding);
      else byFile.set(finding.file, [finding]);
    }
    for (const path of new Set([...open, ...this.#told.keys(), ...byFile.keys()])) {
      this.#tellOf(path, byFile.get(path) ?? []);
    }
  }

  #tellOf(path: string, findings: readonly Finding[]): void {
    const version = this.#versionOf(path);
    const diagnostics = diagnosticsOf(findings, path, this.#uriOf);
    const told = JSON.stringify([version, diagnostics]);
    if (this.#told.get(path) === told) return;
    if (version === null && diagnostics.length === 0) {
      if (!this.#told.delete(path)) return;
    } else this.#told.set(path, told);
    this.#send({ path, version, diagnostics });
  }
}
