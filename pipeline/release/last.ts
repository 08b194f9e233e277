import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';

import { PublicData, PublicRelease } from '../../schema/index.js';
import { readInstant, type Instant } from '../model/index.js';
import { jsonText } from '../out/site/index.js';
import { validate } from '../read/index.js';
import type { Disk } from '../write/index.js';
import { partsGone } from './less.js';
import { readJson, readRelease, verifySite } from './verify.js';

type Files = ReadonlyMap<string, Uint8Array>;

/** The release that is out, as its own public files tell it. */
export interface LastRelease {
  readonly release: PublicRelease;
  readonly data: PublicData;
}

/** The release at a place: null if nothing is there, `unread` if what is there cannot be understood. */
export function lastRelease(disk: Disk, out: string): LastRelease | 'unread' | null {
  if (disk.kind(out) !== 'link') return null;
  const release = readRelease(out, disk);
  const data = validate(PublicData, readJson(join(out, 'data.json'), disk));
  return release && data.ok ? { release, data: data.value } : 'unread';
}

/** Whether a release is out whole, and is the same, byte for byte, as these files. */
export function isSame(disk: Disk, out: string, last: LastRelease, files: Files): boolean {
  const was = last.release;
  if (!isDeepStrictEqual({ ...was, ...releaseIn(files) }, was)) return false;
  const found = verifySite(out, disk);
  return found !== null && [...found.missing, ...found.changed, ...found.extra].length === 0;
}

/**
 * What would go from the public if these files took the place of the last release: parts of its
 * data, then files. Pictures, fonts and styles are named by their digest, so that every change of
 * one removes a file: they do not count here.
 */
export function wouldGo(last: LastRelease, files: Files): readonly string[] {
  const pages = Object.keys(last.release.files).filter((path) => !path.startsWith('assets/'));
  const data = validate(PublicData, jsonIn(files, 'data.json'));
  if (!data.ok) throw new RangeError('a site has data of its own');
  return [
    ...partsGone(last.data, data.value),
    ...pages.filter((path) => !files.has(path)).map((path) => `file ${path}`),
  ];
}

/**
 * Addresses below the site at which a cache may still have the last release: every file of it that
 * goes or changes. A page is also asked for by its folder, with / at the end.
 */
export function addressesToPurge(last: LastRelease, files: Files): readonly string[] {
  const now = new Map(Object.entries(releaseIn(files).files));
  return [...Object.entries(last.release.files), ['release.json', ''] as const]
    .filter(([path, digest]) => now.get(path) !== digest)
    .flatMap(([path]) => {
      const folder = /^(.*\/)?index\.html$/.exec(path);
      return folder ? [`/${folder[1] ?? ''}`, `/${path}`] : [`/${path}`];
    });
}

/** Files of a theme: nothing of the content is in them. Pictures are never kept. */
const OF_A_THEME = /^assets\/.+\.(?:css|js|woff2)$/;

/**
 * Styles, scripts and fonts of the last release that are not in these files: whoever has one of its
 * pages open, or a cache that does, still asks for them. One that was tampered with is left out.
 */
export function toKeep(disk: Disk, out: string, last: LastRelease, files: Files): Files {
  const kept = Object.entries(last.release.files)
    .filter(([path]) => OF_A_THEME.test(path) && !files.has(path))
    .flatMap(([path, digest]) => {
      const place = join(out, path);
      if (disk.kind(place) !== 'file') return [];
      const bytes = disk.read(place);
      return sha256(bytes) === digest ? [[path, bytes] as const] : [];
    });
  return new Map(kept);
}

/** A site with what it keeps of the release before, which its `release.json` names. */
export function withKept(files: Files, kept: Files): Files {
  if (kept.size === 0) return files;
  const digests = Object.fromEntries([...kept].map(([path, bytes]) => [path, sha256(bytes)]));
  const release = new TextEncoder().encode(jsonText({ ...releaseIn(files), kept: digests }));
  return new Map([...files, ...kept, ['release.json', release]]);
}

function sha256(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}

/** Whether an instant lies before the last step that a release shows. */
export function isEarlier(last: LastRelease, at: Instant): boolean {
  const reading = readInstant(last.release.asOf);
  return reading.ok && at < reading.at;
}

function releaseIn(files: Files): PublicRelease {
  const valid = validate(PublicRelease, jsonIn(files, 'release.json'));
  if (!valid.ok) throw new RangeError('a site has a release.json');
  return valid.value;
}

function jsonIn(files: Files, path: string): unknown {
  return JSON.parse(new TextDecoder().decode(files.get(path)));
}
