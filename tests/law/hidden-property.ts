import {
  hidden,
  hiddenFromPerson,
  hiddenFromPublic,
  one,
  shuffle,
  type Dice,
  type HiddenEdit,
} from './edit.js';
import { ACTORS, DAY, START, instantText } from './generate-words.js';
import { aboutField, placed, shows, standing, type Eye } from './held.js';
import type { Plain, PlainCard } from './plain.js';

type Opening =
  NonNullable<Plain['property']['embargoes']>[number] | Plain['property']['levels'][number];

function openings(draft: Plain): Opening[] {
  return [...draft.property.levels, ...(draft.property.embargoes ?? [])];
}

/** Levels and embargoes that have not lifted yet; for nobody, whatever they are cleared for. */
function unlifted(draft: Plain, eye: Eye): Opening[] {
  return openings(draft).filter(
    ({ id }) => standing(draft, { at: eye.at, person: null }, id) !== 'open',
  );
}

/** Those that this audience is not cleared for. */
function unknown(draft: Plain, eye: Eye): Opening[] {
  return unlifted(draft, eye).filter(({ id }) => standing(draft, eye, id) !== 'open');
}

/** An instant after this one, as text. */
function later(eye: Eye, dice: Dice): string {
  const day = Math.ceil((eye.at - START) / DAY);
  return instantText(day + 1 + dice.below(200));
}

/** Gives a level or an embargo another id, everywhere. */
function renamed(draft: Plain, from: string, to: string): void {
  const swap = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return;
    for (const [key, part] of Object.entries(value)) {
      const mapped: unknown = key === 'words' || key === 'title' ? part : part === from ? to : part;
      if (mapped !== part) Reflect.set(value, key, mapped);
      else swap(part);
    }
  };
  swap(draft);
}

const LEVELS: readonly HiddenEdit[] = [
  hiddenFromPublic('id of an unlifted level or embargo', (draft, eye, dice) =>
    one(dice, unlifted(draft, eye), ({ id }) => {
      renamed(draft, id, `renamed-${dice.below(1e6)}`);
      return true;
    }),
  ),
  hiddenFromPublic('label of an unlifted level or embargo', (draft, eye, dice) =>
    one(dice, unlifted(draft, eye), (opening) => {
      opening.label = dice.words();
      return true;
    }),
  ),
  hiddenFromPerson('label of a level or embargo that a person does not know', (draft, eye, dice) =>
    one(dice, unknown(draft, eye), (opening) => {
      opening.label = dice.words();
      return true;
    }),
  ),
  hidden('lift of a level that is not announced, within the future', (draft, eye, dice) => {
    const quiet = unknown(draft, eye).filter(
      ({ held, announce }) => announce === false || held === 'absent',
    );
    return one(dice, quiet, (opening) => {
      opening.lift = dice.below(4) === 0 ? 'unset' : later(eye, dice);
      return true;
    });
  }),
  hidden('print of a level or embargo', (draft, eye, dice) =>
    one(dice, unlifted(draft, eye), (opening) => {
      opening.print = dice.chance() ? 'unset' : later(eye, dice);
      return true;
    }),
  ),
  hidden('whether an absent level is announced', (draft, eye, dice) => {
    const absent = unlifted(draft, eye).filter(({ held }) => held === 'absent');
    return one(dice, absent, (opening) => {
      opening.announce = dice.chance();
      return true;
    });
  }),
  hidden('an unlifted level or embargo more', (draft, eye, dice) => {
    const more = { id: `more-${dice.below(1e6)}`, label: dice.words() };
    const lift = dice.chance() ? 'unset' : later(eye, dice);
    if (dice.chance()) draft.property.levels.push({ ...more, lift, held: 'absent' });
    else (draft.property.embargoes ??= []).unshift({ ...more, lift });
    return true;
  }),
  hidden('the order of embargoes', (draft, _eye, dice) =>
    shuffle(draft.property.embargoes ?? [], dice),
  ),
];

