import { basename, relative, sep } from 'node:path';

import { watch } from 'chokidar';

/** Milliseconds in which changes are taken together: a save is several steps. */
const TOGETHER = 40;

/** Calls with the paths that change below a content folder, until what it returns is called. */
export function watchDesk(
  content: string,
  changed: (paths: readonly string[]) => void,
): () => void {
  const waiting = new Set<string>();
  let timer: NodeJS.Timeout | undefined;
  const watcher = watch(content, {
    ignoreInitial: true,
    ignored: (path) => path !== content && isOwn(basename(path)),
  });
  watcher.on('all', (event, path) => {
    if (event === 'addDir' || event === 'unlinkDir') return;
    waiting.add(relative(content, path).split(sep).join('/'));
    timer ??= setTimeout(() => {
      timer = undefined;
      const paths = [...waiting].sort();
      waiting.clear();
      changed(paths);
    }, TOGETHER);
  });
  watcher.on('error', () => undefined);
  return () => {
    clearTimeout(timer);
    void watcher.close();
  };
}

/** Hidden files, and locks: they come and go with each save. */
function isOwn(name: string): boolean {
  return name.startsWith('.') || /^ledger\.jsonl\.lock/.test(name);
}
