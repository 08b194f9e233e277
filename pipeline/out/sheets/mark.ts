import type { View } from '../../gate/index.js';
import { sayInstant } from '../../model/index.js';

const INTERNAL = 'INTERNAL';
const FOR = 'For ';
const PREVIEW = 'Preview, not to be passed on before ';

/**
 * Whom a file is for, and that it stays with them: the heading of a last column without cells, on
 * every sheet. Null if anybody may see it.
 */
export function markOf(
  { audience, highest, person, asOf, property }: View,
  preview: boolean,
): string | null {
  if (audience === 'house') return highest === null ? INTERNAL : `${INTERNAL}, up to: ${highest}`;
  if (person !== null) return `${FOR}${person}`;
  if (!preview || asOf === null) return null;
  return `${PREVIEW}${sayInstant(asOf, property.zone)}`;
}

/** Whether a heading is such a mark and stands for no column. */
export function isMark(heading: string): boolean {
  return (
    /^INTERNAL($|, up to: )/.test(heading) ||
    [FOR, PREVIEW].some((word) => heading.startsWith(word))
  );
}
