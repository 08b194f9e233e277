import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The version of this package, found from the source as well as from what is built of it. */
export function ownVersion(): string {
  let folder = dirname(fileURLToPath(import.meta.url));
  while (!existsSync(join(folder, 'package.json'))) {
    const above = dirname(folder);
    if (above === folder) return 'unknown';
    folder = above;
  }
  const manifest: unknown = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const isNamed = typeof manifest === 'object' && manifest !== null && 'version' in manifest;
  return isNamed && typeof manifest.version === 'string' ? manifest.version : 'unknown';
}
