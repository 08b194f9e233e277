import { check } from '../../pipeline/checks/index.js';
import { diagnosticsOf, type Diagnostic } from '../../pipeline/editor/index.js';
import {
  approvalsOf,
  diskFolder,
  keptDictionaries,
  readProperty,
  readReview,
  type Folder,
} from '../../pipeline/read/index.js';

/** What `check` finds in a folder with other words in some of its files, as diagnostics. */
export function checkedAs(
  content: string,
  open: ReadonlyMap<string, string>,
  uriOf: (path: string) => string,
): Record<string, readonly Diagnostic[]> {
  const disk = diskFolder(content);
  const folder: Folder = {
    list: () => disk.list(),
    read: (path) => {
      const text = open.get(path);
      return text === undefined ? disk.read(path) : new TextEncoder().encode(text);
    },
  };
  const { content: read, fonts } = readProperty(folder);
  const approvals = approvalsOf(folder, read, fonts, readReview(folder));
  const { findings } = check(read, { fonts, dictionaries: keptDictionaries, approvals });
  const files = [...new Set(findings.map(({ file }) => file))].sort();
  return Object.fromEntries(
    files
      .map((file) => [file, diagnosticsOf(findings, file, uriOf)] as const)
      .filter(([, told]) => told.length > 0),
  );
}
