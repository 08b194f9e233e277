import type { CheckReport, StatusSheet, SubsetStatus, WriterStatus } from '../../schema/index.js';
import { cardsOf, type Card, type CardSet, type Instant } from '../model/index.js';
import type { Rehearsal } from '../release/index.js';
import type { Released } from '../select/index.js';
import { tallyFits, type Fit } from '../typeset/index.js';
import { openingsAhead } from './ahead.js';
import { StateOfCards, tallied, type Reviewed } from './card-states.js';
import { datesOf, dayOf, waitingOf } from './deadlines.js';

type Subset = CardSet['plan']['value']['subsets'][number];

/** What a status sheet is made of. */
export interface StatusGround {
  readonly released: Released;
  readonly report: CheckReport;
  /** How each bio that is set fits its zone. */
  readonly fits: ReadonlyMap<Card, Fit>;
  /** The last rehearsal of the releases to come. */
  readonly rehearsal: Rehearsal | null;
  /** Null where the property asks nobody to approve. */
  readonly reviewed: Reviewed | null;
  readonly now: Instant;
}

/** Cards that are asked for one by one; both narrow the list. */
export interface StatusQuestion {
  /** Cards with copy that were not read against the current cut. */
  readonly cut: boolean;
  /** Cards of this writer, by id. */
  readonly writer: string | null;
}

/** The state of every subset, who has what, and what opens at the instants to come. */
export function statusSheet(
  ground: StatusGround,
  question: StatusQuestion | null = null,
): StatusSheet {
  const { released, report, fits, reviewed, now } = ground;
  const { property } = released;
  const states = new StateOfCards(released, fits, reviewed, now);
  const today = dayOf(now, property.zone);
  return {
    sets: released.sets.map((set) => {
      const { title, stage, subsets } = set.plan.value;
      return {
        set: set.id,
        title,
        stage,
        dates: [...datesOf(set, property, today)],
        subsets: subsets.map((subset) => statusOf(set, subset, report, states)),
      };
    }),
    ahead: openingsAhead(ground),
    waiting: waitingOf(states.pending, released, today),
    writers: reviewed ? writersOf(states) : [],
    asked: question ? answer(question, states) : null,
  };
}

/** Whoever writes cards, in the order of people.yaml. */
function writersOf(states: StateOfCards): WriterStatus[] {
  const { people, sets } = states.released;
  return people.flatMap(({ id, name }) => {
    const own = sets.flatMap((set) =>
      set.cards.filter(({ front }) => front.writer === id).map((card) => states.of(set, card)),
    );
    return own.length === 0 ? [] : [{ person: id, name, states: tallied(own) }];
  });
}

function answer(
  { cut, writer }: StatusQuestion,
  states: StateOfCards,
): NonNullable<StatusSheet['asked']> {
  const current = states.released.property.cuts?.at(-1)?.id ?? null;
  const cards = states.released.sets.flatMap((set) =>
    set.cards
      .filter(({ front }) => writer === null || front.writer === writer)
      .map((card) => states.status(set, card))
      .filter(({ state, checkedAgainst }) => {
        const hasCopy = state !== 'not issued' && state !== 'no copy';
        return !cut || (hasCopy && current !== null && checkedAgainst !== current);
      }),
  );
  return { cut: cut ? current : null, writer, cards };
}

function statusOf(
  set: CardSet,
  subset: Subset,
  report: CheckReport,
  states: StateOfCards,
): SubsetStatus {
  const cards = cardsOf(set, subset.id);
  const own = report.findings.filter(
    (finding) =>
      finding.set === set.id &&
      finding.card?.startsWith(`${subset.id}/`) === true &&
      finding.accepted === undefined,
  );
  const bios = cards.flatMap((card) => states.fits.get(card) ?? []);
  return {
    subset: subset.id,
    title: subset.title,
    states: states.tally(set, subset.id),
    errors: own.filter((finding) => finding.severity === 'error').length,
    warnings: own.filter((finding) => finding.severity === 'warning').length,
    bios: bios.length > 0 ? tallyFits(bios) : null,
  };
}
