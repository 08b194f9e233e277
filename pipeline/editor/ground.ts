import {
  scheduleOf,
  type CardSet,
  type Content,
  type Instant,
  type Schedule,
} from '../model/index.js';
import type { PropertyFile } from '../../schema/index.js';
import type { Clock } from './openings.js';
import { shapeOf, type FileShape } from './file-shapes.js';

/** What is known where somebody looks or types: the content, and the file in it. */
export interface Ground {
  readonly content: Content;
  readonly property: PropertyFile;
  readonly schedule: Schedule;
  readonly clock: Clock;
  readonly path: string;
  readonly text: string;
  readonly shape: FileShape;
  /** The set that the file lies in; null for one that all sets share. */
  readonly set: CardSet | null;
}

/** Null for a file that is nothing to Holdback, and where there is no readable property.yaml. */
export function groundOf(
  content: Content,
  now: Instant,
  { path, text }: { readonly path: string; readonly text: string },
): Ground | null {
  const shape = shapeOf(path);
  if (!shape || !content.property) return null;
  const property = content.property.value;
  return {
    content,
    property,
    schedule: scheduleOf(property),
    clock: { now, zone: property.zone },
    path,
    text,
    shape,
    set: content.sets.find(({ id }) => id === shape.set) ?? null,
  };
}
