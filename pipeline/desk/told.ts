import type { CardFile } from './card-files.js';
import type { DeskGround } from './desk-ground.js';
import type { CardKey, DeskEvent, FileDigest } from './protocol.js';

/** What is typed in a card, or else its file. */
interface Typed {
  readonly text: string;
  readonly sequence: number | null;
}
interface Texts {
  textOf(file: CardFile): Typed;
}

/** What pages have been told, so that they are told only what is other than that. */
export class Told {
  readonly #findings = new Map<CardKey, string>();
  readonly #drafts = new Map<CardKey, string>();
  readonly #digests = new Map<CardKey, FileDigest | null>();
  /** Cards of which findings were told before all rules had looked. */
  readonly #asked = new Set<CardKey>();
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

  /** Somebody was told what is known of a card. */
  asked(card: CardKey): void {
    if (this.#isFirst) this.#asked.add(card);
  }

  /** Rules that look at one card have looked at what is typed. */
  atOnce(ground: DeskGround, texts: Texts): void {
    for (const card of ground.drafts.all.keys()) {
      const file = ground.files.get(card);
      if (file) this.#tellDraft(ground, file, texts.textOf(file), false);
    }
  }

  /** All rules have looked. The first time those alone hear of it who had asked. */
  settled(ground: DeskGround, texts: Texts): void {
    const byFile = new Map<string, string[]>();
    for (const finding of ground.known().findings) {
      const words = JSON.stringify(finding);
      byFile.set(finding.file, [...(byFile.get(finding.file) ?? []), words]);
    }
    for (const file of ground.files.values()) {
      const now = (byFile.get(file.path) ?? []).join('\n');
      const isSame = (this.#findings.get(file.key) ?? '') === now;
      this.#findings.set(file.key, now);
      if (ground.drafts.of(file.key)) {
        this.#tellDraft(ground, file, texts.textOf(file), true);
        continue;
      }
      this.#drafts.delete(file.key);
      if (isSame || (this.#isFirst && !this.#asked.has(file.key))) continue;
      this.#tell(ground, file, texts.textOf(file), true);
    }
    this.#isFirst = false;
    this.tell({ type: 'settled' });
  }

  /** Of each draft it is told once that it was looked at, and then what is other than that. */
  #tellDraft(ground: DeskGround, file: CardFile, typed: Typed, settled: boolean): void {
    const findings = ground.findings(file, typed.text);
    const now = JSON.stringify([typed.sequence, settled, findings]);
    if (this.#drafts.get(file.key) === now) return;
    this.#drafts.set(file.key, now);
    this.#tell(ground, file, typed, settled, findings);
  }

  #tell(
    ground: DeskGround,
    { key, ...file }: CardFile,
    { text, sequence }: Typed,
    settled: boolean,
    findings = ground.findings({ key, ...file }, text),
  ): void {
    this.tell({ type: 'findings', card: key, sequence, settled, findings });
  }
}
