import type { Static } from 'typebox';

import type {
  BackFile,
  Beat,
  Cut,
  Document,
  NamesFile,
  PeopleFile,
  SalesFront,
} from '../../schema/index.js';
import { hidden, hiddenFromPublic, one, type Dice, type HiddenEdit } from './edit.js';
import { instantText, present } from './generate-words.js';
import { closedIds } from './hidden-cards.js';
import type { Plain } from './plain.js';
import { closedId, wordsOf } from './values.js';

/** Files and lists of which no view shows anything: things come, go and change places in them. */

/** A value, or now and then nothing. */
function perhaps<T>(dice: Dice, value: T): T | undefined {
  return dice.chance() ? value : undefined;
}

function idOf(dice: Dice): string {
  return `id-${String.fromCharCode(97 + dice.below(26))}${dice.below(1000)}`;
}

function sceneOf(dice: Dice): string {
  return `${1 + dice.below(12)}/${1 + dice.below(30)}`;
}

function dayOf(dice: Dice): string {
  return `2026-0${1 + dice.below(9)}-${10 + dice.below(19)}`;
}

function cutOf(dice: Dice): Static<typeof Cut> {
  return present({
    id: idOf(dice),
    received: dayOf(dice),
    touches: perhaps(dice, [sceneOf(dice)]),
    names: perhaps(dice, [dice.words()]),
  });
}

function documentOf(dice: Dice): Static<typeof Document> {
  return present({
    id: idOf(dice),
    title: dice.words(),
    level: perhaps(dice, closedId(dice)),
    embargo: perhaps(dice, [closedId(dice)]),
    withdrawn: perhaps(dice, dayOf(dice)),
  });
}

function beatOf(dice: Dice): Static<typeof Beat> {
  return present({
    at: sceneOf(dice),
    says: dice.words(),
    level: closedId(dice),
    embargo: perhaps(dice, [closedId(dice)]),
  });
}

type Secret = NonNullable<NamesFile['secrets']>[number];
function secretOf(dice: Dice): Secret {
  return present({
    id: idOf(dice),
    level: closedId(dice),
    embargo: perhaps(dice, [closedId(dice)]),
    says: dice.words(),
    allOf: [[dice.words()], [dice.words()]],
    within: perhaps(dice, dice.chance() ? ('card' as const) : ('sentence' as const)),
  });
}

type Person = PeopleFile['people'][number];
function personOf(dice: Dice): Person {
  return present({
    id: idOf(dice),
    name: dice.words(),
    role: dice.pick(['host', 'writer', 'editor'] as const) ?? 'host',
    clearance: dice.pick(['open', 'shops', 'spring', 'finale']) ?? 'open',
    knows: perhaps(dice, [closedId(dice)]),
    sees: perhaps(dice, { group: [idOf(dice)] }),
  });
}

function salesOf(dice: Dice): SalesFront {
  return present({
    format: perhaps<1>(dice, 1),
    kind: dice.pick(['sell-sheet', 'wrapper', 'web'] as const) ?? 'web',
    title: perhaps(dice, dice.words()),
    goes: dice.chance() ? 'unset' : instantText(dice.below(300)),
    sent: perhaps(dice, dayOf(dice)),
    spoiler: closedId(dice),
    embargo: perhaps(dice, [closedId(dice)]),
    writer: perhaps(dice, idOf(dice)),
    remark: perhaps(dice, dice.words()),
    accepted: perhaps(dice, [{ rule: 'leak', words: dice.words(), why: 'So', by: 'jonah' }]),
  });
}

function layoutOf(dice: Dice, id: string): BackFile {
  const size = 1 + dice.below(50);
  const box = { x: size, y: 5, width: 9, height: 9 };
  const zones = { bio: { ...box, font: 'body', size: 7, leading: 8 } };
  return present({
    format: perhaps<1>(dice, 1),
    id,
    trim: { width: 60 + size, height: 90 },
    bleed: size,
    safe: size,
    paper: perhaps(dice, '#eeeeee'),
    frontPaper: perhaps(dice, '#dddddd'),
    fonts: { body: { regular: `${idOf(dice)}.ttf` } },
    zones,
    front: perhaps(dice, zones),
    panels: perhaps(dice, [{ ...box, colour: '#cccccc' }]),
    shared: perhaps(dice, { caption: dice.words() }),
    blank: perhaps(dice, dice.chance()),
  });
}

/** Puts something into a list, in place of something, or takes something out of it. */
function unsettle<T>(list: T[], made: T, dice: Dice): boolean {
  const at = dice.below(list.length + 1);
  const [putIn, replace, takeOut] = [0, 1, 2];
  const how = dice.below(3);
  if (how === putIn || list.length < 2) list.splice(at, 0, made);
  if (how === replace) list.splice(at, 1, made);
  if (how === takeOut && list.length > 1) list.splice(at, 1);
  return true;
}

