/** A held span or a count link in copy as it is typed: offsets from its start, in UTF-16 units. */
export interface CopyLink {
  readonly kind: 'held' | 'count';
  readonly words: string;
  readonly of: string;
  readonly from: number;
  readonly to: number;
}

const LINK = /\[([^[\]]*)\]\((held|count):([a-z0-9-]*)\)/g;

/** The held spans and count links of copy, for showing them as such: what they are is checked by the desk. */
export function linksIn(copy: string): readonly CopyLink[] {
  return [...copy.matchAll(LINK)].map(
    ({ 0: whole, 1: words = '', 2: kind, 3: of = '', index }) => ({
      kind: kind === 'held' ? 'held' : 'count',
      words,
      of,
      from: index,
      to: index + whole.length,
    }),
  );
}
