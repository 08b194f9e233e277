import { deckOf, shuffle, within, type Random } from './shuffle.js';
import { partAlike } from './part-alike.js';
import type { LineReport, ProductReport } from './report.js';

/** A card in a pack: which line of the product it is of, and which of the line's cards. */
export interface PackedCard {
  /** The index of the line in the product's report. */
  readonly line: number;
  /** The index among all cards of the line, group by group; -1 for a decoy. */
  readonly card: number;
}

export interface PackedProduct {
  /** Box by box, and these case by case. */
  readonly packs: readonly (readonly PackedCard[])[];
  /** Packs that hold a card twice, since it could not be helped. */
  readonly alike: number;
}

/** Packs with room left. */
interface Filling {
  readonly packs: PackedCard[][];
  readonly room: number[];
}

/**
 * Packs a whole product by chance: lines with an even number for each box or case are spread so, all
 * else comes anywhere, and no two alike stand in a pack where that is possible. The same numbers from
 * `random` give the same packs.
 * @throws RangeError for a product whose lines find no room.
 */
export function packAtRandom(product: ProductReport, random: Random): PackedProduct {
  if (product.left < 0) throw new RangeError('lines take more places than there are');
  const filling: Filling = {
    packs: Array.from({ length: product.packs }, () => []),
    room: Array.from({ length: product.packs }, () => product.cardsAPack),
  };
  const lines = product.lines.map((line, at) => ({ line, at, deck: deckOf(line, random) }));
  for (const { line, at, deck } of lines.toSorted(byNeed)) {
    const units = unitsOf(line, product);
    if (units !== null) placeEvenly(filling, line, at, deck, product.packs / units, random);
    else if (line.placesEach > 1) placeThick(filling, line, at, deck, random);
  }
  const free = shuffle(freeSlots(filling.room), random);
  let next = 0;
  for (const { line, at, deck } of lines) {
    if (unitsOf(line, product) !== null || line.placesEach > 1) continue;
    for (const card of deck) {
      filling.packs[free[next] ?? -1]?.push({ line: at, card });
      next += 1;
    }
  }
  const held = {
    sizes: product.lines.map(({ placesEach }) => placesEach),
    within: product.lines.map((line) => {
      const units = unitsOf(line, product);
      return units === null ? null : product.packs / units;
    }),
  };
  return { packs: filling.packs, alike: partAlike(filling.packs, held, random) };
}

/** Thick cards first, since they find room least easily; of those the ones that are spread evenly. */
function byNeed(a: { readonly line: LineReport }, b: { readonly line: LineReport }): number {
  const even = (line: LineReport): number => (line.even === null ? 1 : 0);
  return b.line.placesEach - a.line.placesEach || even(a.line) - even(b.line);
}

/** Among how many boxes or cases a line is spread; null if it comes anywhere. */
function unitsOf({ even }: LineReport, { boxes, cases }: ProductReport): number | null {
  return even === null ? null : even === 'box' ? boxes : cases;
}

/** Every box or case in turn, each time from the first one on, until the deck is dealt. */
function placeEvenly(
  filling: Filling,
  line: LineReport,
  at: number,
  deck: readonly number[],
  packs: number,
  random: Random,
): void {
  const units = filling.packs.length / packs;
  for (const [dealt, card] of deck.entries()) {
    const from = (dealt % units) * packs;
    const pack =
      withRoom(filling, line.placesEach, from, packs, random) ??
      withRoom(filling, line.placesEach, 0, filling.packs.length, random);
    place(filling, pack, line, { line: at, card });
  }
}

function placeThick(
  filling: Filling,
  line: LineReport,
  at: number,
  deck: readonly number[],
  random: Random,
): void {
  for (const card of deck) {
    const pack = withRoom(filling, line.placesEach, 0, filling.packs.length, random);
    place(filling, pack, line, { line: at, card });
  }
}

function place(filling: Filling, pack: number | null, line: LineReport, card: PackedCard): void {
  if (pack === null) throw new RangeError(`no pack has room for one more of ${line.title}`);
  filling.packs[pack]?.push(card);
  filling.room[pack] = (filling.room[pack] ?? 0) - line.placesEach;
}

/** So often a pack is drawn before all are looked at. */
const DRAWS = 40;

/** A pack by chance, of so many from `from` on, with room for so many places; null if none has. */
function withRoom(
  { room }: Filling,
  places: number,
  from: number,
  count: number,
  random: Random,
): number | null {
  const fits = (pack: number): boolean => (room[pack] ?? 0) >= places;
  for (let drawn = 0; drawn < DRAWS; drawn += 1) {
    const pack = from + within(count, random);
    if (fits(pack)) return pack;
  }
  const fitting: number[] = [];
  for (let pack = from; pack < from + count; pack += 1) if (fits(pack)) fitting.push(pack);
  return fitting.length === 0 ? null : (fitting[within(fitting.length, random)] ?? null);
}

/** Each pack as often as it has places free. */
function freeSlots(room: readonly number[]): number[] {
  const free: number[] = [];
  for (const [pack, places] of room.entries()) {
    for (let place = 0; place < places; place += 1) free.push(pack);
  }
  return free;
}
