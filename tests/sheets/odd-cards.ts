import fc from 'fast-check';

import type { CardFront } from '../../schema/index.js';
import type { SheetCard } from '../../pipeline/out/sheets/index.js';
import { made } from '../law/generate-cards.js';
import { present } from '../law/generate-words.js';

/** What makes trouble in a cell, in a list or in a workbook, besides any text. */
const TROUBLE = [
  ';',
  '; ',
  ':',
  ': ',
  '\\',
  '\\n',
  '\n',
  '\r',
  '\r\n',
  '\t',
  '|',
  '"',
  ',',
  "'",
  '=',
  '=1+1',
  '+',
  '-',
  '@',
  '(none)',
  'none',
  ' ',
  '\u00a0',
  '_x000D_',
  '_x0041_',
  '_x005F_x0041_',
  '&amp;',
  '&#13;',
  '<b>',
  ']]>',
  '\ufffd',
  '\ufeff',
  '\u2028',
  'constructor',
  '__proto__',
  'toString',
  'é',
  '🛶',
  '007',
  '1/2',
  '1e5',
  'TRUE',
  '#REF!',
];

/** Text that a workbook can hold: whole characters, no controls, nothing that is no character. */
const plainCharacter = fc
  .string({ unit: 'grapheme', minLength: 1, maxLength: 2 })
  .filter((text) => !/[\p{Cc}\p{Cs}\ufffe\uffff]/u.test(text));

/** A text that makes trouble. */
export const odd: fc.Arbitrary<string> = fc
  .array(fc.oneof(fc.constantFrom(...TROUBLE), plainCharacter), { minLength: 1, maxLength: 5 })
  .map((parts) => parts.join(''));

const id = fc.constantFrom('shops', 'fair', 'a-1');

/** Names of facts and texts, few enough that a thousand cards do not have as many columns. */
const NAMES = [...new Set([...TROUBLE, ...fc.sample(odd, { numRuns: 30, seed: 20270417 })])];
const record = fc.dictionary(fc.constantFrom(...NAMES), odd, {
  minKeys: 1,
  maxKeys: 3,
  noNullPrototype: true,
});

const oddKeys: fc.Arbitrary<Partial<CardFront>> = fc
  .record({
    format: maybe(fc.constant(1)),
    number: fc.oneof(fc.constantFrom('007', '1/2', '17', 'SG-1', 'none', '=1'), odd),
    name: odd,
    embargo: maybe(fc.array(id, { maxLength: 2 })),
    publicName: maybe(odd),
    holds: maybe(fc.dictionary(odd, id, { maxKeys: 3, noNullPrototype: true })),
    image: maybe(
      fc
        .record({ file: odd, alt: maybe(odd), ref: maybe(odd), depicts: maybe(fc.array(odd)) })
        .map(present),
    ),
    facts: maybe(record),
    texts: maybe(record),
    signers: maybe(
      fc.array(
        fc
          .record({ name: odd, as: maybe(odd), state: fc.constantFrom('asked', 'signed') })
          .map(present),
        { minLength: 1, maxLength: 3 },
      ),
    ),
    credits: maybe(fc.array(fc.record({ role: odd, name: odd }), { minLength: 1, maxLength: 3 })),
    relic: maybe(fc.record({ piece: odd, from: odd, record: maybe(odd) }).map(present)),
    run: maybe(fc.integer({ min: 1, max: 1_000_000_000 })),
    why: maybe(odd),
    remark: maybe(odd),
    sources: maybe(
      fc.array(fc.record({ doc: id, ref: maybe(odd), for: maybe(odd) }).map(present), {
        maxLength: 3,
      }),
    ),
    accepted: maybe(
      fc.array(fc.record({ rule: id, words: odd, why: odd, by: id }), { maxLength: 2 }),
    ),
  })
  .map(present);

function maybe<T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> {
  return fc.option(value, { nil: undefined });
}

/** A card with every kind of value in every key, and a body of any lines. */
export const oddCard: fc.Arbitrary<SheetCard> = fc
  .record({
    made,
    keys: oddKeys,
    subset: fc.constantFrom('crew', 'story'),
    id: fc.constantFrom('c001', 'c017b'),
    lines: fc.array(fc.oneof(odd, fc.constantFrom('', 'none', '\\none', 'none ')), {
      maxLength: 4,
    }),
    none: fc.boolean(),
  })
  .map(({ made: { front }, keys, subset, id: name, lines, none }) => {
    const own = { ...front, ...keys };
    Reflect.deleteProperty(own, 'bio');
    if (none) own.bio = 'none';
    const card = { subset, id: name, front: own, body: lines.join('\n') };
    return JSON.parse(JSON.stringify(card)) as SheetCard;
  });
