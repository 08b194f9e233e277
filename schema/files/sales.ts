import { Type, type Static } from 'typebox';
import {
  Accepted,
  Embargoes,
  Format,
  Id,
  InstantOrUnset,
  PlainDate,
  Text,
  oneOf,
  said,
  shape,
} from '../common.js';

export const SalesFront = shape(
  {
    format: Type.Optional(Format),
    kind: oneOf(
      ['sell-sheet', 'wrapper', 'box', 'media', 'web', 'shop', 'stage'],
      'What it is; a wrapper or a box goes out with the set, whatever goes says.',
    ),
    title: Type.Optional(said(Text, 'What it is called; reviewers read it above the words.')),
    goes: said(
      InstantOrUnset,
      'When it goes out, or unset; nothing in it may open later than that.',
    ),
    sent: Type.Optional(
      said(PlainDate, 'The day on which it went: its numbers are promises since.'),
    ),
    spoiler: said(Id, 'The level that the text tells of.'),
    embargo: Type.Optional(Embargoes),
    writer: Type.Optional(
      said(Id, 'Who writes it, by their id in people.yaml. Never leaves the house.'),
    ),
    remark: Type.Optional(said(Text, 'A note for the team. Never leaves the house.')),
    accepted: Type.Optional(Accepted),
  },
  'The front matter of a sales text.',
);
export type SalesFront = Static<typeof SalesFront>;
