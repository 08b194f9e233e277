import type { CheckReport, StatusSheet, SubsetStatus } from '../../schema/index.js';
import { cardsOf, isIssued, type Card, type CardSet, type Instant } from '../model/index.js';
import type { Rehearsal } from '../release/index.js';
import type { Released } from '../select/index.js';
import { tallyFits, type Fit } from '../typeset/index.js';
import { openingsAhead } from './ahead.js';

type Subset = CardSet['plan']['value']['subsets'][number];
type States = SubsetStatus['states'];

/**
 * The state of every subset, and what opens at the instants to come.
 * @param fits how each bio that is set fits its zone.
 * @param rehearsal the last rehearsal of the releases to come.
 */
export function statusSheet(
  released: Released,
  report: CheckReport,
  fits: ReadonlyMap<Card, Fit>,
  rehearsal: Rehearsal | null,
  now: Instant,
): StatusSheet {
  return {
    sets: released.sets.map((set) => {
      const { title, stage, subsets } = set.plan.value;
      return {
        set: set.id,
        title,
        stage,
        subsets: subsets.map((subset) => statusOf(set, subset, report, fits)),
      };
    }),
    ahead: openingsAhead(released, rehearsal, now),
  };
}

function statusOf(
  set: CardSet,
  subset: Subset,
  report: CheckReport,
  fits: ReadonlyMap<Card, Fit>,
): SubsetStatus {
  const cards = cardsOf(set, subset.id);
  const noBio = subset.bio === 'none';
  const own = report.findings.filter(
    (finding) =>
      finding.set === set.id &&
      finding.card?.startsWith(`${subset.id}/`) === true &&
      finding.accepted === undefined,
  );
  const bios = cards.flatMap((card) => fits.get(card) ?? []);
  return {
    subset: subset.id,
    title: subset.title,
    states: tally(cards.map((card) => stateOf(card, noBio))),
    errors: own.filter((finding) => finding.severity === 'error').length,
    warnings: own.filter((finding) => finding.severity === 'warning').length,
    bios: bios.length > 0 ? tallyFits(bios) : null,
  };
}

function stateOf(card: Card, noBio: boolean): keyof States {
  if (!isIssued(card)) return 'not issued';
  const bare = noBio || card.front.bio === 'none';
  if (!bare && card.bio.length === 0) return 'no copy';
  return card.front.state === 'ready' ? 'handed in' : 'draft';
}

function tally(states: readonly (keyof States)[]): States {
  const counts = { 'no copy': 0, draft: 0, 'handed in': 0, 'not issued': 0 };
  for (const state of states) counts[state] += 1;
  return counts;
}
