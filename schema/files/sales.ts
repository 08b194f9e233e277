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
  shape,
} from '../common.js';

export const SalesFront = shape(
  {
    format: Type.Optional(Format),
    kind: oneOf(['sell-sheet', 'wrapper', 'box', 'media', 'web', 'shop', 'stage'], 'What it is.'),
    title: Type.Optional(Text),
    goes: InstantOrUnset,
    sent: Type.Optional(PlainDate),
    spoiler: Id,
    embargo: Type.Optional(Embargoes),
    writer: Type.Optional(Id),
    remark: Type.Optional(Text),
    accepted: Type.Optional(Accepted),
  },
  'The front matter of a sales text.',
);
export type SalesFront = Static<typeof SalesFront>;
