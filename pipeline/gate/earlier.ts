import type { Released } from '../select/index.js';
import { TABLES } from './tables.js';
import { assembleView } from './assemble.js';
import type { View } from './view.js';

/**
 * The public's views of the steps of time before that of a view, newest first.
 * @param most how many at most.
 * @throws RangeError for a view that is not the public's.
 */
export function earlierViews(released: Released, of: View, most: number): readonly View[] {
  if (of.audience !== 'public') throw new RangeError('only the public has steps of time');
  const views: View[] = [];
  for (let last = of; views.length < most;) {
    const at = (last.asOf ?? 0) - 1;
    const before = assembleView(released, { kind: 'public', at }, TABLES);
    if (before === null) break;
    views.push(before);
    last = before;
  }
  return views;
}
