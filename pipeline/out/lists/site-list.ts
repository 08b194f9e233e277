/** A file of the public site that is made for programs, or for other people's pages. */
export interface SiteList {
  /** Its address below the site. */
  readonly path: string;
  /** The id of the set that it lists; null for one of the whole site. */
  readonly set: string | null;
  readonly kind: 'csv' | 'text' | 'json' | 'fragment' | 'feed' | 'calendar' | 'sitemap';
  /** What a link to it says. */
  readonly title: string;
  /** Its media type, without parameters. All of them are in UTF-8. */
  readonly type: string;
  readonly bytes: Uint8Array;
}
