import { isIssued } from '../model/index.js';
import { PARTS_FOR_PRINT, standingsOf } from '../review/index.js';
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
