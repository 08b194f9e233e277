import type { View, ViewCard } from './view.js';

/** A card that one view has and another has not, or has otherwise. */
export interface Change {
  readonly set: string;
  readonly subset: string;
  readonly before: ViewCard | null;
  readonly after: ViewCard | null;
}

/** What changes from one view to a later one of the same property. */
export interface Difference {
  readonly cards: readonly Change[];
  /** Titles of sets, subsets and parallels that are new. */
  readonly titles: readonly string[];
  /** Names, and forms of them, that may be told and could not before. */
  readonly names: readonly string[];
}

/** The difference of two views: cards by their place in the checklist, and new titles. */
export function difference(before: View, after: View): Difference {
  const earlier = placesOf(before);
  const later = placesOf(after);
  const keys = [...new Set([...later.keys(), ...earlier.keys()])];
  const cards = keys.flatMap((key): Change[] => {
    const was = earlier.get(key);
    const is = later.get(key);
    const place = is ?? was;
    if (!place || JSON.stringify(was?.card) === JSON.stringify(is?.card)) return [];
    const { set, subset } = place;
    return [{ set, subset, before: was?.card ?? null, after: is?.card ?? null }];
  });
  return {
    cards,
    titles: newIn(titlesOf(before), titlesOf(after)),
    names: newIn(namesOf(before), namesOf(after)),
  };
}

function newIn(before: readonly string[], after: readonly string[]): readonly string[] {
  const known = new Set(before);
  return after.filter((text) => !known.has(text));
}

function namesOf(view: View): string[] {
  return view.names.flatMap(({ name, aliases }) => [name, ...aliases]);
}

interface Placed {
  readonly set: string;
  readonly subset: string;
  readonly card: ViewCard;
}

/** Cards by set, subset, number and letter; those without a number by what they show. */
function placesOf(view: View): ReadonlyMap<string, Placed> {
  const places = new Map<string, Placed>();
  const times = new Map<string, number>();
  for (const set of view.sets) {
    for (const subset of set.subsets) {
      for (const card of subset.cards) {
        const own = card.number === null ? ['name', card.name] : [card.number, card.letter];
        const key = JSON.stringify([set.id, subset.id, ...own]);
        const again = times.get(key) ?? 0;
        times.set(key, again + 1);
        places.set(`${key} ${String(again)}`, { set: set.id, subset: subset.id, card });
      }
    }
  }
  return places;
}

function titlesOf(view: View): string[] {
  return view.sets.flatMap((set) => [
    set.title,
    ...set.subsets.map((subset) => `${set.title}: ${subset.title}`),
    ...set.parallels.map((parallel) => `${set.title}: ${parallel.title}`),
  ]);
}
