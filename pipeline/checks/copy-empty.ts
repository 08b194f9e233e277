import { NAME_TO_COME, spotOf } from '../model/index.js';
import { endOfFront, printedCards, sayWordBounds, wantsBio, type PrintedCard } from './bounds.js';
import { ofCard, type Remark, type Rule } from './rule.js';
import { edited } from './sample.js';
import type { Subject } from './subject.js';

const EMPTY = edited('one/cards/extra/b1.md', ['Ink, and a thumbprint of the lake.\n', '']);

/** A card that is printed and has no bio, or no name yet. */
export const copyEmpty: Rule = {
  id: 'copy-empty',
  about: 'copy',
  severity: 'error',
  lenientIn: ['planning', 'writing'],
  why: 'An empty back goes to press as easily as a full one.',
  look: (subject) =>
    printedCards(subject).flatMap((printed) => [
      ...emptyName(printed),
      ...emptyBio(printed, subject),
    ]),
  examples: {
    passes: [
      { says: 'a bio on every card', files: {} },
      {
        says: 'a card that says it has none',
        files: {
          ...EMPTY,
          ...edited(
            'one/cards/extra/b1.md',
            ['spoiler: open', 'spoiler: open\nbio: none'],
            ['Ink, and a thumbprint of the lake.\n', ''],
          ),
        },
      },
    ],
    fails: [
      {
        says: 'a card without a bio',
        files: EMPTY,
        gives: {
          at: 'one/cards/extra/b1.md:6:1',
          covers: '',
          message: 'this card has no bio',
          expected: '3 to 20 words, or `bio: none`',
        },
      },
      {
        says: 'the same while the set is being written',
        files: { ...EMPTY, ...edited('one/plan.yaml', ['stage: locked', 'stage: writing']) },
        gives: {
          at: 'one/cards/extra/b1.md:6:1',
          covers: '',
          message: 'this card has no bio',
          expected: '3 to 20 words, or `bio: none`',
          severity: 'warning',
        },
      },
      {
        says: 'a card that nobody has named yet',
        files: edited('one/cards/extra/b1.md', ['name: The Chart', `name: ${NAME_TO_COME}`]),
        gives: {
          at: 'one/cards/extra/b1.md:3:7',
          covers: NAME_TO_COME,
          message: 'this card has no name yet',
          found: NAME_TO_COME,
          expected: 'the name that it prints',
        },
      },
    ],
  },
};

function emptyName({ card }: PrintedCard): Remark[] {
  if (card.front.name !== NAME_TO_COME) return [];
  return [
    {
      ...ofCard(card),
      spot: spotOf(card.source, ['name']),
      message: 'this card has no name yet',
      found: NAME_TO_COME,
      expected: 'the name that it prints',
    },
  ];
}

function emptyBio({ card, plan }: PrintedCard, { content }: Subject): Remark[] {
  if (card.bio.length > 0 || !wantsBio(plan, card)) return [];
  const layout = content.layouts.get(card.front.back ?? plan.back ?? '');
  if (layout?.value.blank === true) return [];
  const { min, max } = (plan.bio !== 'none' && plan.bio?.words) || {};
  const bounds = min ?? max;
  return [
    {
      ...ofCard(card),
      spot: endOfFront(card),
      message: 'this card has no bio',
      expected: `${bounds === undefined ? 'a bio' : sayWordBounds(min, max)}, or \`bio: none\``,
    },
  ];
}
