import type { PropertyFile } from '../../schema/index.js';
import { compareScenes, instantOf, sayDay, sceneOf, sceneWithin } from '../model/index.js';

export type Cut = NonNullable<PropertyFile['cuts']>[number];

/**
 * The cuts that came in after the one that a card was read against, in their order: all, if it was
 * read against none, and none, if nobody knows its cut.
 */
export function cutsSince(cuts: readonly Cut[], read: string | undefined): readonly Cut[] {
  if (read === undefined) return cuts;
  const at = cuts.findIndex(({ id }) => id === read);
  return at < 0 ? [] : cuts.slice(at + 1);
}

/** Whether a cut changed a scene such as "2/14". A run that is typed backwards is the same run. */
export function touchesScene({ touches }: Cut, story: string): boolean {
  const scene = sceneOf(story);
  return (touches ?? []).some((span) => {
    const [one = '', other = one] = span.split('-');
    const [first, last] = [sceneOf(one), sceneOf(other)];
    return compareScenes(first, last) <= 0
      ? sceneWithin(scene, first, last)
      : sceneWithin(scene, last, first);
  });
}

/** "14 September 2026", of a day such as 2026-09-14. */
export function sayDate(day: string): string {
  return sayDay(instantOf(`${day}T12:00:00Z[UTC]`), 'UTC');
}

/** "a", "a and b", "a, b and c". */
export function allOf(words: readonly string[]): string {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} and ${last}`;
}
