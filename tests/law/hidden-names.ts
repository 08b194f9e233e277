import type { NamesFile } from '../../schema/index.js';
import { hidden, hiddenFromPublic, one, shuffle, type Dice, type HiddenEdit } from './edit.js';
import { present } from './generate-words.js';
import { standing, type Eye, type Stating } from './held.js';
import type { Plain } from './plain.js';

/** Names: what is told of an open one is its name, its open forms and how it is said. */

type Name = NamesFile['names'][number];
type Alias = NonNullable<Name['aliases']>[number];
type Hold = Pick<Name, 'level' | 'embargo'>;

function stating({ level, embargo }: Partial<Hold>): Stating {
  return { ...(level === undefined ? {} : { spoiler: level }), ...(embargo ? { embargo } : {}) };
}

function isHeld(draft: Plain, eye: Eye, ...holds: readonly Partial<Hold>[]): boolean {
  return standing(draft, eye, ...holds.map(stating)) !== 'open';
}

function heldNames(draft: Plain, eye: Eye): Name[] {
  return draft.names.names.filter((name) => isHeld(draft, eye, name));
}

function openNames(draft: Plain, eye: Eye): Name[] {
  return draft.names.names.filter((name) => !isHeld(draft, eye, name));
}

/** A hold that is closed to whoever looks: by a level or by an embargo; null if all is open. */
function closedHold(draft: Plain, eye: Eye, dice: Dice): Hold | null {
  const { property } = draft;
  const levels = property.levels.map(({ id }) => ({ level: id }));
  const [first] = property.levels;
  const embargoes = (property.embargoes ?? []).map(({ id }) => ({
    level: first?.id ?? '',
    embargo: [id],
  }));
  return dice.pick([...levels, ...embargoes].filter((hold) => isHeld(draft, eye, hold))) ?? null;
}

function perhaps<T>(dice: Dice, value: T): T | undefined {
  return dice.chance() ? value : undefined;
}

function nameWith(hold: Hold, dice: Dice): Name {
  const other = dice.words();
  return present({
    ...unseenOf(dice),
    name: dice.words(),
    kind: dice.pick(KINDS) ?? 'place',
    aliases: perhaps(dice, [other, { form: dice.words(), level: hold.level }]),
    say: perhaps(dice, other),
    avoid: perhaps(dice, [avoidedFor(dice.words(), dice)]),
    ...hold,
  });
}

const KINDS = ['character', 'place', 'performer'] as const;

/** Values of keys that no view shows of a name. */
function unseenOf(dice: Dice): Partial<Name> {
  const other = dice.words();
  return present({
    style: perhaps<'italic'>(dice, 'italic'),
    match: perhaps<'exact'>(dice, 'exact'),
    billing: perhaps<'full'>(dice, 'full'),
    publicName: perhaps(dice, other),
    except: perhaps(dice, [other]),
  });
}

const UNSEEN = ['style', 'match', 'billing', 'publicName', 'except'] as const;

type Avoided = NonNullable<Name['avoid']>[number];

/**
 * A form that is not to be used any more. Its words are no names: a form of an open name that has
 * words of a held one is left out, which tests/gate looks at.
 */
function avoidedFor(use: string, dice: Dice): Avoided {
  return present({
    form: `Former${dice.below(10_000)}`,
    use,
    why: perhaps(dice, dice.words()),
  });
}

export const NAME_EDITS: readonly HiddenEdit[] = [
  hidden('a held name', (draft, eye, dice) => {
    const hold = closedHold(draft, eye, dice);
    if (!hold) return false;
    return one(dice, heldNames(draft, eye), (name) => {
      draft.names.names.splice(draft.names.names.indexOf(name), 1, nameWith(hold, dice));
      return true;
    });
  }),
  hidden('a held name more', (draft, eye, dice) => {
    const hold = closedHold(draft, eye, dice);
    const { names } = draft.names;
    if (hold) names.splice(dice.below(names.length + 1), 0, nameWith(hold, dice));
    return hold !== null;
  }),
  hidden('a held name less', (draft, eye, dice) =>
    one(dice, heldNames(draft, eye), (name) => {
      draft.names.names.splice(draft.names.names.indexOf(name), 1);
      return true;
    }),
  ),
  hidden('the order of names', ({ names }, _eye, dice) => shuffle(names.names, dice)),
  hidden('the kind of a name', ({ names }, _eye, dice) =>
    one(dice, names.names, (name) => {
      name.kind = dice.pick(KINDS) ?? name.kind;
      return true;
    }),
  ),
  hidden('what no view shows of a name', ({ names }, _eye, dice) =>
    one(dice, names.names, (name) => {
      for (const key of UNSEEN) Reflect.deleteProperty(name, key);
      Object.assign(name, unseenOf(dice));
      return true;
    }),
  ),
  hiddenFromPublic('forms of a name that are not to be used', ({ names }, _eye, dice) =>
    one(dice, names.names, (name) => {
      if (name.avoid && dice.chance()) delete name.avoid;
      else name.avoid = [avoidedFor(name.name, dice), ...(name.avoid ?? [])];
      return true;
    }),
  ),
  hidden('why a form is not to be used, and the order of such forms', ({ names }, _eye, dice) =>
    one(
      dice,
      names.names.filter(({ avoid = [] }) => avoid.length > 0),
      ({ avoid = [] }) => {
        shuffle(avoid, dice);
        for (const each of avoid) each.why = dice.words();
        return true;
      },
    ),
  ),
  hidden('a form that is not to be used for one that is not told', (draft, eye, dice) =>
    one(dice, draft.names.names, (name) => {
      const aliases = name.aliases ?? [];
      const held = aliases.filter((alias) => isHeldForm(draft, eye, name, alias)).map(formOf);
      const told = aliases.filter((alias) => !isHeldForm(draft, eye, name, alias)).map(formOf);
      const untold = held.filter((form) => form !== name.name && !told.includes(form));
      const use = dice.pick(untold) ?? `Nobody${dice.below(10_000)}`;
      name.avoid = [...(name.avoid ?? []), avoidedFor(use, dice)];
      return true;
    }),
  ),
  hidden('words of the world, and where performers may be named', ({ names }, _eye, dice) => {
    names.words = [dice.words()];
    names.performers = dice.chance() ? ['signers'] : [];
    return true;
  }),
  hidden('the held forms of a name', (draft, eye, dice) => {
    const hold = closedHold(draft, eye, dice);
    return one(dice, openNames(draft, eye), (name) => {
      const told = (name.aliases ?? []).filter((alias) => !isHeldForm(draft, eye, name, alias));
      const more = hold && dice.chance() ? [{ form: dice.words(), ...hold }] : [];
      name.aliases = [...told, ...more];
      shuffle(name.aliases, dice);
      return true;
    });
  }),
];

function formOf(alias: Alias): string {
  return typeof alias === 'string' ? alias : alias.form;
}

function isHeldForm(draft: Plain, eye: Eye, name: Name, alias: Alias): boolean {
  return typeof alias !== 'string' && isHeld(draft, eye, name, alias);
}
