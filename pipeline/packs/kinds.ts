import { add, multiply, whole, type Fraction } from './fraction.js';
import { oddsOf } from './odds.js';
import type { Kind } from './plan.js';
import type { CardsMade, KindReport } from './report.js';
import { pressSheets, type Subject } from './sheets.js';
import { copiesOfCards, shareOf, type Alike } from './sharing.js';
import type { Prepared, Tally } from './tally.js';

/** Each kind over all products, decoys and those that go nowhere not among them. */
export function reportKinds(prepared: Prepared, counted: Tally): readonly KindReport[] {
  const packs = counted.products.reduce((sum, { volume }) => sum + volume.packs, 0);
  return prepared.plan.kinds.flatMap((kind) => {
    if (kind.what === 'decoy') return [];
    const { share, complete, any } = shareOfKind(kind, prepared, counted);
    return any
      ? [reportKind(kind, kind.what, copiesOfCards(kind, share), { packs, complete })]
      : [];
  });
}

interface Shared {
  /** Copies of a card of weight 1. */
  readonly share: Fraction | null;
  readonly complete: boolean;
  /** Whether anything of it is packed, or can be. */
  readonly any: boolean;
}

function shareOfKind(kind: Kind, prepared: Prepared, counted: Tally): Shared {
  if (kind.base === true) {
    const { pool } = counted;
    const known = counted.products.reduce((sum, { left }) => sum + Math.max(left, 0), 0);
    return { share: shareOf(pool ?? known, prepared.base), complete: pool !== null, any: true };
  }
  const packed = counted.packed.get(kind.id);
  const sharing = prepared.sharings.get(kind.id);
  if (packed === undefined || sharing === undefined) {
    return { share: null, complete: true, any: false };
  }
  const known = counted.products.flatMap(({ lines }) =>
    lines.flatMap((line) => (line.kind.id === kind.id ? [line.copies] : [])),
  );
  const all = packed ?? known.reduce((sum, copies) => sum + copies, 0);
  return { share: shareOf(all, sharing), complete: packed !== null, any: true };
}

function reportKind(
  kind: Kind,
  what: 'subset' | 'parallel',
  alike: readonly Alike[],
  { packs, complete }: { readonly packs: number; readonly complete: boolean },
): KindReport {
  const { reserve = 0 } = kind;
  const cards = alike.map(({ cards: own, copies, filling }): CardsMade => {
    const made = add(copies, whole(reserve));
    const odds = packs === 0 ? NO_ODDS : oddsOf(copies, packs);
    return { kind: kind.id, cards: own.map(({ id }) => id), copies, filling, made, ...odds };
  });
  const packed = alike.reduce(
    (sum, { cards: own, copies }) => add(sum, multiply(copies, whole(own.length))),
    whole(0),
  );
  return {
    kind: kind.id,
    title: kind.title,
    what,
    base: kind.base === true,
    packed,
    reserve: reserve * kind.cards.length,
    complete,
    ...(packs === 0 ? NO_ODDS : oddsOf(packed, packs)),
    cards,
    sheets:
      kind.sheet === undefined || !complete ? null : pressSheets(kind.sheet, subjects(kind, alike)),
  };
}

const NO_ODDS = { packsForOne: null, aPack: whole(0), oneIn: null };

/** The cards to print, in the order of their kind. */
function subjects(kind: Kind, alike: readonly Alike[]): readonly Subject[] {
  const copies = new Map(
    alike.flatMap((group) => group.cards.map((card) => [card.id, group.copies] as const)),
  );
  return kind.cards.map(({ id, weight = 1 }) => ({
    id,
    weight,
    copies: add(copies.get(id) ?? whole(0), whole(kind.reserve ?? 0)),
  }));
}
