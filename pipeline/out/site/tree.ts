import { lstat, mkdir, readFile, readdir, writeFile } from 'node:fs/promises';
import { dirname, extname, join, resolve, sep } from 'node:path';
import pLimit from 'p-limit';
import { isSitePath, pathsThatMeet } from './addresses.js';
import { SiteError } from './site-error.js';

const AT_ONCE = 16;
const THEME_FILES = new Set(['.css', '.js', '.json', '.njk', '.svg', '.txt']);

/**
 * Copies the templates of a theme: plain files of a few kinds. Hidden files and installed packages
 * stay behind.
 *
 * @throws SiteError if the theme holds a link
 */
export async function copyTheme(from: string, to: string): Promise<void> {
  const ofTheme = (name: string) => !name.startsWith('.') && name !== 'node_modules';
  for (const path of await plainFiles(from, ofTheme)) {
    if (!THEME_FILES.has(extname(path))) continue;
    const target = join(to, path);
    await mkdir(dirname(target), { recursive: true });
    await writeFile(target, await readFile(join(from, path)));
  }
}

/**
 * Reads a finished folder whole.
 *
 * @returns bytes by path below the folder, parted by `/`, in the order of the paths
 * @throws SiteError for a link, a path that the site may not have, two paths that are one
 */
export async function readTree(folder: string): Promise<ReadonlyMap<string, Uint8Array>> {
  const paths = [...(await plainFiles(folder))].sort();
  const root = resolve(folder) + sep;
  const unfit = paths.filter(
    (path) => !isSitePath(path) || !resolve(folder, path).startsWith(root),
  );
  const faults = [
    ...unfit.map((path) => `the theme made a file that no site may have: ${JSON.stringify(path)}`),
    ...pathsThatMeet(paths),
  ];
  if (faults.length > 0) throw new SiteError(faults.join('\n'));
  const limit = pLimit(AT_ONCE);
  const read = (path: string) => limit(() => readUnlinked(folder, path));
  return new Map(await Promise.all(paths.map(read)));
}

async function readUnlinked(folder: string, path: string): Promise<[string, Uint8Array]> {
  const place = join(folder, path);
  if ((await lstat(place)).nlink !== 1) throw new SiteError(`${path} is a link`);
  return [path, await readFile(place)];
}

/** Paths below a folder of its files. Symbolic links, sockets and the like are refused. */
async function plainFiles(
  folder: string,
  wanted: (name: string) => boolean = () => true,
  below = '',
): Promise<readonly string[]> {
  const found: string[] = [];
  for (const entry of await readdir(join(folder, below), { withFileTypes: true })) {
    if (!wanted(entry.name)) continue;
    const path = below === '' ? entry.name : `${below}/${entry.name}`;
    if (entry.isDirectory()) found.push(...(await plainFiles(folder, wanted, path)));
    else if (entry.isFile()) found.push(path);
    else throw new SiteError(`${path} is a link or no plain file`);
  }
  return found;
}
