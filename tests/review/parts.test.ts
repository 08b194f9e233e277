import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import type { CardFront } from '../../schema/index.js';
import { memoryFolder, readContent } from '../../pipeline/read/index.js';
import { sampleWith } from '../../pipeline/checks/index.js';
import { WITH_LAYOUT } from '../../pipeline/checks/fit-sample.js';
import type { Card } from '../../pipeline/model/index.js';
import {
  CARD_PARTS,
  COVERED_BY,
  covers,
  digestOf,
  partDigest,
  salesDigest,
  type CardPart,
  type Surroundings,
} from '../../pipeline/review/index.js';

const FRONT: CardFront = {
  number: '17',
  name: 'Odalys Thrane',
  spoiler: 'open',
  embargo: ['fair', 'shops'],
  publicName: 'The night pilot',
  holds: { image: 'later' },
  image: { file: 'art/c017.svg', alt: 'A pilot', ref: 'still 0417', depicts: ['Odalys', 'Pim'] },
  facts: { Berth: 'Lock nine', Boat: 'Heron' },
  texts: { caption: 'At Thimble Quay' },
  signers: [{ name: 'Ines Albarran', as: 'Odalys Thrane', state: 'signed' }],
  credits: [{ role: 'Puppets', name: 'Wen' }],
  variation: { of: 'crew/c016', letter: 'b', tell: 'The lamp is lit' },
  shortPrint: 'SP',
  run: 250,
};

const BIO = 'She rows [by night](held:later) and *never* sleeps.';

function cardWith(front: CardFront, bio = BIO): Card {
  const text = `---\nnumber: "1"\nname: A\nspoiler: open\n---\n${bio}\n`;
  const { sets } = readContent(
    memoryFolder(sampleWith({ ...WITH_LAYOUT, 'one/cards/base/a1.md': text })),
  );
  const card = sets[0]?.cards.find(({ id }) => id === 'a1');
  if (!card) throw new Error('the sample has the card');
  return { ...card, front };
}

const { layouts } = readContent(memoryFolder(sampleWith(WITH_LAYOUT)));
const layout = [...layouts.values()][0]?.value ?? null;
const AROUND: Surroundings = {
  art: 'a'.repeat(64),
  layout,
  fonts: { 'body.regular': 'b'.repeat(64) },
  legal: ['© 2027 Lantern & Oar'],
  statement: 'Put there by hand.',
};
const CARD = cardWith(FRONT);

/** The parts whose digests two cards do not share. */
function voided(card: Card, around: Surroundings = AROUND): CardPart[] {
  return CARD_PARTS.filter(
    (part) => partDigest(part, card, around) !== partDigest(part, CARD, AROUND),
  );
}

/** Another value for each key; parts of a key that belong to different parts stand by themselves. */
const CHANGES: {
  readonly [K in keyof CardFront]-?: readonly (readonly [Partial<CardFront>, CardPart[]])[];
} = {
  format: [[{ format: 1 }, []]],
  number: [[{ number: '18' }, ['layout']]],
  name: [[{ name: 'Captain Thrane' }, ['copy']]],
  spoiler: [[{ spoiler: 'later' }, ['web']]],
  embargo: [[{ embargo: ['fair'] }, ['web']]],
  ships: [[{ ships: 'unset' }, []]],
  state: [[{ state: 'ready' }, []]],
  publicName: [[{ publicName: 'A pilot' }, ['web']]],
  holds: [[{ holds: { image: 'later', name: 'later' } }, ['web']]],
  image: [
    [{ image: { ...image(), alt: 'Another' } }, ['web']],
    [{ image: { ...image(), ref: 'still 0418' } }, ['image']],
    [{ image: { ...image(), depicts: ['Odalys'] } }, ['image']],
    [{ image: { ...image(), file: 'art/renamed.svg' } }, []],
  ],
  facts: [
    [{ facts: { Berth: 'Lock eight', Boat: 'Heron' } }, ['copy']],
    [{ facts: { Boat: 'Heron', Berth: 'Lock nine' } }, ['copy']],
  ],
  texts: [[{ texts: { caption: 'At the quay' } }, ['copy']]],
  signers: [
    [{ signers: [{ name: 'Ines Albarran', as: 'Odalys Thrane', state: 'asked' }] }, ['copy']],
    [{ signers: [{ name: 'Ines Albarran', state: 'signed' }] }, ['copy']],
  ],
  credits: [[{ credits: [{ role: 'Models', name: 'Wen' }] }, ['copy']]],
  story: [[{ story: '2/14' }, []]],
  variation: [
    [{ variation: { of: 'crew/c016', letter: 'c', tell: 'The lamp is lit' } }, ['web']],
    [{ variation: { of: 'crew/c016', letter: 'b', tell: 'The lamp is out' } }, ['web']],
  ],
  shortPrint: [[{ shortPrint: 'SSP' }, ['web']]],
  relic: [[{ relic: { piece: 'Oak', from: 'The workshop' } }, []]],
  run: [[{ run: 251 }, ['web']]],
  issued: [[{ issued: 'no' }, []]],
  why: [[{ why: 'Late' }, []]],
  bio: [[{ bio: 'none' }, []]],
  back: [[{ back: 'other' }, []]],
  writer: [[{ writer: 'jonah' }, []]],
  sources: [[{ sources: [{ doc: 'script-4' }] }, []]],
  checkedAgainst: [[{ checkedAgainst: 'cut-6' }, []]],
  remark: [[{ remark: 'Ask again' }, []]],
  accepted: [[{ accepted: [{ rule: 'alike', words: 'a', why: 'b', by: 'jonah' }] }, []]],
};