/** Keys of property.yaml that no view shows; each may come, change and go. */
const UNSEEN = {
  id: ({ property }, dice) => (property.id = `id-${dice.below(999)}`),
  approvals: ({ property }, dice) =>
    (property.approvals = [{ parts: ['copy'], roles: [dice.chance() ? 'licensor' : 'host'] }]),
  review: ({ property }, dice) =>
    dice.chance() ? delete property.review : (property.review = { workingDays: dice.below(90) }),
  cuts: ({ property }) => delete property.cuts,
  beats: ({ property }) => delete property.beats,
} satisfies Record<string, (draft: Plain, dice: Dice) => unknown>;

const FOR_REVIEW = {
  documents: ({ property }) => delete property.documents,
  'legal.depicts': ({ property: { legal } }, dice) => {
    if (!legal) return;
    if (legal.depicts && dice.chance()) delete legal.depicts;
    else legal.depicts = [{ name: dice.pick(ACTORS) ?? '', line: dice.words() }];
  },
} satisfies Record<string, (draft: Plain, dice: Dice) => unknown>;

const FILES: readonly HiddenEdit[] = [
  ...Object.entries(FOR_REVIEW).map(([key, change]) =>
    hiddenFromPublic(`${key} of the property`, (draft, _eye, dice) => {
      change(draft, dice);
      return true;
    }),
  ),
  hidden(
    'a line that is owed to somebody whom no card shows',
    ({ property: { legal } }, _eye, dice) =>
      legal === undefined
        ? false
        : (legal.depicts ??= []).push({ name: dice.words(), line: dice.words() }) > 0,
  ),
  ...Object.entries(UNSEEN).map(([key, change]) =>
    hidden(`${key} of the property`, (draft, _eye, dice) => {
      change(draft, dice);
      return true;
    }),
  ),
  hiddenFromPublic('the file name of a card', (draft, _eye, dice) =>
    one(dice, draft.sets, (set) =>
      one(dice, set.cards, (card) => {
        const before = `${card.subset}/${card.id}`;
        card.id = `f${dice.below(1e6)}`;
        for (const entry of set.corrections?.corrections ?? []) {
          if (entry.card === before) entry.card = `${card.subset}/${card.id}`;
        }
        return true;
      }),
    ),
  ),
  hidden('the art that lies in a folder', (draft, _eye, dice) =>
    one(dice, draft.sets, (set) => {
      set.art = [`art/z${dice.below(999)}.svg`];
      return true;
    }),
  ),
  hidden('what is drawn in art that no shown card shows', (draft, eye, dice) =>
    one(dice, draft.sets, (set) => {
      const named = (cards: readonly PlainCard[]) =>
        cards.flatMap(({ front: { image } }) => image?.file ?? []);
      const seen = named(
        set.cards.filter((card) => {
          const about = aboutField(set, card, 'image');
          return shows(draft, eye, 'art') && standing(draft, eye, ...about) === 'open';
        }),
      );
      const unseen = [...named(set.cards), ...set.art].filter((file) => !seen.includes(file));
      return one(dice, unseen, (file) => {
        set.drawn[file] = dice.words();
        return true;
      });
    }),
  ),
  hidden('the order of files and folders', (draft, eye, dice) => {
    shuffle(draft.sets, dice);
    shuffle(draft.layouts, dice);
    shuffle(draft.people.people, dice);
    for (const set of draft.sets) {
      shuffle(set.cards, dice);
      shuffle(set.sales, dice);
      shuffle(set.corrections?.corrections ?? [], dice);
    }
    return placed(draft, eye).length > 0;
  }),
  hidden('the order of the keys of a card', (draft, _eye, dice) =>
    one(dice, draft.sets, (set) =>
      one(dice, set.cards, (card) => {
        const entries = Object.entries(card.front);
        shuffle(entries, dice);
        card.front = { ...card.front };
        for (const [key] of entries) Reflect.deleteProperty(card.front, key);
        Object.assign(card.front, Object.fromEntries(entries));
        return true;
      }),
    ),
  ),
];

export const PROPERTY_EDITS: readonly HiddenEdit[] = [...LEVELS, ...FILES];
