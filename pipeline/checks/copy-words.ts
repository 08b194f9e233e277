import { copyText, countWords } from '../model/index.js';
import { bioSpot, printedCards, sayWordBounds, wantsBio, type PrintedCard } from './bounds.js';
import { ofCard, type Remark, type Rule } from './rule.js';
import { edited } from './sample.js';

/** A bio with fewer or more words than its subset asks for, or one where there is to be none. */
export const copyWords: Rule = {
  id: 'copy-words',
  about: 'copy',
  severity: 'error',
  why: 'Bios of one subset read as one voice when they are of one length.',
  look: (subject) => printedCards(subject).flatMap(wrongLength),
  examples: {
    passes: [
      { says: 'words within bounds', files: {} },
      {
        says: 'as many words as may be',
        files: edited('one/cards/extra/b1.md', [
          'Ink, and a thumbprint of the lake.',
          `Ink${' on ink'.repeat(9)}, too.`,
        ]),
      },
    ],
    fails: [
      {
        says: 'too few words',
        files: edited('one/cards/extra/b1.md', ['Ink, and a thumbprint of the lake.', 'Only ink.']),
        gives: {
          at: 'one/cards/extra/b1.md:6:1',
          covers: 'Only ink.',
          message: 'the bio is too short by 1 word',
          found: '2 words',
          expected: '3 to 20 words',
        },
      },
      {
        says: 'a bio on a card that says it has none',
        files: edited('one/cards/extra/b1.md', ['spoiler: open', 'spoiler: open\nbio: none']),
        gives: {
          at: 'one/cards/extra/b1.md:7:1',
          covers: 'Ink, and a thumbprint of the lake.',
          message: 'there are words here, and the card is to have no bio',
          found: '7 words',
          expected: 'no words, or no `bio: none`',
        },
      },
    ],
  },
};

function wrongLength({ card, plan }: PrintedCard): Remark[] {
  if (card.bio.length === 0) return [];
  const bounds = plan.bio === 'none' ? undefined : plan.bio?.words;
  if (wantsBio(plan, card) && !bounds) return [];
  const words = countWords(copyText(card.bio));
  const place = { ...ofCard(card), spot: bioSpot(card), found: amount(words) };
  if (!wantsBio(plan, card)) {
    return [
      {
        ...place,
        message: 'there are words here, and the card is to have no bio',
        expected: 'no words, or no `bio: none`',
      },
    ];
  }
  const { min, max } = bounds ?? {};
  const over = words - (max ?? words);
  const under = (min ?? words) - words;
  if (over <= 0 && under <= 0) return [];
  return [
    {
      ...place,
      message: `the bio is too ${over > 0 ? 'long' : 'short'} by ${amount(Math.max(over, under))}`,
      expected: sayWordBounds(min, max),
    },
  ];
}

function amount(words: number): string {
  return `${words} word${words === 1 ? '' : 's'}`;
}
