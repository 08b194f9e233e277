import {
  cardHold,
  copyText,
  holdNamed,
  join,
  statedHold,
  subsetHold,
  type Card,
  type CardSet,
  type Content,
  type Copy,
} from '../model/index.js';
import { openFields } from './held-cards.js';
import { openNames } from './held-names.js';
import type { Standing } from './standing.js';
import { seen } from './target.js';
import { CARD } from './told-card.js';
import { BEAT } from './told-property.js';
import { PARALLEL, PLAN, PRODUCT, SALES, SUBSET } from './told-set.js';
import { tell } from './told.js';

/** Stands where a held span was cut out of a text. No text of a card has it. */
const CUT = '\0';

/** All texts that are open in their own right; a text with a held span in pieces. */
export function openTexts(content: Content, standing: Standing): readonly string[] {
  const property = content.property?.value;
  if (!property) return [];
  const { schedule } = standing;
  const isOpen = (beat: Parameters<typeof statedHold>[1]): boolean =>
    standing.isOpen(statedHold(schedule, beat));
  const lines = (property.legal?.depicts ?? []).map(({ line }) => line);
  return [
    property.title,
    property.legal?.line ?? '',
    property.site?.title ?? '',
    property.site?.dataTerms ?? '',
    ...lines,
    ...(property.beats ?? []).flatMap((beat) => seen(tell(BEAT, beat), () => isOpen(beat))),
    ...openNames(content, standing),
    ...content.sets.flatMap((set) => [
      ...setTexts(set, standing),
      ...set.cards.flatMap((card) => cardTexts(card, set, standing)),
    ]),
  ].filter((text) => text !== '');
}

function setTexts(set: CardSet, standing: Standing): string[] {
  const { schedule } = standing;
  const plan = set.plan.value;
  const own = statedHold(schedule, plan);
  const sales = set.sales.filter(({ front }) =>
    standing.isOpen(join(own, statedHold(schedule, front))),
  );
  return [
    ...seen(tell(PLAN, plan), () => !standing.isAbsent(own)),
    ...plan.subsets.flatMap((subset) => {
      const hold = subsetHold(schedule, plan, subset.id);
      return seen(tell(SUBSET, subset), () => !standing.isAbsent(hold));
    }),
    ...(plan.parallels ?? []).flatMap((parallel) => {
      const hold = join(own, statedHold(schedule, parallel));
      return seen(tell(PARALLEL, parallel), () => standing.isOpen(hold));
    }),
    ...(plan.products ?? []).flatMap((product) => {
      const hold = join(own, statedHold(schedule, product));
      return seen(tell(PRODUCT, product), () => standing.isOpen(hold));
    }),
    ...sales.flatMap(({ front, words }) => [
      ...seen(tell(SALES, front), () => true),
      ...pieces(words, (id) => standing.isOpen(holdNamed(schedule, id))),
    ]),
  ];
}

function cardTexts(card: Card, set: CardSet, standing: Standing): string[] {
  const { schedule } = standing;
  const hold = cardHold(schedule, set.plan.value, card);
  const isOpen = openFields(card, hold, standing);
  const isSpanOpen = (id: string): boolean => standing.isOpen(join(hold, holdNamed(schedule, id)));
  return [
    standing.isAbsent(hold) ? '' : (card.front.publicName ?? ''),
    ...seen(tell(CARD, card.front), isOpen),
    ...(isOpen('bio') ? pieces(card.bio, isSpanOpen) : []),
  ];
}

function pieces(copy: Copy, isOpen: (hold: string) => boolean): string[] {
  const cut = copy.map((paragraph) =>
    paragraph.map((run) => (run.hold === null || isOpen(run.hold) ? run : { ...run, text: CUT })),
  );
  return copyText(cut).split(CUT);
}
