import type { Content } from '../model/index.js';
import type { Subject } from './subject.js';

/** Stands for a property and its cast: what is worked out from these alone is kept under it. */
export type Ground = object;

const NO_NAMES = {};
const grounds = new WeakMap<object, WeakMap<object, Ground>>();

/** The same value for the same readings of property.yaml and names.yaml, whatever the cards are. */
export function groundOf({ property, content }: Subject): Ground {
  const names: NonNullable<Content['names']> | object = content.names ?? NO_NAMES;
  const known = grounds.get(property) ?? new WeakMap<object, Ground>();
  grounds.set(property, known);
  const ground = known.get(names) ?? {};
  known.set(names, ground);
  return ground;
}

/** What is worked out of a ground, once for each. */
export function oncePerGround<T>(make: (subject: Subject) => T): (subject: Subject) => T {
  const made = new WeakMap<Ground, { readonly of: T }>();
  return (subject) => {
    const ground = groundOf(subject);
    const before = made.get(ground);
    if (before) return before.of;
    const now = make(subject);
    made.set(ground, { of: now });
    return now;
  };
}
