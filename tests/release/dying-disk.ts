import { readdirSync } from 'node:fs';
import { join } from 'node:path';

import { realDisk, type Disk } from '../../pipeline/write/index.js';

/** The process that wrote to the disk is gone. */
export class Died extends Error {}

/** How the last call ends: it never begins, or it is half done where it can be. */
export type Ending = 'before' | 'halfway';

/** The real disk of a process that dies at its nth call, from 0; every later call fails too. */
export function dyingDisk(at: number, ending: Ending): Disk & { readonly calls: () => number } {
  let calls = 0;
  const step = <T>(call: () => T, half: () => void = () => undefined): T => {
    const now = calls;
    calls += 1;
    if (now < at) return call();
    if (now === at && ending === 'halfway') half();
    throw new Died();
  };
  return {
    calls: () => calls,
    kind: (path) => step(() => realDisk.kind(path)),
    list: (path) => step(() => realDisk.list(path)),
    read: (path) => step(() => realDisk.read(path)),
    readLink: (path) => step(() => realDisk.readLink(path)),
    makeFolder: (path) => {
      step(() => {
        realDisk.makeFolder(path);
      });
    },
    makePrivateFolder: (path) => {
      step(() => {
        realDisk.makePrivateFolder(path);
      });
    },
    writeSynced: (path, bytes) => {
      step(
        () => {
          realDisk.writeSynced(path, bytes);
        },
        () => {
          realDisk.writeSynced(path, bytes.subarray(0, bytes.length / 2));
        },
      );
    },
    syncFolder: (path) => {
      step(() => {
        realDisk.syncFolder(path);
      });
    },
    rename: (from, to) => {
      step(() => {
        realDisk.rename(from, to);
      });
    },
    link: (target, path) => {
      step(() => {
        realDisk.link(target, path);
      });
    },
    remove: (path) => {
      step(
        () => {
          realDisk.remove(path);
        },
        () => {
          if (realDisk.kind(path) !== 'folder') return;
          for (const name of readdirSync(path).slice(0, 1)) realDisk.remove(join(path, name));
        },
      );
    },
  };
}
