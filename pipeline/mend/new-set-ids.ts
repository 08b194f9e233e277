/** Longer ids are a burden in paths and addresses. */
const LONGEST = 40;

/** A title as an id: small letters, digits and single hyphens; empty if nothing of it can be one. */
export function idFrom(title: string): string {
  const letters = title
    .normalize('NFKD')
    .replace(/['’\p{M}]/gu, '')
    .toLowerCase();
  const words = letters.split(/[^a-z0-9]+/).filter((word) => word !== '');
  let id = '';
  for (const word of words) {
    const longer = id === '' ? word.slice(0, LONGEST) : `${id}-${word}`;
    if (longer.length > LONGEST) break;
    id = longer;
  }
  return id;
}

/** The first of `id`, `id-2`, `id-3` … that is not taken. */
export function freeId(id: string, taken: ReadonlySet<string>): string {
  if (!taken.has(id)) return id;
  let next = 2;
  while (taken.has(`${id}-${String(next)}`)) next += 1;
  return `${id}-${String(next)}`;
}

/** An id in words, as a title: `crew-and-craft` is "Crew and craft". */
export function titleFrom(id: string): string {
  const words = id.replaceAll('-', ' ');
  return words.slice(0, 1).toUpperCase() + words.slice(1);
}
