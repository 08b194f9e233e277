import { watch } from 'chokidar';

/** Milliseconds of quiet after a change before it is acted on: an editor saves in several steps. */
const QUIET = 80;

/**
 * Calls `changed` whenever a file below the folder changes, until the process is ended.
 * @throws what `changed` throws, and what the disk does.
 */
export async function watchFolder(folder: string, changed: () => Promise<unknown>): Promise<never> {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const watcher = watch(folder, { ignoreInitial: true, ignored: /(^|[/\\])\.[^/\\]/ });
  try {
    return await new Promise<never>((_, reject) => {
      watcher.on('error', reject);
      watcher.on('all', () => {
        clearTimeout(waiting);
        waiting = setTimeout(() => void changed().catch(reject), QUIET);
      });
    });
  } finally {
    await watcher.close();
  }
}