const LISTS: readonly HiddenEdit[] = [
  hidden('the cuts', ({ property }, _eye, dice) =>
    unsettle((property.cuts ??= []), cutOf(dice), dice),
  ),
  hiddenFromPublic('the documents', ({ property }, _eye, dice) =>
    unsettle((property.documents ??= []), documentOf(dice), dice),
  ),
  hidden('a held document', (draft, eye, dice) => {
    const documents = (draft.property.documents ??= []);
    const level = dice.pick(closedIds(draft, eye).filter((id) => isLevel(draft, id)));
    if (level === undefined) return false;
    const known = documents.filter(({ level: own }) => own === level);
    const made = { id: `doc-${dice.below(1e6)}`, title: dice.words(), level };
    if (known.length === 0 || dice.chance()) documents.push(made);
    else Object.assign(dice.pick(known) ?? {}, { title: dice.words() });
    return true;
  }),
  hidden('the beats', ({ property }, _eye, dice) =>
    unsettle((property.beats ??= []), beatOf(dice), dice),
  ),
  hidden('the secrets', ({ names }, _eye, dice) =>
    unsettle((names.secrets ??= []), secretOf(dice), dice),
  ),
  hidden('no secrets at all', ({ names }) => delete names.secrets),
  hiddenFromPublic('the people', ({ people }, _eye, dice) =>
    unsettle(people.people, personOf(dice), dice),
  ),
  hidden('a person more', ({ people }, _eye, dice) => people.people.push(personOf(dice)) > 0),
  hidden('whoever else is in people.yaml', ({ people }, eye, dice) =>
    one(
      dice,
      people.people.filter(({ id }) => id !== eye.person?.id),
      (person) => {
        people.people.splice(people.people.indexOf(person), 1, personOf(dice));
        return true;
      },
    ),
  ),
  hiddenFromPublic('the sales texts', ({ sets }, _eye, dice) =>
    one(dice, sets, ({ sales }) =>
      unsettle(sales, { id: idOf(dice), front: salesOf(dice), words: wordsOf(dice) }, dice),
    ),
  ),
  hidden('a held sales text', (draft, eye, dice) => {
    const closed = dice.pick(closedIds(draft, eye));
    if (closed === undefined) return false;
    return one(dice, draft.sets, ({ sales }) => {
      const hold = isLevel(draft, closed) ? { spoiler: closed } : { embargo: [closed] };
      const front = { ...salesOf(dice), ...hold };
      sales.splice(dice.below(sales.length + 1), 0, {
        id: `s-${dice.below(1e6)}`,
        front,
        words: wordsOf(dice),
      });
      return true;
    });
  }),
];

function isLevel({ property }: Plain, id: string): boolean {
  return property.levels.some((level) => level.id === id);
}

const LAYOUTS: readonly HiddenEdit[] = [
  hiddenFromPublic('a layout', ({ layouts }, _eye, dice) =>
    one(dice, layouts, (layout) => {
      layouts.splice(layouts.indexOf(layout), 1, layoutOf(dice, layout.id));
      return true;
    }),
  ),
  hidden('a layout that no card has', ({ layouts, sets }, _eye, dice) => {
    const named = JSON.stringify(sets);
    const spare = layouts.filter(({ id }) => !named.includes(`"${id}"`));
    if (spare.length === 0 || dice.chance()) layouts.push(layoutOf(dice, idOf(dice)));
    else layouts.splice(layouts.indexOf(spare[0] ?? layoutOf(dice, '')), 1);
    return true;
  }),
];

/** Every kind of file that may state its format, without the cards. */
const FORMATTED: Record<string, (draft: Plain) => { format?: 1 }[]> = {
  'property.yaml': ({ property }) => [property],
  'names.yaml': ({ names }) => [names],
  'people.yaml': ({ people }) => [people],
  'a layout': ({ layouts }) => layouts,
  'a plan': ({ sets }) => sets.map(({ plan }) => plan),
  'the corrections': ({ sets }) => sets.flatMap(({ corrections }) => corrections ?? []),
  'a roster': ({ sets }) => sets.flatMap(({ rosters }) => Object.values(rosters)),
};

const FORMATS: readonly HiddenEdit[] = Object.entries(FORMATTED).map(([kind, filesOf]) =>
  hidden(`the format of ${kind}`, (draft, _eye, dice) =>
    one(dice, filesOf(draft), (file) => {
      if (file.format === undefined) file.format = 1;
      else delete file.format;
      return true;
    }),
  ),
);

export const FILE_EDITS: readonly HiddenEdit[] = [...LISTS, ...LAYOUTS, ...FORMATS];
