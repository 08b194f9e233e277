/** The site cannot be made from this data, or this theme did what no theme may do. */
export class SiteError extends Error {
  override readonly name = 'SiteError';
}
