import type { ListedNumber } from '../../../schema/index.js';
import { placeOf } from '../../model/index.js';
import { oddsToPublish } from '../../packs/index.js';
import { standingOf, toldOf, type OddsClaim } from './odds.js';
import { copiesOf, knownPacks, sureIn } from './odds-figures.js';
import { isPromise, type JudgedOdds, type OddsStanding } from './odds-judge.js';
import { sayKinds, sayOdds, spotOfOdds } from './odds-words.js';
import { ownerOf } from '../faults.js';
import type { Subject } from '../subject.js';

const STANDS: Readonly<Record<OddsStanding, 'holds' | 'wrong' | 'doubtful' | 'open'>> = {
  holds: 'holds',
  rounder: 'holds',
  coarse: 'holds',
  doubtful: 'doubtful',
  open: 'open',
  unlike: 'wrong',
  chance: 'wrong',
  better: 'wrong',
  short: 'wrong',
  none: 'wrong',
};

/** Said odds in the list of claims; null for odds that the plan has nothing to hold to. */
export function listedOdds(claim: OddsClaim, subject: Subject): ListedNumber | null {
  const judged = standingOf(claim);
  const tells = toldOf(claim, subject) !== null;
  if (judged.stands === 'open' && !tells) return null;
  const { text, said } = claim;
  const spot = spotOfOdds(claim);
  const to = placeOf(spot.source.text, spot.to);
  const owner = ownerOf(spot.source.file);
  return {
    set: text.told.owner.set ?? owner.set ?? null,
    card: text.told.owner.card ?? owner.card ?? null,
    file: spot.source.file,
    ...placeOf(spot.source.text, spot.from),
    endLine: to.line,
    endColumn: to.column,
    text: text.told.what,
    words: sayOdds(claim),
    number: said.number?.value ?? said.count,
    taken: 'claim',
    ...(said.hedge === null ? {} : { hedge: said.hedge }),
    stands: tells ? 'tells' : STANDS[judged.stands],
    real: realOf(claim, judged),
  };
}

/** The packs for one, or of a promise how many each is sure to hold. */
function realOf(
  { text, said }: OddsClaim,
  { figures }: JudgedOdds,
): NonNullable<ListedNumber['real']> {
  const [set] = text.sets;
  if (!set || !figures) return [];
  const { unit } = said.rate;
  const kinds = sayKinds(figures.kinds, set);
  const { title, packs } = figures.product;
  if (isPromise(said)) {
    const packed = knownPacks(set);
    const count = packed ? sureIn(unit, figures, packed) : 0;
    return [{ count, of: `${kinds}, sure in each ${unit} of \`${title}\`` }];
  }
  const oneIn = oddsToPublish(copiesOf(figures), packs)?.whole;
  const count = figures.said ?? oneIn;
  return count === undefined ? [] : [{ count, of: `packs of \`${title}\` for one of ${kinds}` }];
}
