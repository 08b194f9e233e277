import { lstatSync, readFileSync, readdirSync } from 'node:fs';
import { extname, join } from 'node:path';

/** A file of the finished page. */
export interface PageFile {
  readonly type: string;
  readonly bytes: Uint8Array;
}

/** The files of the finished page, by the path that they are served at. */
export type PageFiles = ReadonlyMap<string, PageFile>;

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.woff': 'font/woff',
};

/**
 * Reads the files of the finished page into memory, once: later on nothing of the disk is served by
 * name. What is a link, hidden, or of another kind is left out.
 * @throws what the disk throws.
 */
export function readPageFiles(folder: string): PageFiles {
  const files = new Map<string, PageFile>();
  for (const name of readdirSync(folder).sort()) {
    const type = TYPES[extname(name)];
    const place = join(folder, name);
    if (name.startsWith('.') || type === undefined || !lstatSync(place).isFile()) continue;
    files.set(`/${name}`, { type, bytes: readFileSync(place) });
  }
  const index = files.get('/index.html');
  if (index) files.set('/', index);
  return files;
}

/** The page with the nonce of its answer in it. */
export function withNonce({ bytes }: PageFile, nonce: string): string {
  return new TextDecoder().decode(bytes).replaceAll('{{nonce}}', nonce);
}
