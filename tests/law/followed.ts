import { stepsUntil } from '../../pipeline/model/index.js';
import type { Eye } from './held.js';
import { releasedOf } from './outputs.js';
import type { Plain } from './plain.js';

/** The public at an instant, who has seen every release up to then. */
export function followed(plain: Plain, { at }: Eye): Eye {
  return { at, before: stepsOf(plain, at), person: null };
}

/** The steps of time up to an instant: there is a release at each. */
export function stepsOf(plain: Plain, until: number): readonly number[] {
  const { property, sets } = releasedOf(plain);
  return stepsUntil(property, sets, until);
}
