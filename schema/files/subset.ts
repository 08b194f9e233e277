import { Type, type Static } from 'typebox';
import {
  ContentPath,
  Counting,
  Embargoes,
  Id,
  InstantOrUnset,
  Scene,
  Text,
  Whole,
  oneOf,
  said,
  shape,
} from '../common.js';
import { Reserve, Sheet } from './packed.js';

const Found = oneOf(
  ['pack', 'box', 'redemption', 'event'],
  'How a collector comes by its cards. The public is told.',
);

export const NumberRange = shape(
  {
    prefix: Type.Optional(
      Type.String({
        maxLength: 12,
        title: 'a prefix such as LC-',
        description: 'What stands before each number, such as LC-; left out, nothing.',
      }),
    ),
    from: said(Whole, 'The first number.'),
    to: said(Whole, 'The last number. Cards that leave no trace must have the last ones.'),
  },
  'Numbers that run without a gap.',
);

export const NumberCodes = shape(
  {
    codes: Type.Array(Text, {
      minItems: 1,
      uniqueItems: true,
      description: 'The numbers one by one, such as SG-1. A code is held with its card.',
    }),
  },
  'Numbers given one by one.',
);

export const Subset = shape(
  {
    id: said(
      Id,
      'The name of its folder in cards. It stands in public addresses and may tell nothing.',
    ),
    title: said(Text, 'What it is called in lists and on pages.'),
    group: said(
      Id,
      'What it is counted with, such as base or inserts. Base cards fill up each pack.',
    ),
    numbers: Type.Union([NumberRange, NumberCodes, Type.Literal('none', { title: 'none' })], {
      title: '{ from, to } with a prefix or without, { codes }, or none',
      description: 'The numbers of its cards: a range, codes, or none.',
    }),
    back: Type.Optional(
      said(Id, 'The layout of its cards, by the id in backs; a card may name another.'),
    ),
    bio: Type.Optional(
      Type.Union(
        [
          Type.Literal('none', { title: 'none' }),
          shape(
            {
              words: Type.Optional(
                shape(
                  {
                    min: Type.Optional(said(Whole, 'Fewest words of a bio; left out, no bound.')),
                    max: Type.Optional(said(Counting, 'Most words of a bio; left out, no bound.')),
                  },
                  'Fewest and most words.',
                ),
              ),
              characters: Type.Optional(
                shape(
                  { max: said(Counting, 'Most characters of a bio, spaces counted.') },
                  'Most characters.',
                ),
              ),
            },
            'Bounds for a bio.',
          ),
        ],
        {
          title: 'none, or { words: { min, max } }',
          description: 'How long its bios may be, or none if its cards have none.',
        },
      ),
    ),
    facts: Type.Optional(Type.Array(Text, { description: 'Names of the facts its cards carry.' })),
    order: Type.Optional(
      oneOf(['story'], 'Its cards follow the order of the story; left out, any order will do.'),
    ),
    coverage: Type.Optional(
      shape(
        {
          from: said(Scene, 'The first scene, such as 1/1.'),
          to: said(Scene, 'The last scene, such as 3/40.'),
        },
        'The scenes that its cards tell: none outside, and every beat between them.',
      ),
    ),
    found: Type.Optional(Found),
    spoiler: Type.Optional(
      said(Id, 'Its level, if it is later than that of its set; it holds all its cards.'),
    ),
    embargo: Type.Optional(Embargoes),
    ships: Type.Optional(
      said(
        InstantOrUnset,
        'When its cards are in hands: an instant, or unset; left out, by street.',
      ),
    ),
    roster: Type.Optional(
      said(
        ContentPath,
        'The list of its artists, such as rosters/sketches.yaml, if it has no card files.',
      ),
    ),
    carries: Type.Optional(
      oneOf(
        ['autograph', 'relic', 'sketch'],
        'What its cards carry; a statement must then say what that is.',
      ),
    ),
    statement: Type.Optional(
      said(
        Text,
        'What its cards say of what they carry, as counsel gives it; fills the zone statement.',
      ),
    ),
    copies: Type.Optional(
      Type.Integer({
        minimum: 1,
        maximum: 1_000_000_000,
        title: 'a whole number above 0',
        description: 'Copies that are made of each card. Never leaves the house.',
      }),
    ),
    places: Type.Optional(
      Type.Integer({
        minimum: 1,
        maximum: 20,
        title: 'a whole number from 1 to 20',
        description:
          'How many places in a pack one of its cards takes, if it is thick; left out, one.',
      }),
    ),
    reserve: Type.Optional(Reserve),
    sheet: Type.Optional(Sheet),
  },
  'A subset: a folder of cards.',
);
export type Subset = Static<typeof Subset>;
