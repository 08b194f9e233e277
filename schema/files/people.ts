import { Type, type Static } from 'typebox';
import { Format, Id, Role, Text, said, shape } from '../common.js';
import { Where } from './property.js';

export const Person = shape(
  {
    id: said(Id, 'A short id, by which cards, packets and decisions name the person.'),
    name: said(Text, 'The person’s name, as packets and reports say it.'),
    role: Role,
    clearance: said(
      Id,
      'The highest level that is sent to them; whoever has the folder can read all of it.',
    ),
    knows: Type.Optional(Type.Array(Id, { description: 'Embargoes that this person knows of.' })),
    sees: Type.Optional(
      said(Where, 'The cards that are sent to them; left out, all that their clearance allows.'),
    ),
  },
  'A person: what they do, and the highest level that is sent to them.',
);

export const PeopleFile = shape(
  {
    format: Type.Optional(Format),
    people: Type.Array(Person, {
      minItems: 1,
      description: 'Everybody who writes, edits, reviews or publishes.',
    }),
  },
  'Who writes, edits and reviews.',
);
export type PeopleFile = Static<typeof PeopleFile>;
