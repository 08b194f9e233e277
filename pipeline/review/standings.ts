import { identityOf, subsetOf, type Card, type CardSet, type SalesText } from '../model/index.js';
import { rolesFor, standingOf, type ApprovalGround, type RoleStanding } from './approval.js';
import { partDigest, salesDigest, type CardPart } from './parts.js';
import { scheduleSeen } from './schedule.js';
import type { Approvals } from './versions.js';

/** How the roles that must approve a part of a card stand to it as it is today. */
export interface PartStanding {
  readonly part: CardPart;
  readonly digest: string;
  readonly roles: readonly RoleStanding[];
}

/** How everybody who must approve these parts of a card stands to them. */
export function standingsOf(
  parts: readonly CardPart[],
  set: CardSet,
  card: Card,
  ground: ApprovalGround & { readonly approvals: Approvals },
): readonly PartStanding[] {
  const plan = set.plan.value;
  const around = ground.approvals.around(set, card);
  const schedule = scheduleSeen(ground.property, plan, card);
  const key = `${set.id}/${identityOf(card)}`;
  return parts.map((part) => {
    const digest = partDigest(part, card, around);
    const roles = rolesFor(part, card, subsetOf(plan, card.subset) ?? null, ground);
    return { part, digest, roles: standingOf(key, { part, digest, schedule }, roles, ground) };
  });
}

/** How everybody who must approve a sales text stands to it. It opens with itself alone. */
export function salesStandings(
  text: SalesText,
  ground: ApprovalGround,
): { readonly digest: string; readonly roles: readonly RoleStanding[] } {
  const digest = salesDigest(text);
  const schedule = { openings: new Map(), inHands: Infinity, shows: new Set<string>() };
  const roles = rolesFor('sales', null, null, ground);
  const key = `${text.set}/sales/${text.id}`;
  return { digest, roles: standingOf(key, { part: 'sales', digest, schedule }, roles, ground) };
}
