import { describe, expect, test } from 'vitest';

import { RULES, sampleWith, type Files } from '../../pipeline/checks/index.js';
import { placeOf } from '../../pipeline/model/index.js';
import type { Finding } from '../../schema/index.js';
import { cardText, changed } from './change.js';
import { lookAt } from './look.js';

const CAST: Files = {
  'names.yaml': `names:
  - { name: Ysolde Marrack, kind: character, aliases: [Ysolde], level: later, publicName: "The voice: hers" }
  - { name: Seven Doors, kind: craft, level: last }
  - { name: Barnaby Quent, kind: performer, level: open, embargo: [guest] }
  - { name: Mill Lane, kind: place, level: later, embargo: [guest] }
  - { name: Tin Mill, kind: craft, level: open }
`,
};

function lamp(front: string, bio?: string): Files {
  const lines = `number: "2"\nstory: 1/4\n${front}`;
  return { ...CAST, 'one/art/a.svg': '<svg/>', 'one/cards/base/a2.md': cardText(lines, bio) };
}

function bioFindings(bio: string, only = ['leak']): readonly Finding[] {
  return lookAt(lamp('name: The Lamp\nspoiler: open', bio), only).findings;
}

/** The words that a finding underlines. */
function covered(files: Files, { file, line, column, endLine, endColumn }: Finding): string {
  const text = sampleWith(files).get(file) ?? '';
  const offsets = Array.from(text, (_, at) => at).concat(text.length);
  const offset = (l: number, c: number) =>
    offsets.find((at) => {
      const place = placeOf(text, at);
      return place.line === l && place.column === c;
    });
  return text.slice(offset(line, column), offset(endLine, endColumn));
}

describe('leak', () => {
  test('says which level and which embargo hold the name, and until when', () => {
    const found = (bio: string) => bioFindings(bio).map((finding) => finding.found);
    expect(found('Ysolde came.')).toStrictEqual([
      'Ysolde: Ysolde Marrack is held by later until 16 April 2027, 20:00',
    ]);
    expect(found('Barnaby Quent came.')).toStrictEqual([
      'Barnaby Quent: Barnaby Quent is held by guest, which has no date',
    ]);
    expect(found('In Mill Lane.')).toStrictEqual([
      'Mill Lane: Mill Lane is held by later until 16 April 2027, 20:00 and guest, which has no date',
    ]);
    expect(found('In [Mill Lane](held:later).')).toStrictEqual([
      'Mill Lane: Mill Lane is held by guest, which has no date',
    ]);
  });

  test('underlines the words themselves, the second time too', () => {
    const files = lamp(
      'name: The Lamp\nspoiler: open\nfacts: { Lamp: Ysolde and YSOLDE and Ysolde }',
    );
    const { findings } = lookAt(files, ['leak']);
    expect(findings.map((finding) => covered(files, finding))).toStrictEqual([
      'Ysolde',
      'YSOLDE',
      'Ysolde',
    ]);
    expect(new Set(findings.map(({ column }) => column)).size).toBe(3);
  });

  test.each([
    ['a name in a span that is held as long', 'It is [Ysolde](held:later).'],
    ['its possessive outside the span', 'It is [Ysolde](held:later)’s lamp.'],
    ['most of a name in it', 'It is Y[solde](held:later).'],
    [
      'a sentence between two words',
      'There are seven. [It is Ysolde.](held:later) Doors are shut.',
    ],
  ])('passes %s', (_, bio) => {
    expect(bioFindings(bio)).toStrictEqual([]);
  });

  test.each([
    ['a name in a span that opens before it', 'There are [Seven Doors](held:later).'],
    ['the end of a name in a span', 'It is Ysol[de](held:later).'],
    ['a name around a span', 'It is Ys[zu](held:later)olde.'],
    ['words around a span', 'There are Seven [old](held:later) Doors.'],
  ])('tells of %s once', (_, bio) => {
    expect(bioFindings(bio)).toMatchObject([{ severity: 'error' }]);
  });

  test.each([
    ['a surname alone', 'A lamp of Marrack is lit.', 'has the last word of a name'],
    ['letters that stand apart', 'It is Yso lde.', 'has letters that together are a name'],
    ['a slip', 'It is Isolde.', 'has a word that is one letter away from a name'],
  ])('warns of %s', (_, bio, says) => {
    expect(bioFindings(bio)).toMatchObject([
      { severity: 'warning', message: `the bio ${says} that opens later than it` },
    ]);
  });

  test('tells of a name once where a span is taken out of the same paragraph', () => {
    expect(bioFindings('Ysolde came, and [it rained](held:later) then.')).toHaveLength(1);
  });

  test('does not warn of a surname that two people have', () => {
    const person = (name: string, level: string): string =>
      `  - { name: ${name}, kind: character, level: ${level} }\n`;
    const found = (...people: readonly string[]): number => {
      const files = lamp('name: The Lamp\nspoiler: open', 'A lamp of Sillow is lit.');
      return lookAt({ ...files, 'names.yaml': `names:\n${people.join('')}` }, ['leak']).findings
        .length;
    };
    expect(found(person('Dace Sillow', 'later'))).toBe(1);
    expect(found(person('Dace Sillow', 'later'), person('Dorrit Sillow', 'last'))).toBe(0);
  });

  test('does not warn of a last word that another name has', () => {
    expect(bioFindings('A lamp in a Lane, by the Mill.')).toStrictEqual([]);
  });
});

