import type { CardSet } from '../../model/index.js';
import { oddsToPublish, type Fraction } from '../../packs/index.js';
import { countLike } from '../../text/index.js';
import type { OddsClaim } from './odds.js';
import { copiesOf, packsIn, sureIn, knownPacks, unitsOf, type Figures } from './odds-figures.js';
import type { JudgedOdds } from './odds-judge.js';
import { sayKinds, sayOdds, spotOfOdds } from './odds-words.js';
import { maySoftly, sayDay } from './remarks.js';
import { grouped } from '../packed/expected.js';
import type { Remark } from '../rule.js';

/** What is said of odds in a text that are not what is packed; null if nothing is. */
export function oddsRemark(claim: OddsClaim, judged: JudgedOdds): Remark | null {
  const { text } = claim;
  const said = wrongOdds(claim, judged);
  if (said === null) return null;
  const sent = text.sales?.front.sent;
  const since = sent === undefined ? '' : `, and is a promise since ${sayDay(sent)}`;
  return {
    ...text.told.owner,
    spot: spotOfOdds(claim),
    message: `${text.told.what} ${said.message}${since}`,
    found: sayOdds(claim),
    expected: said.expected,
    ...(said.fix === undefined || sent !== undefined ? {} : fixTo(said.fix, claim, judged)),
    ...(said.isMild || maySoftly(claim) ? { severity: 'warning' } : {}),
  };
}

interface Wrong {
  readonly message: string;
  readonly expected: string;
  readonly isMild?: true;
  /** The packs that may be said. */
  readonly fix?: number;
}

function wrongOdds(claim: OddsClaim, { stands, figures, product }: JudgedOdds): Wrong | null {
  const [set] = claim.text.sets;
  if (!set) return null;
  if (stands === 'none') {
    return product === null
      ? { message: 'says odds of what is in no packs', expected: 'something that is packed' }
      : {
          message: `says odds of what \`${product}\` does not hold`,
          expected: 'something that is packed in it',
        };
  }
  if (!figures) return null;
  const packs = `\`${figures.product.title}\``;
  const kinds = sayKinds(figures.kinds, set);
  const truth = `${amountOf(figures.copies, 'copy', 'copies')} of ${kinds} in ${amountOf(figures.product.packs, 'pack', 'packs')}`;
  const odds = oddsToPublish(copiesOf(figures), figures.product.packs);
  switch (stands) {
    case 'better':
      return {
        message: `says better odds than the truth, which in ${packs} is ${truth}`,
        expected: `${atBest(claim, figures)} at best`,
        ...(isPlain(claim) && odds ? { fix: figures.said ?? odds.whole } : {}),
      };
    case 'unlike':
    case 'rounder': {
      const said = figures.said ?? 0;
      const rounds = stands === 'rounder';
      return {
        message: `${rounds ? 'rounds odds more than the plan does' : 'says other odds than the plan'}, of ${kinds} in ${packs}`,
        expected: `1:${grouped(said)} packs, as the plan says`,
        fix: said,
        ...(rounds ? { isMild: true } : {}),
      };
    }
    case 'coarse':
      return {
        message: `says far worse odds than the truth, which in ${packs} is ${truth}`,
        expected:
          odds && claim.said.rate.unit === 'pack'
            ? `1:${grouped(odds.whole)} packs, or 1:${grouped(odds.coarse)} in round numbers`
            : `${atBest(claim, figures)} at best`,
        isMild: true,
      };
    case 'short':
    case 'chance':
      return brokenPromise(claim, figures, set, stands);
    default:
      return null;
  }
}

function brokenPromise(
  { said }: OddsClaim,
  figures: Figures,
  set: CardSet,
  stands: 'short' | 'chance',
): Wrong {
  const { unit } = said.rate;
  const packed = knownPacks(set);
  const sure = packed ? sureIn(unit, figures, packed) : 0;
  const units = unitsOf(unit, figures);
  const held = `\`${figures.product.title}\` has ${grouped(figures.copies)} of ${sayKinds(figures.kinds, set)} in ${amountOf(units, unit, PLURALS[unit])}`;
  const asked = sure === 0 ? '' : `${grouped(sure)} a ${unit}, or `;
  return {
    message:
      stands === 'short'
        ? `promises more than is packed: ${held}`
        : `promises for each ${unit} what comes by chance: ${held}, and nothing says that each holds so many`,
    expected: `${asked}“on average”${stands === 'short' ? ' of what is packed' : ', or a guarantee in the plan'}`,
  };
}

const PLURALS = { pack: 'packs', box: 'boxes', case: 'cases' } as const;

function amountOf(count: number, one: string, many: string): string {
  return `${grouped(count)} ${count === 1 ? one : many}`;
}

function isPlain({ said: { rate, count } }: OddsClaim): boolean {
  return count === 1 && rate.unit === 'pack';
}

/** "1:4 packs", "one in 3 boxes", "14 2/5 a box on average". */
function atBest({ said: { rate } }: OddsClaim, figures: Figures): string {
  const copies = BigInt(figures.copies) * BigInt(packsIn(rate.unit, figures));
  const packs = BigInt(figures.product.packs);
  if (copies > packs) return `${mixed({ over: copies, under: packs })} a ${rate.unit} on average`;
  const per = (packs + copies - 1n) / copies;
  const said = rate.unit === 'pack' && figures.said !== null ? BigInt(figures.said) : per;
  const of = said > per ? said : per;
  return rate.unit === 'pack'
    ? `1:${grouped(Number(of))} packs`
    : `one in ${amountOf(Number(of), rate.unit, PLURALS[rate.unit])}`;
}

/** "4 2/7", "12". */
function mixed({ over, under }: Fraction): string {
  const rest = over % under;
  const whole = grouped(Number(over / under));
  if (rest === 0n) return whole;
  const shared = divisor(rest, under);
  return `${whole} ${String(rest / shared)}/${String(under / shared)}`;
}

function divisor(a: bigint, b: bigint): bigint {
  return b === 0n ? a : divisor(b, a % b);
}

/** The right number in the form of the wrong one, if one product alone is meant and it stands there. */
function fixTo(packs: number, { text, said }: OddsClaim, { isSole }: JudgedOdds): Partial<Remark> {
  const { number, rate } = said;
  if (!isSole || !number || number !== rate.number || number.kind !== 'count') return {};
  if (number.form === 'other' || packs === 1 || number.value === 1) return {};
  const spot = text.told.spotOf(number.from, number.to);
  const typed = text.told.text.slice(number.from, number.to);
  if (spot.source.text.slice(spot.from, spot.to) !== typed) return {};
  return { fix: countLike(typed, packs) };
}
