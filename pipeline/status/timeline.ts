import { view, type View } from '../gate/index.js';
import { difference } from '../gate/index.js';
import { sayInstant, stepsUntil, type Instant } from '../model/index.js';
import type { Released } from '../select/index.js';

/** A step of time and what the public sees differently from it on. */
export interface TimelineStep {
  readonly at: Instant;
  readonly cards: readonly {
    readonly set: string;
    readonly number: string | null;
    readonly name: string;
    readonly change: 'listed' | 'revealed' | 'more shown';
  }[];
  readonly titles: readonly string[];
}

/** What opens at each step of time: the exact difference of the public's views before and at it. */
export function timeline(released: Released): readonly TimelineStep[] {
  const steps = stepsUntil(released.property, released.sets, Number.MAX_SAFE_INTEGER);
  return steps.map((at, index) => {
    const before = index === 0 ? null : publicAt(released, steps[index - 1] ?? at);
    const after = publicAt(released, at);
    return { at, ...changes(before, after) };
  });
}

function publicAt(released: Released, at: Instant): View | null {
  return view(released, { kind: 'public', at });
}

function changes(before: View | null, after: View | null): Omit<TimelineStep, 'at'> {
  if (!after) return { cards: [], titles: [] };
  const empty: View = { ...after, sets: [] };
  const { cards, titles } = difference(before ?? empty, after);
  return {
    titles,
    cards: cards.flatMap(({ set, before: was, after: is }) => {
      if (!is) return [];
      const fresh = was === null && is.state === 'placeholder';
      const opened = is.state !== 'placeholder' && was?.state !== is.state;
      const change = fresh ? 'listed' : opened ? 'revealed' : 'more shown';
      return [{ set, number: is.number, name: is.name, change } as const];
    }),
  };
}

/** The timeline as text, for the team. */
export function timelineText(steps: readonly TimelineStep[], zone: string): string {
  const blocks = steps.map((step) => {
    const lines = step.cards.map(
      (card) =>
        `  ${card.change.padEnd(10)}  ${(card.number ?? '–').padEnd(6)} ${card.name} (${card.set})`,
    );
    const nothing = lines.length === 0 ? ['  nothing changes on the site'] : [];
    return [sayInstant(step.at, zone), ...nothing, ...lines].join('\n');
  });
  return `INTERNAL\n\n${blocks.join('\n\n')}\n`;
}
