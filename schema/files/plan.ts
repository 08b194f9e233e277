import { Type, type Static } from 'typebox';
import {
  Accepted,
  Embargoes,
  Format,
  Id,
  Instant,
  PlainDate,
  Text,
  Whole,
  oneOf,
  said,
  shape,
} from '../common.js';
import { HouseStyle } from './house-style.js';
import { Merge } from './merge.js';
import { Product, Redemption } from './packed.js';
import { Parallel } from './parallel.js';
import { Subset } from './subset.js';

export { Parallel, Subset };
export type { HouseStyle } from './house-style.js';
export type { MergeField } from './merge.js';

export const NamedTotal = shape(
  {
    title: Type.Optional(said(Text, 'What copy calls it, such as Complete set.')),
    of: Type.Optional(
      Type.Array(Id, {
        minItems: 1,
        description: 'The subsets, groups and totals that it counts; left out, what its key names.',
      }),
    ),
    is: said(Whole, 'The number that is announced.'),
  },
  'A total over groups or subsets.',
);

export const PlanFile = shape(
  {
    format: Type.Optional(Format),
    id: said(Id, 'The name of its folder. It stands in public addresses and may tell nothing.'),
    title: said(Text, 'What the set is called, in full.'),
    short: Type.Optional(
      said(Text, 'A shorter title, where there is little room; left out, the title.'),
    ),
    spoiler: said(Id, 'The level of the set: one not yet announced is held like anything else.'),
    embargo: Type.Optional(Embargoes),
    stage: oneOf(
      ['planning', 'writing', 'locked'],
      'How far the set is; what is not done yet is a mere warning until it is locked.',
    ),
    street: Type.Optional(
      Type.Union(
        [
          Instant,
          Type.Record(Type.String({ pattern: '^[a-z]{2,12}$' }), Instant, {
            minProperties: 1,
            additionalProperties: false,
          }),
        ],
        {
          title: 'an instant, or one for each region',
          description:
            'When it is first in shops: an instant, or one a region. The earliest counts.',
        },
      ),
    ),
    dates: Type.Optional(
      shape(
        {
          solicit: Type.Optional(said(PlainDate, 'When shops are asked for their orders.')),
          copyLock: Type.Optional(
            said(PlainDate, 'When copy is to be final; nothing is locked by it.'),
          ),
          toPrinter: Type.Optional(
            said(
              PlainDate,
              'When it goes to the printer; status counts back to the last day to submit.',
            ),
          ),
          ships: Type.Optional(said(PlainDate, 'When boxes leave for the shops.')),
        },
        'Days that the work is planned by. Never leaves the house.',
      ),
    ),
    subsets: Type.Array(Subset, {
      minItems: 1,
      title: 'a list of subsets',
      description: 'The subsets, in the order of the checklist.',
    }),
    totals: Type.Optional(
      Type.Record(
        Type.String({ pattern: '^[a-z0-9]+(-[a-z0-9]+)*$' }),
        Type.Union([Whole, NamedTotal], { title: 'a whole number, or { title, of, is }' }),
        {
          description: 'What the set announces, checked against its cards.',
          additionalProperties: false,
        },
      ),
    ),
    parallels: Type.Optional(
      Type.Array(Parallel, { description: 'The same cards in other finishes.' }),
    ),
    products: Type.Optional(
      Type.Array(Product, { description: 'What shops sell of the set, and what is packed in it.' }),
    ),
    redemptions: Type.Optional(
      Type.Array(Redemption, {
        description: 'Which cards in packs are sent in for others. Never leaves the house.',
      }),
    ),
    merge: Type.Optional(Merge),
    readingAge: Type.Optional(
      Type.Integer({
        minimum: 5,
        maximum: 18,
        title: 'an age from 5 to 18',
        description: 'The age in years from which a child can read its copy.',
      }),
    ),
    style: Type.Optional(HouseStyle),
    accepted: Type.Optional(
      said(Accepted, 'Findings anywhere in the set that stand for a reason.'),
    ),
  },
  'The plan of a set: subsets, counts, dates, parallels.',
);
export type PlanFile = Static<typeof PlanFile>;
