import type { CardSet } from '../../model/index.js';
import { compare, fraction, oddsToPublish, roundedOdds } from '../../packs/index.js';
import {
  copiesOf,
  figuresIn,
  isPackedDoubtful,
  knownPacks,
  packsIn,
  sureIn,
  unitsOf,
  type Figures,
} from './odds-figures.js';
import { kindsOf } from './odds-kinds.js';
import type { SaidOdds } from './odds-read.js';
import type { Packed } from '../packed/plan.js';

/** How said odds stand beside the truth; the first is best. */
export const STANDINGS = [
  'holds',
  /** Worse than the plan's odds and the truth, and a rounder number. */
  'rounder',
  /** Far worse than the truth, of which the plan says nothing. */
  'coarse',
  /** What they are compared with is in doubt already, and another rule says so. */
  'doubtful',
  /** The plan does not say what they could be compared with. */
  'open',
  /** The plan says other odds. */
  'unlike',
  /** Enough are packed for a promise, and nothing keeps it. */
  'chance',
  /** Better than the truth. */
  'better',
  /** Fewer are packed than are promised. */
  'short',
  /** None is packed. */
  'none',
] as const;
export type OddsStanding = (typeof STANDINGS)[number];

/** Said odds, and how they stand. */
export interface JudgedOdds {
  readonly stands: OddsStanding;
  /** What they were compared with; null where that is nothing. */
  readonly figures: Figures | null;
  /** The one product that holds none; null if none of several does. */
  readonly product: string | null;
  /** Whether one product alone can be meant. */
  readonly isSole: boolean;
}

const OPEN: JudgedOdds = { stands: 'open', figures: null, product: null, isSole: false };

/** Said odds beside what is packed: of every reading, in every product that can be meant, the best. */
export function judgeOdds(said: SaidOdds, set: CardSet, own: string | null): JudgedOdds {
  const packed = knownPacks(set);
  if (packed === null) return OPEN;
  const product = said.product ?? own;
  const products = (set.plan.value.products ?? []).filter(
    ({ id }) => product === null || id === product,
  );
  const judged = said.readings.flatMap((whats) => {
    const kinds = kindsOf(whats, set);
    if (kinds === null || isBeside(kinds, set, packed)) return [OPEN];
    return products.map(({ id, contents }) =>
      contents === undefined ? OPEN : judgeIn(said, { packed, id, kinds }),
    );
  });
  const [best = OPEN] = judged.toSorted(byStanding);
  const holding = judged.filter(({ figures }) => figures !== null);
  const isSole = new Set(holding.map(({ figures }) => figures?.product.id)).size === 1;
  const isWrong = STANDINGS.indexOf(best.stands) > STANDINGS.indexOf('open');
  const stands = isWrong && isPackedDoubtful(packed) ? 'doubtful' : best.stands;
  const holder = products.length === 1 || stands !== 'none' ? best.product : null;
  return { ...best, stands, isSole, product: holder };
}

function byStanding(a: JudgedOdds, b: JudgedOdds): number {
  return STANDINGS.indexOf(a.stands) - STANDINGS.indexOf(b.stands);
}

/** Whether some of it is no matter of lines: base cards are the rest, and toppers lie in the box. */
function isBeside(kinds: readonly string[], { plan }: CardSet, { plan: release }: Packed): boolean {
  const { subsets, parallels = [] } = plan.value;
  const found = new Map([...subsets, ...parallels].map((each) => [each.id, each.found]));
  const lines = new Set(release.entries.map(({ kind }) => kind));
  return kinds.some((id) => {
    if (lines.has(id)) return false;
    const isBase = release.kinds.some((kind) => kind.id === id && kind.base === true);
    return isBase || found.get(id) === 'box' || found.get(id) === 'event';
  });
}

interface In {
  readonly packed: Packed;
  readonly id: string;
  readonly kinds: readonly string[];
}

function judgeIn(said: SaidOdds, { packed, id, kinds }: In): JudgedOdds {
  const figures = figuresIn(packed, id, kinds);
  if (figures === null) return OPEN;
  if (figures.copies === 0) {
    return { stands: 'none', figures: null, product: figures.product.title, isSole: false };
  }
  const stands = isPromise(said) ? promiseStands(said, figures, packed) : rateStands(said, figures);
  return { stands, figures, product: figures.product.title, isSole: false };
}

/** Whether something is promised of each pack, box or case: "two autographs a box", not on average. */
export function isPromise({ rate, hedge }: SaidOdds): boolean {
  const isAverage = hedge === 'average' || hedge === 'about' || hedge === 'nearly';
  return rate.count === null && rate.per === 1 && !isAverage;
}

function promiseStands(said: SaidOdds, figures: Figures, packed: Packed): OddsStanding {
  const { rate, hedge } = said;
  if (hedge === 'most' || hedge === 'fewer') return 'open';
  const needed = hedge === 'more' ? said.count + 1 : said.count;
  const units = unitsOf(rate.unit, figures);
  if (sureIn(rate.unit, figures, packed) >= needed) return 'holds';
  if (figures.copies < needed * units) return 'short';
  return figures.product.collation === 'sequenced' ? 'holds' : 'chance';
}

function rateStands(said: SaidOdds, figures: Figures): OddsStanding {
  const { rate, count, hedge } = said;
  const packs = rate.per * packsIn(rate.unit, figures);
  const isBetter = compareWithTruth(said, figures) > 0;
  if (hedge === 'most' || hedge === 'fewer') {
    return isBetter || compareWithTruth(said, figures) === 0 ? 'holds' : 'coarse';
  }
  if ((hedge === 'about' || hedge === 'nearly') && isAbout(said, figures)) return 'holds';
  const isPlain = count === 1 && (rate.unit === 'pack' || rate.per > 1);
  const ofPlan = isPlain && rate.unit === 'pack' ? figures.said : null;
  if (ofPlan === packs) return figures.isSaidDoubtful ? 'doubtful' : 'holds';
  if (isBetter) return 'better';
  if (hedge === 'least' || hedge === 'more') return 'holds';
  if (ofPlan !== null) return isRounder(packs, ofPlan) ? 'rounder' : 'unlike';
  const odds = oddsToPublish(copiesOf(figures), figures.product.packs);
  // Of several kinds together it may be meant to be little: one of them may be held.
  const isAlone = isPlain && figures.lines.length === 1;
  return isAlone && odds !== null && packs > odds.coarse ? 'coarse' : 'holds';
}

/** Above 0 if more is said than the truth, exactly. */
function compareWithTruth({ rate, count }: SaidOdds, figures: Figures): number {
  const packs = rate.per * packsIn(rate.unit, figures);
  const said = fraction(BigInt(count), BigInt(packs));
  return compare(said, fraction(BigInt(figures.copies), BigInt(figures.product.packs)));
}

/** How far about is from right: a tenth of the packs for one. */
const ABOUT = 10n;

function isAbout({ rate, count }: SaidOdds, figures: Figures): boolean {
  const packs = BigInt(rate.per * packsIn(rate.unit, figures));
  const said = packs * BigInt(figures.copies);
  const real = BigInt(figures.product.packs) * BigInt(count);
  const apart = said > real ? said - real : real - said;
  return apart * ABOUT <= real;
}

/** Below ten no number is rounder than another. */
const FEWEST_ROUNDED = 10;

/** Whether odds are what other odds come to when they are rounded more. */
function isRounder(packs: number, than: number): boolean {
  if (packs < FEWEST_ROUNDED || packs < than) return false;
  return (['fine', 'round', 'coarse'] as const).some((step) => roundedOdds(than, step) === packs);
}
