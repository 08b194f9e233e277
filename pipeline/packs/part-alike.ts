import { within, type Random } from './shuffle.js';
import type { PackedCard } from './simulate.js';

/** So often another pack is drawn to swap with. */
const DRAWS = 200;

/** Where a card stands. */
interface Spot {
  readonly pack: number;
  readonly at: number;
}

/** What must stay as it is when cards change places. */
export interface Held {
  /** Places that a card of each line takes. */
  readonly sizes: readonly number[];
  /** Packs of a box or case, within which cards of a line stay; null where they may go anywhere. */
  readonly within: readonly (number | null)[];
}

/**
 * Swaps cards between packs until no pack holds two alike, decoys aside: with cards of the same line,
 * or, where that does not help, with others that take as many places.
 * @returns how many packs still do.
 */
export function partAlike(packs: PackedCard[][], held: Held, random: Random): number {
  const spots = spotsByLine(packs);
  const hopeless = new Set<number>();
  for (const [pack, cards] of packs.entries()) {
    for (const [at, card] of cards.entries()) {
      if (card.card < 0 || !standsBefore(cards, at, card)) continue;
      const own = spots.get(card.line) ?? [];
      const spot = { pack, at };
      const sameLine = (): Spot | undefined => own[within(own.length, random)];
      const sameSize = (): Spot => anySpot(packs, pack, held.within[card.line] ?? null, random);
      const fits = (other: PackedCard, there: number): boolean =>
        mayStand(held, card, other, { here: pack, there });
      if (
        swap(packs, spot, card, repeated(sameLine), (other) => other.line === card.line) ||
        swap(packs, spot, card, repeated(sameSize), fits) ||
        hopeless.has(card.line)
      ) {
        continue;
      }
      if (!swap(packs, spot, card, everySpot(packs), fits)) hopeless.add(card.line);
    }
  }
  return hopeless.size === 0 ? 0 : packs.filter(hasAlike).length;
}

/** So many draws. */
function* repeated(draw: () => Spot | undefined): Generator<Spot | undefined> {
  for (let drawn = 0; drawn < DRAWS; drawn += 1) yield draw();
}

/** All cards in turn: what draws may have missed. A line for which it finds none is not looked at so again. */
function* everySpot(packs: readonly (readonly PackedCard[])[]): Generator<Spot> {
  for (const [pack, cards] of packs.entries()) {
    for (const at of cards.keys()) yield { pack, at };
  }
}

/** Any card of any pack, or of the packs of the same box or case. */
function anySpot(
  packs: readonly (readonly PackedCard[])[],
  pack: number,
  count: number | null,
  random: Random,
): Spot {
  const from = count === null ? 0 : Math.floor(pack / count) * count;
  const other = from + within(count ?? packs.length, random);
  return { pack: other, at: within(packs[other]?.length ?? 1, random) };
}

/** Whether another card may come here for one that goes there: it fits, and leaves no box or case. */
function mayStand(
  { sizes, within: units }: Held,
  card: PackedCard,
  other: PackedCard,
  { here, there }: { readonly here: number; readonly there: number },
): boolean {
  if (sizes[card.line] !== sizes[other.line]) return false;
  return [card, other].every(({ line }) => {
    const count = units[line] ?? null;
    return count === null || Math.floor(here / count) === Math.floor(there / count);
  });
}

function spotsByLine(packs: readonly (readonly PackedCard[])[]): ReadonlyMap<number, Spot[]> {
  const spots = new Map<number, Spot[]>();
  for (const [pack, cards] of packs.entries()) {
    for (const [at, { line }] of cards.entries()) {
      const own = spots.get(line);
      if (own === undefined) spots.set(line, [{ pack, at }]);
      else own.push({ pack, at });
    }
  }
  return spots;
}

/** Swaps a card for one that a draw finds and that leaves both packs without two alike. */
function swap(
  packs: PackedCard[][],
  { pack, at }: Spot,
  card: PackedCard,
  spots: Iterable<Spot | undefined>,
  fits: (other: PackedCard, pack: number) => boolean,
): boolean {
  const here = packs[pack] ?? [];
  for (const spot of spots) {
    const there = spot === undefined ? undefined : packs[spot.pack];
    const other = spot === undefined ? undefined : there?.[spot.at];
    if (spot === undefined || there === undefined || other === undefined) continue;
    if (spot.pack === pack || !fits(other, spot.pack)) continue;
    if (holds(here, other) || holds(there, card)) continue;
    here[at] = other;
    there[spot.at] = card;
    return true;
  }
  return false;
}

function holds(cards: readonly PackedCard[], { line, card }: PackedCard): boolean {
  return cards.some((each) => each.line === line && each.card === card);
}

function standsBefore(cards: readonly PackedCard[], at: number, card: PackedCard): boolean {
  return holds(cards.slice(0, at), card);
}

function hasAlike(cards: readonly PackedCard[]): boolean {
  return cards.some((card, at) => card.card >= 0 && standsBefore(cards, at, card));
}
