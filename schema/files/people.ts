import { Type, type Static } from 'typebox';
import { Format, Id, Role, Text, shape } from '../common.js';
import { Where } from './property.js';

export const Person = shape(
  {
    id: Id,
    name: Text,
    role: Role,
    clearance: Id,
    knows: Type.Optional(Type.Array(Id, { description: 'Embargoes that this person knows of.' })),
    sees: Type.Optional(Where),
  },
  'A person: what they do, and the highest level that is sent to them.',
);

export const PeopleFile = shape(
  { format: Type.Optional(Format), people: Type.Array(Person, { minItems: 1 }) },
  'Who writes, edits and reviews.',
);
export type PeopleFile = Static<typeof PeopleFile>;
