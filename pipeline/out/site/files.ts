import { createHash } from 'node:crypto';
import type { PublicData, PublicRelease } from '../../../schema/index.js';
import { imagesOf, isSitePath, pathsThatMeet } from './addresses.js';
import { jsonText } from './json-text.js';
import { SiteError } from './site-error.js';

type Files = ReadonlyMap<string, Uint8Array>;

/**
 * Puts a site together: pages, pictures, whatever else is given, `data.json` with the public data
 * themselves, and `release.json` with the SHA-256 of every other file.
 *
 * @param rest pictures first, then fonts and whatever stands beside the pages
 * @returns bytes by path below the site, in the order of the paths
 * @throws SiteError if a picture is missing or is asked for by no card, or two files meet
 */
export function siteFiles(
  data: PublicData,
  pages: Files,
  [images = new Map(), ...rest]: readonly Files[],
): Files {
  checkImages(data, images);
  const parts = [pages, images, ...rest, new Map([['data.json', bytesOf(jsonText(data))]])];
  const files = parts.flatMap((part) => [...part]).sort(([a], [b]) => (a < b ? -1 : 1));
  const paths = [...files.map(([path]) => path), 'release.json'];
  const faults = [
    ...paths.filter((path) => !isSitePath(path)).map((path) => `${path} is no path of a site`),
    ...pathsThatMeet(paths),
  ];
  if (faults.length > 0) throw new SiteError(faults.join('\n'));
  const release = bytesOf(jsonText(releaseOf(data, files)));
  return new Map(
    [...files, ['release.json', release] as const].sort(([a], [b]) => (a < b ? -1 : 1)),
  );
}

function releaseOf(
  data: PublicData,
  files: readonly (readonly [string, Uint8Array])[],
): PublicRelease {
  return {
    format: 1,
    asOf: data.asOf,
    preview: data.preview,
    files: Object.fromEntries(files.map(([path, bytes]) => [path, sha256(bytes)])),
  };
}

/** A picture that no card shows may be one that is held: it does not go out. */
function checkImages(data: PublicData, images: Files): void {
  const wanted = imagesOf(data);
  const faults = [
    ...[...wanted].filter((file) => !images.has(file)).map((file) => `${file} is missing`),
    ...[...images.keys()]
      .filter((file) => !wanted.has(file))
      .map((file) => `no card shows ${file}`),
  ];
  if (faults.length > 0) throw new SiteError(faults.join('\n'));
}

function bytesOf(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}

function sha256(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}
