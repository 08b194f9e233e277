import { watch } from 'chokidar';

/** Milliseconds of quiet after a change before it is acted on: an editor saves in several steps. */
const QUIET = 80;

/** Calls `changed` whenever a file below the folder changes, until the process is ended. */
export async function watchFolder(folder: string, changed: () => void): Promise<never> {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const watcher = watch(folder, { ignoreInitial: true, ignored: /(^|[/\\])\.[^/\\]/ });
  watcher.on('all', () => {
    clearTimeout(waiting);
    waiting = setTimeout(changed, QUIET);
  });
  return new Promise<never>((_, reject) => {
    watcher.on('error', reject);
  });
}
