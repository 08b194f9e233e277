import { describe, expect, test } from 'vitest';

import type { Files } from '../../pipeline/checks/index.js';
import { mayQuote, quotationsIn } from '../../pipeline/checks/source-quotes.js';
import { changed } from './change.js';
import { lookAt, said } from './look.js';

const TRUTH = ['cut-stale', 'fact-unsourced', 'source-withdrawn', 'quote-unsourced'];

function found(files: Files): string[] {
  return said(lookAt(files, TRUTH).findings);
}

const DOCUMENTS =
  'documents: [{ id: map, title: Map }, { id: old, title: Old map, withdrawn: "2027-01-08" }]';

function property(more: string): Files {
  return changed('property.yaml', [['approvals: none', `approvals: none\n${more}`]]);
}

function lamp(front: string, bio = 'A lamp that nobody lit is burning.'): Files {
  return changed('one/cards/base/a2.md', [
    ['spoiler: open\n', `spoiler: open\n${front === '' ? '' : `${front}\n`}`],
    ['A lamp that nobody lit is burning.', bio],
  ]);
}

describe('cut-stale', () => {
  const names: Files = {
    'names.yaml': `names:
  - { name: Odalys Thrane, kind: character, aliases: [Odalys, Captain Thrane], avoid: [{ form: Miss Thrane, use: Captain Thrane }], level: open }
  - { name: Patient Heron, kind: craft, level: open }
  - { name: the Heron’s Nest, kind: place, level: open }
`,
  };
  /** The sample with these cuts, its first card and its chart read against the last. */
  function cut(cuts: string, front: string, bio?: string): Files {
    return {
      ...names,
      ...property(`cuts: [${cuts}]`),
      ...changed('one/cards/base/a1.md', [
        ['spoiler: open', 'spoiler: open\ncheckedAgainst: last'],
      ]),
      ...changed('one/cards/extra/b1.md', [
        ['spoiler: open', 'spoiler: open\ncheckedAgainst: last'],
      ]),
      ...lamp(front, bio),
    };
  }
  const last = (more: string): string =>
    `{ id: first, received: "2026-07-01", touches: [1/4] }, { id: last, received: "2026-08-01", ${more} }`;
  const stale = (what: string): string => `cut-stale one/cards/base/a2.md:${what}`;

  test.each([
    ['a scene at the start of a run', 'touches: [1/4-2/1]'],
    ['a scene at the end of a run', 'touches: [1/1-1/4]'],
    ['a scene by itself, among others', 'touches: [3/1, 1/4]'],
    ['a run that is typed backwards', 'touches: [2/1-1/2]'],
  ])('touched: %s', (_, more) => {
    expect(found(cut(last(more), 'checkedAgainst: first'))).toEqual([
      stale('5:17 the copy was not read against last, which touches it'),
    ]);
  });

  test.each([
    ['the scene before', 'touches: [1/1-1/3]'],
    ['the scene after', 'touches: [1/5-2/9]'],
    ['the same scene of another episode', 'touches: [2/4]'],
    ['nothing that is said', 'touches: []'],
    ['a name that is not on it', 'names: [Patient Heron]'],
  ])('not touched: %s', (_, more) => {
    expect(found(cut(last(more), 'checkedAgainst: first'))).toEqual([]);
  });

  test.each([
    ['the name itself', '', 'A lamp of Odalys Thrane.'],
    ['an alias, possessive', '', 'It is Odalys’s lamp.'],
    ['a form to avoid, which a new title makes of the old one', '', 'A lamp of Miss Thrane.'],
    ['another case', '', 'A lamp of ODALYS THRANE.'],
    ['a held word', '', 'A lamp of [Odalys](held:later).'],
    [
      'who signs, as whom',
      'signers: [{ name: Ines Albarran, as: Captain Thrane, state: signed }]',
      undefined,
    ],
    ['who is in the picture', 'image: { file: art/a.svg, depicts: [Odalys] }', undefined],
    ['a caption', 'texts: { caption: Odalys at night }', undefined],
    ['the name of a fact', 'facts: { Odalys: here }', undefined],
  ])('uses a touched name: %s', (_, front, bio) => {
    const files = cut(
      last('names: [Captain Thrane]'),
      `checkedAgainst: first\n${front}`.trim(),
      bio,
    );
    expect(said(lookAt(files, ['cut-stale']).findings)).toEqual([
      stale('5:17 the copy was not read against last, which touches it'),
    ]);
  });

  test.each([
    ['a longer name that it is part of', '', 'A lamp of the Heron’s Nest.'],
    ['a word that is near', '', 'A lamp of Odalis.'],
    ['what stays in the house', 'remark: Patient Heron', undefined],
  ])('does not use a touched name: %s', (_, front, bio) => {
    const files = cut(
      last('names: [Patient Heron, Odalys]'),
      `checkedAgainst: first\n${front}`.trim(),
      bio,
    );
    expect(found(files)).toEqual([]);
  });

  test('a name that nobody listed is looked for as it is', () => {
    const files = cut(
      last('names: [Brass Bell]'),
      'checkedAgainst: first',
      'A lamp and the brass bells.',
    );
    expect(found(files)).toHaveLength(1);
  });

  test('a card that was read against nothing is held against every cut', () => {
    expect(found(cut(last(''), ''))).toEqual([
      stale('3:7 the copy was not read against first, which touches it'),
    ]);
  });

  test('all cuts since are told at once, and those before are not', () => {
    const three = `{ id: zero, received: "2026-06-01", touches: [1/4] }, ${last('touches: [1/4]')}`;
    const [finding] = lookAt(cut(three, 'checkedAgainst: zero'), ['cut-stale']).findings;
    expect(finding?.found).toBe(
      'read against zero; first, received on 1 July 2026, touches scene 1/4; last, received on 1 August 2026, touches scene 1/4',
    );
    expect(finding?.related.map(({ message }) => message)).toEqual([
      'first',
      'scene 1/4',
      'last',
      'scene 1/4',
    ]);
  });

  test('a card without scene and touched name never is', () => {
    const files = {
      ...cut(last('touches: [1/1-9/9]'), 'checkedAgainst: last'),
      ...changed('one/cards/extra/b1.md', [
        ['spoiler: open', 'spoiler: open\ncheckedAgainst: first'],
      ]),
    };
    expect(found(files)).toEqual([]);
  });

  test('nothing is asked of a card that is not issued, of an unknown cut, or without cuts', () => {
    const touched = last('touches: [1/4]');
    expect(found(cut(touched, 'checkedAgainst: first\nissued: "no"'))).toEqual([]);
    expect(found(cut(touched, 'checkedAgainst: frist'))).toEqual([]);
    expect(found(lamp('checkedAgainst: first'))).toEqual([]);
  });

  test.each([
    ['planning', 'warning'],
    ['writing', 'warning'],
    ['locked', 'error'],
  ])('while %s it is a %s', (stage, severity) => {
    const files = {
      ...cut(last('touches: [1/4]'), 'checkedAgainst: first'),
      ...changed('one/plan.yaml', [['stage: locked', `stage: ${stage}`]]),
    };
    expect(lookAt(files, TRUTH).findings).toMatchObject([{ severity }]);
  });
});

