import type { PropertyFile } from '../../schema/index.js';
import type { Person } from './choose.js';

/** Whether a person may know everything of a property: every level and every embargo. */
export function isClearedForAll(
  { levels, embargoes }: Pick<PropertyFile, 'levels' | 'embargoes'>,
  { clearance, knows, sees }: Person,
): boolean {
  return (
    levels.at(-1)?.id === clearance &&
    (embargoes ?? []).every(({ id }) => knows?.includes(id) ?? false) &&
    sees === undefined
  );
}
