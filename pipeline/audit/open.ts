import {
  cardHold,
  fieldHold,
  holdNamed,
  join,
  liftOf,
  scheduleOf,
  type Card,
  type Content,
  type Hold,
  type Instant,
} from '../model/index.js';
import { textsOf } from './held.js';

/** Stands where a held span was cut out of a text. No text of a card has it. */
const CUT = '\0';

/** All texts that are open in their own right at an instant; a text with a held span in pieces. */
export function openTexts(content: Content, at: Instant): readonly string[] {
  if (!content.property) return [];
  const schedule = scheduleOf(content.property.value);
  const isOpen = (hold: Hold): boolean => liftOf(schedule, hold) <= at;
  return content.sets.flatMap((set) => [
    set.plan.value.title,
    ...set.plan.value.subsets.map((subset) => subset.title),
    ...set.cards.flatMap((card) => {
      const hold = cardHold(schedule, set.plan.value, card);
      const isRunOpen = (named: string): boolean => isOpen(join(hold, holdNamed(schedule, named)));
      const fields = textsOf(card).filter(({ field }) =>
        isOpen(fieldHold(schedule, hold, card, field)),
      );
      const words = fields.filter(({ field }) => field !== 'bio').map((field) => field.words);
      const bio = fields.some(({ field }) => field === 'bio') ? bioPieces(card, isRunOpen) : [];
      return [card.front.publicName ?? '', ...words, ...bio];
    }),
  ]);
}

function bioPieces(card: Card, isOpen: (hold: string) => boolean): string[] {
  return card.bio
    .map((paragraph) =>
      paragraph
        .map(({ hold, text }) => (hold === null || isOpen(hold) ? text.replace('\n', ' ') : CUT))
        .join(''),
    )
    .join('\n\n')
    .split(CUT);
}
