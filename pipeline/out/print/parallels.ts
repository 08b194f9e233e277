import type { PublicSet } from '../../../schema/index.js';
import { parallelOf, parallelRun } from '../wording/index.js';
import type { PrintFaces } from './faces.js';
import type { Item } from './items.js';
import { sectionItems } from './section.js';
import type { TableStyle } from './table.js';

/** The parallels of a set under their heading; nothing where there are none. */
export function parallelItems(
  set: PublicSet,
  style: TableStyle,
  faces: PrintFaces,
): readonly Item[] {
  const rows = set.parallels.map((parallel) => [
    parallel.title,
    parallelOf(parallel, set),
    parallelRun(parallel),
    parallel.tell ?? '',
  ]);
  return sectionItems(
    'Parallels',
    { heads: ['Name', 'Of', 'Run', 'How to tell'], rows },
    style,
    faces,
  );
}
