import type { Folder } from '../read/index.js';
import type { CardFile } from './card-files.js';
import type { Drafts } from './drafts.js';
import { merged } from './merge.js';
import type { CardAnswer, CardKey } from './protocol.js';
import { Refusal, unknown } from './refusal.js';
import { readCardFile, type SavingPlace } from './saving.js';
import { typedCard, withText, type FileText } from './texts.js';
import { Versions } from './versions.js';

/** The texts of cards: on the disk, as they were seen, and as they were before. */
export class CardTexts {
  readonly #order: SavingPlace & { readonly folder: Folder };
  readonly #drafts: Drafts;
  readonly #files: () => ReadonlyMap<CardKey, CardFile>;
  readonly #versions = new Map<CardKey, Versions>();
  /** Texts that cards were seen with, by digest: what a page edits against. */
  readonly #seen = new Map<string, FileText>();

  constructor(
    order: SavingPlace & { readonly folder: Folder },
    drafts: Drafts,
    files: () => ReadonlyMap<CardKey, CardFile>,
  ) {
    this.#order = order;
    this.#drafts = drafts;
    this.#files = files;
  }

  note(text: FileText): void {
    this.#seen.set(text.digest, text);
  }

  find(card: CardKey): CardFile {
    const file = this.#files().get(card);
    if (!file) throw unknown('there is no such card');
    return file;
  }

  /** The file that itself lies in the content; null for a link. */
  read(file: CardFile): FileText | null {
    return readCardFile(this.#order, file.path);
  }

  readOrRefuse(file: CardFile): FileText {
    const own = this.read(file);
    const text = own ?? readLinked(this.#order.folder, file.path);
    if (!text) throw unknown('this card is not there any more, or is no text');
    this.#seen.set(text.digest, text);
    return text;
  }

  baseOf(file: CardFile, digest: string): FileText {
    const disk = this.readOrRefuse(file);
    if (disk.digest === digest) return disk;
    const draft = this.#drafts.of(file.key);
    const known = draft?.base.digest === digest ? draft.base : (this.#seen.get(digest) ?? null);
    if (known) return known;
    throw new Refusal(409, {
      error: 'unknown',
      message: 'the desk does not know the file that this was typed against: open the card again',
    });
  }

  versionsOf({ key }: CardFile, disk: FileText): Versions {
    const versions = this.#versions.get(key) ?? new Versions(disk);
    this.#versions.set(key, versions);
    return versions;
  }

  textOf(file: CardFile): { readonly text: string; readonly sequence: number | null } {
    const draft = this.#drafts.of(file.key);
    return draft
      ? { text: draft.text, sequence: draft.sequence }
      : { text: this.read(file)?.text ?? '', sequence: null };
  }
  conflict(file: CardFile, base: FileText, yours: FileText, disk: FileText): Refusal {
    this.#seen.set(disk.digest, disk);
    const both = merged(base.text, yours.text, disk.text);
    const typed = ({ text }: { readonly text: string }): CardAnswer['saved'] =>
      typedCard(file.path, text);
    return new Refusal(409, {
      error: 'conflict',
      message: 'this card was changed by somebody else in the meantime: nothing was written',
      card: file.key,
      base: typed(base),
      yours: typed(yours),
      disk: typed(disk),
      digest: disk.digest,
      merged: both === null ? null : typed({ text: both }),
    });
  }
}

export const LINKED = 'this file is a link: the desk does not write through links';

function readLinked(folder: Folder, path: string): FileText | null {
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(folder.read(path));
    return withText({ text, isMarked: false, digest: '' }, text);
  } catch {
    return null;
  }
}
