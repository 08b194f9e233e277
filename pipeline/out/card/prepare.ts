import type { BackFile } from '../../../schema/index.js';
import {
  TO_BE_REVEALED,
  type View,
  type ViewCard,
  type ViewSet,
  type ViewSubset,
} from '../../gate/index.js';
import type { Faces, FontShelf } from '../../typeset/index.js';
import { sizeInMm, mm, type Size } from './geometry.js';
import { setSides, type CardText } from './set-sides.js';
import { wordsOf } from './zone-words.js';

/** What a card is set with. */
export interface CardSetting {
  /** The fonts of the layouts. */
  readonly fonts: FontShelf;
  /** Names that are never divided at the end of a line; for the house, whose view has all names. */
  readonly undivided?: readonly string[];
}

/** The ids of the one set and the one subset that are asked for. */
export interface Which {
  readonly set?: string;
  readonly subset?: string;
}

/** A card of the view with where it is listed. */
export interface Listed {
  readonly set: ViewSet;
  readonly subset: ViewSubset;
  readonly card: ViewCard;
  readonly layout: BackFile | null;
  /** Points. */
  readonly trim: Size;
  readonly bleed: number;
}

/** The trade's card, 2.5 x 3.5 in, and an eighth of an inch of bleed: for a card without a layout. */
const STANDARD = { trim: { width: 63.5, height: 88.9 }, bleed: 3.175 };

/** The cards that are asked for, in the order of the view. */
export function listCards(view: View, { set, subset }: Which): readonly Listed[] {
  return view.sets
    .filter(({ id }) => set === undefined || id === set)
    .flatMap((each) =>
      each.subsets
        .filter(({ id }) => subset === undefined || id === subset)
        .flatMap((part) => part.cards.map((card) => listed(view, each, part, card))),
    );
}

function listed(view: View, set: ViewSet, subset: ViewSubset, card: ViewCard): Listed {
  const layout = (card.layout === null ? undefined : view.layouts.get(card.layout)) ?? null;
  const { trim, bleed } = layout ?? STANDARD;
  return { set, subset, card, layout, trim: sizeInMm(trim.width, trim.height), bleed: mm(bleed) };
}

/** Why nothing is to be drawn on the card, in words for its panel; null where it is drawn. */
export function whyVoid({ card, layout }: Listed): string | null {
  if (card.state === 'not issued') return 'Not issued';
  if (card.state === 'placeholder') return TO_BE_REVEALED;
  return layout ? null : 'No layout';
}

/**
 * Whether the view itself shows that something was taken out of the card. What leaves no trace in a
 * view leaves none here: every page of a person says that its cards may differ from what will print.
 */
export function isCut({ state, bioHeld, bio }: ViewCard): boolean {
  return (
    state === 'placeholder' || bioHeld || bio.some((runs) => runs.some((run) => 'held' in run))
  );
}

/** Sets every text of a card in its zone. */
export function setCard(view: View, listed: Listed, options: CardSetting): CardText {
  const { layout } = listed;
  if (!layout || whyVoid(listed) !== null) return { front: [], back: [] };
  const words = wordsOf(view, listed.card, layout);
  const faces = options.fonts.get(layout.id) ?? new Map<string, Faces>();
  const undivided = view.audience === 'house' ? (options.undivided ?? []) : [];
  return setSides(layout, words, faces, undivided);
}
