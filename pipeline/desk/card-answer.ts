import type { CardFile } from './card-files.js';
import type { DeskGround } from './desk-ground.js';
import { historyNotes } from './history-notes.js';
import type { CardAnswer } from './protocol.js';
import { typedCard, type FileText } from './texts.js';
import type { Versions } from './versions.js';

/** A card's file as it is on the disk, and what the desk knows of how it was. */
export interface CardOnDisk {
  readonly disk: FileText;
  readonly versions: Versions;
  /** Why it cannot be written; null if it can. */
  readonly readOnly: string | null;
}

/** All that a page is told of a card when it opens it. */
export function cardAnswer(
  ground: DeskGround,
  file: CardFile,
  { disk, versions, readOnly }: CardOnDisk,
): CardAnswer {
  const draft = ground.drafts.of(file.key);
  const text = draft?.text ?? disk.text;
  const isCurrent = versions.now.digest === disk.digest;
  return {
    card: file.key,
    file: file.path,
    digest: disk.digest,
    saved: typedCard(file.path, disk.text),
    draft: draft && {
      base: draft.base.digest,
      typed: typedCard(file.path, draft.text),
      sequence: draft.sequence,
    },
    form: ground.form(file, text),
    look: ground.look(file, text),
    row: ground.rowOf(file),
    history: historyNotes(ground.known().standing.content, ground.review, file.key),
    change: ground.change(file),
    canUndo: isCurrent && versions.before !== null,
    canRedo: isCurrent && versions.after !== null,
    readOnly,
    ...ground.neighbours(file),
  };
}