describe('fact-unsourced', () => {
  const facts = (sources: string): Files => ({
    ...property(DOCUMENTS),
    ...lamp(`facts: { Berth: Lock nine, Depth: One hand }\nsources: [${sources}]`),
  });

  test.each([
    ['each by its name', '{ doc: map, for: Berth }, { doc: map, for: Depth }'],
    ['each with the key', '{ doc: map, for: facts.Berth }, { doc: map, for: facts.Depth }'],
    ['all together', '{ doc: map, for: facts }'],
    ['with the whole card', '{ doc: map }'],
  ])('sourced: %s', (_, sources) => {
    expect(found(facts(sources))).toEqual([]);
  });

  test.each([
    ['none', '', ['Berth', 'Depth']],
    ['for another field', '{ doc: map, for: bio }', ['Berth', 'Depth']],
    ['for one of them', '{ doc: map, for: Depth }', ['Berth']],
    ['for one of them, with the key', '{ doc: map, for: facts.Berth }', ['Depth']],
  ])('not sourced: %s', (_, sources, without) => {
    expect(lookAt(facts(sources), TRUTH).findings.map(({ message }) => message)).toEqual(
      without.map((fact) => `the fact \`${fact}\` has no source`),
    );
  });

  test.each([
    ['another case', '{ doc: map, for: berth }, { doc: map, for: Depth }', '`Berth`'],
    ['a letter more', '{ doc: map, for: Berth }, { doc: map, for: Depths }', '`Depth`'],
    ['a field that is misspelt', '{ doc: map, for: facts }, { doc: map, for: boi }', '`bio`'],
    [
      'a text that the card does not have',
      '{ doc: map }, { doc: map, for: texts.caption }',
      undefined,
    ],
  ])('for nothing: %s', (_, sources, expected) => {
    const { findings } = lookAt(facts(sources), TRUTH);
    expect(findings).toHaveLength(1);
    expect(findings[0]?.message).toMatch(/^there is no fact or field /);
    if (expected !== undefined) expect(findings[0]?.expected).toBe(expected);
  });

  test.each(['bio', 'quote', 'name', 'facts', 'image', 'texts', 'texts.caption', 'credits'])(
    'may be for %s',
    (what) => {
      const files = {
        ...property(DOCUMENTS),
        ...lamp(
          `texts: { caption: A }\ncredits: [{ role: A, name: B }]\nsources: [{ doc: map, for: ${what} }]`,
        ),
      };
      expect(found(files)).toEqual([]);
    },
  );

  test('a slip in quotes has no fix, since the quotes would go', () => {
    const [finding] = lookAt(facts('{ doc: map }, { doc: map, for: "Bert" }'), TRUTH).findings;
    expect(finding).toMatchObject({ expected: '`Berth`' });
    expect(finding).not.toHaveProperty('fix');
  });

  test('is milder while the set is written, and silent on what is not issued', () => {
    const stage = changed('one/plan.yaml', [['stage: locked', 'stage: writing']]);
    expect(lookAt({ ...facts(''), ...stage }, TRUTH)).toMatchObject({
      ok: true,
      counts: { warnings: 2 },
    });
    expect(found({ ...property(DOCUMENTS), ...lamp('facts: { A: b }\nissued: "no"') })).toEqual([]);
  });
});

