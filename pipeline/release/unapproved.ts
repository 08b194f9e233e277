import { identityOf } from '../model/index.js';
import { covers, sayLack, wordChanges } from '../review/index.js';
import type { Unapproved } from '../select/index.js';
import type { Prepared } from './make.js';

/** What tells how approvals stand, and who decided. */
export type ApprovalWords = Pick<Prepared, 'released' | 'approvals'>;

/** What is not approved, a line for each part, with what was changed in the words since. */
export function sayUnapproved(
  cards: readonly Unapproved[],
  { released: { people }, approvals }: ApprovalWords,
): readonly string[] {
  const nameOf = (id: string): string => people.find((person) => person.id === id)?.name ?? id;
  return cards.flatMap(({ set, card, parts }) =>
    parts.flatMap(({ part, digest, roles }) =>
      roles.flatMap(({ role, lack }) => {
        if (lack === null) return [];
        const which = `${set.id}/${identityOf(card)}, ${part} ${digest.slice(0, 6)}`;
        const was = lack.is === 'changed since' ? approvals.kept(lack.by.digest) : null;
        const now = covers(part, card, approvals.around(set, card));
        const changes = was === null || part !== 'copy' ? [] : wordChanges(was, now);
        return [`${which}: ${sayLack(lack, role, nameOf)}`, ...changes.map((line) => `  ${line}`)];
      }),
    ),
  );
}
