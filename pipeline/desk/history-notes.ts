import { readInstant, sayInstant, type Content } from '../model/index.js';
import type { Review } from '../read/index.js';
import { historyOf } from '../review/index.js';
import type { CardKey, HistoryNote } from './protocol.js';

/** The approval history of a card, with people by their names and days as they are said. */
export function historyNotes(
  { property, people }: Content,
  { ledger, packets }: Review,
  card: CardKey,
): readonly HistoryNote[] {
  const packetsOf = new Map(
    [...packets].map(([id, { decides }]) => [
      id,
      decides.filter((part) => part.card === card).map(({ part }) => part),
    ]),
  );
  const zone = property?.value.zone ?? 'UTC';
  const names = new Map((people?.value.people ?? []).map(({ id, name }) => [id, name]));
  return historyOf(ledger, card, packetsOf).map(({ at, what, who, more }) => {
    const instant = readInstant(at);
    return {
      when: instant.ok ? sayInstant(instant.at, zone) : at,
      what,
      who: names.get(who) ?? who,
      more,
    };
  });
}
