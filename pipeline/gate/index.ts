import type { Released } from '../select/index.js';
import { assembleView } from './assemble.js';
import type { Audience } from './lens.js';
import { TABLES } from './tables.js';
import type { View } from './view.js';

/**
 * What an audience may see of a released property: the only way to a view. Null for the public
 * before `since`, when nothing is public.
 */
export function view(released: Released, audience: Audience): View | null {
  return assembleView(released, audience, TABLES);
}

export { TO_BE_REVEALED } from './card.js';
export { difference, type Change, type Difference } from './difference.js';
export { earlierViews } from './earlier.js';
export { shownWhole } from './whole.js';
export { publicSight } from './sight.js';
export { roll, type Roll } from './roll.js';
export type { Audience } from './lens.js';
export type * from './view.js';
