import { fraction, type Fraction } from './fraction.js';
import type { Kind } from './plan.js';
import { problem, type Problem } from './problem.js';
import { copiesOfCards, shareOf, type Sharing } from './sharing.js';
import type { Line, Prepared, Tally, TalliedProduct } from './tally.js';
import { copiesOnAverage, copiesWords, counted as count, grouped } from './words.js';

/** Copies that come out in parts: of a line, among boxes, or among the cards of a kind. */
export function divideProblems(prepared: Prepared, counted: Tally): readonly Problem[] {
  return [
    ...counted.products.flatMap((each) =>
      each.lines.flatMap((line) => [...notWhole(line, each), ...notEven(line, each)]),
    ),
    ...prepared.plan.kinds.flatMap((kind) => {
      const packed = counted.packed.get(kind.id);
      const sharing = prepared.sharings.get(kind.id);
      if (packed === undefined || packed === null || sharing === undefined) return [];
      if (kind.what === 'decoy') return [];
      const name = { kind: kind.id, title: kind.title, problem: 'copies-not-even' } as const;
      return [...notShared(packed, sharing, name), ...variations(kind, packed, sharing)];
    }),
    ...baseProblems(prepared, counted.pool),
  ];
}

function baseProblems({ base, baseKinds }: Prepared, pool: number | null): readonly Problem[] {
  if (pool === null || pool === 0 || baseKinds.length === 0) return [];
  const name = { title: 'base cards', problem: 'base-not-even' } as const;
  return [
    ...notShared(pool, base, name),
    ...baseKinds.flatMap((kind) => variations(kind, pool, base)),
  ];
}

function notWhole(line: Line, { product, volume }: TalliedProduct): readonly Problem[] {
  const { exact, entry, at, kind } = line;
  if (exact.under === 1n) return [];
  const about = { product: product.id, kind: kind.id, list: 'entries', at } as const;
  if (entry.amount.by === 'odds') {
    const { packs } = entry.amount;
    return [
      problem(
        'odds-not-whole',
        about,
        `${product.title}: 1:${String(packs)} of ${count(volume.packs, 'pack')} is ${copiesOnAverage(exact)} of ${kind.title}, which is no whole number; ${nearest(volume.packs, packs)}.`,
        { oneIn: packs, packs: volume.packs },
      ),
    ];
  }
  return [
    problem(
      'run-not-split',
      about,
      `${product.title}: its part of the run of ${kind.title}, by packs, is ${copiesOnAverage(exact)}, which is no whole number; say how many go in it.`,
      { packs: volume.packs },
    ),
  ];
}

/** How far from the stated odds others are looked for. */
const FAR = 10_000;

/** The nearest odds that give whole copies. */
function nearest(packs: number, oneIn: number): string {
  const below = oddsThatDivide(packs, Math.min(oneIn - 1, packs), -1);
  const above = oddsThatDivide(packs, oneIn + 1, 1);
  const found = [below, above].filter((each) => each !== null);
  if (found.length === 0) return 'no odds near it are';
  return `${found.map((each) => `1:${String(each)}`).join(' and ')} would be`;
}

function oddsThatDivide(packs: number, from: number, step: 1 | -1): number | null {
  for (let oneIn = from, looked = 0; looked < FAR; oneIn += step, looked += 1) {
    if (oneIn < 1 || oneIn > packs) return null;
    if (packs % oneIn === 0) return oneIn;
  }
  return null;
}

function notEven({ entry, at, kind, copies }: Line, each: TalliedProduct): readonly Problem[] {
  const { even } = entry;
  if (even === undefined) return [];
  const { product, volume } = each;
  const units = even === 'box' ? volume.boxes : volume.cases;
  const rest = copies % units;
  if (rest === 0) return [];
  const many = even === 'box' ? 'boxes' : 'cases';
  return [
    problem(
      'boxes-not-even',
      { product: product.id, kind: kind.id, list: 'entries', at },
      `${product.title}: ${copiesWords(copies, kind.title)} do not divide among ${count(units, even, many)}: ${grouped(Math.floor(copies / units))} in each leave ${grouped(rest)} over.`,
      { copies, units, over: rest },
    ),
  ];
}

interface Name {
  readonly kind?: string;
  readonly title: string;
  readonly problem: 'copies-not-even' | 'base-not-even';
}

/** Copies that do not give each card a whole number. */
function notShared(copies: number, sharing: Sharing, name: Name): readonly Problem[] {
  const { weights, fixed, cards } = sharing;
  const about = name.kind === undefined ? {} : { kind: name.kind };
  if (fixed > copies || (weights === 0 && cards > 0 && fixed !== copies)) {
    return [
      problem(
        'fixed-over',
        about,
        `The cards of ${name.title} with copies of their own come to ${grouped(fixed)}, but ${grouped(copies)} are packed.`,
        { fixed, copies },
      ),
    ];
  }
  if (weights === 0) return [];
  const rest = (copies - fixed) % weights;
  if (rest === 0) return [];
  const each = Math.floor((copies - fixed) / weights);
  return [
    problem(
      name.problem,
      about,
      `${copiesWords(copies - fixed, name.title)} do not divide among ${amongWords(sharing)}: ${grouped(each)} of each leave ${grouped(rest)} over, and ${grouped(weights - rest)} more would divide.`,
      { copies: copies - fixed, among: weights, over: rest, missing: weights - rest },
    ),
  ];
}

function amongWords({ cards, weights }: Sharing): string {
  return weights === cards ? count(cards, 'card') : count(weights, 'share');
}

/** Parents of which nothing would be left. */
function variations(kind: Kind, copies: number, sharing: Sharing): readonly Problem[] {
  const share: Fraction = shareOf(copies, sharing) ?? fraction(0n, 1n);
  return copiesOfCards(kind, share)
    .filter((alike) => alike.copies.over < 0n && copies >= sharing.fixed)
    .flatMap((alike) =>
      alike.cards.map((card) =>
        problem(
          'variation-over',
          { kind: kind.id, card: card.id },
          `${kind.title}: the variations of ${card.label} take ${copiesOnAverage({ over: -alike.copies.over, under: alike.copies.under })} more than it has.`,
        ),
      ),
    );
}
