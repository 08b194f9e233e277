import { Type, type Static } from 'typebox';
import { oneOf, shape } from '../common.js';

/** How a set is written. What is not said is not asked for. */
export const HouseStyle = shape(
  {
    english: Type.Optional(oneOf(['american', 'british'], 'Whose spelling; American by default.')),
    quotes: Type.Optional(
      oneOf(['curly', 'straight'], 'The shape of quotation marks and apostrophes.'),
    ),
    speech: Type.Optional(oneOf(['single', 'double'], 'The marks that stand around what is said.')),
    dash: Type.Optional(
      oneOf(['spaced-en', 'closed-em', 'spaced-em'], 'The dash between parts of a sentence.'),
    ),
    ellipsis: Type.Optional(oneOf(['sign', 'dots'], 'One sign, or three full stops.')),
    numbers: Type.Optional(
      shape(
        {
          words: Type.Integer({
            minimum: 0,
            maximum: 1000,
            title: 'a whole number to 1000',
            description: 'The greatest number that is still written in words.',
          }),
        },
        'Whole numbers up to this are written in words, greater ones in figures.',
      ),
    ),
    units: Type.Optional(
      oneOf(['spaced', 'closed'], 'Whether a space stands between a figure and its unit.'),
    ),
  },
  'The house style of its copy.',
);
export type HouseStyle = Static<typeof HouseStyle>;
