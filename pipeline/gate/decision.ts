/**
 * What becomes of each key of each shape. The tables are total: a key that is added to a schema
 * does not compile here until somebody decides.
 *
 * - `open`: shows wherever the thing is listed, on a placeholder too.
 * - `shown`: shows where the thing itself is shown, unless a `holds` entry holds it longer.
 * - `reviewer`: as `shown`, but only to house and persons.
 * - `decides`: is read by the gate to decide, and never shown.
 * - `house`: shows to the house alone.
 * - `never`: no view has a place for it.
 */
export type Decision = 'open' | 'shown' | 'reviewer' | 'decides' | 'house' | 'never';

/** A decision for every key of a shape. */
export type Table<T> = { readonly [K in keyof T]-?: Decision };
