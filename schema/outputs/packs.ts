import { Type, type Static } from 'typebox';
import { oneOf, shape } from '../common.js';
import { Finding } from './check.js';

const Count = Type.Integer({ minimum: 0 });
const Nothing = Type.Null();
const Exact = Type.String({
  pattern: '^-?[0-9]+(/[0-9]+)?$',
  description: 'An exact number: whole, or a fraction in lowest terms.',
});

const PackedLine = shape(
  {
    of: Type.Union([Type.String(), Nothing], {
      description: 'The id of a subset or a parallel; null for base cards and fillers.',
    }),
    title: Type.String(),
    what: oneOf(['subset', 'parallel', 'decoy', 'base'], 'What is packed.'),
    copies: Count,
    placesEach: Count,
    places: Count,
    perBox: Exact,
    perCase: Exact,
    packsForOne: Type.Union([Exact, Nothing], { description: 'Packs for one copy, on average.' }),
    oneIn: Type.Union([Count, Nothing], {
      description: 'The N of 1:N packs, rounded up: never better than the truth.',
    }),
    stated: Type.Union([Count, Nothing], { description: 'The N that the plan says.' }),
    cards: Type.Array(
      shape({ cards: Count, copies: Exact }, 'Cards of which so many copies of each go in.'),
    ),
  },
  'A line of a product.',
);

const PackedCompletion = shape(
  {
    of: Type.Union([Type.String(), Nothing]),
    title: Type.String(),
    cards: Count,
    model: oneOf(['packs', 'draws', 'sequenced'], 'By which model it was worked out.'),
    expected: Type.Union([Type.Number(), Nothing], { description: 'Packs, on average.' }),
    half: Type.Union([Count, Nothing]),
    ninety: Type.Union([Count, Nothing]),
    ninetyNine: Type.Union([Count, Nothing], {
      description: 'Packs after which 50, 90 and 99 of a hundred collectors have it.',
    }),
    traded: Type.Union([Type.Number(), Nothing], {
      description:
        'Packs for each of four who buy alike and trade what they have twice; null if that is more than are made.',
    }),
    curve: Type.Array(Count, {
      description: 'Packs after which 5, 10, … 95 and 99 of a hundred collectors have it.',
    }),
    box: Type.Union([
      shape(
        {
          different: Count,
          doubles: Count,
          sets: Count,
          boxesForSet: Type.Union([Count, Nothing]),
        },
        'What a box holds where cards come in their order.',
      ),
      Nothing,
    ]),
  },
  'How a set is completed from packs of one product.',
);

const PackedProduct = shape(
  {
    id: Type.String(),
    title: Type.String(),
    collation: oneOf(['sequenced', 'random'], 'Whether cards come in their order or by chance.'),
    pack: Count,
    box: Count,
    case: Count,
    cases: Count,
    boxes: Count,
    packs: Count,
    places: Count,
    taken: Count,
    left: Type.Integer({ description: 'Places for base cards; below 0 if lines take too many.' }),
    cards: Count,
    lines: Type.Array(PackedLine),
    completion: Type.Array(PackedCompletion),
    told: Type.Array(
      shape(
        {
          rounding: oneOf(
            ['stated', 'whole', 'fine', 'round', 'coarse'],
            'How round the odds are said: as they are stated now, or all of them at one step.',
          ),
          from: Count,
          to: Count,
          count: Type.Integer({
            minimum: 0,
            description: 'How many agree: from the first to the last not always all of them.',
          }),
        },
        'Numbers of cases that agree with public odds and runs; none where `from` is above `to`.',
      ),
    ),
  },
  'A product as it is packed.',
);

