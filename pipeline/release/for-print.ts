import { identityOf, isIssued } from '../model/index.js';
import { PARTS_FOR_PRINT, standingsOf, type PartStanding } from '../review/index.js';
import { sayUnapproved, type ApprovalWords } from './unapproved.js';

/** Which cards are to be printed: all that are not narrowed away. */
export interface ForPrint {
  readonly set?: string;
  readonly subset?: string;
}

/** What is not approved of cards that are to be printed, a line for each part; nothing if all is. */
export function lacksForPrint(
  { released, approvals }: ApprovalWords,
  { set: only, subset }: ForPrint,
): readonly string[] {
  const { property, people } = released;
  if (property.approvals === 'none') return [];
  const ground = { property, people, decisions: approvals.decisions, approvals };
  const cards = released.sets
    .filter(({ id }) => only === undefined || id === only)
    .flatMap((set) =>
      set.cards
        .filter((card) => isIssued(card) && (subset === undefined || card.subset === subset))
        .map((card) => ({
          set,
          card,
          parts: standingsOf(PARTS_FOR_PRINT, set, card, ground),
        })),
    );
  return sayUnapproved(cards, { released, approvals });
}

/**
 * How far the approval of what is printed of each card is, in a few words, by `set/subset/id`. Empty
 * where the property asks for none.
 */
export function approvedForPrint({
  released,
  approvals,
}: ApprovalWords): ReadonlyMap<string, string> {
  const { property, people } = released;
  if (property.approvals === 'none') return new Map();
  const ground = { property, people, decisions: approvals.decisions, approvals };
  return new Map(
    released.sets.flatMap((set) =>
      set.cards.filter(isIssued).map((card): [string, string] => {
        const parts = standingsOf(PARTS_FOR_PRINT, set, card, ground);
        return [`${set.id}/${identityOf(card)}`, sayApproved(parts)];
      }),
    ),
  );
}

function sayApproved(parts: readonly PartStanding[]): string {
  const lacking = parts.filter(({ roles }) => roles.some(({ lack }) => lack !== null));
  const named = (some: readonly PartStanding[]): string => some.map(({ part }) => part).join(', ');
  if (lacking.length === 0) return `Approved: ${named(parts)}`;
  return `Not approved: ${named(lacking)}`;
}
