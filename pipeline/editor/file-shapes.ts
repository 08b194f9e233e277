import type { TSchema } from 'typebox';

import {
  BackFile,
  CardFront,
  CorrectionsFile,
  NamesFile,
  PeopleFile,
  PlanFile,
  PropertyFile,
  RosterFile,
  SalesFront,
} from '../../schema/index.js';

export type FileKind =
  'property' | 'names' | 'people' | 'back' | 'plan' | 'roster' | 'corrections' | 'card' | 'sales';

/** Files by their place in the content folder. A set cannot be called as a folder of something else. */
const PLACES: readonly (readonly [FileKind, RegExp, TSchema])[] = [
  ['property', /^property\.yaml$/, PropertyFile],
  ['names', /^names\.yaml$/, NamesFile],
  ['people', /^people\.yaml$/, PeopleFile],
  ['back', /^backs\/[^/]+\.yaml$/, BackFile],
  ['plan', /^[^/]+\/plan\.yaml$/, PlanFile],
  ['roster', /^[^/]+\/rosters\/.+\.yaml$/, RosterFile],
  ['corrections', /^[^/]+\/corrections\.yaml$/, CorrectionsFile],
  ['card', /^[^/]+\/cards\/[^/]+\/[^/]+\.md$/, CardFront],
  ['sales', /^[^/]+\/sales\/[^/]+\.md$/, SalesFront],
];

/** What a file is, and the schema of its YAML or front matter. */
export interface FileShape {
  readonly kind: FileKind;
  readonly schema: TSchema;
  /** The folder that it lies in, if that is a set. */
  readonly set: string | null;
  /** The folder of its subset, if it is a card. */
  readonly subset: string | null;
}

/** Null for a file that is nothing to Holdback. */
export function shapeOf(path: string): FileShape | null {
  for (const [kind, place, schema] of PLACES) {
    if (!place.test(path)) continue;
    const [top = '', cards, subset = ''] = path.split('/');
    const set = path.includes('/') && kind !== 'back' ? top : null;
    return { kind, schema, set, subset: cards === 'cards' ? subset : null };
  }
  return null;
}