describe('name-held', () => {
  const fixed = (front: string): { files: Files; findings: readonly Finding[] } => {
    const files = lamp(front);
    const { findings } = lookAt(files, ['name-held']);
    const [finding] = findings;
    const text = sampleWith(files).get('one/cards/base/a2.md') ?? '';
    if (finding?.fix === undefined) return { files, findings };
    const mended = text.replace(covered(files, finding), () => finding.fix ?? '');
    return { files: { ...files, 'one/cards/base/a2.md': mended }, findings };
  };

  test.each([
    ['name: Ysolde Marrack\nspoiler: open'],
    ['name: "Lamp of Ysolde" # to be told\nspoiler: open'],
    ['name: Ysolde\npublicName: The voice\nspoiler: open'],
    ['name: Ysolde\nspoiler: open\nholds: { name: later }'],
  ])('its fix mends %j', (front) => {
    const { files, findings } = fixed(front);
    expect(findings).toHaveLength(1);
    expect(
      lookAt(
        files,
        RULES.map(({ id }) => id),
      ).findings,
    ).toStrictEqual([]);
  });

  test.each([
    ['nobody knows what stands for the name', 'name: Seven Doors\nspoiler: open'],
    ['two holds are needed', 'name: Mill Lane\npublicName: A lane\nspoiler: open'],
    [
      '`holds` stands already',
      'name: Ysolde\nspoiler: open\nimage: { file: art/a.svg }\nholds: { image: later }',
    ],
  ])('offers none where %s', (_, front) => {
    const { findings } = fixed(front);
    expect(findings).toMatchObject([{ rule: 'name-held' }]);
    expect(findings[0]?.fix).toBeUndefined();
  });

  test('leaves a slip in a name to leak, and tells of a name once', () => {
    const only = ['leak', 'name-held'];
    expect(lookAt(lamp('name: Isolde\nspoiler: open'), only).findings).toMatchObject([
      { rule: 'leak', severity: 'warning' },
    ]);
    expect(lookAt(lamp('name: Ysolde\nspoiler: open'), only).findings).toMatchObject([
      { rule: 'name-held', severity: 'error' },
    ]);
  });
});

