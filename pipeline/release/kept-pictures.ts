import { createHash } from 'node:crypto';
import { join } from 'node:path';

import type { Draw, Encode } from '../out/site/index.js';
import type { Disk } from '../write/index.js';

/** Pictures that were drawn for the last site, so that they need not be drawn again. */
export interface KeptPictures {
  readonly picture: Encode;
  /** Removes whatever this site did not ask for: what was taken back lies nowhere then. */
  readonly forgetOthers: () => void;
}

type Drawn = Awaited<ReturnType<Encode>>;

/** What was asked for, how large it came out, and the digest of the picture. */
const NAME = /^([0-9a-f]{32})-(\d+)x(\d+)-([0-9a-f]{32})\.webp$/;

/**
 * Keeps the pictures of a site in a folder beside it that only its owner can look into, by the
 * digests of art and picture: a kept picture that is not what its name says is drawn again.
 */
export async function keepPictures(disk: Disk, folder: string, draw: Draw): Promise<KeptPictures> {
  const by = await draw.by();
  const kept = namesIn(disk, folder);
  const used = new Set<string>();
  const picture: Encode = async (art, width) => {
    const asked = digestOf(`${by} ${String(width)} `, art);
    const name = kept.get(asked);
    const known = name === undefined ? null : readKept(disk, folder, name);
    if (known !== null && name !== undefined) {
      used.add(name);
      return known;
    }
    const drawn = await draw.picture(art, width);
    used.add(keep(disk, folder, asked, drawn));
    return drawn;
  };
  const forgetOthers = (): void => {
    if (disk.kind(folder) !== 'folder') return;
    for (const name of disk.list(folder)) if (!used.has(name)) disk.remove(join(folder, name));
  };
  return { picture, forgetOthers };
}

/** Names of kept pictures by what was asked for. */
function namesIn(disk: Disk, folder: string): ReadonlyMap<string, string> {
  if (disk.kind(folder) !== 'folder') return new Map();
  return new Map(
    disk.list(folder).flatMap((name) => {
      const asked = NAME.exec(name)?.[1];
      return asked === undefined ? [] : [[asked, name] as const];
    }),
  );
}

function readKept(disk: Disk, folder: string, name: string): Drawn | null {
  const [, , width = '', height = '', digest] = NAME.exec(name) ?? [];
  const path = join(folder, name);
  if (disk.kind(path) !== 'file') return null;
  const bytes = disk.read(path);
  if (digestOf('', bytes) !== digest) return null;
  return { bytes, width: Number(width), height: Number(height) };
}

function keep(disk: Disk, folder: string, asked: string, { bytes, width, height }: Drawn): string {
  const size = `${String(width)}x${String(height)}`;
  const name = `${asked}-${size}-${digestOf('', bytes)}.webp`;
  if (disk.kind(folder) === null) disk.makePrivateFolder(folder);
  disk.writeSynced(join(folder, name), bytes);
  return name;
}

function digestOf(before: string, bytes: Uint8Array): string {
  return createHash('sha256').update(before).update(bytes).digest('hex').slice(0, 32);
}