function image(): NonNullable<CardFront['image']> {
  return FRONT.image ?? { file: '', alt: '', depicts: [] };
}

describe('each change of a card voids exactly the parts that cover it', () => {
  for (const [key, changes] of Object.entries(CHANGES)) {
    test.each(changes.map(([change, parts]) => [JSON.stringify(change), change, parts] as const))(
      `${key}: %s`,
      (_, change, parts) => {
        expect(voided({ ...CARD, front: { ...FRONT, ...change } })).toEqual(parts);
      },
    );
  }

  test('the parts that the table names are those that some change of the key voids', () => {
    // The words of a bio and the values of a layout lie outside the front matter.
    const outside = new Set(['bio', 'back']);
    for (const [key, changes] of Object.entries(CHANGES)) {
      if (outside.has(key)) continue;
      const parts = [...new Set(changes.flatMap(([, voids]) => voids))].sort();
      expect([key, parts]).toEqual([key, [...COVERED_BY[key as keyof CardFront]].sort()]);
    }
  });

  test.each<[string, Partial<Surroundings>, CardPart[]]>([
    ['art bytes', { art: 'c'.repeat(64) }, ['image']],
    ['no art', { art: null }, ['image']],
    ['a font file', { fonts: { 'body.regular': 'c'.repeat(64) } }, ['layout']],
    ['the legal line', { legal: ['© 2028 Lantern & Oar'] }, ['layout']],
    ['a value of the layout', { layout: layout && { ...layout, safe: 9 } }, ['layout']],
    ['no layout', { layout: null }, ['layout']],
    ['the statement', { statement: 'Put there by hand, once.' }, ['layout']],
    ['no statement', { statement: null }, ['layout']],
  ])('%s', (_, change, parts) => {
    expect(voided(CARD, { ...AROUND, ...change })).toEqual(parts);
  });

  test.each<[string, string, CardPart[]]>([
    ['a word', 'She rows [by night](held:later) and *always* sleeps.', ['copy']],
    ['the face of a word', 'She rows [by night](held:later) and never sleeps.', ['copy']],
    ['a held word', 'She rows [by day](held:later) and *never* sleeps.', ['copy', 'web']],
    ['where a hold ends', 'She rows [by night and](held:later) *never* sleeps.', ['web']],
    ['what holds it', 'She rows [by night](held:last) and *never* sleeps.', ['web']],
    ['no hold', 'She rows by night and *never* sleeps.', ['web']],
    ['what words count', 'She [rows](count:none) [by night](held:later) and *never* sleeps.', []],
    ['a line end', 'She rows\n[by night](held:later) and *never* sleeps.', []],
  ])('of the bio: %s', (_, bio, parts) => {
    expect(voided(cardWith(FRONT, bio))).toEqual(parts);
  });

  test('set and identity', () => {
    expect(voided({ ...CARD, set: 'two' })).toEqual(CARD_PARTS);
    expect(voided({ ...CARD, id: 'a2' })).toEqual(CARD_PARTS);
    expect(voided({ ...CARD, subset: 'extra' })).toEqual(CARD_PARTS);
  });
});

test('parts of one card never share a digest, whatever it says', () => {
  const digests = CARD_PARTS.map((part) => partDigest(part, CARD, AROUND));
  expect(new Set(digests).size).toBe(CARD_PARTS.length);
  expect(digests).toEqual(CARD_PARTS.map((part) => digestOf(covers(part, CARD, AROUND))));
});

test('the order of embargoes and of who is depicted does not count', () => {
  fc.assert(
    fc.property(fc.shuffledSubarray(['fair', 'shops'], { minLength: 2 }), (embargo) => {
      const front = { ...FRONT, embargo, image: { ...image(), depicts: ['Pim', 'Odalys'] } };
      expect(voided({ ...CARD, front })).toEqual([]);
    }),
  );
});

test('an outward text is approved with its words, kind, title and holds', () => {
  const { sets } = readContent(
    memoryFolder(
      sampleWith({
        'one/sales/sheet.md':
          '---\nkind: sell-sheet\ngoes: unset\nspoiler: open\n---\nNine boats, [one lost](held:later).\n',
      }),
    ),
  );
  const text = sets[0]?.sales[0];
  if (!text) throw new Error('the sample has the text');
  const digest = salesDigest(text);
  const { front } = text;
  const others = [
    { ...text, set: 'two' },
    { ...text, id: 'other' },
    { ...text, front: { ...front, kind: 'web' as const } },
    { ...text, front: { ...front, title: 'Nine boats' } },
    { ...text, front: { ...front, spoiler: 'later' } },
    { ...text, front: { ...front, embargo: ['guest'] } },
    { ...text, words: text.words.slice(1) },
  ].map(salesDigest);
  expect(new Set([digest, ...others]).size).toBe(8);
  const inside = { ...front, goes: '2027-01-01T00:00:00+00:00[Europe/London]', remark: 'Ask' };
  expect(salesDigest({ ...text, front: inside })).toBe(digest);
});
