import type { Finding, PacksProduct, PacksSet } from '../../../schema/index.js';
import {
  caseCounts,
  whatPublicTells,
  type CaseRange,
  type KindReport,
  type LineReport,
  type PackReport,
  type ProductReport,
  type PublishedOdds,
  type ReleasePlan,
  type StepTells,
} from '../../packs/index.js';
import { completions } from './completions.js';
import { exact } from './exact.js';
import { sheetsOf } from './sheet-figures.js';

/** A set and its packs, as the rules about packs see them. */
export interface PackedSource {
  readonly id: string;
  readonly title: string;
  readonly plan: ReleasePlan;
  readonly report: PackReport;
  /** All odds that the plan says. */
  readonly said: readonly PublishedOdds[];
  readonly findings: readonly Finding[];
}

/** Numbers of cases that are looked at: more than any set of cards is made in. */
const CASES: CaseRange = { from: 1, to: 1000 };

/** What a guess at the number of cases may be. */
const GUESSES: CaseRange = { from: 1, to: 100_000 };

/** Everything that is told of the packs of a set. */
export function packsSet(source: PackedSource): PacksSet {
  const { id, title, plan, report, said, findings } = source;
  const told = whatPublicTells(plan, report, said, GUESSES);
  return {
    id,
    title,
    products: report.products.map((product) =>
      productOf(product, said, told.get(product.id) ?? []),
    ),
    kinds: report.kinds.map((kind) => kindOf(kind, plan)),
    undecided: report.unset.map((product) => undecidedOf(plan, product)),
    findings: [...findings],
  };
}

function productOf(
  product: ProductReport,
  said: readonly PublishedOdds[],
  told: readonly StepTells[],
): PacksProduct {
  const { id, title, collation, cases, boxes, packs, places, taken, left, cards } = product;
  const odds = new Map(
    said.flatMap((each) => (each.product === id ? [[each.kind, each.packs] as const] : [])),
  );
  return {
    id,
    title,
    collation,
    pack: product.cardsAPack,
    box: product.packsABox,
    case: product.boxesACase,
    cases,
    boxes,
    packs,
    places,
    taken,
    left,
    cards,
    lines: product.lines.map((line) => lineOf(line, odds.get(line.kind ?? '') ?? null)),
    completion: product.left < 0 ? [] : completions(product),
    told: told.map(({ step, possible }) => ({ rounding: step, ...possible })),
  };
}

function lineOf(line: LineReport, stated: number | null): PacksProduct['lines'][number] {
  const { kind, title, what, copies, placesEach, places, aBox, aCase, packsForOne, oneIn } = line;
  return {
    of: what === 'decoy' ? null : kind,
    title,
    what,
    copies,
    placesEach,
    places,
    perBox: exact(aBox),
    perCase: exact(aCase),
    packsForOne: packsForOne && exact(packsForOne),
    oneIn,
    stated,
    cards: line.cards.map((group) => ({
      cards: group.cards.length,
      copies: exact(group.copies),
    })),
  };
}

function kindOf(kind: KindReport, plan: ReleasePlan): PacksSet['kinds'][number] {
  const { kind: of, title, base, packed, reserve, cards, sheets } = kind;
  const planned = plan.kinds.find(({ id }) => id === of);
  const labels = new Map(planned?.cards.map(({ id, label }) => [id, label]));
  return {
    of,
    title,
    base,
    packed: exact(packed),
    reserve,
    cards: cards.map((group) => ({
      cards: group.cards.length,
      only: group.cards.length === 1 ? (labels.get(group.cards[0] ?? '') ?? null) : null,
      made: exact(group.made),
    })),
    sheets: planned === undefined ? null : sheetsOf(sheets, planned),
  };
}

function undecidedOf(plan: ReleasePlan, id: string): PacksSet['undecided'][number] {
  const title = plan.products.find((product) => product.id === id)?.title ?? id;
  const counts = caseCounts(plan, id, CASES).map(({ cases, divides, left, base, eachBase }) => ({
    cases,
    divides,
    left,
    base,
    eachBase: eachBase && exact(eachBase),
  }));
  return { id, title, ...CASES, counts };
}
