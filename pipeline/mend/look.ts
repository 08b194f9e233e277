import type { CheckReport } from '../../schema/index.js';
import { check, type CheckOptions } from '../checks/index.js';
import type { Content } from '../model/index.js';
import {
  approvalsOf,
  keptDictionaries,
  readProperty,
  readReview,
  type Folder,
  type Review,
} from '../read/index.js';
import type { Approvals } from '../review/index.js';

/** A content folder, read and checked whole. */
export interface Looked {
  readonly content: Content;
  readonly review: Review;
  readonly approvals: Approvals;
  readonly report: CheckReport;
}

/** How it is looked at. */
export type LookOptions = Pick<CheckOptions, 'only' | 'progress'>;

/**
 * Reads a folder and asks every rule, or those that are asked for.
 * @throws what the folder throws when the disk fails.
 */
export function look(folder: Folder, options: LookOptions = {}): Looked {
  const { content, fonts } = readProperty(folder);
  const review = readReview(folder);
  const approvals = approvalsOf(folder, content, fonts, review);
  const report = check(content, { fonts, dictionaries: keptDictionaries, approvals, ...options });
  return { content, review, approvals, report };
}

/** A folder with some files as they would be. */
export function laidOver(folder: Folder, files: ReadonlyMap<string, Uint8Array>): Folder {
  return {
    list: () => folder.list(),
    read: (path) => files.get(path) ?? folder.read(path),
  };
}
