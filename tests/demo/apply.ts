import { withEdit } from './copy.js';
import type { FileEdit } from './edits/index.js';

type Files = Map<string, string | Uint8Array>;

/** The demo's files with edits made. */
export function withEdits(
  files: ReadonlyMap<string, string | Uint8Array>,
  edits: Readonly<Record<string, FileEdit>>,
): Files {
  return Object.entries(edits).reduce(
    (done, [path, edit]) => withFileEdit(done, path, edit),
    new Map(files),
  );
}

function withFileEdit(files: Files, path: string, edit: FileEdit): Files {
  if (edit === null) return new Map([...files].filter(([other]) => other !== path));
  if ('text' in edit) return new Map(files).set(path, edit.text);
  if ('body' in edit) {
    const old = String(files.get(path));
    const front = old.slice(0, old.indexOf('\n---\n') + 5);
    return new Map(files).set(path, `${front}${edit.body}\n`);
  }
  return edit.reduce((done, [from, to]) => withEdit(done, path, from, to), files);
}
