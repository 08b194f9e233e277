import type { PublicData } from '../../../schema/index.js';

/**
 * Where a page or a file of the site stands: in full where the site has an address, else below the
 * top of the site, `./` for the top itself.
 */
export function addressOf({ property }: PublicData, path: string): string {
  if (property.address !== null) return `${property.address}${path}`;
  return path === '' ? './' : path;
}
