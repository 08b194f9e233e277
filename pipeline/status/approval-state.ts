import type { CardState } from '../../schema/index.js';
import type { Lack, PartStanding, RoleStanding, Standing } from '../review/index.js';

/** How a part stands with a role: `open` if nothing that stands was decided and nobody has it. */
type PairState = Extract<CardState, keyof typeof WORST_FIRST> | 'open';

/** Of several parts and roles the one that needs most to be done says how a card is. */
const WORST_FIRST = {
  rejected: 0,
  'revise and resubmit': 1,
  'on hold': 2,
  'changed since approval': 3,
  open: 4,
  submitted: 5,
  approved: 6,
} as const;

/** Whether a person of a role has a text to decide on. */
export type IsPending = (role: string, part: string, digest: string) => boolean;

/**
 * How far the approval of a card is; `open` where something was neither decided nor submitted as it
 * stands, or where nobody is asked.
 */
export function approvalState(parts: readonly PartStanding[], isPending: IsPending): PairState {
  const states = parts.flatMap(({ part, digest, roles }) =>
    roles.map((standing): PairState => {
      const isSubmitted = isPending(standing.role, part, digest);
      return pairState(standing, digest, isSubmitted);
    }),
  );
  return states.reduce<PairState>(
    (worst, state) => (WORST_FIRST[state] < WORST_FIRST[worst] ? state : worst),
    states.length === 0 ? 'open' : 'approved',
  );
}

function pairState({ lack }: RoleStanding, digest: string, isSubmitted: boolean): PairState {
  if (lack === null) return 'approved';
  if (isSubmitted) return 'submitted';
  if (lack.is === 'nobody decided') return 'open';
  if (lack.is !== 'decided otherwise') return 'changed since approval';
  // A text that was changed since it was sent back is mended, until somebody says otherwise.
  return lack.by.digest === digest ? verdictState(lack.by) : 'open';
}

function verdictState({ verdict }: Standing): PairState {
  if (verdict === 'rejected' || verdict === 'on hold') return verdict;
  // Where what was approved as noted does not stand, it is to be submitted again.
  return 'revise and resubmit';
}

/** What was said with the decisions on today's text that are no approval, with the parts it is of. */
export function remarksOn(parts: readonly PartStanding[]): readonly string[] {
  const partsBySaid = new Map<string, Set<string>>();
  for (const { part, digest, roles } of parts) {
    for (const { lack } of roles) {
      if (!isOn(lack, digest)) continue;
      const said = sayDecision(lack.by);
      partsBySaid.set(said, (partsBySaid.get(said) ?? new Set()).add(part));
    }
  }
  return [...partsBySaid].map(([said, of]) => `${[...of].join(', ')}: ${said}`);
}

function isOn(
  lack: Lack | null,
  digest: string,
): lack is Extract<Lack, { is: 'decided otherwise' }> {
  return lack?.is === 'decided otherwise' && lack.by.digest === digest;
}

function sayDecision({ verdict, remark, with: holder }: Standing): string {
  const held = holder === null ? verdict : `${verdict} with ${holder}`;
  return remark === null ? held : `${held}: ${remark}`;
}
