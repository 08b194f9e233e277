import {
  hidden,
  hiddenFromPerson,
  hiddenFromPublic,
  one,
  type Dice,
  type HiddenEdit,
} from './edit.js';
import {
  aboutCard,
  aboutField,
  announcedOpening,
  isCoded,
  placed,
  sent,
  shows,
  standing,
  type Eye,
  type Placed,
  type Standing,
} from './held.js';
import { HOLDS } from './generate-words.js';
import type { Plain, PlainCard, PlainSet } from './plain.js';
import { CARD_KEYS, closedId, rewrite, wordsOf } from './values.js';
import type { CardFront } from '../../schema/index.js';

type Key = keyof CardFront;

function standingAs(draft: Plain, eye: Eye, wanted: Standing): Placed[] {
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
        return (
          standing(draft, eye, ...about) === 'placeholder' &&
          announcedOpening(draft, eye, ...about) === announcedOpening(draft, eye, ...was)
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
  'ships',
  'state',
  'story',
  'why',
  'writer',
  'sources',
  'checkedAgainst',
  'remark',
  'accepted',
] as const satisfies readonly Key[];

const SHOWN: readonly HiddenEdit[] = [
  ...INTERNAL.map((key) =>
    hidden(`${key} of a shown card`, (draft, eye, dice) =>
      one(dice, shownCards(draft, eye), ({ card }) => {
        rewrite(card.front, key, dice);
        return true;
      }),
    ),
  ),
  hidden('publicName of a card whose name shows', (draft, eye, dice) => {
    const named = shownCards(draft, eye).filter(({ set, card }) => {
      return standing(draft, eye, ...aboutField(set, card, 'name')) === 'open';
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
  hidden('image.ref of a shown card', (draft, eye, dice) => {
    const pictured = shownCards(draft, eye).flatMap(({ card }) => card.front.image ?? []);
    return one(dice, pictured, (image) => {
      image.ref = dice.words();
      return true;
    });
  }),
  hidden('image.depicts of a shown card', (draft, eye, dice) => {
    const pictured = shownCards(draft, eye).flatMap(({ card }) => card.front.image ?? []);
    if (eye.person?.sees?.depicts) return false;
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
  hidden('a signer who has not signed', (draft, eye, dice) =>
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

/** Keys that a `holds` entry may hold longer than the card, whole. */
const WHOLE = [
  'name',
  'image',
  'facts',
  'texts',
  'signers',
  'credits',
  'variation',
  'run',
  'shortPrint',
  'issued',
] as const satisfies readonly Key[];

function held(draft: Plain, eye: Eye, { set, card }: Placed, field: string): boolean {
  return standing(draft, eye, ...aboutField(set, card, field)) !== 'open';
}

/** Whether changing whom a card depicts could change whether this person is sent the card. */
function choosesByPicture(eye: Eye, key: Key): boolean {
  return key === 'image' && eye.person?.sees?.depicts !== undefined;
}

const HELD_FIELDS: readonly HiddenEdit[] = [
  ...WHOLE.map((key) =>
    hidden(`${key} that is held longer`, (draft, eye, dice) => {
      const cards = shownCards(draft, eye).filter((at) => held(draft, eye, at, key));
      return one(dice, cards, ({ card }) => {
        rewrite(card.front, key, dice);
        return true;
      });
    }),
  ),
  ...WHOLE.filter((key) => key !== 'name').map((key) =>
    hidden(`${key} more, held longer`, (draft, eye, dice) => {
      const cards = shownCards(draft, eye).filter(({ card }) => !(key in card.front));
      const closed = dice.pick(closedIds(draft, eye));
      if (closed === undefined || choosesByPicture(eye, key)) return false;
      return one(dice, cards, ({ card }) => {
        rewrite(card.front, key, dice);
        card.front.holds = { ...card.front.holds, [key]: closed };
        return true;
      });
    }),
  ),
  ...(['facts', 'texts'] as const).map((key) =>
    hidden(`one of ${key}, held longer`, (draft, eye, dice) =>
      one(dice, shownCards(draft, eye), (at) => {
        const { front } = at.card;
        const parts = { ...front[key] };
        const name = dice.pick([...Object.keys(parts), 'caption', `new-${dice.below(99)}`]) ?? '';
        const field = `${key}.${name}`;
        const closed = dice.pick(closedIds(draft, eye));
        if (name in parts ? !held(draft, eye, at, field) : closed === undefined) return false;
        if (!(name in parts)) front.holds = { ...front.holds, [field]: closed ?? '' };
        if (name in parts && dice.chance()) Reflect.deleteProperty(parts, name);
        else parts[name] = dice.words();
        front[key] = parts;
        return true;
      }),
    ),
  ),
  hidden('the alt text alone, held longer', (draft, eye, dice) => {
    const cards = shownCards(draft, eye).filter((at) => {
      const { image, holds } = at.card.front;
      return image && holds && 'image.alt' in holds && held(draft, eye, at, 'image.alt');
    });
    return one(dice, cards, ({ card: { front } }) => {
      if (front.image) front.image.alt = dice.words();
      return true;
    });
  }),
  hidden('a name that is held, of a card that had an open one', (draft, eye, dice) => {
    const cards = shownCards(draft, eye).filter((at) => !held(draft, eye, at, 'name'));
    const closed = dice.pick(closedIds(draft, eye));
    if (closed === undefined) return false;
    return one(dice, cards, ({ card: { front } }) => {
      front.publicName = front.name;
      front.name = dice.words();
      front.holds = { ...front.holds, name: closed };
      return true;
    });
  }),
  hidden('the words of a held bio', (draft, eye, dice) => {
    const cards = shownCards(draft, eye).filter((at) => held(draft, eye, at, 'bio'));
    return one(dice, cards, ({ card }) => {
      card.bio = wordsOf(dice);
      return true;
    });
  }),
  hidden('an absent bio more', (draft, eye, dice) => {
    const cards = shownCards(draft, eye).filter(({ card }) => card.bio.length === 0);
    const closed = dice.pick(closedIds(draft, eye, 'absent'));
    if (closed === undefined) return false;
    return one(dice, cards, (at) => {
      if (held(draft, eye, at, 'bio')) return false;
      at.card.bio = wordsOf(dice);
      at.card.front.holds = { ...at.card.front.holds, bio: closed };
      return true;
    });
  }),
  hidden('another hold of a held field', (draft, eye, dice) => {
    const entries = shownCards(draft, eye).flatMap(
      ({
        card: {
          front: { holds = {} },
        },
      }) => Object.keys(holds).map((field) => ({ holds, field })),
    );
    const closed = entries.filter(({ holds, field }) => {
      return standing(draft, eye, holds[field] ?? '') !== 'open';
    });
    return one(dice, closed, ({ holds, field }) => {
      const was = standing(draft, eye, holds[field] ?? '');
      const others = closedIds(draft, eye, was).filter((id) => id !== holds[field]);
      holds[field] = dice.pick(others) ?? holds[field] ?? '';
      return true;
    });
  }),
];

/** What goes with each field of `site.shows`. */
const GOES_WITH = {
  bio: ['texts'],
  art: ['image'],
  facts: ['facts'],
  credits: ['credits'],
} as const;

const NOT_SHOWN: readonly HiddenEdit[] = [
  ...(['bio', 'art', 'facts', 'credits'] as const).flatMap((kind) =>
    GOES_WITH[kind].map((key) =>
      hiddenFromPublic(`${key} where the licence does not show them`, (draft, eye, dice) => {
        if (shows(draft, eye, kind)) return false;
        return one(dice, shownCards(draft, eye), ({ card }) => {
          rewrite(card.front, key, dice);
          return true;
        });
      }),
    ),
  ),
  hiddenFromPublic('any bio where the licence shows none', (draft, eye, dice) => {
    if (shows(draft, eye, 'bio')) return false;
    return one(dice, shownCards(draft, eye), ({ card }) => {
      card.bio = wordsOf(dice);
      if (dice.chance()) card.front.holds = { ...card.front.holds, bio: closedId(dice) };
      return true;
    });
  }),
  ...(['facts', 'texts', 'signers', 'credits', 'image', 'run', 'why'] as const).map((key) =>
    hidden(`${key} of a card that is not issued`, (draft, eye, dice) => {
      const pulled = standingAs(draft, eye, 'open').filter(
        (at) =>
          sent(draft, eye, at.set, at.card) &&
          at.card.front.issued === 'no' &&
          !held(draft, eye, at, 'issued'),
      );
      if (choosesByPicture(eye, key)) return false;
      return one(dice, pulled, ({ card }) => {
        rewrite(card.front, key, dice);
        return true;
      });
    }),
  ),
  hiddenFromPerson('any card that is not sent to the person', (draft, eye, dice) => {
    const unsent = placed(draft, eye).filter(({ set, card }) => !sent(draft, eye, set, card));
    return one(dice, unsent, ({ set, card }) => {
      const before = card.front;
      card.front = { ...before };
      rewrite(card.front, dice.pick(CARD_KEYS) ?? 'name', dice);
      if (!sent(draft, eye, set, card)) return true;
      card.front = before;
      return false;
    });
  }),
];

export const CARD_EDITS: readonly HiddenEdit[] = [
  ...PLACEHOLDERS,
  ...ABSENT,
  ...SHOWN,
  ...HELD_FIELDS,
  ...NOT_SHOWN,
];