describe('source-withdrawn', () => {
  const sourced = (
    sources: string,
    facts = 'facts: { Berth: Lock nine, Depth: One hand }',
  ): Files => ({
    ...property(DOCUMENTS),
    ...lamp(`${facts}\nsources: [${sources}]`),
  });
  const since = '`old` was withdrawn on 8 January 2027';

  test.each<[string, string, string, string]>([
    [
      'a fact alone',
      '{ doc: old, for: Berth }, { doc: map, for: Depth }',
      `${since}, and the fact Berth has no other source`,
      'error',
    ],
    [
      'all facts',
      '{ doc: old, for: facts }',
      `${since}, and the fact Berth and the fact Depth have no other source`,
      'error',
    ],
    [
      'one of all facts',
      '{ doc: old }, { doc: map, for: Depth }',
      `${since}, and the fact Berth has no other source`,
      'error',
    ],
    [
      'a fact with another',
      '{ doc: old, for: Berth }, { doc: map, for: facts }',
      `${since}; the fact Berth has another source that stands`,
      'warning',
    ],
    [
      'the bio alone',
      '{ doc: old, for: bio }, { doc: map, for: facts }',
      `${since}, and the bio has no other source`,
      'error',
    ],
    [
      'the bio with another',
      '{ doc: old, for: bio }, { doc: map }',
      `${since}; the bio has another source that stands`,
      'warning',
    ],
    [
      'a quotation of a bio with another',
      '{ doc: old, for: quote }, { doc: map, for: facts }, { doc: map, for: bio }',
      `${since}; the quotation has another source that stands`,
      'warning',
    ],
  ])('%s', (_, sources, message, severity) => {
    expect(lookAt(sourced(sources), TRUTH).findings).toMatchObject([{ message, severity }]);
  });

  test('another that was withdrawn is no other source', () => {
    const messages = lookAt(sourced('{ doc: old, for: Berth }, { doc: old, for: facts }'), TRUTH);
    expect(messages.findings.map(({ severity }) => severity)).toEqual(['error', 'error']);
  });

  test('the whole of a card without facts', () => {
    expect(lookAt(sourced('{ doc: old }', 'writer: jonah'), TRUTH).findings).toMatchObject([
      { message: `${since}, and the card has no other source`, severity: 'error' },
    ]);
  });

  test('it is an error while the set is written too, and nothing on what is not issued', () => {
    const stage = changed('one/plan.yaml', [['stage: locked', 'stage: writing']]);
    expect(lookAt({ ...sourced('{ doc: old }'), ...stage }, TRUTH).ok).toBe(false);
    expect(found(sourced('{ doc: old }', 'issued: "no"'))).toEqual([]);
  });
});

