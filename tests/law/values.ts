import type { CardFront } from '../../schema/index.js';
import type { Dice } from './edit.js';
import { ACTORS, HOLDS, instantText } from './generate-words.js';
import type { Stretch, Words } from './plain.js';

/** A new value for each key of a card: total, so that a key added later has edits too. */
const VALUES: { readonly [K in keyof CardFront]-?: (dice: Dice) => NonNullable<CardFront[K]> } = {
  format: () => 1,
  number: (dice) => `X-${dice.below(1000)}`,
  name: (dice) => dice.words(),
  spoiler: (dice) => dice.pick(['open', 'shops', 'spring', 'finale']) ?? 'open',
  embargo: (dice) => [dice.pick(['fair', 'undated', 'vanished', 'quiet']) ?? 'fair'],
  ships: (dice) => (dice.chance() ? 'unset' : instantText(dice.below(300))),
  state: (dice) => (dice.chance() ? 'draft' : 'ready'),
  publicName: (dice) => dice.words(),
  holds: (dice) => ({ [dice.pick(['name', 'bio', 'image', 'facts']) ?? 'name']: closedId(dice) }),
  image: (dice) => ({
    file: `art/b${dice.below(1000)}.svg`,
    alt: dice.words(),
    depicts: dice.chance() ? [...ACTORS] : [],
  }),
  facts: (dice) => ({ Berth: dice.words(), [`Fact ${dice.below(9)}`]: dice.words() }),
  texts: (dice) => ({ caption: dice.words() }),
  signers: (dice) => [{ name: dice.words(), state: dice.chance() ? 'signed' : 'redemption' }],
  credits: (dice) => [{ role: dice.words(), name: dice.words() }],
  story: (dice) => `${1 + dice.below(9)}/${1 + dice.below(30)}`,
  variation: (dice) => ({
    of: `crew/c${dice.below(9)}`,
    letter: dice.pick(['b', 'c', 'd']) ?? 'b',
    tell: dice.words(),
  }),
  shortPrint: (dice) => (dice.chance() ? 'SP' : 'SSP'),
  run: (dice) => 1 + dice.below(900),
  relic: (dice) => ({ piece: dice.words(), from: dice.words(), record: dice.words() }),
  issued: (dice) => (dice.chance() ? 'yes' : 'no'),
  why: (dice) => dice.words(),
  bio: () => 'none',
  back: (dice) => dice.pick(['standard', 'ornate', 'spare']) ?? 'spare',
  writer: (dice) => `writer-${dice.below(99)}`,
  sources: (dice) => [{ doc: `doc-${dice.below(99)}` }],
  checkedAgainst: (dice) => `cut-${dice.below(99)}`,
  remark: (dice) => dice.words(),
  accepted: (dice) => [{ rule: 'alike', words: dice.words(), why: dice.words(), by: 'jonah' }],
};

/** All keys of a card. */
export const CARD_KEYS = Object.keys(VALUES) as (keyof CardFront)[];

const REQUIRED: ReadonlySet<keyof CardFront> = new Set(['number', 'name', 'spoiler']);

/** Gives a key another value, or takes it away if it may go. */
export function rewrite(front: CardFront, key: keyof CardFront, dice: Dice): void {
  if (!REQUIRED.has(key) && key in front && dice.chance()) Reflect.deleteProperty(front, key);
  else Object.assign(front, { [key]: VALUES[key](dice) });
}

export function closedId(dice: Dice): string {
  return dice.pick(HOLDS) ?? 'finale';
}

export function stretchOf(dice: Dice, hold: string | null = null): Stretch {
  return {
    words: `${dice.words()}.`,
    italic: dice.below(3) === 0,
    bold: dice.below(4) === 0,
    hold,
    count: null,
    broken: dice.below(4) === 0,
    stressed: dice.chance(),
  };
}

/** Other words in place of a bio; sometimes none at all. */
export function wordsOf(dice: Dice): Words {
  return Array.from({ length: dice.below(3) }, () =>
    Array.from({ length: 1 + dice.below(3) }, () =>
      stretchOf(dice, dice.below(3) === 0 ? closedId(dice) : null),
    ),
  );
}
