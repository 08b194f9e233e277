/** A file that stands beside the pages of a site, for templates to link to. */
export interface Download {
  /** Its address below the site. */
  readonly path: string;
  /** The id of the set that it is of; null for the site's. */
  readonly set: string | null;
  readonly kind: string;
  /** What a link to it says. */
  readonly title: string;
  /** Its media type. */
  readonly type: string;
}