/** Words that somebody says or writes. House examples, in the marks that English books use. */
const QUOTATIONS: readonly (readonly [text: string, quoted: readonly string[]])[] = [
  ['“The lake keeps its hands,” she said.', ['“The lake keeps its hands,”']],
  ['She said “the lake keeps its hands”.', ['“the lake keeps its hands”']],
  ['She said "the lake keeps its hands".', ['"the lake keeps its hands"']],
  ['‘The lake keeps its hands,’ she said.', ['‘The lake keeps its hands,’']],
  ["'The lake keeps its hands,' she said.", ["'The lake keeps its hands,'"]],
  ["She said: 'the lake keeps it'.", ["'the lake keeps it'"]],
  ['‘We’ll row, and it’s the boats’ fault,’ he said.', ['‘We’ll row, and it’s the boats’ fault,’']],
  [
    "'We'll row by night,' he said, 'if the lamp's lit.'",
    ["'We'll row by night,'", "'if the lamp's lit.'"],
  ],
  ['“Never!” cried Pim.', ['“Never!”']],
  ['He only ever says “Mind,” and points.', ['“Mind,”']],
  ["The 'Argument' sank. 'The boats float,' he said.", ["'The boats float,'"]],
  ['The ‘Argument’ sank. ‘The boats float,’ he said.', ['‘The boats float,’']],
  ['“Eight,” she said, “not nine.”', ['“Eight,”', '“not nine.”']],
  ['(“Mind the step, it was dry yesterday.”)', ['“Mind the step, it was dry yesterday.”']],
  ['“He said ‘never’ to me,” she said.', ['“He said ‘never’ to me,”']],
  ['“It begins here and goes on', ['“It begins here and goes on']],
  ['The sign reads «no swimming after dark».', ['«no swimming after dark»']],
  ['„Das Wasser steigt wieder“, sagt sie.', ['„Das Wasser steigt wieder“']],
];

