import type { PropertyFile } from '../../schema/index.js';
import { instantOrNever, type YamlPath } from '../model/index.js';

/** A level or an embargo as it is written; `print` is the lift where it is not stated. */
export interface WrittenOpening {
  readonly id: string;
  readonly path: YamlPath;
  readonly lift: string;
  readonly print: string;
}

/** An opening that is not where it should be in time. */
export interface Disorder {
  readonly key: 'lift' | 'print';
  readonly opening: WrittenOpening;
  /** The level above, if it opens later; null where `print` is later than the opening's own lift. */
  readonly above: WrittenOpening | null;
}

/** At most one for each level and embargo. A level is compared with the one above it alone. */
export function disorders({ levels, embargoes }: PropertyFile): Disorder[] {
  const written = levels.map((level, at) => writtenOf(level, ['levels', at]));
  const own = (embargoes ?? []).map((embargo, at) => writtenOf(embargo, ['embargoes', at]));
  let above: WrittenOpening | null = null;
  const found: (Disorder | null)[] = [];
  for (const opening of written.slice(1)) {
    if (!opening) continue;
    found.push((above && fall(opening, above)) ?? latePrint(opening));
    above = opening;
  }
  found.push(...own.map((opening) => opening && latePrint(opening)));
  return found.filter((disorder) => disorder !== null);
}

/** Ids of levels and embargoes whose instants cannot be believed, because a rule speaks of them. */
export function doubtfulOpenings(property: PropertyFile): ReadonlySet<string> {
  const unlifted = property.levels.filter(({ lift }, at) => (at === 0) !== (lift === undefined));
  const disordered = disorders(property).flatMap(({ opening, above }) => [
    opening,
    above ?? opening,
  ]);
  return new Set([...unlifted, ...disordered].map(({ id }) => id));
}

function writtenOf(
  { id, lift, print }: { id: string; lift?: string; print?: string },
  path: YamlPath,
): WrittenOpening | null {
  return lift === undefined ? null : { id, path, lift, print: print ?? lift };
}

function fall(opening: WrittenOpening, above: WrittenOpening): Disorder | null {
  if (at(opening.lift) < at(above.lift)) return { key: 'lift', opening, above };
  if (earliest(opening) < earliest(above)) return { key: 'print', opening, above };
  return null;
}

function latePrint(opening: WrittenOpening): Disorder | null {
  return at(opening.print) > at(opening.lift) ? { key: 'print', opening, above: null } : null;
}

/** A `print` that is too late is a disorder of its own, and none of the level below. */
function earliest({ lift, print }: WrittenOpening): number {
  return Math.min(at(lift), at(print));
}

function at(text: string): number {
  return instantOrNever(text);
}
