import type { CheckReport } from '../../schema/index.js';
import { check } from '../../pipeline/checks/index.js';
import {
  KeptReadings,
  approvalsOf,
  keptDictionaries,
  memoryFolder,
  readContent,
  readFonts,
  readReview,
} from '../../pipeline/read/index.js';

type Files = ReadonlyMap<string, string | Uint8Array>;

/**
 * What `check` finds in copies of the demo, one after another, without what is accepted. A file that
 * is the same in two copies is read once, as an editor does it.
 */
export class CopyChecker {
  readonly #readings = new KeptReadings();
  readonly #bytes = new Map<string, { readonly text: string; readonly bytes: Uint8Array }>();

  findingsOf(files: Files): CheckReport['findings'] {
    const folder = memoryFolder(
      new Map([...files].map(([path, file]) => this.#encoded(path, file))),
    );
    const read = readContent(folder, this.#readings);
    const { fonts, faults } = readFonts(read.layouts, folder);
    const content = { ...read, faults: [...read.faults, ...faults] };
    const approvals = approvalsOf(folder, content, fonts, readReview(folder));
    const { findings } = check(content, { fonts, dictionaries: keptDictionaries, approvals });
    return findings.filter(({ accepted }) => accepted === undefined);
  }

  /** The same bytes for the same text of a file. */
  #encoded(path: string, file: string | Uint8Array): readonly [string, Uint8Array] {
    if (typeof file !== 'string') return [path, file];
    const known = this.#bytes.get(path);
    if (known?.text === file) return [path, known.bytes];
    const bytes = new TextEncoder().encode(file);
    if (!known) this.#bytes.set(path, { text: file, bytes });
    return [path, bytes];
  }
}
