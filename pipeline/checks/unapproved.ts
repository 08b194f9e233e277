import { NAME_TO_COME, isIssued, spotOf, type Card, type SalesText } from '../model/index.js';
import {
  CARD_PARTS,
  salesStandings,
  sayLack,
  standingsOf,
  type Lack,
  type Part,
} from '../review/index.js';
import { ofCard, type Remark } from './rule.js';
import type { Subject } from './subject.js';

/** A part of a card or a sales text, and what its approval lacks. */
interface Lacking {
  readonly part: Part;
  readonly role: string;
  readonly lack: Lack;
}

/** A card or a sales text, and all that its approvals lack. */
interface Unapproved {
  readonly of: Card | SalesText;
  readonly lacking: readonly Lacking[];
}

const known = new WeakMap<Subject, readonly Unapproved[]>();

/**
 * A remark for each card and sales text whose approval lacks something of this kind; nothing where the
 * property asks for no approvals.
 */
export function* unapproved(
  subject: Subject,
  isWanted: (lack: Lack) => boolean,
  expected: string,
): Generator<Remark> {
  const people = subject.content.people?.value.people ?? [];
  const nameOf = (id: string): string => people.find((person) => person.id === id)?.name ?? id;
  const say = (lacking: readonly Lacking[]): string =>
    lacking.map(({ part, role, lack }) => `${part}: ${sayLack(lack, role, nameOf)}`).join('; ');
  for (const { of, lacking } of allUnapproved(subject)) {
    const wanted = lacking.filter(({ lack }) => isWanted(lack));
    if (wanted.length === 0) continue;
    const where =
      'bio' in of
        ? { ...ofCard(of), spot: spotOf(of.source, ['name']) }
        : { set: of.set, spot: spotOf(of.source, ['kind']) };
    yield { ...where, message: say(wanted), expected };
  }
}

/** What all approvals lack, set by set; more than one rule asks, so it is looked up once. */
function allUnapproved(subject: Subject): readonly Unapproved[] {
  const before = known.get(subject);
  if (before) return before;
  const found = [...lookedUp(subject)].filter(({ lacking }) => lacking.length > 0);
  known.set(subject, found);
  return found;
}

function* lookedUp({ property, content, approvals, sets }: Subject): Generator<Unapproved> {
  if (property.approvals === 'none') return;
  const people = content.people?.value.people ?? [];
  const ground = { property, people, decisions: approvals.decisions, approvals };
  for (const set of sets) {
    for (const card of set.cards.filter((each) => isIssued(each) && isNamed(each))) {
      const parts = standingsOf(CARD_PARTS, set, card, ground);
      yield { of: card, lacking: parts.flatMap(({ part, roles }) => lacksOf(part, roles)) };
    }
    for (const text of set.sales) {
      yield { of: text, lacking: lacksOf('sales', salesStandings(text, ground).roles) };
    }
  }
}

/** A stub is not to be approved but to be written, which `copy-empty` says. */
function isNamed({ front }: Card): boolean {
  return front.name !== NAME_TO_COME;
}

function lacksOf(
  part: Part,
  roles: readonly { readonly role: string; readonly lack: Lack | null }[],
): readonly Lacking[] {
  return roles.flatMap(({ role, lack }) => (lack === null ? [] : [{ part, role, lack }]));
}
