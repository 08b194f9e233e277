import { NAME_TO_COME, isIssued, spotOf, type Card } from '../model/index.js';
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

/**
 * A remark for each card and sales text whose approval lacks something of this kind; nothing where the
 * property asks for no approvals.
 */
export function* unapproved(
  subject: Subject,
  isWanted: (lack: Lack) => boolean,
  expected: string,
): Generator<Remark> {
  const { property, content, approvals } = subject;
  if (property.approvals === 'none') return;
  const people = content.people?.value.people ?? [];
  const ground = { property, people, decisions: approvals.decisions, approvals };
  const nameOf = (id: string): string => people.find((person) => person.id === id)?.name ?? id;
  const say = (lacking: readonly Lacking[]): string =>
    lacking.map(({ part, role, lack }) => `${part}: ${sayLack(lack, role, nameOf)}`).join('; ');
  for (const set of subject.sets) {
    for (const card of set.cards.filter((each) => isIssued(each) && isNamed(each))) {
      const lacking = standingsOf(CARD_PARTS, set, card, ground).flatMap(({ part, roles }) =>
        lacksOf(part, roles, isWanted),
      );
      if (lacking.length === 0) continue;
      yield {
        ...ofCard(card),
        spot: spotOf(card.source, ['name']),
        message: say(lacking),
        expected,
      };
    }
    for (const text of set.sales) {
      const lacking = lacksOf('sales', salesStandings(text, ground).roles, isWanted);
      if (lacking.length === 0) continue;
      yield { set: set.id, spot: spotOf(text.source, ['kind']), message: say(lacking), expected };
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
  isWanted: (lack: Lack) => boolean,
): readonly Lacking[] {
  return roles.flatMap(({ role, lack }) =>
    lack !== null && isWanted(lack) ? [{ part, role, lack }] : [],
  );
}
