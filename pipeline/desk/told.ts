import type { CardFile } from './card-files.js';
import type { DeskGround } from './desk-ground.js';
import type { CardKey, DeskEvent, FileDigest } from './protocol.js';

/** What pages have been told, so that they are told only what is other than that. */
export class Told {
  readonly #findings = new Map<CardKey, string>();
  readonly #digests = new Map<CardKey, FileDigest | null>();
  #isFirst = true;

  constructor(readonly tell: (event: DeskEvent) => void) {}

  /** Files changed: of what the desk wrote itself the watch of the disk tells once more. */
  changed(
    cards: readonly { readonly card: CardKey; readonly digest: FileDigest | null }[],
    others: boolean,
  ): void {
    const fresh = cards.filter(({ card, digest }) => this.#digests.get(card) !== digest);
    for (const { card, digest } of fresh) this.#digests.set(card, digest);
    if (fresh.length > 0 || others) this.tell({ type: 'changed', cards: fresh, others });
  }

  /** All rules have looked. The first time nobody has been told anything that could be otherwise. */
  settled(
    ground: DeskGround,
    textOf: (file: CardFile) => { readonly text: string; readonly sequence: number | null },
  ): void {
    const byFile = new Map<string, string[]>();
    for (const finding of ground.known().findings) {
      const words = JSON.stringify(finding);
      byFile.set(finding.file, [...(byFile.get(finding.file) ?? []), words]);
    }
    for (const file of ground.files.values()) {
      const now = (byFile.get(file.path) ?? []).join('\n');
      if ((this.#findings.get(file.key) ?? '') === now) continue;
      this.#findings.set(file.key, now);
      if (this.#isFirst) continue;
      const { text, sequence } = textOf(file);
      const findings = ground.findings(file, text);
      this.tell({ type: 'findings', card: file.key, sequence, settled: true, findings });
    }
    this.#isFirst = false;
    this.tell({ type: 'settled' });
  }
}