const PackedForm = shape(
  {
    cards: Count,
    blank: Type.Integer({ minimum: 0, description: 'Places that stay blank.' }),
    needed: Type.Integer({ minimum: 0, description: 'Sheets that must come out well.' }),
    sheets: Type.Integer({ minimum: 0, description: 'Sheets that are printed.' }),
    groups: Type.Array(
      shape(
        {
          cards: Count,
          labels: Type.Array(Type.String(), { description: 'What these cards are called.' }),
          times: Type.Integer({ minimum: 0, description: 'How often each stands on the sheet.' }),
          double: Type.Boolean({ description: 'Whether they are printed double.' }),
          copies: Type.Integer({ minimum: 0, description: 'Copies of each that come.' }),
          over: Exact,
        },
        'Cards that are alike on it; `over` is copies of each above what is to be made, below 0 what is missing.',
      ),
    ),
    printed: Type.Array(
      shape({ label: Type.String(), times: Count, double: Type.Boolean() }, 'A card on it.'),
      { description: 'The cards on it, in their order.' },
    ),
  },
  'Sheets that are alike.',
);

const PackedKind = shape(
  {
    of: Type.String(),
    title: Type.String(),
    base: Type.Boolean(),
    packed: Exact,
    reserve: Count,
    cards: Type.Array(
      shape(
        {
          cards: Count,
          only: Type.Union([Type.String(), Nothing], {
            description: 'What the card is called, if it is one alone.',
          }),
          made: Exact,
        },
        'Cards of which as many are made.',
      ),
    ),
    sheets: Type.Union([
      shape(
        {
          columns: Count,
          rows: Count,
          up: Type.Integer({ minimum: 0, description: 'Places on a sheet.' }),
          sheets: Type.Integer({ minimum: 0, description: 'Sheets of all forms.' }),
          forms: Type.Array(PackedForm),
        },
        'Press sheets.',
      ),
      Nothing,
    ]),
  },
  'What is made of a subset or a parallel over all products.',
);

const PackedUndecided = shape(
  {
    id: Type.String(),
    title: Type.String(),
    from: Count,
    to: Count,
    counts: Type.Array(
      shape(
        {
          cases: Count,
          divides: Type.Boolean({ description: 'Whether everything comes out whole.' }),
          left: Type.Integer(),
          base: Type.Union([Count, Nothing]),
          eachBase: Type.Union([Exact, Nothing]),
        },
        'What a number of cases would give.',
      ),
    ),
  },
  'A product of which nobody has decided how many cases are made.',
);

export const PacksReport = shape(
  {
    internal: Type.String({ description: 'The mark that it bears.' }),
    sets: Type.Array(
      shape(
        {
          id: Type.String(),
          title: Type.String(),
          products: Type.Array(PackedProduct),
          kinds: Type.Array(PackedKind),
          undecided: Type.Array(PackedUndecided),
          findings: Type.Array(Finding),
        },
        'A set that says what is in its packs.',
      ),
    ),
  },
  'What `packs --format json` prints: for the house alone.',
);
export type PacksReport = Static<typeof PacksReport>;
export type PacksSet = PacksReport['sets'][number];
export type PacksKind = PacksSet['kinds'][number];
export type PacksProduct = PacksSet['products'][number];

export const PacksPublic = shape(
  {
    preview: Type.Union([Type.String(), Nothing], {
      description: 'Before when it is not to be passed on; null if anybody may see it.',
    }),
    asOf: Type.Union([Type.String(), Nothing], { description: 'The latest step that has come.' }),
    sets: Type.Array(
      shape(
        {
          id: Type.String(),
          title: Type.String(),
          products: Type.Array(
            shape(
              {
                id: Type.String(),
                title: Type.String(),
                pack: Type.Union([Count, Nothing]),
                box: Type.Union([Count, Nothing]),
                odds: Type.Array(
                  shape({ title: Type.String(), packs: Count }, 'One in so many packs.'),
                ),
              },
              'A product.',
            ),
          ),
        },
        'A set.',
      ),
    ),
    cautions: Type.Array(Type.String()),
    beforePrint: Type.String({ description: 'What is for counsel and no part of the text.' }),
  },
  'What `packs --public --format json` prints.',
);
export type PacksPublic = Static<typeof PacksPublic>;
