import { spotOf } from '../model/index.js';
import { ofCard, type Remark, type Rule } from './rule.js';
import { edited } from './sample.js';
import type { SubsetView } from './subject.js';

/** A card of a story subset whose scene does not lie between those of its neighbours. */
export const storyOrder: Rule = {
  id: 'story-order',
  about: 'spoilers',
  severity: 'error',
  why: 'Read in the order of their numbers, these cards tell the story.',
  look: ({ subsets }) => subsets.flatMap(disorderedCards),
  examples: {
    passes: [
      { says: 'scenes in the order of the numbers', files: {} },
      { says: 'two cards of one scene', files: edited('one/cards/base/a2.md', ['1/4', '1/1']) },
    ],
    fails: [
      {
        says: 'a later number with an earlier scene',
        files: {
          ...edited('one/cards/base/a1.md', ['story: 1/1', 'story: 1/7']),
          ...edited('one/cards/base/a2.md', ['story: 1/4', 'story: 1/1']),
        },
        gives: {
          at: 'one/cards/base/a1.md:5:8',
          covers: '1/7',
          message: 'card 1 does not stand where scene 1/7 belongs in the story',
          found: '1/7',
          expected: 'scenes in the order of the numbers',
        },
      },
    ],
  },
};

function disorderedCards({ storyline }: SubsetView): Remark[] {
  return (storyline?.disordered ?? []).map((card) => ({
    ...ofCard(card),
    spot: spotOf(card.source, ['story']),
    message: `card ${card.front.number} does not stand where scene ${card.front.story ?? ''} belongs in the story`,
    found: card.front.story ?? '',
    expected: 'scenes in the order of the numbers',
  }));
}
