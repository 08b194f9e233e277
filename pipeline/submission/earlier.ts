import type { PacketRecord } from '../../schema/index.js';
import { historyOf } from '../review/index.js';
import type { EarlierLine } from '../out/packet/index.js';
import type { Person } from './choose.js';
import type { Ground } from './ground.js';

/**
 * What was sent and answered about a card before, as far as a person may know it: what was sent to
 * them and what they said; all of it for whoever may know everything, since what others said may tell
 * what is held.
 */
export function earlierOf(
  { review, content }: Ground,
  key: string,
  person: Person,
  isCleared: boolean,
): readonly EarlierLine[] {
  const partsIn = ({ decides }: PacketRecord): readonly string[] =>
    decides.filter(({ card }) => card === key).map(({ part }) => part);
  const packets = [...review.packets].filter(
    ([, record]) => isCleared || record.person === person.id,
  );
  const nameOf = (id: string): string =>
    content.people?.value.people.find((each) => each.id === id)?.name ?? id;
  return historyOf(
    review.ledger,
    key,
    new Map(packets.map(([id, record]) => [id, partsIn(record)])),
  )
    .filter(({ who }) => isCleared || who === person.id)
    .map(({ at, who, what, more }) => ({ at, who: nameOf(who), what, more }));
}
