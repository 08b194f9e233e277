import { describe, expect, test } from 'vitest';

import { SMALL_LAYOUT, WITH_LAYOUT } from '../../pipeline/checks/fit-sample.js';
import type { Files } from '../../pipeline/checks/index.js';
import { changed } from './change.js';
import { lookAt, said } from './look.js';

const RULE = ['statement-missing'];
const SAID = 'statement: Put there by hand.';

function found(files: Files): string[] {
  return said(lookAt(files, RULE).findings).map((line) => line.replace('statement-missing ', ''));
}

function inserts(plan: string, card = '', over: Files = {}): Files {
  const keys = plan === '' ? '' : ` ${plan},`;
  return {
    ...over,
    ...changed('one/plan.yaml', [['group: inserts,', `group: inserts,${keys}`]], over),
    ...(card === ''
      ? {}
      : changed('one/cards/extra/b1.md', [['spoiler: open', `spoiler: open\n${card}`]], over)),
  };
}

const RELIC = 'relic: { piece: Wood, from: A boat, record: Book 1 }';
const SIGNER = 'signers: [{ name: Ines Albarran, state: signed }]';

describe('a subset without its statement', () => {
  test.each([
    ['autograph', SIGNER, 'autographs'],
    ['relic', RELIC, 'relics'],
    ['sketch', '', 'sketches'],
  ])('%s', (carries, card, called) => {
    expect(found(inserts(`carries: ${carries}`, card))).toEqual([
      `one/plan.yaml:8:11 \`extra\` carries ${called}, and no statement says what they are`,
    ]);
    expect(found(inserts(`carries: ${carries}, ${SAID}`, card))).toEqual([]);
  });
});

describe('a subset that does not say what it carries', () => {
  test.each([
    ['signers', '', SIGNER, 'autograph'],
    ['relics', '', RELIC, 'relic'],
    ['signed relics', '', `${RELIC}\n${SIGNER}`, 'relic'],
  ])('%s', (_, plan, card, carries) => {
    const bare = lookAt(inserts(plan, card), RULE).findings;
    expect(bare).toMatchObject([
      {
        file: 'one/plan.yaml',
        found: 'no `carries` and no `statement`',
        expected: `\`carries: ${carries}\`, and \`statement: …\`, in the words that your licence and counsel give`,
      },
    ]);
    expect(lookAt(inserts(SAID, card), RULE).findings).toMatchObject([
      { found: 'no `carries`', expected: `\`carries: ${carries}\`` },
    ]);
  });

  test('a roster', () => {
    const files = {
      ...changed('one/plan.yaml', [
        ['{ prefix: X-, from: 1, to: 1 }', 'none, roster: rosters/a.yaml'],
      ]),
      'one/cards/extra/b1.md': null,
      'one/rosters/a.yaml': 'artists: [{ name: Tove Lindqvist, state: signed }]\n',
    };
    expect(lookAt(files, RULE).findings).toMatchObject([
      { expected: expect.stringContaining('`carries: sketch`') as unknown },
    ]);
  });

  test('nothing is carried by cards that are not issued', () => {
    expect(found(inserts('', `${RELIC}\nissued: "no"`))).toEqual([]);
    expect(found(inserts(''))).toEqual([]);
  });
});

describe('a layout that cannot print it', () => {
  const zone = '{ x: 5, y: 60, width: 40, height: 8, font: body, size: 6, leading: 8 }';
  const own = (more: string): Files => ({
    ...WITH_LAYOUT,
    'backs/small.yaml': `${SMALL_LAYOUT}${more}`,
  });
  const carries = `carries: relic, ${SAID}`;

  test.each([
    ['no zone', '', 1],
    ['a zone on the back', `  statement: ${zone}\n`, 0],
    ['a zone on the front', `front:\n  statement: ${zone}\n`, 0],
    ['a zone on a back that stays blank', `  statement: ${zone}\nblank: true\n`, 1],
  ])('%s', (_, more, findings) => {
    expect(found(inserts(carries, RELIC, own(more)))).toHaveLength(findings);
  });

  test('words that the layout shares do not stand for those of the plan', () => {
    const files = inserts(
      'carries: relic',
      RELIC,
      own(`  statement: ${zone}\nshared: { statement: By hand. }\n`),
    );
    expect(found(files)).toHaveLength(1);
  });

  test('the layout of a card of its own', () => {
    const bare = { 'backs/bare.yaml': SMALL_LAYOUT.replace('id: small', 'id: bare') };
    const files = inserts(carries, `${RELIC}\nback: bare`, { ...own(''), ...bare });
    expect(found(files)).toEqual([
      'one/cards/extra/b1.md:6:7 the layout `bare` has no zone `statement`, so that this card prints none',
    ]);
  });
});

describe('what a card must say of what it carries', () => {
  test.each([
    [
      'a relic card without its relic',
      'relic',
      'writer: jonah',
      '3:7 this card of a subset of relics does not say what is set into it',
    ],
    [
      'a relic without record',
      'relic',
      'relic: { piece: Wood, from: A boat }',
      '5:1 nothing says who vouches for this relic',
    ],
    [
      'a relic without record among autographs',
      'autograph',
      `${SIGNER}\nrelic: { piece: Wood, from: A boat }`,
      '6:1 nothing says who vouches for this relic',
    ],
    [
      'an autograph card without a signer',
      'autograph',
      'writer: jonah',
      '3:7 this card of a subset of autographs has no signer',
    ],
  ])('%s', (_, carries, card, remark) => {
    expect(found(inserts(`carries: ${carries}, ${SAID}`, card))).toEqual([
      `one/cards/extra/b1.md:${remark}`,
    ]);
    expect(found(inserts(`carries: ${carries}, ${SAID}`, `${card}\nissued: "no"`))).toEqual([]);
  });
});

describe('the statement prints', () => {
  const zone =
    '  statement: { x: 5, y: 60, width: 40, height: 3, font: body, size: 6, leading: 8 }\n';
  const files = (words: string): Files =>
    inserts(`carries: relic, statement: ${words}`, RELIC, {
      ...WITH_LAYOUT,
      'backs/small.yaml': `${SMALL_LAYOUT}${zone}`,
    });

  test('and is told where it is overset, in the plan', () => {
    const long =
      'Cut from a model boat that was used in the making of the series and kept dry since then.';
    expect(said(lookAt(files(long), ['overset']).findings)).toEqual([
      expect.stringMatching(/^overset one\/plan\.yaml:8:\d+ .*statement/),
    ]);
    expect(said(lookAt(files('By hand.'), ['overset']).findings)).toEqual([]);
  });
});