/** Marks that quote nobody: nicknames, titles, inches, feet, and letters left out. */
const NO_QUOTATIONS: readonly string[] = [
  'The raft is called “the Argument”.',
  'The so-called ‘harbour master’ is a heron.',
  'Her bench hums “The Long Way Home” all day.',
  'An episode called “A Crossing in Fog”.',
  'It’s the boats’ wood, and the boats’ own.',
  "It's the boats' wood, and the boats' own.",
  'The model is 5" long and 3" wide.',
  'A 5" sliver from a 12" plank.',
  "She stands 5'6\" in a 6' hat.",
  "'Twas the boats' last night of the boats' year.",
  '’Twas the night of the boats’ return.',
  "Rock 'n' roll, and the '90s.",
  'The Sills’ and the wardens’ oldest quarrel.',
  'A plain text without any marks at all.',
  '“17 b”',
  'No. "17" is lit.',
];

describe('quotations', () => {
  test.each(QUOTATIONS)('%s', (text, quoted) => {
    expect(mayQuote(text)).toBe(true);
    expect(quotationsIn(text).map(({ from, to }) => text.slice(from, to))).toEqual(quoted);
  });

  test.each(NO_QUOTATIONS)('none: %s', (text) => {
    expect(quotationsIn(text)).toEqual([]);
  });

  test('are found in time that grows with the text', () => {
    for (const sign of ['“', '‘', "'", '"', "'a ", '“a ', "s' "]) {
      const started = performance.now();
      quotationsIn(sign.repeat(4_000));
      expect(performance.now() - started, sign).toBeLessThan(2_000);
    }
  });
});

describe('quote-unsourced', () => {
  const SAID = '“The lake keeps its hands,” she said.';
  const quoted = (front: string, bio = SAID): Files => ({
    ...property(DOCUMENTS),
    ...lamp(front, bio),
  });

  test.each(['quote', 'bio'])('sourced, with its place: for %s', (what) => {
    expect(found(quoted(`sources: [{ doc: map, ref: p. 3, for: ${what} }]`))).toEqual([]);
  });

  test.each([
    ['nothing', '', 'these words are quoted in the bio and have no source'],
    [
      'a source of the whole card',
      'sources: [{ doc: map, ref: p. 3 }]',
      'these words are quoted in the bio and have no source',
    ],
    [
      'a source of something else',
      'sources: [{ doc: map, ref: p. 3, for: name }]',
      'these words are quoted in the bio and have no source',
    ],
    [
      'a source without its place',
      'sources: [{ doc: map, for: quote }]',
      'these words are quoted in the bio and their source does not say where they stand',
    ],
  ])('%s', (_, front, message) => {
    expect(lookAt(quoted(front), TRUTH).findings).toMatchObject([
      { rule: 'quote-unsourced', message, found: '“The lake keeps its hands,”', severity: 'error' },
    ]);
  });

  test('a text of the card is one by itself', () => {
    const front = (more: string): string =>
      `texts: { caption: "‘Mind the step,’ it says" }\n${more}`;
    const bare = 'A lamp burns.';
    expect(found(quoted(front('writer: jonah'), bare))).toEqual([
      'quote-unsourced one/cards/base/a2.md:5:20 these words are quoted in `texts.caption` and have no source',
    ]);
    for (const what of ['quote', 'texts.caption']) {
      expect(
        found(quoted(front(`sources: [{ doc: map, ref: p. 3, for: ${what} }]`), bare)),
      ).toEqual([]);
    }
  });

  test('several are one finding that shows them all, and a quotation may be emphasised and held', () => {
    const bio =
      '“The lake *keeps* its hands,” she said. [“It has eight of them.”](held:later) “Ask me.”';
    expect(lookAt(quoted('', bio), TRUTH).findings).toMatchObject([
      { related: [{ message: 'quoted too' }, { message: 'quoted too' }] },
    ]);
  });

  test('is milder while the set is written, and silent on what is not issued', () => {
    const stage = changed('one/plan.yaml', [['stage: locked', 'stage: writing']]);
    expect(lookAt({ ...quoted(''), ...stage }, TRUTH)).toMatchObject({ ok: true });
    expect(found(quoted('issued: "no"'))).toEqual([]);
  });
});
