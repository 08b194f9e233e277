import type { Static } from 'typebox';

import type {
  Beat,
  Cut,
  Document,
  PeopleFile,
  SalesFront,
  Secret,
  Source,
} from '../../schema/index.js';
import type { Table } from './decision.js';

/** The shapes of which the public sees nothing. */

export const SOURCE = { doc: 'decides', ref: 'reviewer', for: 'reviewer' } as const satisfies Table<
  Static<typeof Source>
>;

export const CUT = {
  id: 'never',
  received: 'never',
  touches: 'never',
  names: 'never',
} as const satisfies Table<Static<typeof Cut>>;

export const DOCUMENT = {
  id: 'never',
  title: 'reviewer',
  level: 'decides',
  embargo: 'decides',
  withdrawn: 'never',
} as const satisfies Table<Static<typeof Document>>;

export const BEAT = {
  at: 'never',
  says: 'never',
  level: 'never',
  embargo: 'never',
} as const satisfies Table<Static<typeof Beat>>;

export const SECRET = {
  id: 'never',
  level: 'never',
  embargo: 'never',
  says: 'never',
  allOf: 'never',
  within: 'never',
} as const satisfies Table<Static<typeof Secret>>;

export const PEOPLE = { format: 'never', people: 'never' } as const satisfies Table<PeopleFile>;

export const SALES = {
  format: 'never',
  kind: 'reviewer',
  title: 'reviewer',
  goes: 'never',
  sent: 'never',
  spoiler: 'decides',
  embargo: 'decides',
  writer: 'never',
  remark: 'never',
  accepted: 'never',
} as const satisfies Table<SalesFront>;
