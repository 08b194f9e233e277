import type { PlanFile, PropertyFile, Subset } from '../../schema/index.js';
import {
  scheduleOf,
  subsetOf,
  type Card,
  type CardSet,
  type Content,
  type Hold,
  type SalesText,
  type Schedule,
} from '../model/index.js';
import { NOTHING_APPROVED, type Approvals } from '../review/index.js';
import type { Dictionaries } from '../text/index.js';
import type { FontShelf } from '../typeset/index.js';
import { faultsOf, ownerOf } from './faults.js';
import { knownHold } from './known-hold.js';
import { doubtfulOpenings } from './level-disorder.js';
import { numberingOf, type Numbering } from './numbering.js';
import type { Remark } from './rule.js';
import { storylineOf, type Storyline } from './storyline.js';

/** A subset with its cards, and what several rules ask of them, worked out once. */
export interface SubsetView {
  readonly set: CardSet;
  readonly plan: Subset;
  /** Its position in the plan. */
  readonly at: number;
  readonly cards: readonly Card[];
  readonly numbering: Numbering;
  /** Null for a subset that follows no story. */
  readonly storyline: Storyline | null;
}

/** What a rule looks at: content whose property.yaml could be read, and what follows from it. */
export interface Subject {
  readonly content: Content;
  readonly property: PropertyFile;
  readonly schedule: Schedule;
  readonly sets: readonly CardSet[];
  /** The subsets of all plans; of two with one id, the first. */
  readonly subsets: readonly SubsetView[];
  readonly cards: readonly Card[];
  readonly sales: readonly SalesText[];
  /** What each card is held by, with what its subset and set add; none for one that names a level wrongly. */
  readonly holds: ReadonlyMap<Card, Hold>;
  /** Levels and embargoes whose instants cannot be believed. */
  readonly doubtful: ReadonlySet<string>;
  /** The fonts of each layout, opened. */
  readonly fonts: FontShelf;
  readonly dictionaries: Dictionaries;
  /** What is approved; nothing, if it is not said. */
  readonly approvals: Approvals;
  /** Of a subject that shows one card alone, the subject that the card stands in. */
  readonly whole?: Subject;
}

/** The subject with all cards: what is gathered from every card is gathered from it. */
export function wholeOf(subject: Subject): Subject {
  return subject.whole ?? subject;
}

/** What a subject is made of besides the content. */
export interface Beside {
  readonly fonts: FontShelf;
  readonly dictionaries: Dictionaries;
  /** What is approved; nothing, if it is not said. */
  readonly approvals?: Approvals;
}

/** Null without a readable property.yaml: then only what reading found can be told. */
export function subjectOf(
  content: Content,
  { fonts, dictionaries, approvals = NOTHING_APPROVED }: Beside,
): Subject | null {
  if (!content.property) return null;
  const property = content.property.value;
  const schedule = keptSchedule(property);
  const cards = content.sets.flatMap((set) => set.cards);
  const misplaced = new Set(faultsOf(content, 'misplaced-card').map(setOf));
  return {
    content,
    property,
    schedule,
    sets: content.sets,
    subsets: content.sets.flatMap((set) => subsetsOf(set, property, misplaced.has(set.id))),
    cards,
    sales: content.sets.flatMap((set) => set.sales),
    holds: holdsOf(content.sets, schedule),
    doubtful: doubtfulOpenings(property),
    fonts,
    dictionaries,
    approvals,
  };
}

function setOf({ spot }: Remark): string | undefined {
  return ownerOf(spot.source.file).set;
}

function subsetsOf(set: CardSet, property: PropertyFile, misplaced: boolean): SubsetView[] {
  const folders = new Map<string, Card[]>();
  const bearers = new Map<string, number>();
  for (const card of set.cards) {
    const folder = folders.get(card.subset);
    if (folder) folder.push(card);
    else folders.set(card.subset, [card]);
    bearers.set(card.front.number, (bearers.get(card.front.number) ?? 0) + 1);
  }
  return set.plan.value.subsets.flatMap((plan, at, all) => {
    if (all.findIndex((other) => other.id === plan.id) < at) return [];
    const cards = folders.get(plan.id) ?? [];
    const numbering = numberingOf(set, plan, cards, bearers, misplaced);
    const storyline = storylineOf(plan, cards, numbering, property.beats ?? []);
    return [{ set, plan, at, cards, numbering, storyline }];
  });
}

function holdsOf(sets: readonly CardSet[], schedule: Schedule): ReadonlyMap<Card, Hold> {
  const holds = new Map<Card, Hold>();
  for (const set of sets) {
    for (const card of set.cards) {
      const hold = holdOf(card, set.plan.value, schedule);
      if (hold) holds.set(card, hold);
    }
  }
  return holds;
}

/** What a card is held by, and by which plan and schedule. */
interface CardHold {
  readonly plan: PlanFile;
  readonly schedule: Schedule;
  readonly hold: Hold | null;
}

const cardHolds = new WeakMap<Card, CardHold>();

function holdOf(card: Card, plan: PlanFile, schedule: Schedule): Hold | null {
  const before = cardHolds.get(card);
  if (before?.plan === plan && before.schedule === schedule) return before.hold;
  const hold = knownHold(schedule, plan, subsetOf(plan, card.subset) ?? {}, card.front);
  cardHolds.set(card, { plan, schedule, hold });
  return hold;
}

const schedules = new WeakMap<PropertyFile, Schedule>();

/** The same value for the same property, so that it may be a key. */
function keptSchedule(property: PropertyFile): Schedule {
  const schedule = schedules.get(property) ?? scheduleOf(property);
  schedules.set(property, schedule);
  return schedule;
}
