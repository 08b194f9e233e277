import { hidden, hiddenFromPublic, one, type Dice, type HiddenEdit } from './edit.js';
import {
  aboutCard,
  aboutField,
  announcedOpening,
  isCoded,
  looks,
  placed,
  sent,
  standing,
  type Eye,
  type Placed,
  type Standing,
} from './held.js';
import { HOLDS } from './generate-words.js';
import type { Plain, PlainCard, PlainSet } from './plain.js';
import { CARD_KEYS, rewrite, wordsOf } from './values.js';
import type { CardFront } from '../../schema/index.js';

type Key = keyof CardFront;

/** Cards that stand like this for an audience. */
export function standingAs(draft: Plain, eye: Eye, wanted: Standing): Placed[] {
  return placed(draft, eye).filter(({ standing: is }) => is === wanted);
}

/** Cards that an audience gets to see, not pulled ones: what an edit of the shown has to do with. */
export function shownCards(draft: Plain, eye: Eye): Placed[] {
  return standingAs(draft, eye, 'open').filter(
    ({ set, card }) => sent(draft, eye, set, card) && card.front.issued !== 'no',
  );
}

/** Ids that hold something at this instant, for this audience. */
export function closedIds(draft: Plain, eye: Eye, wanted?: Standing): string[] {
  return HOLDS.filter((id) => {
    const is = standing(draft, eye, id);
    return wanted === undefined ? is !== 'open' : is === wanted;
  });
}

/** What of a placeholder is told whatever happens: its hold has edits of its own. */
const TOLD: ReadonlySet<Key> = new Set(['number', 'publicName', 'spoiler', 'embargo']);

const PLACEHOLDERS: readonly HiddenEdit[] = [
  ...CARD_KEYS.filter((key) => !TOLD.has(key)).map((key) =>
    hidden(`${key} of a placeholder`, (draft, eye, dice) =>
      one(dice, standingAs(draft, eye, 'placeholder'), ({ card }) => {
        rewrite(card.front, key, dice);
        return true;
      }),
    ),
  ),
  hidden('the words of a placeholder', (draft, eye, dice) =>
    one(dice, standingAs(draft, eye, 'placeholder'), ({ card }) => {
      card.bio = wordsOf(dice);
      return true;
    }),
  ),
  hidden('the code of a placeholder', (draft, eye, dice) => {
    const coded = standingAs(draft, eye, 'placeholder').filter(({ set, card }) =>
      isCoded(set, card),
    );
    return one(dice, coded, ({ card }) => {
      rewrite(card.front, 'number', dice);
      return true;
    });
  }),
  hidden('another hold of a placeholder that opens when it did', (draft, eye, dice) =>
    one(dice, standingAs(draft, eye, 'placeholder'), ({ set, card }) =>
      tryHolds(set, card, dice, (was) => {
        const about = aboutCard(set, card);
        return looks(eye).every(
          (look) =>
            standing(draft, look, ...about) === standing(draft, look, ...was) &&
            announcedOpening(draft, look, ...about) === announcedOpening(draft, look, ...was),
        );
      }),
    ),
  ),
];

/** Tries other holds on a card until one keeps what is asked; puts the old one back if none does. */
function tryHolds(
  set: PlainSet,
  card: PlainCard,
  dice: Dice,
  keeps: (was: ReturnType<typeof aboutCard>) => boolean,
): boolean {
  const before = { ...card.front };
  const was = aboutCard(set, { ...card, front: before });
  for (let attempt = 0; attempt < 8; attempt++) {
    card.front = { ...before };
    rewrite(card.front, 'spoiler', dice);
    rewrite(card.front, 'embargo', dice);
    const changed = JSON.stringify(card.front) !== JSON.stringify(before);
    if (changed && keeps(was)) return true;
  }
  card.front = before;
  return false;
}

const ABSENT: readonly HiddenEdit[] = [
  ...CARD_KEYS.filter((key) => key !== 'spoiler' && key !== 'embargo').map((key) =>
    hidden(`${key} of an absent card`, (draft, eye, dice) =>
      one(dice, standingAs(draft, eye, 'absent'), ({ card }) => {
        rewrite(card.front, key, dice);
        return true;
      }),
    ),
  ),
  hidden('the words of an absent card', (draft, eye, dice) =>
    one(dice, standingAs(draft, eye, 'absent'), ({ card }) => {
      card.bio = wordsOf(dice);
      return true;
    }),
  ),
  hidden('another hold of an absent card', (draft, eye, dice) =>
    one(dice, standingAs(draft, eye, 'absent'), ({ set, card }) =>
      tryHolds(set, card, dice, () => standing(draft, eye, ...aboutCard(set, card)) === 'absent'),
    ),
  ),
  hidden('an absent card less', (draft, eye, dice) =>
    one(dice, standingAs(draft, eye, 'absent'), ({ set, card }) => {
      set.cards.splice(set.cards.indexOf(card), 1);
      return true;
    }),
  ),
  hidden('an absent card more', (draft, eye, dice) =>
    one(dice, placed(draft, eye), ({ set, card }) => {
      const closed = dice.pick(closedIds(draft, eye, 'absent'));
      if (closed === undefined) return false;
      const front: CardFront = { ...card.front, ...heldBy(closed) };
      for (const key of CARD_KEYS) if (dice.chance() && !isHold(key)) rewrite(front, key, dice);
      const more = { subset: card.subset, id: `x${dice.below(1e6)}`, front, bio: wordsOf(dice) };
      set.cards.splice(dice.below(set.cards.length + 1), 0, more);
      return true;
    }),
  ),
  hidden('the file name of an absent card', (draft, eye, dice) =>
    one(dice, standingAs(draft, eye, 'absent'), ({ card }) => {
      card.id = `x${dice.below(1e6)}`;
      return true;
    }),
  ),
  hidden('the subset of an absent card', (draft, eye, dice) =>
    one(dice, standingAs(draft, eye, 'absent'), ({ set, card }) => {
      const before = { subset: card.subset, id: card.id };
      card.subset = dice.pick(set.plan.subsets)?.id ?? card.subset;
      card.id = `x${dice.below(1e6)}`;
      if (standing(draft, eye, ...aboutCard(set, card)) === 'absent') return true;
      Object.assign(card, before);
      return false;
    }),
  ),
];

