import type { CardFront } from '../../schema/index.js';
import { hidden, hiddenFromPerson, hiddenFromPublic, one, type HiddenEdit } from './edit.js';
import { aboutField, looks, placed, sent, shows, standing, type Eye, type Placed } from './held.js';
import { closedIds, shownCards, standingAs } from './hidden-cards.js';
import type { Plain } from './plain.js';
import { CARD_KEYS, closedId, rewrite, wordsOf } from './values.js';

type Key = keyof CardFront;

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
  ...(['depicts', 'ref'] as const).map((key) =>
    hidden(`image.${key} alone, held longer`, (draft, eye, dice) => {
      if (choosesByPicture(eye, 'image')) return false;
      const cards = shownCards(draft, eye).filter((at) => held(draft, eye, at, `image.${key}`));
      return one(dice, cards, ({ card: { front } }) => {
        if (front.image === undefined) return false;
        Object.assign(front.image, { [key]: key === 'ref' ? dice.words() : [dice.words()] });
        return true;
      });
    }),
  ),
  hidden('a name that is held, of a card that had an open one', (draft, eye, dice) => {
    const cards = shownCards(draft, eye).filter((at) => {
      const { publicName, holds } = at.card.front;
      // What held a name and has lifted is told by how much the name tells.
      if (holds?.['name'] !== undefined) return false;
      const isOfPerson = eye.person !== null && publicName !== undefined;
      return !isOfPerson && looks(eye).every((look) => !held(draft, look, at, 'name'));
    });
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
    const cards = shownCards(draft, eye).filter(
      ({ card: { bio, front } }) => bio.length === 0 && front.holds?.['bio'] === undefined,
    );
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
          looks(eye).every((look) => !held(draft, look, at, 'issued')),
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

export const FIELD_EDITS: readonly HiddenEdit[] = [...HELD_FIELDS, ...NOT_SHOWN];
