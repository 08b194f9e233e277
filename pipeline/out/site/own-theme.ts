import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { SiteError } from './site-error.js';

/** The folder `site` of this package, found from the source as well as from what is built of it. */
export function ownTheme(): string {
  let folder = dirname(fileURLToPath(import.meta.url));
  while (!existsSync(join(folder, 'package.json'))) {
    const above = dirname(folder);
    if (above === folder) throw new SiteError('the templates of the site are not installed');
    folder = above;
  }
  return join(folder, 'site');
}
