import {
  cardHold,
  copyText,
  heldSpans,
  holdNamed,
  identityOf,
  join,
  statedHold,
  subsetHold,
  type CardSet,
  type Content,
} from '../model/index.js';
import type { Standing } from './standing.js';
import { target, unseen, type Target } from './target.js';
import { BEAT, DOCUMENT, EMBARGO, LEVEL } from './told-property.js';
import {
  ARTIST,
  CORRECTION,
  PARALLEL,
  PLAN,
  PRODUCT,
  SALES,
  SUBSET,
  UNSIGNED_ARTIST,
} from './told-set.js';
import { tell, type FieldWords } from './told.js';

/** Labels of what has not lifted; documents and turns of the story that are not yet open. */
export function propertyTargets({ property }: Content, standing: Standing): Target[] {
  if (!property) return [];
  const { levels, embargoes, documents, beats } = property.value;
  const isLifted = (id: string): boolean => standing.isOpen(holdNamed(standing.schedule, id));
  const openings = [
    ...levels.map((level) => ({ id: level.id, told: tell(LEVEL, level) })),
    ...(embargoes ?? []).map((embargo) => ({ id: embargo.id, told: tell(EMBARGO, embargo) })),
  ];
  return [
    ...openings.flatMap(({ id, told }) => named(told, () => isLifted(id), `of ${id}`)),
    ...(documents ?? []).flatMap((document) => {
      const isOpen = standing.isOpen(statedHold(standing.schedule, document));
      return named(tell(DOCUMENT, document), () => isOpen, `of the document ${document.id}`);
    }),
    ...(beats ?? []).flatMap((beat) => {
      const isOpen = standing.isOpen(statedHold(standing.schedule, beat));
      return named(tell(BEAT, beat), () => isOpen, `of the beat ${beat.at}`);
    }),
  ];
}

/** Titles that leave no trace yet, held parallels and products, artists, and corrections of held cards. */
export function setTargets(set: CardSet, standing: Standing): Target[] {
  const { schedule } = standing;
  const plan = set.plan.value;
  const own = statedHold(schedule, plan);
  const isListed = !standing.isAbsent(own);
  return [
    ...named(tell(PLAN, plan), () => isListed, `of the set ${set.id}`),
    ...plan.subsets.flatMap((subset) => {
      const hold = subsetHold(schedule, plan, subset.id);
      const of = `of the subset ${set.id}/${subset.id}`;
      return [
        ...named(tell(SUBSET, subset), () => !standing.isAbsent(hold), of),
        ...artistTargets(set, subset.roster, standing.isOpen(hold), of),
      ];
    }),
    ...(plan.parallels ?? []).flatMap((parallel) => {
      const isOpen = standing.isOpen(join(own, statedHold(schedule, parallel)));
      return named(tell(PARALLEL, parallel), () => isOpen, `of the parallel ${parallel.id}`);
    }),
    ...(plan.products ?? []).flatMap((product) => {
      const isOpen = standing.isOpen(join(own, statedHold(schedule, product)));
      return named(tell(PRODUCT, product), () => isOpen, `of the product ${product.id}`);
    }),
    ...correctionTargets(set, standing),
  ];
}

function artistTargets(
  set: CardSet,
  roster: string | undefined,
  isOpen: boolean,
  of: string,
): Target[] {
  const artists = roster === undefined ? [] : (set.rosters.get(roster)?.value.artists ?? []);
  return artists.flatMap((artist) =>
    named(
      tell(artist.state === 'signed' ? ARTIST : UNSIGNED_ARTIST, artist),
      () => isOpen,
      `of an artist ${of}`,
    ),
  );
}

function correctionTargets(set: CardSet, standing: Standing): Target[] {
  return (set.corrections?.value.corrections ?? []).flatMap((correction) => {
    const card = set.cards.find((candidate) => identityOf(candidate) === correction.card);
    const isOpen = card
      ? standing.isOpen(cardHold(standing.schedule, set.plan.value, card))
      : false;
    const key = `${set.id}/${correction.card}`;
    return named(tell(CORRECTION, correction), () => isOpen, `of a correction of ${key}`).map(
      (each) => ({ ...each, card: key }),
    );
  });
}

/** Texts that leave the house besides the cards, and their held spans. */
export function salesTargets(set: CardSet, standing: Standing): Target[] {
  const { schedule } = standing;
  return set.sales.flatMap((sales) => {
    const hold = join(statedHold(schedule, set.plan.value), statedHold(schedule, sales.front));
    const isOpen = standing.isOpen(hold);
    const of = `of the sales text ${set.id}/${sales.id}`;
    const spans = heldSpans(sales.words)
      .filter((span) => !standing.isOpen(join(hold, holdNamed(schedule, span.hold))))
      .map((span) => target(span.text, `a held span ${of}`));
    return [
      ...named(tell(SALES, sales.front), () => isOpen, of),
      ...(isOpen ? [] : [target(copyText(sales.words), `the words ${of}`)]),
      ...spans,
    ];
  });
}

function named(told: readonly FieldWords[], isOpen: () => boolean, of: string): Target[] {
  return unseen(told, isOpen).map(({ words, field }) => target(words, `the ${field} ${of}`));
}