function isHold(key: Key): boolean {
  return key === 'spoiler' || key === 'embargo';
}

function heldBy(id: string): { spoiler: string; embargo: string[] } {
  return id === 'finale' ? { spoiler: id, embargo: [] } : { spoiler: 'open', embargo: [id] };
}

/** Keys that no view shows, on cards that are shown. */
const INTERNAL = [
  'format',
  'state',
  'story',
  'relic',
  'why',
  'writer',
  'checkedAgainst',
  'remark',
  'accepted',
] as const satisfies readonly Key[];

/** Keys that are told to reviewers alone. */
const FOR_REVIEW = ['ships', 'sources'] as const satisfies readonly Key[];

const SHOWN: readonly HiddenEdit[] = [
  ...FOR_REVIEW.map((key) =>
    hiddenFromPublic(`${key} of a shown card`, (draft, eye, dice) =>
      one(dice, shownCards(draft, eye), ({ card }) => {
        rewrite(card.front, key, dice);
        return true;
      }),
    ),
  ),
  hidden('a source of a document that is held', (draft, eye, dice) => {
    const held = (draft.property.documents ?? []).filter(
      ({ level, embargo }) =>
        standing(draft, eye, { spoiler: level ?? 'open', embargo: embargo ?? [] }) !== 'open',
    );
    const doc = dice.pick(held)?.id;
    if (doc === undefined) return false;
    return one(dice, shownCards(draft, eye), ({ card }) => {
      (card.front.sources ??= []).push({ doc, ref: dice.words() });
      return true;
    });
  }),
  ...INTERNAL.map((key) =>
    hidden(`${key} of a shown card`, (draft, eye, dice) =>
      one(dice, shownCards(draft, eye), ({ card }) => {
        rewrite(card.front, key, dice);
        return true;
      }),
    ),
  ),
  hiddenFromPublic('publicName of a card whose name shows', (draft, eye, dice) => {
    const named = shownCards(draft, eye).filter(({ set, card }) => {
      const about = aboutField(set, card, 'name');
      return looks(eye).every((look) => standing(draft, look, ...about) === 'open');
    });
    return one(dice, named, ({ card }) => {
      rewrite(card.front, 'publicName', dice);
      return true;
    });
  }),
  hiddenFromPublic('back of a shown card', (draft, eye, dice) =>
    one(dice, shownCards(draft, eye), ({ card }) => {
      rewrite(card.front, 'back', dice);
      return true;
    }),
  ),
  hiddenFromPublic('image.ref of a shown card', (draft, eye, dice) => {
    const pictured = shownCards(draft, eye).flatMap(({ card }) => card.front.image ?? []);
    return one(dice, pictured, (image) => {
      image.ref = dice.words();
      return true;
    });
  }),
  hiddenFromPublic('image.depicts of a shown card', (draft, eye, dice) => {
    const pictured = shownCards(draft, eye).flatMap(({ card }) => card.front.image ?? []);
    return one(dice, pictured, (image) => {
      image.depicts = dice.chance() ? [] : [dice.words()];
      return true;
    });
  }),
  hidden('variation.of', (draft, eye, dice) => {
    const varied = shownCards(draft, eye).flatMap(({ card }) => card.front.variation ?? []);
    return one(dice, varied, (variation) => {
      variation.of = `crew/c${dice.below(99)}`;
      return true;
    });
  }),
  hiddenFromPublic('a signer who has not signed', (draft, eye, dice) =>
    one(dice, shownCards(draft, eye), ({ card }) => {
      const state = dice.pick(['asked', 'contracted', 'withdrawn'] as const) ?? 'asked';
      const waiting = (card.front.signers ?? []).find((signer) =>
        ['asked', 'contracted', 'withdrawn'].includes(signer.state),
      );
      if (waiting && dice.chance()) Object.assign(waiting, { name: dice.words(), state });
      else card.front.signers = [...(card.front.signers ?? []), { name: dice.words(), state }];
      return true;
    }),
  ),
];

export const CARD_EDITS: readonly HiddenEdit[] = [...PLACEHOLDERS, ...ABSENT, ...SHOWN];
