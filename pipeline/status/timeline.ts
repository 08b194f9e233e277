import { view, type View } from '../gate/index.js';
import { scheduleOf, stepsUntil, streetOf, type Instant } from '../model/index.js';
import type { Released } from '../select/index.js';
import { changesOf, type Changes } from './changes.js';

/** A step of time, what lifts at it, and what the public sees differently from it on. */
export interface TimelineStep extends Changes {
  readonly at: Instant;
  /** Labels of the levels and embargoes that lift. */
  readonly opens: readonly string[];
  /** Titles of the sets whose street date it is. */
  readonly inShops: readonly string[];
  /** All that the public sees of the checklist from then on, in cards. */
  readonly shown: number;
  readonly placeholders: number;
}

/** A stretch of time: instants after `from`, up to and with `to`. */
export interface Stretch {
  readonly from: Instant;
  readonly to: Instant;
}

/** All of time. */
export const ALWAYS: Stretch = { from: -Infinity, to: Number.MAX_SAFE_INTEGER };

/** What opens at each step of time: the exact difference of the public's views before and at it. */
export function timeline(released: Released, within: Stretch = ALWAYS): readonly TimelineStep[] {
  const { property, sets } = released;
  const { levels, embargoes } = scheduleOf(property);
  const steps = stepsUntil(property, sets, Math.min(within.to, ALWAYS.to));
  let before: View | null = null;
  return steps.flatMap((at): TimelineStep[] => {
    const after = publicAt(released, at);
    const changes = changesOf(before, after);
    before = after;
    if (at <= within.from) return [];
    return [
      {
        at,
        opens: [...levels, ...embargoes.values()]
          .filter(({ lift }) => lift === at)
          .map(({ label }) => label),
        inShops: sets
          .filter(({ plan }) => streetOf(plan.value) === at)
          .map(({ plan }) => plan.value.title),
        ...changes,
        shown: cardsIn(after, 'shown'),
        placeholders: cardsIn(after, 'placeholder'),
      },
    ];
  });
}

/** What the public sees otherwise at the end of a stretch than at its beginning. */
export function differenceIn(released: Released, { from, to }: Stretch): Changes {
  return changesOf(publicAt(released, from), publicAt(released, to));
}

function publicAt(released: Released, at: Instant): View | null {
  return view(released, { kind: 'public', at });
}

function cardsIn(seen: View | null, state: 'shown' | 'placeholder'): number {
  const cards = seen?.sets.flatMap((set) => set.subsets.flatMap((subset) => subset.cards)) ?? [];
  return cards.filter((card) => card.state === state).length;
}
