import type { Folder } from '../read/index.js';
import type { CardKey } from './protocol.js';

/** A card by its place in the folder: whatever stands in its file. */
export interface CardFile {
  readonly key: CardKey;
  readonly set: string;
  readonly subset: string;
  readonly id: string;
  /** Relative to the content folder, with /. */
  readonly path: string;
}

const PLACE = /^([a-z0-9-]+)\/cards\/([a-z0-9-]+)\/([a-z0-9-]+)\.md$/;

/**
 * The cards that there are. A card is looked up here by its key, so that nothing that a request says
 * ever becomes a path.
 */
export function cardFilesIn(folder: Pick<Folder, 'list'>): ReadonlyMap<CardKey, CardFile> {
  return new Map(
    folder.list().flatMap(({ path, outside }) => {
      const file = outside ? null : cardFileOf(path);
      return file ? [[file.key, file] as const] : [];
    }),
  );
}

/** The card of a path; null for what is no card. */
export function cardFileOf(path: string): CardFile | null {
  const [, set, subset, id] = PLACE.exec(path) ?? [];
  if (set === undefined || subset === undefined || id === undefined) return null;
  return { key: `${set}/${subset}/${id}`, set, subset, id, path };
}
