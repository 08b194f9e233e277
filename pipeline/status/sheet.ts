import type { CheckReport } from '../../schema/index.js';
import {
  cardsOf,
  isIssued,
  sayInstant,
  stepsUntil,
  type Card,
  type Instant,
} from '../model/index.js';
import type { Released } from '../select/index.js';

export type CardState = 'no copy' | 'draft' | 'handed in' | 'not issued';

export interface SubsetStatus {
  readonly set: string;
  readonly subset: string;
  readonly title: string;
  readonly states: Readonly<Record<CardState, number>>;
  readonly errors: number;
  readonly warnings: number;
}

export interface StatusSheet {
  readonly subsets: readonly SubsetStatus[];
  /** Lifts and street dates still to come. */
  readonly ahead: readonly Instant[];
}

/** The state of every subset, and which instants are still to come. */
export function statusSheet(released: Released, report: CheckReport, now: Instant): StatusSheet {
  const steps = stepsUntil(released.property, released.sets, Number.MAX_SAFE_INTEGER);
  return {
    ahead: steps.filter((step) => step > now),
    subsets: released.sets.flatMap((set) =>
      set.plan.value.subsets.map((subset): SubsetStatus => {
        const cards = cardsOf(set, subset.id);
        const noBio = subset.bio === 'none';
        const own = report.findings.filter(
          (finding) =>
            finding.set === set.id &&
            finding.card?.startsWith(`${subset.id}/`) === true &&
            finding.accepted === undefined,
        );
        return {
          set: set.id,
          subset: subset.id,
          title: subset.title,
          states: tally(cards.map((card) => stateOf(card, noBio))),
          errors: own.filter((finding) => finding.severity === 'error').length,
          warnings: own.filter((finding) => finding.severity === 'warning').length,
        };
      }),
    ),
  };
}

function stateOf(card: Card, noBio: boolean): CardState {
  if (!isIssued(card)) return 'not issued';
  const bare = noBio || card.front.bio === 'none';
  if (!bare && card.bio.length === 0) return 'no copy';
  return card.front.state === 'ready' ? 'handed in' : 'draft';
}

function tally(states: readonly CardState[]): Record<CardState, number> {
  const counts = { 'no copy': 0, draft: 0, 'handed in': 0, 'not issued': 0 };
  for (const state of states) counts[state] += 1;
  return counts;
}

/** The status sheet as text, for the team. */
export function statusText(sheet: StatusSheet, zone: string): string {
  const widest = Math.max(...sheet.subsets.map((subset) => subset.title.length), 6);
  const head = `${'Subset'.padEnd(widest)}  no copy  draft  handed in  not issued  errors  warnings`;
  const rows = sheet.subsets.map(({ title, states, errors, warnings }) => {
    const cells: readonly [number, number][] = [
      [states['no copy'], 7],
      [states.draft, 5],
      [states['handed in'], 9],
      [states['not issued'], 10],
      [errors, 6],
      [warnings, 8],
    ];
    return [title.padEnd(widest), ...cells.map(([n, width]) => String(n).padStart(width))].join(
      '  ',
    );
  });
  const ahead = sheet.ahead.map((step) => `  ${sayInstant(step, zone)}`);
  return `INTERNAL\n\n${[head, ...rows].join('\n')}\n\nStill to come:\n${ahead.join('\n')}\n`;
}
