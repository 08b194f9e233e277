import type { PropertyFile } from '../../schema/index.js';
import { isIssued, spotOf, type Card } from '../model/index.js';
import { allOf, sayDate } from './cut-reach.js';
import { ofCard, type Files, type Remark, type Rule } from './rule.js';
import { edited } from './sample.js';
import { speaksForFact, speaksForQuote, type CardSource } from './source-reach.js';
import type { Subject } from './subject.js';

/** The sample with a map that was withdrawn and a diary that was not, and these sources of a chart. */
function sourced(sources: string): Files {
  return {
    ...edited('property.yaml', [
      'approvals: none',
      'approvals: none\ndocuments:\n  - { id: map, title: Harbour map, withdrawn: "2027-01-08" }\n  - { id: diary, title: Workshop diary }',
    ]),
    ...edited('one/cards/extra/b1.md', [
      'spoiler: open',
      `spoiler: open\nfacts: { Depth: One hand }\nsources: ${sources}`,
    ]),
  };
}

/** A source that was withdrawn: what hangs on it is not known to be true any more. */
export const sourceWithdrawn: Rule = {
  id: 'source-withdrawn',
  about: 'truth',
  severity: 'error',
  why: 'What a document said before it was withdrawn may be what it was withdrawn for.',
  look: withdrawnSources,
  examples: {
    passes: [
      {
        says: 'a source that stands, and a document that nobody leans on',
        files: sourced('[{ doc: diary, for: Depth }]'),
      },
    ],
    fails: [
      {
        says: 'a fact that hangs on it alone',
        files: sourced('[{ doc: map, ref: sheet 8, for: Depth }]'),
        gives: {
          at: 'one/cards/extra/b1.md:6:18',
          covers: 'map',
          message: '`map` was withdrawn on 8 January 2027, and the fact Depth has no other source',
          found: 'Harbour map, sheet 8',
          expected: 'a source that stands, or no such fact',
          related: ['property.yaml:13:47 withdrawn'],
        },
      },
      {
        says: 'a fact with another source: a warning',
        files: sourced('[{ doc: map, for: Depth }, { doc: diary, for: facts }]'),
        gives: {
          at: 'one/cards/extra/b1.md:6:18',
          covers: 'map',
          message:
            '`map` was withdrawn on 8 January 2027; the fact Depth has another source that stands',
          found: 'Harbour map',
          expected: 'the fact as the other source has it, and this one taken out',
          severity: 'warning',
          related: ['property.yaml:13:47 withdrawn'],
        },
      },
    ],
  },
};

type Document = NonNullable<PropertyFile['documents']>[number];

function* withdrawnSources({ property, cards, content }: Subject): Generator<Remark> {
  const documents = property.documents ?? [];
  const withdrawn = new Map(
    documents.flatMap((document, at) =>
      document.withdrawn === undefined ? [] : [[document.id, { document, at }] as const],
    ),
  );
  const paper = content.property?.source;
  if (withdrawn.size === 0 || !paper) return;
  for (const card of cards.filter(isIssued)) {
    const sources = card.front.sources ?? [];
    const standing = sources.filter(({ doc }) => !withdrawn.has(doc));
    for (const [at, source] of sources.entries()) {
      const gone = withdrawn.get(source.doc);
      if (!gone) continue;
      const spot = spotOf(paper, ['documents', gone.at, 'withdrawn']);
      yield {
        ...ofCard(card),
        spot: spotOf(card.source, ['sources', at, 'doc']),
        ...sayGone(gone.document, source, card, standing),
        related: [{ message: 'withdrawn', spot }],
      };
    }
  }
}

function sayGone(
  { id, title, withdrawn = '' }: Document,
  source: CardSource,
  card: Card,
  standing: readonly CardSource[],
): Pick<Remark, 'message' | 'found' | 'expected' | 'severity'> {
  const hanging = subjectsOn(source, card);
  const alone = hanging.filter(({ speaks }) => !standing.some(speaks));
  const since = `\`${id}\` was withdrawn on ${sayDate(withdrawn)}`;
  const found = source.ref === undefined ? title : `${title}, ${source.ref}`;
  const say = (all: typeof hanging): string => allOf(all.map(({ words }) => words));
  const has = (all: typeof hanging): string => (all.length === 1 ? 'has' : 'have');
  if (alone.length > 0) {
    const fact = alone.every(({ isFact }) => isFact) ? 'no such fact' : 'other words';
    return {
      message: `${since}, and ${say(alone)} ${has(alone)} no other source`,
      found,
      expected: `a source that stands, or ${fact}`,
    };
  }
  return {
    message: `${since}; ${say(hanging)} ${has(hanging)} another source that stands`,
    found,
    expected: `${hanging.every(({ isFact }) => isFact) ? 'the fact' : 'the words'} as the other source has it, and this one taken out`,
    severity: 'warning',
  };
}

/** Something on a card that hangs on a source, and which other sources speak for it. */
interface Hanging {
  readonly words: string;
  readonly isFact: boolean;
  readonly speaks: (source: CardSource) => boolean;
}

function subjectsOn(source: CardSource, { front }: Card): readonly Hanging[] {
  const { for: what } = source;
  const facts = Object.keys(front.facts ?? {})
    .filter((fact) => speaksForFact(source, fact))
    .map((fact): Hanging => ({
      words: `the fact ${fact}`,
      isFact: true,
      speaks: (other) => speaksForFact(other, fact),
    }));
  if (facts.length > 0) return facts;
  if (what === undefined) return [{ words: 'the card', isFact: false, speaks: () => true }];
  const words = what === 'quote' ? 'the quotation' : what === 'bio' ? 'the bio' : `\`${what}\``;
  const speaks = (other: CardSource): boolean =>
    other.for === undefined ||
    other.for === what ||
    (what === 'quote' && speaksForQuote(other, what));
  return [{ words, isFact: false, speaks }];
}
