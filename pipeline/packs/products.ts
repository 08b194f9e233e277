import { fraction, multiply, whole, type Fraction } from './fraction.js';
import { oddsOf } from './odds.js';
import type { Kind } from './plan.js';
import type { CardsReport, LineReport, ProductReport } from './report.js';
import { copiesOfCards, shareOf } from './sharing.js';
import { takesBase, type Line, type Prepared, type Tally, type TalliedProduct } from './tally.js';
import type { Volume } from './volume.js';

/** A product as it is packed. */
export function reportProduct(
  { product, volume, lines, taken, left }: TalliedProduct,
  prepared: Prepared,
  counted: Tally,
): ProductReport {
  const base = takesBase(product) ? Math.max(left, 0) : 0;
  const own = lines.map((line) => reportLine(line, volume, prepared, counted));
  const ofBase = base > 0 ? [reportBase(base, volume, prepared, counted)] : [];
  const { id, title, collation, cardsAPack, packsABox, boxesACase } = product;
  const packed = lines.reduce(
    (sum, { kind, copies }) => sum + (kind.what === 'decoy' ? 0 : copies),
    0,
  );
  return {
    id,
    title,
    collation,
    cardsAPack,
    packsABox,
    boxesACase,
    ...volume,
    taken,
    left,
    base,
    cards: packed + base,
    lines: [...own, ...ofBase],
  };
}

function reportLine(
  { entry, kind, copies, places }: Line,
  volume: Volume,
  { sharings }: Prepared,
  { packed }: Tally,
): LineReport {
  const all = packed.get(kind.id) ?? copies;
  const sharing = sharings.get(kind.id);
  const share = sharing === undefined ? null : shareOf(all, sharing);
  return {
    kind: kind.id,
    title: kind.title,
    what: kind.what,
    ...averages(copies, volume),
    placesEach: kind.places ?? 1,
    places,
    amount: entry.amount,
    even: entry.even ?? evenBy(entry.amount.by),
    cards: cardsIn(kind, share, fraction(BigInt(copies), BigInt(Math.max(all, 1))), volume),
  };
}

/** An amount for each box or case is the same for each. */
function evenBy(by: string): 'box' | 'case' | null {
  return by === 'box' || by === 'case' ? by : null;
}

function reportBase(
  copies: number,
  volume: Volume,
  { base, baseKinds }: Prepared,
  { pool }: Tally,
): LineReport {
  const all = pool ?? copies;
  const share = shareOf(all, base);
  const part = fraction(BigInt(copies), BigInt(all));
  return {
    kind: null,
    title: 'Base cards',
    what: 'base',
    ...averages(copies, volume),
    placesEach: 1,
    places: copies,
    amount: null,
    even: null,
    cards: baseKinds.flatMap((kind) => cardsIn(kind, share, part, volume)),
  };
}

function averages(
  copies: number,
  { packs, boxes, cases }: Volume,
): Pick<LineReport, 'copies' | 'aBox' | 'aCase' | 'packsForOne' | 'aPack' | 'oneIn'> {
  return {
    copies,
    aBox: fraction(BigInt(copies), BigInt(boxes)),
    aCase: fraction(BigInt(copies), BigInt(cases)),
    ...oddsOf(whole(copies), packs),
  };
}

/** The cards of a kind in one product, which holds this part of all copies. */
function cardsIn(
  kind: Kind,
  share: Fraction | null,
  part: Fraction,
  { packs }: Volume,
): readonly CardsReport[] {
  return copiesOfCards(kind, share).map(({ cards, copies, filling }) => {
    const here = multiply(copies, part);
    return {
      kind: kind.id,
      cards: cards.map(({ id }) => id),
      copies: here,
      filling: multiply(filling, part),
      ...oddsOf(here, packs),
    };
  });
}
