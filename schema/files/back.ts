import { Type, type Static } from 'typebox';
import { Colour, Format, Id, Positive, Text, oneOf, said, shape } from '../common.js';

const Millimetres = Type.Number({
  minimum: 0,
  maximum: 1000,
  title: 'millimetres, such as 53.5',
});
const Points = Type.Number({
  exclusiveMinimum: 0,
  maximum: 200,
  title: 'points, such as 6.8',
});

const box = {
  x: said(Millimetres, 'From the left trimmed edge to its left, in mm.'),
  y: said(Millimetres, 'From the top trimmed edge to its top, in mm.'),
  width: said(Millimetres, 'How wide it is, in mm.'),
  height: said(Millimetres, 'How high it is, in mm.'),
};

export const Font = shape(
  {
    package: Type.Optional(
      said(
        Text,
        'The installed package that has the files; left out, they are in fonts of the content.',
      ),
    ),
    regular: said(Text, 'The file of the upright face: static TTF, OTF or WOFF.'),
    italic: Type.Optional(
      said(Text, 'The file for italics; left out, the regular face stands in.'),
    ),
    bold: Type.Optional(said(Text, 'The file for bold; left out, the regular face stands in.')),
    boldItalic: Type.Optional(
      said(Text, 'The file for bold italics; left out, the bold face stands in.'),
    ),
  },
  'Font files of a package, or of the content’s own fonts folder.',
);

export const Zone = shape(
  {
    ...box,
    font: said(Id, 'Which font of this layout it is set in, by its id.'),
    size: said(Points, 'The size of the type, in points.'),
    leading: said(Points, 'The distance from line to line, in points.'),
    align: Type.Optional(
      oneOf(['left', 'center', 'right', 'justify'], 'How lines are set; left, if it is not said.'),
    ),
    vertical: Type.Optional(
      oneOf(['top', 'middle', 'bottom'], 'Where the text stands; at the top, if it is not said.'),
    ),
    tracking: Type.Optional(
      Type.Number({
        minimum: -100,
        maximum: 500,
        title: '1/1000 em',
        description: 'Room added between letters, in 1/1000 em; left out, none.',
      }),
    ),
    hyphens: Type.Optional(
      oneOf(['none', 'auto'], 'Whether words may be divided; left out, they are not.'),
    ),
    breaks: Type.Optional(
      oneOf(
        ['line-by-line', 'whole-paragraph'],
        'The way in which lines are broken; line by line, if it is not said.',
      ),
    ),
    widows: Type.Optional(
      oneOf(['allow', 'avoid'], 'Whether a last line may be one word; left out, it may.'),
    ),
    indent: Type.Optional(
      said(
        Millimetres,
        'How far the first line of a paragraph is set in, in mm; left out, not at all.',
      ),
    ),
    gap: Type.Optional(said(Points, 'Room between paragraphs, in points; left out, none.')),
    shrink: Type.Optional(
      shape(
        {
          to: said(
            Points,
            'The smallest size that is tried before the text is overset, in points.',
          ),
        },
        'The smallest size that the text may take.',
      ),
    ),
    colour: Type.Optional(said(Colour, 'The colour of the type; left out, black.')),
    face: Type.Optional(
      oneOf(['regular', 'italic', 'bold', 'boldItalic'], 'The face of it all; left out, regular.'),
    ),
    avoid: Type.Optional(
      Type.Array(shape(box, 'A rectangle that no line may touch, from the trimmed corner.'), {
        description: 'Rectangles that no line may touch.',
      }),
    ),
  },
  'A box for text: mm from the trimmed top left corner, type in points.',
);

export const Rule = shape(
  {
    ...box,
    colour: said(Colour, 'The colour that fills it.'),
  },
  'A filled rectangle: a rule or a panel.',
);

export const BackFile = shape(
  {
    format: Type.Optional(Format),
    id: said(Id, 'What its file is called, by which subsets and cards name it.'),
    trim: shape(
      {
        width: said(Positive, 'How wide a card is when it is cut, in mm.'),
        height: said(Positive, 'How high a card is when it is cut, in mm.'),
      },
      'The card, in mm.',
    ),
    bleed: said(Millimetres, 'How far colour runs over each trimmed edge, in mm.'),
    safe: said(Millimetres, 'The margin within each trimmed edge that texts must keep to, in mm.'),
    paper: Type.Optional(said(Colour, 'The ground of the back; left out, white.')),
    frontPaper: Type.Optional(
      said(Colour, 'The ground of the front, and of strips under its texts; left out, no strips.'),
    ),
    fonts: Type.Record(Id, Font, {
      minProperties: 1,
      additionalProperties: false,
      description: 'The fonts of this layout, by the ids that its zones name.',
    }),
    zones: Type.Record(Id, Zone, {
      additionalProperties: false,
      description: 'Zones of the back, by what fills them: number, bio, legal, a text of the card.',
    }),
    front: Type.Optional(
      Type.Record(Id, Zone, {
        additionalProperties: false,
        description: 'Zones of the front.',
      }),
    ),
    panels: Type.Optional(
      Type.Array(Rule, {
        description:
          'Rules and panels under the texts of the back; at an edge they run into the bleed.',
      }),
    ),
    shared: Type.Optional(
      Type.Record(Id, Text, {
        additionalProperties: false,
        description: 'The same words on every card of this layout, by the zone that they fill.',
      }),
    ),
    blank: Type.Optional(Type.Boolean({ description: 'Nothing is printed on the back.' })),
  },
  'A card layout.',
);
export type BackFile = Static<typeof BackFile>;
export type Zone = Static<typeof Zone>;
export type Font = Static<typeof Font>;
