import { Type, type Static } from 'typebox';
import { Colour, Format, Id, Positive, Text, oneOf, shape } from '../common.js';

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

export const Font = shape(
  {
    package: Type.Optional(Text),
    regular: Text,
    italic: Type.Optional(Text),
    bold: Type.Optional(Text),
    boldItalic: Type.Optional(Text),
  },
  'Font files of a package, or of the content’s own fonts folder.',
);

export const Zone = shape(
  {
    x: Millimetres,
    y: Millimetres,
    width: Millimetres,
    height: Millimetres,
    font: Id,
    size: Points,
    leading: Points,
    align: Type.Optional(oneOf(['left', 'center', 'right', 'justify'], 'How lines are set.')),
    vertical: Type.Optional(oneOf(['top', 'middle', 'bottom'], 'Where the text stands.')),
    tracking: Type.Optional(Type.Number({ minimum: -100, maximum: 500, title: '1/1000 em' })),
    hyphens: Type.Optional(oneOf(['none', 'auto'], 'Whether words may be divided.')),
    breaks: Type.Optional(
      oneOf(['line-by-line', 'whole-paragraph'], 'The way in which lines are broken.'),
    ),
    widows: Type.Optional(oneOf(['allow', 'avoid'], 'Whether a last line may be one word.')),
    indent: Type.Optional(Millimetres),
    gap: Type.Optional(Points),
    shrink: Type.Optional(shape({ to: Points }, 'The smallest size that the text may take.')),
    colour: Type.Optional(Colour),
    face: Type.Optional(oneOf(['regular', 'italic', 'bold', 'boldItalic'], 'The face of it all.')),
    avoid: Type.Optional(
      Type.Array(
        shape(
          { x: Millimetres, y: Millimetres, width: Millimetres, height: Millimetres },
          'A rectangle that no line may touch, from the trimmed corner.',
        ),
      ),
    ),
  },
  'A box for text: mm from the trimmed top left corner, type in points.',
);

export const Rule = shape(
  {
    x: Millimetres,
    y: Millimetres,
    width: Millimetres,
    height: Millimetres,
    colour: Colour,
  },
  'A filled rectangle: a rule or a panel.',
);

export const BackFile = shape(
  {
    format: Type.Optional(Format),
    id: Id,
    trim: shape({ width: Positive, height: Positive }, 'The card, in mm.'),
    bleed: Millimetres,
    safe: Millimetres,
    paper: Type.Optional(Colour),
    frontPaper: Type.Optional(Colour),
    fonts: Type.Record(Id, Font, { minProperties: 1, additionalProperties: false }),
    zones: Type.Record(Id, Zone, { additionalProperties: false }),
    front: Type.Optional(
      Type.Record(Id, Zone, {
        additionalProperties: false,
        description: 'Zones of the front.',
      }),
    ),
    panels: Type.Optional(Type.Array(Rule)),
    shared: Type.Optional(
      Type.Record(Id, Text, {
        additionalProperties: false,
        description: 'The same words on every card of this layout.',
      }),
    ),
    blank: Type.Optional(Type.Boolean({ description: 'Nothing is printed on the back.' })),
  },
  'A card layout.',
);
export type BackFile = Static<typeof BackFile>;
export type Zone = Static<typeof Zone>;
export type Font = Static<typeof Font>;
