import type { Eye } from './held.js';
import type { Plain } from './plain.js';

/** Chance, repeatable from its seed. */
export interface Dice {
  /** A whole number from 0, below `limit`. */
  below(limit: number): number;
  chance(): boolean;
  /** One of the list; undefined if it is empty. */
  pick<T>(list: readonly T[]): T | undefined;
  /** A new text of one word or more. */
  words(): string;
}

/**
 * mulberry32: Tommy Ettinger's 32-bit generator, in the public domain. From memory.
 *
 * @param what whose dice they are, so that those of one kind of edit stay as they are when another
 *   kind joins the list
 */
export function diceOf(seed: number, what = ''): Dice {
  let state = (seed ^ hashOf(what)) >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const below = (limit: number): number => Math.floor(next() * limit);
  return {
    below,
    chance: () => below(2) === 0,
    pick: (list) => list[below(list.length)],
    words: () => Array.from({ length: 1 + below(3) }, () => `Word${below(10_000)}`).join(' '),
  };
}

/**
 * FNV-1a (Fowler, Noll and Vo) of 32 bits over UTF-16 units, scattered by the last steps of Austin
 * Appleby's MurmurHash3, both in the public domain. From memory.
 */
function hashOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at++) {
    hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  }
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
  return hash ^ (hash >>> 16);
}

/** Edits in an order given by chance; one more among them leaves the others as they stand. */
export function inSomeOrder(edits: readonly HiddenEdit[], seed: number): HiddenEdit[] {
  const place = new Map(edits.map((edit) => [edit, diceOf(seed, edit.name).below(2 ** 32)]));
  return [...edits].sort((a, b) => (place.get(a) ?? 0) - (place.get(b) ?? 0));
}

/** An edit that an audience must not be able to notice. */
export interface HiddenEdit {
  readonly name: string;
  /** From whom it is hidden: most edits from all, whatever they are cleared for. */
  readonly from: 'all' | 'public' | 'person';
  /** Changes a content in place; false if there is nothing to change. */
  readonly change: Change;
}

type Change = (draft: Plain, eye: Eye, dice: Dice) => boolean;

/** A copy that shares nothing with the first: a content is its own JSON. */
export function draftOf(plain: Plain): Plain {
  return JSON.parse(JSON.stringify(plain)) as Plain;
}

/** The content after an edit; null if the edit changes nothing there. */
export function edited(edit: HiddenEdit, plain: Plain, eye: Eye, dice: Dice): Plain | null {
  const draft = draftOf(plain);
  const changed = edit.change(draft, eye, dice);
  return changed && JSON.stringify(draft) !== JSON.stringify(plain) ? draft : null;
}

export function hidden(name: string, change: Change): HiddenEdit {
  return { name, from: 'all', change };
}

/** An edit that the public alone must not notice. */
export function hiddenFromPublic(name: string, change: Change): HiddenEdit {
  return { name, from: 'public', change };
}

/** An edit that has to do with what a person is sent. */
export function hiddenFromPerson(name: string, change: Change): HiddenEdit {
  return { name, from: 'person', change };
}

/** Applies a change to one of a list, chosen by chance; false if the list is empty. */
export function one<T>(
  dice: Dice,
  list: readonly T[],
  change: (chosen: T) => boolean | undefined,
): boolean {
  const chosen = dice.pick(list);
  return chosen !== undefined && change(chosen) !== false;
}

/** Puts a list into an order given by chance; false if there is nothing to order. */
export function shuffle(list: unknown[], dice: Dice): boolean {
  for (let index = list.length - 1; index > 0; index--) {
    const other = dice.below(index + 1);
    const [a, b] = [list[index], list[other]];
    [list[index], list[other]] = [b, a];
  }
  return list.length > 1;
}
