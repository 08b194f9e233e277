import { isIssued, spotOf, type Card } from '../model/index.js';
import { nearest } from '../text/index.js';
import { ofCard, type Files, type Remark, type Rule } from './rule.js';
import { edited } from './sample.js';
import { speaksForFact, subjectsOf } from './source-reach.js';
import { unknown } from './unknown.js';

/** The sample with a document, and a chart with two facts and these sources. */
function sourced(sources: string): Files {
  return {
    ...edited('property.yaml', [
      'approvals: none',
      'approvals: none\ndocuments: [{ id: map, title: Harbour map }]',
    ]),
    ...edited('one/cards/extra/b1.md', [
      'spoiler: open',
      `spoiler: open\nfacts: { Depth: One hand, Berth: Lock nine }\n${sources}`,
    ]),
  };
}

/** A fact that nobody says where it comes from, or a source for something that is not on the card. */
export const factUnsourced: Rule = {
  id: 'fact-unsourced',
  about: 'truth',
  severity: 'error',
  lenientIn: ['planning', 'writing'],
  why: 'A fact without a source is a guess that a licensor has to look up.',
  look: ({ cards }) => cards.filter(isIssued).flatMap(unsourced),
  examples: {
    passes: [
      {
        says: 'a source for each fact',
        files: sourced('sources: [{ doc: map, for: Depth }, { doc: map, for: Berth }]'),
      },
      { says: 'one source for all of them', files: sourced('sources: [{ doc: map, for: facts }]') },
      { says: 'a source for the whole card', files: sourced('sources: [{ doc: map }]') },
    ],
    fails: [
      {
        says: 'a fact without a source',
        files: sourced('sources: [{ doc: map, for: Depth }]'),
        gives: {
          at: 'one/cards/extra/b1.md:5:27',
          covers: 'Berth',
          message: 'the fact `Berth` has no source',
          found: 'Berth',
          expected: '`{ doc: …, ref: …, for: Berth }` in `sources`',
        },
      },
      {
        says: 'a source for a fact that is misspelt',
        files: sourced('sources: [{ doc: map, for: Depth }, { doc: map, for: Bertha }]'),
        gives: {
          at: 'one/cards/extra/b1.md:6:54',
          covers: 'Bertha',
          message: 'there is no fact or field `Bertha`',
          found: 'Bertha',
          expected: '`Berth`',
          fix: 'Berth',
        },
      },
    ],
  },
};

function unsourced(card: Card): Remark[] {
  const { facts = {}, sources = [] } = card.front;
  if (Object.keys(facts).length === 0 && sources.length === 0) return [];
  const known = subjectsOf(card);
  const strange = sources.flatMap(({ for: what }, at) =>
    what === undefined || known.includes(what) ? [] : [{ what, at }],
  );
  // A fact whose source is misspelt has one: only the slip is told.
  const meant = new Set(strange.map(({ what }) => nearest(what, known)));
  const without = Object.entries(facts).filter(
    ([fact]) =>
      !sources.some((source) => speaksForFact(source, fact)) &&
      !meant.has(fact) &&
      !meant.has(`facts.${fact}`),
  );
  return [
    ...without.map(([fact]): Remark => ({
      ...ofCard(card),
      spot: spotOf(card.source, ['facts', fact], 'key'),
      message: `the fact \`${fact}\` has no source`,
      found: fact,
      expected: `\`{ doc: …, ref: …, for: ${fact} }\` in \`sources\``,
    })),
    ...strange.map(({ what, at }) => ({
      ...ofCard(card),
      ...strangeSubject(card, what, at, known),
    })),
  ];
}

function strangeSubject(card: Card, what: string, at: number, known: readonly string[]): Remark {
  const spot = spotOf(card.source, ['sources', at, 'for']);
  const { fix, ...rest } = unknown('fact or field', what, known, spot);
  const isTyped = card.source.text.slice(spot.from, spot.to) === what;
  return fix === undefined || !isTyped ? rest : { ...rest, fix };
}
