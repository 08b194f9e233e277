import { paragraphText, type Card } from '../model/index.js';
import { countGraphemes } from '../text/index.js';
import { bioSpot, printedCards, type PrintedCard } from './bounds.js';
import { ofCard, type Remark, type Rule } from './rule.js';
import { edited } from './sample.js';

const LONG =
  'Ink, and a thumbprint of the lake, and below it somebody’s initials in a very careful pencil hand.';

/** A bio with more characters than its subset allows, counted as a reader counts them. */
export const copyCharacters: Rule = {
  id: 'copy-characters',
  about: 'copy',
  severity: 'error',
  why: 'Some layouts are cut to a count of characters, and the next word is lost.',
  look: (subject) => printedCards(subject).flatMap(tooLong),
  examples: {
    passes: [
      { says: 'characters within bounds', files: {} },
      {
        says: 'letters with accents of their own count once',
        files: edited('one/cards/extra/b1.md', [
          'thumbprint ',
          'nai\u0308ve cafe\u0301 '.repeat(6),
        ]),
      },
    ],
    fails: [
      {
        says: 'too many characters',
        files: edited('one/cards/extra/b1.md', ['Ink, and a thumbprint of the lake.', LONG]),
        gives: {
          at: 'one/cards/extra/b1.md:6:1',
          covers: LONG,
          message: 'the bio is too long by 8 characters',
          found: '98 characters',
          expected: 'at most 90 characters',
        },
      },
    ],
  },
};

function tooLong({ card, plan }: PrintedCard): Remark[] {
  const max = plan.bio === 'none' ? undefined : plan.bio?.characters?.max;
  if (max === undefined || card.front.bio === 'none') return [];
  const characters = charactersOf(card, max);
  if (characters <= max) return [];
  const over = characters - max;
  return [
    {
      ...ofCard(card),
      spot: bioSpot(card),
      message: `the bio is too long by ${over} character${over === 1 ? '' : 's'}`,
      found: `${characters} characters`,
      expected: `at most ${max} characters`,
    },
  ];
}

/** Spaces count and what parts paragraphs does not. Code units are never fewer than characters. */
function charactersOf({ bio }: Card, enough: number): number {
  const texts = bio.map(paragraphText);
  const units = texts.reduce((sum, text) => sum + text.length, 0);
  return units <= enough ? units : texts.reduce((sum, text) => sum + countGraphemes(text), 0);
}
