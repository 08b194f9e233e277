import type { Folder } from '../read/index.js';
import type { Disk } from '../write/index.js';
import type { DeskEvent } from './protocol.js';

/** What a desk is opened with. */
export interface DeskOrder {
  readonly contentPath: string;
  readonly folder: Folder;
  readonly now: () => number;
  /** Where what is typed and not saved is kept: the user's own, outside of the content. */
  readonly draftsFolder: string;
  /** A few letters that no other session has. */
  readonly session: string;
  readonly tell: (event: DeskEvent) => void;
  readonly disk?: Disk;
}
