import fc from 'fast-check';

import type { CardFront } from '../../schema/index.js';
import {
  ACTORS,
  embargo,
  holdId,
  instant,
  level,
  name,
  phrase,
  present,
  sometimes,
  word,
} from './generate-words.js';
import type { Stretch, Words } from './plain.js';

const stretch: fc.Arbitrary<Stretch> = fc.record({
  words: phrase.map((text) => `${text}.`),
  italic: fc.nat(3).map((n) => n === 0),
  bold: fc.nat(5).map((n) => n === 0),
  hold: fc.oneof({ weight: 4, arbitrary: fc.constant(null) }, { weight: 3, arbitrary: holdId }),
  count: fc.constant(null),
  broken: fc.nat(5).map((n) => n === 0),
  stressed: fc.nat(3).map((n) => n === 0),
});
const counted = fc
  .tuple(stretch, fc.nat(6))
  .map(([made, n]) => (n === 0 && made.hold === null ? { ...made, count: 'crew' } : made));
export const words: fc.Arbitrary<Words> = fc.array(
  fc.array(counted, { minLength: 1, maxLength: 4 }),
  {
    maxLength: 2,
  },
);

const image = fc
  .tuple(
    fc.nat(200).map((n) => `art/a${n}.svg`),
    fc.option(phrase, { nil: undefined }),
    sometimes(word),
    fc.option(fc.subarray(ACTORS), { nil: undefined }),
  )
  .map(([file, alt, ref, depicts]) => present({ file, alt, ref, depicts }));

const signer = fc
  .tuple(
    fc.constantFrom(...ACTORS),
    sometimes(name),
    fc.constantFrom('asked', 'contracted', 'signed', 'redemption', 'withdrawn'),
  )
  .map(([signs, as, state]) => present({ name: signs, as, state }));

const FIELDS = [
  'name',
  'bio',
  'image',
  'image.alt',
  'image.alt',
  'image.depicts',
  'image.ref',
  'facts',
  'facts.Berth',
  'facts.No. of oars',
  'texts',
  'texts.caption',
  'signers',
  'credits',
  'variation',
  'run',
  'shortPrint',
  'issued',
] as const;

const holds = fc
  .uniqueArray(fc.tuple(fc.constantFrom(...FIELDS), holdId), {
    maxLength: 5,
    selector: ([field]) => field,
  })
  .map((pairs) => (pairs.length === 0 ? undefined : Object.fromEntries(pairs)));

const front: fc.Arbitrary<CardFront> = fc
  .record({
    name,
    spoiler: level,
    embargo,
    ships: sometimes(fc.oneof(instant, fc.constant('unset'))),
    state: sometimes(fc.constantFrom('draft', 'ready')),
    publicName: fc.option(
      name.map((text) => `The ${text}`),
      { nil: undefined },
    ),
    holds,
    image: fc.option(image, { nil: undefined }),
    facts: fc.option(
      fc.dictionary(fc.constantFrom('Berth', 'Depth', 'No. of oars'), phrase, { maxKeys: 3 }),
      { nil: undefined },
    ),
    texts: fc.option(
      fc.dictionary(fc.constantFrom('caption', 'motto'), phrase, { minKeys: 1, maxKeys: 2 }),
      { nil: undefined },
    ),
    signers: sometimes(fc.array(signer, { minLength: 1, maxLength: 3 }), 2),
    credits: sometimes(
      fc.array(fc.record({ role: word, name }), { minLength: 1, maxLength: 2 }),
      2,
    ),
    story: sometimes(fc.constantFrom('1/1', '2/14', '9/12')),
    variation: sometimes(
      fc.record({
        of: fc.constant('crew/c0'),
        letter: fc.constantFrom('b', 'c'),
        tell: phrase,
      }),
    ),
    shortPrint: sometimes(fc.constantFrom('SP', 'SSP')),
    run: sometimes(fc.integer({ min: 1, max: 500 })),
    issued: sometimes(fc.constantFrom('yes', 'no'), 2),
    why: sometimes(phrase),
    back: sometimes(fc.constantFrom('standard', 'ornate')),
    writer: sometimes(fc.constant('jonah')),
    sources: sometimes(
      fc.subarray<NonNullable<CardFront['sources']>[number]>([
        { doc: 'script-4' },
        { doc: 'diary', ref: 'p. 3', for: 'Berth' },
        { doc: 'bible' },
        { doc: 'diary', for: 'bio' },
      ]),
    ),
    checkedAgainst: sometimes(fc.constant('cut-6')),
    remark: sometimes(phrase),
  })
  .map((made) => ({ number: 'none', ...present(made) }));

export interface Made {
  front: CardFront;
  bio: Words;
}
export const made: fc.Arbitrary<Made> = fc
  .record({ front, bio: words })
  .map((card) =>
    card.bio.length === 0 ? { ...card, front: { ...card.front, bio: 'none' } } : card,
  );
