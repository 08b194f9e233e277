import type { TSchema } from 'typebox';

import { validate } from '../../pipeline/read/index.js';

/** What a schema finds wrong with a value, paths as text. */
export function faultsOf(schema: TSchema, data: unknown) {
  const validation = validate(schema, data);
  return validation.ok
    ? []
    : validation.faults.map(({ path, ...fault }) => ({ ...fault, path: path.join('/') }));
}

export const CARD = { number: '1', name: 'Pim', spoiler: 'open' };
export const PROPERTY = {
  id: 'lake',
  title: 'The Lake',
  zone: 'Europe/London',
  since: '2026-09-01T09:00:00+01:00[Europe/London]',
  levels: [{ id: 'open' }],
  approvals: 'none',
};
export const SUBSET = { id: 'base', title: 'Base', group: 'base', numbers: 'none' };
export const PLAN = {
  id: 'quay',
  title: 'The Quay',
  spoiler: 'open',
  stage: 'writing',
  subsets: [SUBSET],
};
export const name = (more: object) => ({
  names: [{ name: 'Pim', kind: 'character', level: 'open', ...more }],
});
export const INSTANT =
  'an instant with offset and zone, such as "2027-04-16T09:00:00+01:00[Europe/London]"';
export const ID = 'an id of small letters, digits and single hyphens, such as high-water';
export const NUMBERS = '{ from, to } with a prefix or without, { codes }, or none';
