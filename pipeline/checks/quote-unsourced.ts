import {
  OPEN,
  isIssued,
  paragraphText,
  type Card,
  type Schedule,
  type Spot,
} from '../model/index.js';
import { ofCard, type Files, type Remark, type Rule } from './rule.js';
import { edited } from './sample.js';
import { speaksForQuote, type CardSource } from './source-reach.js';
import { mayQuote, quotationsIn } from './source-quotes.js';
import { copyTexts, valueText, type ToldText } from './told/text.js';

/** The sample with a document, and a chart with this bio and this front matter. */
function said(bio: string, front = ''): Files {
  return {
    ...edited('property.yaml', [
      'approvals: none',
      'approvals: none\ndocuments: [{ id: script, title: Shooting script }]',
    ]),
    ...edited(
      'one/cards/extra/b1.md',
      ['spoiler: open\n', `spoiler: open\n${front}`],
      ['Ink, and a thumbprint of the lake.', bio],
    ),
  };
}

const EXPECTED = '`{ doc: …, ref: …, for: quote }` in `sources`';

/** Words that somebody said or wrote, without a place where they can be looked up. */
export const quoteUnsourced: Rule = {
  id: 'quote-unsourced',
  about: 'truth',
  severity: 'error',
  lenientIn: ['planning', 'writing'],
  why: 'Words in quotation marks are somebody’s, and must be theirs to the letter.',
  look: ({ cards, schedule }) =>
    cards.filter(isIssued).flatMap((card) => unsourced(card, schedule)),
  examples: {
    passes: [
      {
        says: 'a source with the place in it',
        files: said(
          '“The lake keeps its hands,” she said.',
          'sources: [{ doc: script, ref: p. 31, for: quote }]\n',
        ),
      },
      {
        says: 'a nickname, a title and an apostrophe',
        files: said('The boats’ “harbour master” reads “The Long Way Home” by ‘lamplight’.'),
      },
    ],
    fails: [
      {
        says: 'words that are said, and no source',
        files: said('“The lake keeps its hands,” she said.'),
        gives: {
          at: 'one/cards/extra/b1.md:6:1',
          covers: '“The lake keeps its hands,”',
          message: 'these words are quoted in the bio and have no source',
          found: '“The lake keeps its hands,”',
          expected: EXPECTED,
        },
      },
      {
        says: 'a source without the place in it',
        files: said(
          'A lamp. ‘Never mind the lamp!’',
          'texts: { caption: A lamp }\nsources: [{ doc: script, for: bio }]\n',
        ),
        gives: {
          at: 'one/cards/extra/b1.md:8:9',
          covers: '‘Never mind the lamp!’',
          message:
            'these words are quoted in the bio and their source does not say where they stand',
          found: '‘Never mind the lamp!’',
          expected: 'a `ref`, such as a page or a scene, in their source',
        },
      },
    ],
  },
};

interface Quoted {
  readonly words: string;
  readonly spot: () => Spot;
}

/** One remark for each text with such words: one source speaks for all of them. */
function unsourced(card: Card, schedule: Schedule): Remark[] {
  return [
    ...quotedIn(card, 'bio', 'the bio', bioTexts(card, schedule)),
    ...Object.entries(card.front.texts ?? {}).flatMap(([zone, text]) => {
      const field = `texts.${zone}`;
      const around = { hold: OPEN, source: card.source, owner: {} };
      const texts = mayQuote(text) ? [valueText(field, text, ['texts', zone], around)] : [];
      return quotedIn(card, field, `\`${field}\``, texts);
    }),
  ];
}

function bioTexts(card: Card, schedule: Schedule): readonly ToldText[] {
  if (!card.bio.some((paragraph) => mayQuote(paragraphText(paragraph)))) return [];
  const around = { hold: OPEN, source: card.source, owner: {} };
  return [...copyTexts('bio', card.bio, around, schedule)].filter(({ seams }) => !seams);
}

function quotedIn(card: Card, field: string, what: string, texts: readonly ToldText[]): Remark[] {
  const [first, ...others] = texts.flatMap(({ text, spotOf }) =>
    quotationsIn(text).map(({ from, to }): Quoted => ({
      words: text.slice(from, to),
      spot: () => spotOf(from, to),
    })),
  );
  const sources = (card.front.sources ?? []).filter((source) => speaksForQuote(source, field));
  if (!first || sources.some(hasPlace)) return [];
  const isBare = sources.length > 0;
  return [
    {
      ...ofCard(card),
      spot: first.spot(),
      message: `these words are quoted in ${what} and ${isBare ? 'their source does not say where they stand' : 'have no source'}`,
      found: first.words,
      expected: isBare ? 'a `ref`, such as a page or a scene, in their source' : EXPECTED,
      related: others.map(({ spot }) => ({ message: 'quoted too', spot: spot() })),
    },
  ];
}

function hasPlace({ ref }: CardSource): boolean {
  return ref !== undefined;
}
