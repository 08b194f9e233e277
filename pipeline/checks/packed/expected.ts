import type { Kind, PlannedCard, Problem } from '../../packs/index.js';
import { amount } from '../amount.js';
import type { Packed } from './plan.js';

/** How a problem is told as a finding. */
export interface Expectation {
  readonly message: string;
  readonly expected: string | null;
  /** What to write at its spot, where nobody would write anything else. */
  readonly fix: string | null;
}

/** The message of a problem, what was expected in its place, and the fix if there is just one. */
export function packedExpectation(problem: Problem, packed: Packed): Expectation {
  const rest = ofRest(problem, packed);
  if (rest !== null) return { ...rest, fix: null };
  const message = asRemark(problem.message, packed);
  return { message, expected: expectedOf(problem), fix: fixOf(problem) };
}

/** A sentence as a remark: without its stop, and not opening with a capital. */
function asRemark(sentence: string, { plan }: Packed): string {
  const words = sentence.replace(/\.$/, '');
  const title = [...plan.products, ...plan.kinds]
    .map((named) => named.title)
    .filter((each) => words.startsWith(each))
    .reduce((longest, each) => (each.length > longest.length ? each : longest), '');
  if (title !== '') return `\`${title}\`${words.slice(title.length)}`;
  return `${words.slice(0, 1).toLowerCase()}${words.slice(1)}`;
}

/** Base cards are what is left, so their message says how much that is. */
function ofRest(
  { kind, about, figures }: Problem,
  packed: Packed,
): Omit<Expectation, 'fix'> | null {
  const bases = packed.plan.kinds.filter((each) => each.base === true);
  const own = bases.find(({ id }) => id === about.kind);
  const { stated = 0 } = figures;
  if (kind !== 'stated-not-made' || own === undefined || about.card !== undefined) return null;
  if (!bases.every((each) => isLike(each, own))) return null;
  const cards = bases.flatMap((each) => each.cards.filter(isParent)).length;
  const { base } = packed.report.totals;
  const packedEach = stated - (own.reserve ?? 0);
  const asked = packedEach * cards;
  const apart =
    base > asked ? `${grouped(base - asked)} too many` : `${grouped(asked - base)} too few`;
  const each = Math.floor(base / cards) + (own.reserve ?? 0);
  const over = base % cards;
  return {
    message: `the packs leave ${grouped(base)} places for base cards, but ${grouped(packedEach)} of each of ${amount(cards, 'card')} are ${grouped(asked)}: ${apart}`,
    expected: over === 0 ? grouped(each) : `${grouped(each)}, and ${grouped(over)} left over`,
  };
}

/** Whether as many of each card are stated and kept, and no card has copies of its own. */
function isLike(kind: Kind, { stated, reserve }: Kind): boolean {
  return (
    kind.stated === stated &&
    kind.reserve === reserve &&
    kind.cards.every((card) => card.copies === undefined || !isParent(card))
  );
}

function isParent({ variationOf }: PlannedCard): boolean {
  return variationOf === undefined;
}

function expectedOf({ kind, figures }: Problem): string | null {
  const figure = (name: string): string => grouped(figures[name] ?? 0);
  switch (kind) {
    case 'places-over':
      return `at most ${figure('left')} places`;
    case 'too-thick':
      return `at most ${figure('cardsAPack')} places`;
    case 'packs-too-few':
      return `at most ${figure('room')} thick cards`;
    case 'places-empty':
      return 'lines that fill every place, or a subset of the group `base`';
    case 'no-base-left':
      return 'room for base cards, or none in the plan';
    case 'alike-in-pack':
      return 'at most one of each card a pack';
    case 'cases-unset':
      return 'a number of cases';
    case 'copies-not-even':
    case 'base-not-even':
      return `${figure('over')} fewer or ${figure('missing')} more`;
    case 'boxes-not-even':
      return `a multiple of ${figure('units')}`;
    case 'run-unpacked':
    case 'run-exceeded':
      return `${figure('promised')} packed and kept`;
    case 'guarantee-short':
      return `at least ${figure('needed')} packed`;
    case 'odds-better':
    case 'odds-coarse':
      return figure('oneIn');
    default:
      return EXPECTED[kind] ?? null;
  }
}

const EXPECTED: Partial<Record<Problem['kind'], string>> = {
  'id-twice': 'an id of its own',
  'entered-twice': 'one line for each product',
  'no-cards': 'a subset or parallel of which cards are issued',
  'odds-not-whole': 'odds that divide the packs, or copies',
  'run-not-split': '`copies` or `each`',
  'run-missing': '`run` on what is packed by its run',
  'run-by-weight': 'no `run` on a card of it',
  'reserve-over-run': 'less than the run',
  'reserve-high': 'at most 5 %',
  'stated-not-made': 'what is packed and kept',
  'variation-over': 'fewer copies of the variation',
  'fixed-over': 'as many as its cards say',
  'guarantee-by-hand': 'an even number for each box or case',
  'odds-of-none': 'no odds, since none is packed',
  'redemption-not-packed': 'something that is in packs',
  'redemption-card': 'cards that are issued',
  'redemption-ships': '`ships`: a day, or unset',
  'redemption-unset': 'a day',
  'redemption-expires': '`redeemBy`: a day, or never',
  'redemption-order': 'a day after the card is sent',
};

function fixOf({ kind, figures: { oneIn } }: Problem): string | null {
  return (kind === 'odds-better' || kind === 'odds-coarse') && oneIn !== undefined
    ? String(oneIn)
    : null;
}

/** "12,500". */
export function grouped(count: number): string {
  return String(count).replace(/\B(?=(?:\d{3})+$)/g, ',');
}