describe('number-tells', () => {
  const coded = (code: string, more = '', title = 'Extra'): Files => ({
    ...CAST,
    ...changed('one/plan.yaml', [
      ['{ prefix: X-, from: 1, to: 1 }', `{ codes: ["${code}"] }`],
      ['title: Extra', `title: ${title}`],
    ]),
    'one/cards/extra/b1.md': cardText(`number: "${code}"\nname: A Chart\nspoiler: open\n${more}`),
  });

  test.each([
    'BQ-1',
    'SG-BQ',
    'B.Q.',
    'B-Q-1',
    'bq1',
    'QUENT',
    'BARNABYQUENT',
    'YM',
    'YSOLDE-3',
    'SD-1',
  ])('tells of %s', (code) => {
    expect(lookAt(coded(code), ['number-tells']).findings).toMatchObject([
      {
        rule: 'number-tells',
        card: 'extra/b1',
        found: expect.stringContaining('is held by') as unknown,
      },
    ]);
  });

  test.each(['SG-12', 'B-1', 'BQX', 'MILL', 'TM-1', '1', 'X-1Y'])('passes %s', (code) => {
    expect(lookAt(coded(code), ['number-tells']).findings).toStrictEqual([]);
  });

  test('tells of a code whose card leaves a placeholder, and not of one that leaves no trace', () => {
    const only = ['number-tells'];
    const embargoed = coded('BQ-1', 'embargo: [guest]\nships: unset');
    expect(lookAt(embargoed, only).findings).toMatchObject([{ card: 'extra/b1' }]);
    const absent = {
      ...coded('SD-1'),
      'one/cards/extra/b1.md': cardText('number: SD-1\nname: A\nspoiler: last'),
    };
    expect(lookAt(absent, only).findings).toStrictEqual([]);
  });

  test('tells of a code in the plan that no card bears, and of a prefix once', () => {
    const only = ['number-tells'];
    expect(
      lookAt({ ...coded('YM-1'), 'one/cards/extra/b1.md': null }, only).findings,
    ).toMatchObject([
      { file: 'one/plan.yaml', card: null, found: expect.stringMatching(/^YM: /) as unknown },
    ]);
    const prefix = { ...CAST, ...changed('one/plan.yaml', [['prefix: X-', 'prefix: YM-']]) };
    expect(lookAt(prefix, only).findings).toMatchObject([{ file: 'one/plan.yaml', card: null }]);
  });

  test('passes letters that stand for the title of the subset', () => {
    expect(lookAt(coded('SD-1', '', 'Sunk Depths'), ['number-tells']).findings).toStrictEqual([]);
  });
});

describe('depicts-held', () => {
  const shows = (who: string, more = ''): readonly Finding[] =>
    lookAt(
      lamp(`name: The Lamp\nspoiler: open\nimage: { file: art/a.svg, depicts: [${who}] }\n${more}`),
      ['depicts-held'],
    ).findings;

  test('goes by what holds the picture', () => {
    expect(shows('Ysolde')).toMatchObject([
      { expected: expect.stringContaining('image: later') as unknown },
    ]);
    expect(shows('Barnaby Quent')).toMatchObject([
      { expected: expect.stringContaining('image: guest') as unknown },
    ]);
    expect(shows('Ysolde', 'holds: { image: later }')).toStrictEqual([]);
    expect(shows('Seven Doors', 'holds: { image: later }')).toHaveLength(1);
    expect(shows('Seven Doors', 'holds: { image: last }')).toStrictEqual([]);
    expect(shows('Tin Mill')).toStrictEqual([]);
    expect(shows('Tin Mill, Ysolde, Seven Doors')).toHaveLength(2);
  });
});

describe('secret', () => {
  const KIN: Files = {
    'names.yaml': `${CAST['names.yaml'] ?? ''}secrets:
  - { id: warden, level: later, says: A is the bell warden, allOf: [[Tin Mill], [bell warden, keeper]] }
`,
  };
  const told = (front: string, bio: string): readonly Finding[] =>
    lookAt({ ...lamp(front, bio), ...KIN }, ['secret']).findings;

  test('an entry of several words is looked for as they stand', () => {
    expect(told('name: A\nspoiler: open', 'The Tin Mill has a bell warden.')).toHaveLength(1);
    expect(told('name: A\nspoiler: open', 'The Tin Mill has bell-wardens.')).toHaveLength(1);
    expect(told('name: A\nspoiler: open', 'The Tin Mill has a bell, a warden.')).toStrictEqual([]);
  });

  test.each([
    ['a fact, by its name and its value', 'name: A\nspoiler: open\nfacts: { Keeper: Tin Mill }'],
    ['a credit', 'name: A\nspoiler: open\ncredits: [{ role: Keeper, name: Tin Mill }]'],
    ['the name of the card and a fact', 'name: Tin Mill\nspoiler: open\nfacts: { Work: keeper }'],
    [
      'the public name and the alt text',
      'name: A\nspoiler: open\npublicName: Tin Mill\nimage: { file: art/a.svg, alt: A keeper }',
    ],
  ])('is told by %s', (_, front) => {
    expect(told(front, 'Water.')).toMatchObject([{ rule: 'secret', severity: 'error' }]);
  });

  test('is told by a file name', () => {
    const card = cardText('number: X-1\nname: A Chart\nspoiler: open');
    const files = { ...lamp('name: A\nspoiler: open'), ...KIN, 'one/cards/extra/b1.md': null };
    expect(
      lookAt({ ...files, 'one/cards/extra/tin-mill-keeper.md': card }, ['secret']).findings,
    ).toMatchObject([{ file: 'one/cards/extra/tin-mill-keeper.md' }]);
  });
});
