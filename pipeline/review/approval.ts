import type { Decision, PeopleFile, PropertyFile, Subset } from '../../schema/index.js';
import type { Card } from '../model/index.js';
import { CARD_PARTS, type CardPart, type Part } from './parts.js';
import { earlierThanSeen, type SeenSchedule } from './schedule.js';

type Role = PeopleFile['people'][number]['role'];
type Verdict = Decision['decision'];

/** A decision that stands in the ledger, with what its person saw. */
export interface Standing {
  readonly person: string;
  readonly card: string;
  readonly part: Part;
  readonly verdict: Verdict;
  /** The digest that it approves or refuses: after the changes, if there were any. */
  readonly digest: string;
  readonly seen: SeenSchedule;
  readonly remark: string | null;
  readonly with: string | null;
}

/** Why a part is not approved by a role. */
export type Lack =
  | { readonly is: 'nobody decided' }
  | { readonly is: 'decided otherwise'; readonly by: Standing }
  | { readonly is: 'changed since'; readonly by: Standing }
  | { readonly is: 'opens earlier'; readonly by: Standing; readonly what: readonly string[] };

/** How a role stands to a part that it must approve. */
export interface RoleStanding {
  readonly role: Role;
  readonly approvedBy: Standing | null;
  readonly lack: Lack | null;
}

/** A part of a card as it is now. */
export interface PartNow {
  readonly part: Part;
  readonly digest: string;
  readonly schedule: SeenSchedule;
}

/** What approvals are judged by. */
export interface ApprovalGround {
  readonly property: PropertyFile;
  readonly people: PeopleFile['people'];
  /** Every decision of the ledger, in its order. */
  readonly decisions: readonly Standing[];
}

/**
 * The roles that must approve a part of a card, in the order in which the property names them. Of
 * a part that no line names for all cards the licensor must approve every one: silence is never
 * approval.
 */
export function rolesFor(
  part: Part,
  card: Card | null,
  subset: Subset | null,
  { property }: Pick<ApprovalGround, 'property'>,
): readonly Role[] {
  if (property.approvals === 'none') return [];
  const lines = property.approvals.filter(({ parts }) => parts.includes(part));
  const matching = lines.filter(({ where }) => where === undefined || matches(where, card, subset));
  const open = lines.some(({ where }) => where === undefined);
  const roles = matching.flatMap((line) => (line.roles === 'none' ? [] : line.roles));
  return [...new Set<Role>(open ? roles : ['licensor', ...roles])];
}

function matches(
  where: NonNullable<Exclude<PropertyFile['approvals'], 'none'>[number]['where']>,
  card: Card | null,
  subset: Subset | null,
): boolean {
  const depicts = card?.front.image?.depicts ?? [];
  return (
    (where.depicts?.some((name) => depicts.includes(name)) ?? true) &&
    (where.subset?.includes(subset?.id ?? '') ?? true) &&
    (where.group?.includes(subset?.group ?? '') ?? true)
  );
}

/** How each of the roles stands to a part of a card. */
export function standingOf(
  key: string,
  now: PartNow,
  roles: readonly Role[],
  ground: ApprovalGround,
): readonly RoleStanding[] {
  return roles.map((role) => {
    const latest = latestOf(key, now.part, role, ground);
    const lacks = latest.map((decision) => lackOf(decision, now, ground.property));
    const good = latest.find((_, at) => lacks[at] === null) ?? null;
    const lack = good ? null : (lacks.at(-1) ?? { is: 'nobody decided' as const });
    return { role, approvedBy: good, lack };
  });
}

/** The latest decision of each person of a role on a part, the newest last. */
export function latestOf(
  key: string,
  part: Part,
  role: Role,
  { people, decisions }: ApprovalGround,
): readonly Standing[] {
  const persons = new Set(people.filter((person) => person.role === role).map(({ id }) => id));
  const own = decisionsOn(key, part, decisions).filter(({ person }) => persons.has(person));
  return own.filter((decision, at) =>
    own.slice(at + 1).every(({ person }) => person !== decision.person),
  );
}

const sorted = new WeakMap<readonly Standing[], ReadonlyMap<string, readonly Standing[]>>();

/** Decisions on a part of a card, in their order: they are sorted once, however many are asked for. */
function decisionsOn(key: string, part: Part, decisions: readonly Standing[]): readonly Standing[] {
  const known = sorted.get(decisions) ?? byPart(decisions);
  sorted.set(decisions, known);
  return known.get(`${part} ${key}`) ?? [];
}

function byPart(decisions: readonly Standing[]): ReadonlyMap<string, readonly Standing[]> {
  const found = new Map<string, Standing[]>();
  for (const decision of decisions) {
    const place = `${decision.part} ${decision.card}`;
    const there = found.get(place);
    if (there) there.push(decision);
    else found.set(place, [decision]);
  }
  return found;
}

function lackOf(by: Standing, { digest, schedule }: PartNow, property: PropertyFile): Lack | null {
  if (!isApproval(by.verdict, property)) return { is: 'decided otherwise', by };
  if (by.digest !== digest) return { is: 'changed since', by };
  const what = earlierThanSeen(by.seen, schedule, by.part);
  return what.length > 0 ? { is: 'opens earlier', by, what } : null;
}

/** `approved as noted` counts only where the property says that it stands. */
export function isApproval(verdict: Verdict, { review }: PropertyFile): boolean {
  if (verdict === 'approved as noted') return review?.asNoted === 'stands';
  return verdict === 'approved' || verdict === 'approved with changes';
}

/** Parts that somebody must approve before the site shows a card, or its placeholder. */
export function partsForSite(isShown: boolean, showsArt: boolean): readonly CardPart[] {
  if (!isShown) return ['web'];
  return showsArt ? ['copy', 'image', 'web'] : ['copy', 'web'];
}

/** Parts that somebody must approve before a card prints. */
export const PARTS_FOR_PRINT: readonly CardPart[] = CARD_PARTS.filter((part) => part !== 'web');
